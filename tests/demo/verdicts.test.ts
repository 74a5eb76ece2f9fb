/**
 * What each call of the demo says, look by look. The playbook is invented, and so the tables are too: they were worked out
 * from the call-side rules by hand, look by look, and hold the demo and the engine together.
 */
import { describe, expect, it } from 'vitest';
import { analyse, SIDES, type Analysis, type Call, type Turn } from '../../src/engine/index.ts';
import { callOf, everywhere, exceptions, grave, playbook, rows, setupOf, sign } from './grid.ts';

const turned = (call: Call, turn: Turn): Call => ({ ...call, turn });
const each = (calls: readonly Call[]) => calls.map((call) => [call.name, call] as const);

/** Their tables stand below. */
const WRONG_BY_LOOK = [
  'sluice-weir',
  'teasel-marl',
  'sluice-teasel-across',
  'culvert-weir-across',
  'culvert-marl',
] as const;

/** Sound or taught apart, except in a few looks: those, and what they say (see `sign`), with the reason beside each. */
const EXCEPTIONS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  // Both rules of the call side go by the tight end, so a wing who trades turns them; without a tight end they go by the
  // receivers, so a jet turns them where the field said otherwise before. The trade is lived with.
  osier: { 'jet-10': '. . f' },
  marl: { 'jet-10': '. . f', 'trade-11': 'f f f' },
  // Away from the tight end they come from three receivers, and the other inside backer has the third of them across the ball.
  lapwing: { 'jet-10': '. . f', 'trade-11': 'f f f', 'trips-open-11': 'b b b' },
  // Without a tight end it goes to three receivers: the same again. With one (trips-11) the third of them is the tight end.
  sedge: { 'trips-10': 'b b b', 'bunch-10': 'b b b', 'jet-10': 'b b bf', 'trade-11': 'f f f', 'empty-00': 'b b b' },
  // The outside backer has the gap outside the tight end and, under two halves, the second receiver.
  'spate-two': { 'tight-11': 'r r r' },
};

/** The same in every look: an end is sent to B to rush by one and to contain by the other; a word has two meanings. */
const EVERYWHERE: Readonly<Record<string, RegExp>> = { 'osier-marl': /^ef?$/, leat: /^b?w$/ };

const named = new Set<string>([...WRONG_BY_LOOK, ...Object.keys(EXCEPTIONS), ...Object.keys(EVERYWHERE)]);
const sound = playbook.calls.filter(({ id }) => !named.has(id));

describe('calls that are sound in every look at every spot', () => {
  it('are these, pairs among them', () => {
    expect(sound.map(({ name }) => name)).toEqual([
      'Weir Osier',
      'Tussock Weir',
      'Culvert Weir',
      'Bittern Weir Across',
      'Coppice or Bittern',
      'Weir or Sluice',
      'Sluice',
      'Weir',
      'Teasel',
      'Culvert',
      'Bittern',
      'Withy',
      'Coppice',
      'Tussock',
      'Spate',
      'Millrace',
      'Carr',
      'Staithe',
      'Eyot',
    ]);
    expect(sound.filter(({ second }) => second !== null).length).toBeGreaterThanOrEqual(4);
  });

  it.each(each(sound))('%s: nothing a coach must act on, and nothing that cannot be told', (_, call) => {
    for (const analysis of everywhere(call)) {
      const where = `${analysis.setup.look.id} ${analysis.setup.spot}`;
      if (analysis.verdict === 'left-out') continue;
      expect([where, grave(analysis).map(({ rule }) => rule)]).toEqual([where, []]);
      expect([where, analysis.undetermined]).toEqual([where, []]);
    }
  });

  // A plan for all five who may catch ("Pressure Coverages 101", New Orleans Sports Today); a shell without a hole in it
  // ("Multiple 3-4 Fire Zone Blitz Coverages", Strong Football Coach).
  it.each(each(sound))('%s: every receiver is answered and every zone of the shell is filled', (_, call) => {
    for (const { answers, zones, setup, verdict } of everywhere(call)) {
      if (verdict === 'left-out') continue;
      const where = `${setup.look.id} ${setup.spot}`;
      expect([where, answers.length, answers.filter(({ by }) => by === null)]).toEqual([where, 5, []]);
      expect([where, zones.filter(({ by }) => by === null)]).toEqual([where, []]);
    }
  });

  // Rush, under, deep, man and free are eleven: arithmetic of "Creepers vs. Simulated Pressures", Coach Hoover, 10 Aug 2019.
  it.each(each(sound))('%s: as many come as it says', (_, call) => {
    for (const { passCount, setup } of everywhere(call)) {
      const { rush, under, deep, man, free } = passCount;
      expect(rush + under + deep + man + free).toBe(11);
      if (setup.rushers !== null) expect([setup.look.id, rush]).toEqual([setup.look.id, setup.rushers]);
    }
  });

  // Force and contain on both sides. Sources: "Force Player in Football", Joe Daniel, QC 227;
  // "Pressure Coverages 101", New Orleans Sports Today.
  it.each(each(sound))('%s: force and contain on both sides, and never two who force', (_, call) => {
    for (const { assignments, setup } of everywhere(call)) {
      for (const side of SIDES) {
        const where = `${setup.look.id} ${setup.spot} ${side}`;
        const contains = assignments.filter(({ pass }) => pass.kind === 'contain' && pass.side === side);
        const forces = assignments.filter(({ run, aligned }) => run.support === 'force' && aligned.place === side);
        expect([where, contains.length > 0]).toEqual([where, true]);
        expect([where, forces.length]).toEqual([where, 1]);
      }
    }
  });

  // "When the edge peels an inside man must contain": "Coaching Stress Areas: Double A Gap Mug Cover 1 Peel Blitz",
  // Blitzology, 21 Aug 2020.
  it.each(['tussock-weir', 'spate'])(
    '%s: six come, and inside an edge who leaves with the back somebody contains',
    (id) => {
      const six = everywhere(callOf(id)).filter(({ setup }) => setup.rushers === 6);
      expect(six.length).toBeGreaterThan(playbook.looks.length);
      for (const analysis of six) {
        const peeling = analysis.assignments.filter(peels);
        expect(peeling.length).toBeGreaterThan(0);
        for (const man of peeling) {
          const others = analysis.assignments.filter((other) => other !== man && other.pass.kind === 'contain');
          expect(others.some(({ aligned }) => aligned.place === man.aligned.place)).toBe(true);
        }
      }
    },
  );
});

function peels({ combined: { job } }: Analysis['assignments'][number]): boolean {
  return (job?.kind === 'rush' || job?.kind === 'contain') && job.peel;
}

describe('calls that are sound but for a few looks', () => {
  it.each(Object.entries(EXCEPTIONS))('%s', (id, table) => {
    expect(exceptions(callOf(id))).toEqual(table);
  });
});

describe('calls that say one thing in every look', () => {
  it.each(Object.entries(EVERYWHERE))('%s', (id, pattern) => {
    for (const analysis of everywhere(callOf(id))) expect(sign(analysis)).toMatch(pattern);
  });

  it('the word with two meanings is used by one call only', () => {
    const [look] = playbook.looks;
    if (look === undefined) throw new Error('The demo has no looks');
    const using = playbook.calls.filter((call) =>
      analyse(setupOf(call, look.id, 'middle')).findings.some(({ rule }) => rule === 'words.two-meanings'),
    );
    expect(using.map(({ id }) => id)).toEqual(['leat']);
  });
});

/**
 * Left hash, middle, right hash.
 *
 * Sluice and Weir go to the field, in the middle to more receivers, else right. By Sluice the nose goes to the call with a tight
 * end there (unless three receivers are away) and against two receivers a side and nobody attached, and opposite by Weir (but
 * with three on the call side): wrong where both hold.
 *
 * Teasel goes away from the back, Marl to the tight end: on one side they tell the line the same. On two sides each end is
 * sent out by one and in by the other, and the nose two ways where no slot stands away from either.
 *
 * Sluice goes to the field and Teasel opposite: its call end is the other's away end. The nose is told by both with a tight
 * end to the field.
 *
 * Culvert and Weir both send the nose away from their side, and they are turned apart; against three receivers Weir does not
 * (its side is theirs: it is opposite the back, who stands away from them in all those looks).
 *
 * Culvert goes to the back, Marl to the tight end. On one side the nose goes to it by Marl and away by Culvert, except with a
 * slot away (wing-12), where Marl leaves him alone. On two sides the ends go out and in.
 */
// prettier-ignore
const TABLE: readonly (readonly [look: string, sluiceWeir: string, teaselMarl: string, sluiceTeasel: string, culvertWeir: string, culvertMarl: string])[] = [
  ['flexed-11',     'N N N', 'E E .',    'E E E',    'N N N', 'E E E'],
  ['tight-11',      'N N .', '. . .',    'EN EN E',  'N N N', 'E E E'],
  ['doubles-10',    'N N N', 'E E .',    'E E E',    'N N N', 'E E E'],
  ['trips-10',      '. . .', '. . .',    'Eb E E',   '. . .', 'E E E'],
  ['bunch-10',      '. . .', '. . .',    'E E Eb',   '. . .', 'E E E'],
  ['pistol-10',     'N N N', 'E E .',    'E E E',    'N N N', 'E E E'],
  ['jet-10',        '. . .', '. . f',    'E E Eb',   '. . .', 'E E Ef'],
  ['trips-11',      '. . .', '. . .',    'EN EN E',  '. . .', 'E E E'],
  ['trips-open-11', '. . .', 'E E E',    'E E Eb',   '. . .', 'E E E'],
  ['wing-11',       'N N .', '. . .',    'EN EN E',  'N N N', 'E E E'],
  ['trade-11',      '. . N', 'Ef Ef Ef', 'E E EN',   'N N N', 'Ef Ef Ef'],
  ['unbalanced-11', 'N N .', 'E E E',    'EN EN E',  'N N N', 'E E E'],
  ['empty-00',      '. . .', 'E E E',    'E E Eb',   '- - -', '- - -'],
  ['empty-11',      '. . .', 'E E E',    'EN EN E',  '- - -', '- - -'],
  ['back-out-11',   '. . .', 'E E E',    'EN EN E',  '- - -', '- - -'],
  ['under-11',      '. . N', 'E E E',    'E E EN',   'N N N', 'E E E'],
  ['ace-12',        'N N N', 'EN EN .',  'EN EN EN', 'N N N', 'N N E'],
  ['wing-12',       'N N .', 'E E E',    'EN EN E',  'N N N', '. . .'],
  ['heavy-13',      'N N N', 'EN EN EN', 'EN EN EN', 'N N N', 'N N N'],
  ['split-20',      '. . .', 'E E E',    'E E E',    'N N N', 'N N N'],
  ['i-21',          'N N .', 'EN EN EN', 'EN EN E',  'N N N', 'N N N'],
  ['offset-21',     '. N N', 'EN EN EN', 'E EN EN',  'N N N', 'N N N'],
  ['i-22',          'N N N', 'EN EN EN', 'EN EN EN', 'N N N', 'N N N'],
];

describe('calls that are wrong where the two sides fall badly', () => {
  it.each(WRONG_BY_LOOK.map((id, index) => [id, index] as const))('%s', (id, index) => {
    expect(rows(callOf(id))).toEqual(Object.fromEntries(TABLE.map((row) => [row[0], row[index + 1]])));
  });
});

describe('the mend a coach would find first', () => {
  const signs = (call: Call): ReadonlySet<string> => new Set(everywhere(call).map(sign));
  const first = (): Call => {
    const [call] = playbook.calls;
    if (call === undefined) throw new Error('The demo has no calls');
    return call;
  };

  it('the default call is the first: wrong in the first look, two by two, because the nose is told two jobs', () => {
    const call = first();
    const [look] = playbook.looks;
    expect([call.id, look?.id]).toEqual(['sluice-weir', 'flexed-11']);
    const [shown] = everywhere(call).filter(({ setup }) => setup.spot === 'middle');
    if (shown === undefined) throw new Error('The demo has no looks');
    expect([shown.verdict, sign(shown)]).toEqual(['stop', 'N']);
    const { receivers, backs, surface } = shown.facts;
    expect(SIDES.map((side) => receivers.filter((each) => each.side === side).length)).toEqual([2, 2]);
    expect(SIDES.map((side) => surface[side].length)).toEqual([3, 3]);
    expect(backs).toHaveLength(1);
  });

  it('in the middle of the field it is wrong in about half of the looks, and right in the others', () => {
    const middle = everywhere(first()).filter(({ setup }) => setup.spot === 'middle');
    const said = middle.map(sign);
    expect(said.filter((each) => each === 'N')).toHaveLength(12);
    expect(said.filter((each) => each === '.')).toHaveLength(11);
    expect(said).toHaveLength(23);
  });

  it('it is right in all of them once the second is turned', () => {
    expect(signs(turned(first(), 'opposite'))).toEqual(new Set(['.']));
  });

  it('Culvert Weir Across is sound once the second is turned the same', () => {
    expect(signs(turned(callOf('culvert-weir-across'), 'same'))).toEqual(new Set(['.', '-']));
  });

  it('Teasel Marl is sound once the second is turned the same', () => {
    expect(signs(turned(callOf('teasel-marl'), 'same'))).toEqual(new Set(['.']));
  });
});
