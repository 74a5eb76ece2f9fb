/** An example of the tests as a coach can read it: only what is not usual in the test book is said. */
import {
  printLook,
  printRuleJob,
  PROTECTIONS,
  RUN_CONCEPT_WORDS,
  type Coverage,
  type LookTest,
  type PreSnap,
  type Pressure,
  type Setup,
  type SideRef,
  type Tell,
  type Who,
} from '../../src/engine/index.ts';
import { COMMON_WORDS, makeRuleWords, SPOT_WORDS } from '../../src/report/index.ts';
import { ODD, ROLES, THREE_DEEP, TO_TIGHT_END } from '../../tests/engine/book.ts';

const WORDS = makeRuleWords(ROLES, COMMON_WORDS);
const LABEL_WIDTH = 10;

type Line = readonly [label: string, text: string];

/** The lines of a setup: label and text, to be set in one width. Throws on a front the page could not show. */
export function exampleText(setup: Setup): string {
  return linesOf(setup)
    .map(([label, text]) => `${label.padEnd(LABEL_WIDTH)}${text}`.trimEnd())
    .join('\n');
}

function linesOf(setup: Setup): readonly Line[] {
  const { second } = setup;
  return [
    ['look', printLook(setup.look)],
    ...offenceLines(setup),
    ...handLines(setup),
    ...pressureLines('first', setup.first, null),
    ...(second === null ? [] : pressureLines('second', second, TURN_WORDS[setup.turn])),
    ...keyLines(setup),
    ...shellLines(setup.coverage),
    ...(setup.rushers === null ? [] : [['rushers', String(setup.rushers)] as const]),
    ...setup.dictionary.map((entry): Line => ['word', `${entry.word}: ${entry.meaning}`]),
  ];
}

function offenceLines({ look, spot, level }: Setup): readonly Line[] {
  const { motion } = look;
  const runs = look.runs.map(
    (run) => `${RUN_CONCEPT_WORDS[run.concept]} ${run.side}${run.passOption ? ', or a pass' : ''}`,
  );
  const protections = look.protections.map(({ protection, slideSide }) => {
    const named = PROTECTIONS.find(({ id }) => id === protection)?.name ?? protection;
    return `${named}, turned ${slideSide}`;
  });
  return [
    ...(level === 'high-school' ? [] : [['level', level] as const]),
    ...(spot === 'middle' ? [] : [['ball', SPOT_WORDS[spot]] as const]),
    ...(motion === null ? [] : [['motion', `${motion.player} to ${motion.to.x},${motion.to.y}`] as const]),
    ...(runs.length === 0 ? [] : [['runs', [...new Set(runs)].join('; ')] as const]),
    ...(protections.length === 0 ? [] : [['protect', protections.join('; ')] as const]),
  ];
}

function handLines({ front }: Setup): readonly Line[] {
  if (front.roles !== ODD.roles) throw new Error('An example with another front cannot be shown');
  return front.byHand.map(({ role, x, y }): Line => ['by hand', `${role} at ${x},${y}`]);
}

const TURN_WORDS: Readonly<Record<Setup['turn'], string>> = {
  own: 'by its own rule',
  same: 'to the side of the first',
  opposite: 'opposite the first',
};

function pressureLines(label: string, pressure: Pressure, turn: string | null): readonly Line[] {
  const usual = pressure.callSide === TO_TIGHT_END;
  const side = usual ? null : WORDS.callSide(pressure.callSide).toLowerCase();
  const name = pressure.name.length > 2 && pressure.name.includes(' ') ? `"${pressure.name}"` : null;
  const tags = pressure.tags.length === 0 ? null : `tags: ${pressure.tags.join(', ')}`;
  const head = [name, turn, side, tags].filter((part) => part !== null).join('; ');
  const tells = pressure.tells.flatMap(tellTexts);
  const texts = [...(head === '' ? [] : [head]), ...(tells.length === 0 ? ['tells nobody anything'] : tells)];
  return texts.map((text, index) => [index === 0 ? label : '', text]);
}

function tellTexts({ who, cases }: Tell): readonly string[] {
  return cases.map((told) => {
    const when = told.when.length === 0 ? '' : ` if ${told.when.map(testText).join(' and ')}`;
    const before = told.preSnap === null ? '' : `, ${preSnapText(told.preSnap)}`;
    return `${whoText(who)}${when}: ${printRuleJob(told.job)} (${told.basis})${before}`;
  });
}

function whoText(who: Who): string {
  return who.kind === 'role' ? who.role : `${who.group}-${who.side}`;
}

function preSnapText(preSnap: PreSnap): string {
  return preSnap.kind === 'depth' ? `${preSnap.depth} yd deep` : `on the heels of ${whoText(preSnap.of)}`;
}

function testText(test: LookTest): string {
  return WORDS.test(test);
}

function keyLines({ combination, second }: Setup): readonly Line[] {
  if (second === null || combination.kind === 'together') return [];
  const key = combination.key.length === 0 ? 'always' : combination.key.map(testText).join(' and ');
  return [['either-or', `the first is run: ${key}`]];
}

function shellLines(coverage: Coverage): readonly Line[] {
  if (coverage === THREE_DEEP) return [];
  const tells = coverage.tells.flatMap(({ who, cases }) =>
    cases.map(({ job }) => `${whoText(who)}: ${printRuleJob(job)}`),
  );
  const needs = coverage.needs.map(
    ({ zone, side, takers }) => `needs ${zoneText(zone, side)}: ${takers.map(whoText).join(', else ')}`,
  );
  const texts = [...(tells.length === 0 ? ['tells nobody anything'] : tells), ...needs];
  return texts.map((text, index) => [index === 0 ? 'shell' : '', text]);
}

function zoneText(zone: string, side: SideRef | 'middle'): string {
  return side === 'middle' ? zone : `${zone}-${side}`;
}
