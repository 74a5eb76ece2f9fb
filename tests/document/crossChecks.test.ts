/** What must hold between the parts of a playbook: each promise broken alone, beside a lawful neighbour. */
import { describe, expect, it } from 'vitest';
import type { Step } from './json.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';
import { refusals } from './spoilt.ts';

describe('eleven against eleven', () => {
  const tight = sampleJson()['looks'];
  const players = Array.isArray(tight) ? (stepInto(tight[0], 'players') as Json[]) : [];
  const extra = { id: 'twelfth', letter: 'W', kind: 'receiver', x: 20, y: -1 };

  it.each<[string, Json[], string]>([
    ['twelve', [...players, extra], 'a list of 12'],
    ['ten', players.slice(1), 'a list of 10'],
    ['none', [], 'an empty list'],
  ])('%s players in a look', (_, value, found) => {
    expect(refusals(['looks[0].players', value])).toEqual([
      `looks[0].players (Tight right): found ${found}, expected a list of exactly 11`,
    ]);
  });

  it('no snapper, or two', () => {
    expect(refusals(['looks[0].players[2].kind', 'lineman'])).toEqual([
      'looks[0].players (Tight right): found 0 snappers, expected exactly one snapper',
    ]);
    expect(refusals(['looks[0].players[1].kind', 'snapper'])).toEqual([
      'looks[0].players (Tight right): found 2 snappers, expected exactly one snapper',
    ]);
  });

  it('ten roles in a front', () => {
    const roles = stepInto(sampleJson()['fronts'], 0, 'roles');
    expect(refusals(['fronts[0].roles', (roles as Json[]).slice(1)])).toEqual([
      'fronts[0].roles (Odd): found a list of 10, expected a list of exactly 11',
    ]);
  });
});

describe('a role always finds its side', () => {
  const fixed = { kind: 'fixed', side: 'left' };
  const strong = { kind: 'strength', by: 'tight-end', toward: 'to' };
  const beside = (role: string): Json => ({ kind: 'role', role, toward: 'to' });
  const unsure = (index: number, at: number, name: string): string =>
    `roles[${index}].side.steps[${at}] (${name}): found a step that may not decide, ` +
    'expected a last step that always decides: a fixed side, or a role that has a side';
  const circular = (index: number, name: string): string =>
    `roles[${index}].side.steps (${name}): found a rule that comes back to this role, expected a rule that ends at other roles`;

  it('the last step is fixed, or a role that has a side', () => {
    expect(refusals(['roles[0].side.steps', [strong]])).toEqual([unsure(0, 0, 'Left end')]);
    expect(refusals(['roles[0].side.steps', [fixed, strong]])).toEqual([unsure(0, 1, 'Left end')]);
    expect(refusals(['roles[0].side.steps', [strong, fixed]])).toEqual([]);
    expect(refusals(['roles[0].side.steps', [strong, beside('O')]])).toEqual([]);
  });

  it('a man in the middle decides for nobody', () => {
    expect(refusals(['roles[0].side.steps', [beside('N')]])).toEqual([unsure(0, 0, 'Left end')]);
    expect(refusals(['roles[0].side.steps', [beside('N'), fixed]])).toEqual([]);
  });

  it('no rule comes back to its own role', () => {
    expect(refusals(['roles[0].side.steps', [beside('LE')]])).toEqual([circular(0, 'Left end')]);
    expect(
      refusals(
        ['roles[0].side.steps', [beside('RE'), fixed]],
        ['roles[2].side.steps', [beside('LI')]],
        ['roles[5].side.steps', [strong, beside('LE')]],
      ),
    ).toEqual([circular(0, 'Left end'), circular(2, 'Right end'), circular(5, 'Left inside')]);
  });

  it('a rule may lean on a circle it is not part of, which is then refused alone', () => {
    expect(refusals(['roles[0].side.steps', [beside('RE')]], ['roles[2].side.steps', [beside('RE'), fixed]])).toEqual([
      circular(2, 'Right end'),
    ]);
  });
});

describe('gaps go with the manner', () => {
  const gap = { kind: 'letter', side: 'call', letter: 'A' };
  const other = { kind: 'edge', side: 'call' };
  const job = 'pressures[0].tells[2].cases[0].job';
  const coming = { manner: 'slant', track: { kind: 'straight' }, edge: null, peel: false, order: null };
  const kinds: readonly Json[] = [
    { kind: 'rush', gaps: [gap], ...coming },
    { kind: 'contain', gaps: [gap], ...coming },
    { kind: 'fit', gaps: [gap], manner: 'slant', support: null },
  ];

  it.each(kinds)('%j', (kind) => {
    const at = `${job}.gaps (Anvil)`;
    expect(refusals([job, kind])).toEqual([]);
    expect(refusals([job, kind], [`${job}.gaps`, [gap, other]])).toEqual([
      `${at}: found 2 gaps, expected one gap, for the manner is "slant"`,
    ]);
    expect(refusals([job, kind], [`${job}.manner`, 'two-gap'])).toEqual([
      `${at}: found one gap, expected two gaps, for the manner is "two-gap"`,
    ]);
    expect(refusals([job, kind], [`${job}.manner`, 'two-gap'], [`${job}.gaps`, [gap, other]])).toEqual([]);
    expect(refusals([job, kind], [`${job}.gaps`, []])).toEqual([
      `${at}: found an empty list, expected a list of 1 to 2`,
    ]);
    expect(refusals([job, kind], [`${job}.gaps`, [gap, gap, gap]])).toEqual([
      `${at}: found a list of 3, expected a list of 1 to 2`,
    ]);
  });
});

describe('how many rush', () => {
  it.each([
    ['pressures[1].rushers', 'Bellows'],
    ['calls[1].rushers', 'Anvil and Bellows'],
  ])('%s', (path, name) => {
    for (const count of [null, 0, 5, 11]) expect(refusals([path, count])).toEqual([]);
    for (const [count, found] of [
      [12, '12'],
      [-1, '-1'],
      [4.5, '4.5'],
      ['5', '"5" (text)'],
    ] as const) {
      expect(refusals([path, count])).toEqual([
        `${path} (${name}): found ${found}, expected a whole number from 0 to 11`,
      ]);
    }
  });
});

describe('one of two pressures, by a key', () => {
  const test = { kind: 'backs', compare: 'exactly', count: 2 };
  const at = 'calls[2].combination';

  it('has a key of up to twelve conditions; none of them always holds', () => {
    for (const key of [[], [test], Array.from({ length: 12 }, () => test)]) {
      expect(refusals([`${at}.key`, key])).toEqual([]);
    }
    expect(refusals([`${at}.key`, Array.from({ length: 13 }, () => test)])).toEqual([
      `${at}.key (Anvil or Bellows): found a list of 13, expected a list of at most 12`,
    ]);
  });

  it('and only such a call has one', () => {
    expect(refusals([at, { kind: 'either-or' }])).toEqual([
      `${at}.key (Anvil or Bellows): found nothing, expected a list of at most 12`,
    ]);
    expect(refusals([at, { kind: 'together', key: [test] }])).toEqual([
      `${at}.key (Anvil or Bellows): found a list of 1, expected no entry of this name here`,
    ]);
    expect(refusals([at, { kind: 'both', key: [] }])).toEqual([
      `${at}.kind (Anvil or Bellows): found "both" (text), expected one of "together", "either-or"`,
    ]);
  });
});

it('a back is named by a number', () => {
  const receiver = 'coverages[1].tells[1].cases[0].job.receiver';
  expect(refusals([`${receiver}.number`, 2])).toEqual([]);
  expect(refusals([receiver, { kind: 'back' }])).toEqual([
    `${receiver}.number (Man with a free safety): found nothing, expected a whole number from 1 to 11`,
  ]);
  expect(refusals([`${receiver}.number`, 0])).toEqual([
    `${receiver}.number (Man with a free safety): found 0, expected a whole number from 1 to 11`,
  ]);
});

it('lists that need an entry have one', () => {
  for (const path of [
    'fronts[0].roles[0].rules',
    'coverages[0].tells[0].cases',
    'pressures[0].tells[0].cases',
    'pressures[0].callSide',
    'roles[0].side.steps',
  ]) {
    expect(refusals([path, []])).toEqual([expect.stringMatching(/found an empty list, expected a list of 1 to \d+$/)]);
  }
});

/** What stands below a value, step by step. */
function stepInto(value: Json | undefined, ...steps: readonly Step[]): unknown {
  return steps.reduce<unknown>(
    (at, step) =>
      typeof at === 'object' && at !== null ? Object.getOwnPropertyDescriptor(at, step)?.value : undefined,
    value,
  );
}
