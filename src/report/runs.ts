import {
  OPTION_PHASES,
  RUN_CONCEPT_WORDS,
  type FloatingFit,
  type Gap,
  type KnownRun,
  type OptionPhase,
  type RoleId,
  type RunAnswer,
} from '../engine/index.ts';
import { fill } from './fill.ts';
import type { DutyRow, RunRow, Why } from './types.ts';
import type { Lexicon } from './words/lexicon.ts';
import { capitalised, listed, lowered } from './words/lists.ts';

type Answered = Extract<RunAnswer, { readonly kind: 'answered' }>;

/** Said once above the runs and the protections, and never again in a row of them. */
export const BY_RULE = 'By the textbook rule, not from scouting';

/** One run the look is known for, in words. */
export function runRow(answer: RunAnswer, lexicon: Lexicon): RunRow {
  const name = runName(answer.known);
  const { passOption } = answer.known;
  if (answer.kind === 'not-here') {
    const headline = `Cannot be run from this look: ${lowered(fill(answer.because, lexicon).text)}`;
    return { name, passOption, here: false, headline, open: false, duties: [], notes: [], why: [] };
  }
  const duties = dutiesOf(answer, lexicon);
  return {
    name,
    passOption,
    here: true,
    headline: headline(answer, duties, lexicon),
    open: duties.some((duty) => duty.open),
    duties,
    notes: notesOf(answer, lexicon),
    why: whysOf(answer, lexicon),
  };
}

function runName({ concept, side }: KnownRun): string {
  return `${RUN_CONCEPT_WORDS[concept]} to the ${side}`;
}

function dutiesOf(answer: Answered, lexicon: Lexicon): readonly DutyRow[] {
  const { picture, atAim, atCutback, floating } = answer;
  const { aim, cutback } = picture;
  return [
    gapDuty('Hits', aim, atAim, lexicon),
    ...(cutback === null ? [] : [gapDuty('Winds back to', cutback, atCutback, lexicon)]),
    ...floating.map((fit) => floatingDuty(fit, lexicon)),
    ...phaseDuties(answer, lexicon),
  ];
}

function gapDuty(how: string, gap: Gap, who: readonly RoleId[], lexicon: Lexicon): DutyRow {
  const by = lexicon.roles(who);
  return { what: `${how} ${lexicon.gap(gap)}`, by, open: who.length === 0, who, players: [], gaps: [gap] };
}

const FLOATING_WORDS = {
  puller: 'pulls to',
  lead: 'leads to',
  passer: 'runs to',
  pitch: 'is pitched to outside',
} as const;

function floatingDuty({ floating, by }: FloatingFit, lexicon: Lexicon): DutyRow {
  const { kind, player, near } = floating;
  const who = by === null ? [] : [by];
  return {
    what: `${capitalised(lexicon.playerLetter(player))} ${FLOATING_WORDS[kind]} ${lexicon.gap(near)}`,
    by: lexicon.roles(who),
    open: by === null,
    who,
    players: [player],
    gaps: [near],
  };
}

const PHASE_WORDS: Readonly<Record<OptionPhase, string>> = { dive: 'Dive', quarterback: 'Quarterback', pitch: 'Pitch' };

/** The phases this option has: what somebody takes, and what nobody does. */
function phaseDuties({ option, picture }: Answered, lexicon: Lexicon): readonly DutyRow[] {
  if (option === null) return [];
  return OPTION_PHASES.filter((phase) => option[phase].length > 0 || option.missing.includes(phase)).map((phase) => {
    const player = { dive: picture.carrier, quarterback: picture.keeper?.player, pitch: picture.pitch?.player }[phase];
    return {
      what: PHASE_WORDS[phase],
      by: lexicon.roles(option[phase]),
      open: option.missing.includes(phase),
      who: option[phase],
      players: player === undefined ? [] : [player],
      gaps: [],
    };
  });
}

/** What nobody has, if anything; else who is where the ball goes, and how many are to spare. */
function headline(answer: Answered, duties: readonly DutyRow[], lexicon: Lexicon): string {
  const open = duties.filter((duty) => duty.open).map((duty) => duty.what);
  if (open.length > 0) return `Nobody for ${listed(open.map(asObject), '')}`;
  const { picture, atAim, atCutback, spare } = answer;
  const back = picture.cutback === null ? '' : `; cutback: ${lexicon.roles(atCutback)}`;
  return `Hits ${lexicon.gap(picture.aim)}: ${lexicon.roles(atAim)}${back}; ${spareText(spare)}`;
}

/** "Hits C gap right" as something to be had: "C gap right, where it hits". */
function asObject(what: string): string {
  for (const [start, end] of [
    ['Hits ', 'where it hits'],
    ['Winds back to ', 'where it winds back'],
  ] as const) {
    if (what.startsWith(start)) return `${what.slice(start.length)}, ${end}`;
  }
  return what;
}

function spareText(spare: number): string {
  if (spare === 0) return 'nobody to spare';
  if (spare > 0) return `${String(spare)} to spare`;
  return `${String(-spare)} too few`;
}

function notesOf({ picture, unblocked, read, spare }: Answered, lexicon: Lexicon): readonly string[] {
  const notes = [`${capitalised(spareText(spare))} near the box`];
  if (picture.read !== null && read === null) notes.unshift('Nobody stands where the read man should');
  else if (read !== null) notes.unshift(`Read${unblocked === read ? ', not blocked' : ''}: ${lexicon.role(read)}`);
  const { leftUnblocked } = picture;
  if (leftUnblocked === null || (read !== null && unblocked === read)) return notes;
  const words = lowered(fill(leftUnblocked.words, lexicon).text);
  return [`Not blocked: ${unblocked === null ? words : `${lexicon.role(unblocked)}, ${words}`}`, ...notes];
}

function whysOf({ picture, option }: Answered, lexicon: Lexicon): readonly Why[] {
  return [picture.because, ...(option === null ? [] : [option.because]), picture.fit].map((each) =>
    fill(each, lexicon),
  );
}
