import { assertNever } from '../base/index.ts';
import { gapKey, tenth, type Moment, type WalkThrough } from '../engine/index.ts';
import type { MomentRow, WalkReport } from './types.ts';
import type { Lexicon } from './words/lexicon.ts';

/** A walk-through in words: what happens when, and what is not shown. */
export function walkReport(walk: WalkThrough, lexicon: Lexicon): WalkReport {
  return { moments: walk.moments.map((moment) => momentRow(moment, lexicon)), notes: notesOf(walk, lexicon) };
}

/** "0.9 s": a time after the snap. */
export function secondsText(t: number): string {
  return `${tenth(t).toFixed(1)} s`;
}

function momentRow(moment: Moment, lexicon: Lexicon): MomentRow {
  return { t: moment.t, time: secondsText(moment.t), text: momentText(moment, lexicon), ...aboutOf(moment) };
}

function momentText(moment: Moment, lexicon: Lexicon): string {
  switch (moment.kind) {
    case 'in-gap':
      return `${lexicon.role(moment.role)} is in the ${lexicon.gaps(moment.gaps)}`;
    case 'meets':
      return `${lexicon.playerLetter(moment.blocker)} meets ${lexicon.role(moment.rusher)}`;
    case 'at-passer': {
      const who = lexicon.role(moment.role);
      if (!moment.free) return `${who} would be at the passer if nobody blocked him`;
      return `${who} comes free and is at the passer${moment.thrown ? ', after the ball is gone' : ''}`;
    }
    case 'thrown':
      return moment.hot === null
        ? 'the ball is gone, as from a drop of five steps'
        : `the hot throw to the ${moment.hot} is gone`;
    case 'opens':
      return `${lexicon.playerLetter(moment.player)} opens a gap beside the ${lexicon.gap(moment.near)}`;
    case 'fits-opened':
      return `${lexicon.role(moment.role)} is in the gap that ${lexicon.playerLetter(moment.player)} opened`;
    case 'ball-at': {
      const there =
        moment.there.length === 0
          ? 'nobody is there yet'
          : `${lexicon.roles(moment.there)} ${moment.there.length === 1 ? 'is' : 'are'} there`;
      return `${lexicon.playerLetter(moment.player)} is at the ${lexicon.gap(moment.gap)} with the ball: ${there}`;
    }
    default:
      return assertNever(moment);
  }
}

function aboutOf(moment: Moment): Pick<MomentRow, 'key' | 'who' | 'players' | 'gaps'> {
  const about = whomOf(moment);
  const names = [...about.who, ...about.players, ...about.gaps.map(gapKey)].join(',');
  return { key: `${moment.kind}:${names}`, ...about };
}

function whomOf(moment: Moment): Pick<MomentRow, 'who' | 'players' | 'gaps'> {
  switch (moment.kind) {
    case 'in-gap':
      return { who: [moment.role], players: [], gaps: moment.gaps };
    case 'meets':
      return { who: [moment.rusher], players: [moment.blocker], gaps: [] };
    case 'at-passer':
      return { who: [moment.role], players: [], gaps: [] };
    case 'thrown':
      return { who: [], players: [], gaps: [] };
    case 'opens':
      return { who: [], players: [moment.player], gaps: [moment.near] };
    case 'fits-opened':
      return { who: [moment.role], players: [moment.player], gaps: [moment.near] };
    case 'ball-at':
      return { who: moment.there, players: [moment.player], gaps: [moment.gap] };
    default:
      return assertNever(moment);
  }
}

const SHOWN: Readonly<Record<WalkThrough['against']['kind'], string>> = {
  pass: 'A pass with no protection drawn: nobody is blocked, and the receivers stay. Draw a protection or a run in the report to walk it.',
  protection:
    'The protection that is drawn: a blocked man is held where his blocker meets him, and the receivers stay.',
  run: 'The run that is drawn: whoever carries, pulls or leads goes, the others stay; nobody is blocked. A defender who has no run gap stays.',
};

function notesOf({ against, unfilled, inDoubt }: WalkThrough, lexicon: Lexicon): readonly string[] {
  return [
    'Times and ways are estimates from published get-off times and speeds, not measured on your men.',
    SHOWN[against.kind],
    ...inDoubt.map(
      (role) => `${lexicon.role(role)} is told two things: he is shown doing what the first pressure says.`,
    ),
    ...unfilled.map(({ gap, owners }) => {
      const [one, ...more] = owners;
      const verb = one !== undefined && more.length === 0 ? 'has it, but does' : 'have it, but do';
      return `Nobody comes to the ${lexicon.gap(gap)} here: ${lexicon.roles(owners)} ${verb} something else.`;
    }),
  ];
}
