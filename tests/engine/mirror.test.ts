import { describe, expect, it } from 'vitest';
import {
  analyse,
  asLookId,
  asRoleId,
  mirrorSetup,
  printEleven,
  printRuleJob,
  type Pressure,
  type SideStep,
} from '../../src/engine/index.ts';
import { frozen, LOOKS, ODD, pressure, ruleJob, setup, tell, THREE_DEEP, who } from './book.ts';

const look = LOOKS['11 tight end'];
const flip = (first: Pressure) => mirrorSetup(frozen(setup({ look, first })));

/** A job as a rule tells it, and its mirror: only a plain left or right changes sides. */
const JOBS: readonly (readonly [job: string, mirrored: string])[] = [
  ['rush A-left', 'rush A-right'],
  ['rush A-right+B-call two-gap', 'rush A-left+B-call two-gap'],
  ['contain edge-left loop over:end-call box', 'contain edge-right loop over:end-call box'],
  ['fit outside:end-right force', 'fit outside:end-left force'],
  ['fit B-mine', 'fit B-mine'],
  ['drop seam-left may C-left+C-away', 'drop seam-right may C-right+C-away'],
  ['drop seam-other own B-right', 'drop seam-other own B-left'],
  ['drop middle', 'drop middle'],
  ['man #2-left own C-right', 'man #2-right own C-left'],
  ['man #2-away', 'man #2-away'],
  ['man back may A-left', 'man back may A-right'],
  ['spy may A-left+A-right', 'spy may A-right+A-left'],
];

describe('the mirror of a job', () => {
  it.each(JOBS)('%s: %s', (job, mirrored) => {
    const [told] = flip(pressure('p', [tell('@M', 'path', job)])).first.tells;
    expect(told?.cases.map((each) => printRuleJob(each.job))).toEqual([mirrored]);

    const coverage = { ...THREE_DEEP, tells: [{ who: who('@M'), cases: [{ when: [], job: ruleJob(job) }] }] };
    const [shell] = mirrorSetup(frozen(setup({ look, first: pressure('p', []), coverage }))).coverage.tells;
    expect(shell?.cases.map((each) => printRuleJob(each.job))).toEqual([mirrored]);
  });
});

const STEPS: readonly (readonly [step: SideStep, mirrored: SideStep])[] = [
  [
    { kind: 'fixed', side: 'left' },
    { kind: 'fixed', side: 'right' },
  ],
  [
    { kind: 'strength', by: 'field', toward: 'away' },
    { kind: 'strength', by: 'field', toward: 'away' },
  ],
  [
    { kind: 'role', role: asRoleId('S'), toward: 'to' },
    { kind: 'role', role: asRoleId('S'), toward: 'to' },
  ],
];

describe('the mirror of a setup', () => {
  it.each(STEPS)('a step of a side rule: %o', (step, mirrored) => {
    expect(flip(pressure('p', [], [step])).first.callSide).toEqual([mirrored]);
  });

  it('conditions about a plain side', () => {
    const told = tell('@M', 'path', 'rush A-call');
    const first = pressure('p', [
      {
        ...told,
        cases: told.cases.map((each) => ({
          ...each,
          when: [
            { kind: 'field', side: 'left' },
            { kind: 'bodies', side: 'right', compare: 'at-least', count: 3 },
            { kind: 'receivers', side: 'call', compare: 'exactly', count: 2 },
            { kind: 'backs', compare: 'exactly', count: 1 },
          ],
        })),
      },
    ]);
    expect(flip(first).first.tells[0]?.cases[0]?.when).toEqual([
      { kind: 'field', side: 'right' },
      { kind: 'bodies', side: 'left', compare: 'at-least', count: 3 },
      { kind: 'receivers', side: 'call', compare: 'exactly', count: 2 },
      { kind: 'backs', compare: 'exactly', count: 1 },
    ]);
  });

  it('the spot, the players, the spots set by hand; nothing becomes minus zero', () => {
    const front = { ...ODD, byHand: [{ look: asLookId('look'), role: asRoleId('S'), x: 5, y: 3 }] };
    const flipped = mirrorSetup(frozen(setup({ look, first: pressure('p', []), front, spot: 'left' })));
    expect(flipped.spot).toBe('right');
    expect(flipped.front.byHand).toEqual([{ look: 'look', role: 'S', x: -5, y: 3 }]);
    const at = (id: string): number | undefined => flipped.look.players.find((player) => player.id === id)?.x;
    expect([at('X'), at('Y'), at('Q')]).toEqual([18, -4, 0]);
    expect(flipped.second).toBeNull();
  });

  it('a spy, a man in man and a nose over the ball play the flipped call', () => {
    const first = pressure('p', [
      tell('inside-call', 'path', 'spy may A-call alley'),
      tell('outside-away', 'path', 'man #2-away own C-away'),
      tell('@N', 'movement', 'rush A-left slant'),
    ]);
    const usual = frozen(setup({ look, first, spot: 'left' }));
    const words = (text: string): readonly string[] =>
      text
        .replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'))
        .split(' ')
        .sort();
    expect(
      printEleven(analyse(mirrorSetup(usual)))
        .split(' ')
        .sort(),
    ).toEqual(words(printEleven(analyse(usual))));
  });
});

describe('two defenders drawn on one spot', () => {
  // The picture is absurd; the answer must still not hang on the order of the file.
  const byHand = (['M', 'W'] as const).map((role) => ({ look: asLookId('look'), role: asRoleId(role), x: 1, y: 4 }));
  const front = { ...ODD, byHand };
  const usual = frozen(setup({ look, first: pressure('p', [tell('@N', 'movement', 'rush A-left')]), front }));

  it('are told in the order of their names, whatever the order of the front', () => {
    const reversed = frozen({ ...usual, front: { ...front, roles: [...front.roles].reverse() } });
    expect(printEleven(analyse(reversed))).toBe(printEleven(analyse(usual)));
    const order = analyse(usual).assignments.map(({ aligned }) => aligned.role.letter);
    expect(order.indexOf('M')).toBe(order.indexOf('W') - 1);
  });
});
