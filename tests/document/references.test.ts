/** What is named must be there: every place that names something, with a name nobody has. */
import { describe, expect, it } from 'vitest';
import type { Json } from './samplePlaybook.ts';
import { refusals } from './spoilt.ts';

describe('what is named must be there', () => {
  const group = { kind: 'group', group: 'nobody', side: 'call' };
  const stranger = { kind: 'role', role: 'nobody' };
  const fixed = { kind: 'fixed', side: 'left' };
  const rush = {
    kind: 'rush',
    gaps: [{ kind: 'letter', side: 'call', letter: 'A' }],
    manner: 'slant',
    track: { kind: 'past', how: 'over', neighbour: stranger },
    edge: null,
    peel: false,
    order: null,
  };
  const waits = { ...rush, track: { kind: 'straight' }, order: { turn: 'second', neighbour: stranger } };
  const goesFirst = { ...waits, kind: 'contain', order: { turn: 'first', neighbour: group } };

  it.each<[string, Json, string, string]>([
    [
      'roles[4].side.steps',
      [{ ...stranger, toward: 'to' }, fixed],
      'roles[4].side.steps[0].role (Weak outside)',
      'role',
    ],
    ['fronts[0].roles[3].role', 'nobody', 'fronts[0].roles[3].role (Odd)', 'role'],
    ['fronts[0].byHand[0].role', 'nobody', 'fronts[0].byHand[0].role (Odd)', 'role'],
    ['fronts[0].byHand[0].look', 'nobody', 'fronts[0].byHand[0].look (Odd)', 'look'],
    ['coverages[0].tells[2].who', stranger, 'coverages[0].tells[2].who.role (Three deep)', 'role'],
    ['coverages[0].tells[0].who', group, 'coverages[0].tells[0].who.group (Three deep)', 'group'],
    [
      'coverages[0].tells[2].cases[0].job',
      rush,
      'coverages[0].tells[2].cases[0].job.track.neighbour.role (Three deep)',
      'role',
    ],
    ['pressures[0].callSide', [{ ...stranger, toward: 'to' }], 'pressures[0].callSide[0].role (Anvil)', 'role'],
    ['pressures[0].coverage', 'nobody', 'pressures[0].coverage (Anvil)', 'coverage'],
    ['pressures[1].notAgainst[0]', 'nobody', 'pressures[1].notAgainst[0] (Bellows)', 'look'],
    ['pressures[0].tells[0].who', stranger, 'pressures[0].tells[0].who.role (Anvil)', 'role'],
    ['pressures[0].tells[1].who', group, 'pressures[0].tells[1].who.group (Anvil)', 'group'],
    [
      'pressures[0].tells[2].cases[0].job',
      rush,
      'pressures[0].tells[2].cases[0].job.track.neighbour.role (Anvil)',
      'role',
    ],
    [
      'pressures[0].tells[2].cases[0].job',
      { ...rush, kind: 'contain' },
      'pressures[0].tells[2].cases[0].job.track.neighbour.role (Anvil)',
      'role',
    ],
    [
      'pressures[1].tells[1].cases[0].preSnap.of',
      group,
      'pressures[1].tells[1].cases[0].preSnap.of.group (Bellows)',
      'group',
    ],
    ['calls[0].front', 'nobody', 'calls[0].front (Anvil)', 'front'],
    ['calls[0].first', 'nobody', 'calls[0].first (Anvil)', 'pressure'],
    ['calls[0].second', 'nobody', 'calls[0].second (Anvil)', 'pressure'],
    ['calls[0].coverage', 'nobody', 'calls[0].coverage (Anvil)', 'coverage'],
    [
      'coverages[0].tells[2].cases[0].job',
      waits,
      'coverages[0].tells[2].cases[0].job.order.neighbour.role (Three deep)',
      'role',
    ],
    [
      'pressures[0].tells[2].cases[0].job',
      waits,
      'pressures[0].tells[2].cases[0].job.order.neighbour.role (Anvil)',
      'role',
    ],
    [
      'pressures[0].tells[2].cases[0].job',
      goesFirst,
      'pressures[0].tells[2].cases[0].job.order.neighbour.group (Anvil)',
      'group',
    ],
    ['coverages[0].needs[0].takers[1]', stranger, 'coverages[0].needs[0].takers[1].role (Three deep)', 'role'],
    ['coverages[0].needs[3].takers[0]', group, 'coverages[0].needs[3].takers[0].group (Three deep)', 'group'],
    ['calls[1].waivers[0].look', 'nobody', 'calls[1].waivers[0].look (Anvil and Bellows)', 'look'],
    ['checkOuts[0].call', 'nobody', 'checkOuts[0].call', 'call'],
    ['checkOuts[0].rows[0].action.coverage', 'nobody', 'checkOuts[0].rows[0].action.coverage', 'coverage'],
    ['checkOuts[0].rows[4].action.call', 'nobody', 'checkOuts[0].rows[4].action.call', 'call'],
    ['opponents[0].looks[1]', 'nobody', 'opponents[0].looks[1] (Larch Falls Otters)', 'look'],
  ])('%s', (path, value, named, to) => {
    expect(refusals([path, value])).toEqual([
      `${named}: found "nobody" (text), expected the id of a ${to} of this playbook`,
    ]);
  });

  it.each(['nobody', 'F'])('the man in motion is one of his own look: %s', (player) => {
    const motion = { player, to: { x: 5, y: -2 } };
    expect(refusals(['looks[1].motion', motion])).toEqual([
      `looks[1].motion.player (Spread): found "${player}" (text), expected the id of a player of this look`,
    ]);
    expect(refusals(['looks[0].motion', { ...motion, player: 'F' }])).toEqual([]);
  });

  it('the rule of a waiver need not be one this program knows', () => {
    expect(refusals(['calls[1].waivers[0].rule', 'rule.to-come'])).toEqual([]);
    expect(refusals(['calls[1].waivers[0].rule', 'Rule'])).toEqual([
      'calls[1].waivers[0].rule (Anvil and Bellows): found "Rule" (text), expected the id of a check, such as gap.open',
    ]);
  });

  it('a group is there as long as one role is in it', () => {
    expect(refusals(['roles[0].group', 'other'])).toEqual([]);
    expect(refusals(['roles[0].group', 'other'], ['roles[2].group', 'other'])).toEqual([
      expect.stringContaining('pressures[1].tells[2].who.group (Bellows): found "ends" (text)'),
    ]);
  });
});
