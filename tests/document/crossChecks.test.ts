/** What must hold between the parts of a playbook: each promise broken alone, beside a lawful neighbour. */
import { describe, expect, it } from 'vitest';
import { checkPlaybook, refusalText } from '../../src/document/index.ts';
import { withAt, type Step } from './json.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';

/** What the sample is refused with once these places are changed; empty when it is still sound. */
function refusals(...changes: readonly (readonly [path: string, value: Json])[]): readonly string[] {
  const spoilt = changes.reduce<Json>((json, [path, value]) => withAt(json, stepsOf(path), value), sampleJson());
  const checked = checkPlaybook(spoilt);
  return checked.ok ? [] : checked.problem.map(refusalText);
}

/** `looks[0].players[3].id` as steps. */
function stepsOf(path: string): readonly Step[] {
  return path
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

describe('ids are used once', () => {
  it.each([
    ['roles[1].id', 'LE', 'Nose'],
    ['coverages[1].id', 'three-deep', 'Man with a free safety'],
    ['looks[1].id', 'tight', 'Spread'],
    ['pressures[1].id', 'anvil', 'Bellows'],
    ['calls[1].id', 'anvil', 'Anvil and Bellows'],
  ])('%s', (path, value, name) => {
    expect(refusals([path, value])).toContain(
      `${path} (${name}): found "${value}" (text), expected an id used only once in this part`,
    );
  });

  it.each(['fronts', 'opponents', 'sheets'])('a second of the same in %s', (part) => {
    const own = sampleJson()[part];
    if (!Array.isArray(own)) throw new Error(`No list ${part}`);
    expect(refusals([part, [...own, ...own]])).toEqual([
      expect.stringMatching(`^${part}\\[1\\]\\.id .*expected an id used only once in this part$`),
    ]);
  });

  it('two players with one id, in one look only', () => {
    expect(refusals(['looks[0].players[1].id', 'T1'])).toEqual([
      'looks[0].players[1].id (Tight right): found "T1" (text), expected an id used only once in this look',
    ]);
    expect(refusals(['looks[0].players[1].id', 'H'])).toEqual([]);
  });

  it('a role twice in a front', () => {
    expect(refusals(['fronts[0].roles[4].role', 'O'])).toEqual([
      'fronts[0].roles[4].role (Odd): found "O" (text), expected eleven different roles',
    ]);
  });

  it('two spots by hand for one role in one look', () => {
    const spot = { look: 'spread', role: 'SS', x: 1, y: 9 };
    expect(refusals(['fronts[0].byHand', [spot, { ...spot, x: 2 }]])).toEqual([
      'fronts[0].byHand[1].role (Odd): found "SS" (text), expected one spot by hand for a role in a look',
    ]);
    expect(refusals(['fronts[0].byHand', [spot, { ...spot, look: 'tight' }]])).toEqual([]);
  });

  it('two words for one technique', () => {
    const word = { on: 'tackle', leverage: 'head', label: '4' };
    expect(refusals(['words.techniques', [word, { ...word, label: '44' }]])).toEqual([
      'words.techniques[1].leverage: found "head" (text), expected one word for a body and leverage',
    ]);
    expect(refusals(['words.techniques', [word, { ...word, leverage: 'inside' }]])).toEqual([]);
  });

  it('a run, or a protection, twice in a look', () => {
    const run = { concept: 'power', side: 'right', passOption: false };
    expect(refusals(['looks[0].runs', [run, { ...run }]])).toEqual([
      'looks[0].runs[1].concept (Tight right): found "power" (text), expected each run to a side once',
    ]);
    for (const other of [{ side: 'left' }, { concept: 'duo' }, { passOption: true }]) {
      expect(refusals(['looks[0].runs', [run, { ...run, ...other }]])).toEqual([]);
    }
    expect(refusals(['looks[0].runs', [run]], ['looks[1].runs', [run]])).toEqual([]);
    const protection = { protection: 'max', slideSide: 'left' };
    expect(refusals(['looks[0].protections', [protection, { ...protection }]])).toEqual([
      'looks[0].protections[1].protection (Tight right): found "max" (text), expected each protection to a side once',
    ]);
    for (const other of [{ slideSide: 'right' }, { protection: 'man-six' }]) {
      expect(refusals(['looks[0].protections', [protection, { ...protection, ...other }]])).toEqual([]);
    }
  });

  it('a man twice among those who may take a zone', () => {
    const takers = 'coverages[0].needs[0].takers';
    const role = { kind: 'role', role: 'SS' };
    const group = { kind: 'group', group: 'safeties', side: 'call' };
    expect(refusals([takers, [role, group, role]])).toEqual([
      `${takers}[2] (Three deep): found an object, expected each taker of a zone once`,
    ]);
    expect(refusals([takers, [group, group]])).toEqual([
      `${takers}[1] (Three deep): found an object, expected each taker of a zone once`,
    ]);
    expect(refusals([takers, [role, group, { ...group, side: 'away' }, { ...role, role: 'FS' }]])).toEqual([]);
    // The same zone may be needed twice: two men drop there.
    const need = { when: [], zone: 'hook', side: 'call', takers: [role] };
    expect(refusals(['coverages[0].needs', [need, need]])).toEqual([]);
  });

  it('two reasons for one finding', () => {
    const waiver = { rule: 'align.tell', look: 'tight', evidence: 'LI||', reason: 'It is late.' };
    expect(refusals(['calls[1].waivers', [waiver, { ...waiver, reason: 'He is fast.' }]])).toEqual([
      'calls[1].waivers[1].evidence (Anvil and Bellows): found "LI||" (text), expected one reason for a finding',
    ]);
    for (const other of [{ rule: 'align.reach' }, { look: 'spread' }, { evidence: 'RI||' }]) {
      expect(refusals(['calls[1].waivers', [waiver, { ...waiver, ...other }]])).toEqual([]);
    }
    expect(refusals(['calls[0].waivers', [waiver]])).toEqual([]);
  });

  it('two check-out tables for a call, or two rows for a formation', () => {
    const rows = [{ formation: 'trips', action: { kind: 'run' } }];
    expect(
      refusals([
        'checkOuts',
        [
          { call: 'both', rows },
          { call: 'both', rows: [] },
        ],
      ]),
    ).toEqual(['checkOuts[1].call: found "both" (text), expected one table for a call']);
    expect(
      refusals([
        'checkOuts',
        [
          { call: 'both', rows },
          { call: 'anvil', rows },
        ],
      ]),
    ).toEqual([]);
    const again = { formation: 'trips', action: { kind: 'swap' } };
    expect(refusals(['checkOuts[0].rows', [...rows, again]])).toEqual([
      'checkOuts[0].rows[1].formation: found "trips" (text), expected one row for a formation',
    ]);
    expect(refusals(['checkOuts[0].rows', [...rows, { ...again, formation: 'quads' }]])).toEqual([]);
  });

  it('a meaning twice in the dictionary; two meanings of a word are for the coach to see', () => {
    const entry = { word: 'hinge', meaning: 'the man who keeps the passer inside' };
    expect(refusals(['dictionary', [entry, { ...entry }]])).toEqual([
      'dictionary[1].meaning: found "the man who keeps the passer inside" (text), expected each meaning of a word once',
    ]);
    expect(refusals(['dictionary', [entry, { ...entry, meaning: 'the deep middle' }]])).toEqual([]);
    expect(refusals(['dictionary', [entry, { ...entry, word: 'latch' }]])).toEqual([]);
  });
});

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
