/**
 * What each call of the demo says, look by look. The playbook is invented, and so the tables are too: they were worked out
 * from the call-side rules by hand, look by look, and hold the demo and the engine together.
 */
import { describe, expect, it } from 'vitest';
import { SIDES, type Call, type Turn } from '../../src/engine/index.ts';
import { callOf, everywhere, playbook, rows, sign } from './grid.ts';

/** Told by their tables below: the two call sides fall together in some looks and apart in others. */
const SOMETIMES_WRONG = ['sluice-weir', 'culvert-weir', 'bittern-weir', 'teasel-marl'] as const;

const ALWAYS_WRONG: Readonly<Record<string, RegExp>> = {
  // Both send the nose to their own side, and they are turned apart; the ends likewise go two ways.
  'sluice-teasel-across': /^l$/,
  // Both send the nose away from their side, and they are turned apart. Left out against empty.
  'culvert-weir-across': /^[n-]$/,
  // On one side the nose is sent to it and away from it; on two sides the ends are sent out and in.
  'culvert-marl': /^[ne-]$/,
};

const LEFT_OUT_AGAINST_EMPTY = ['culvert', 'culvert-weir', 'culvert-weir-across', 'culvert-marl'];

const turned = (call: Call, turn: Turn): Call => ({ ...call, turn });

describe('calls that are clean everywhere', () => {
  const clean = playbook.calls.filter(
    ({ id }) => ALWAYS_WRONG[id] === undefined && !SOMETIMES_WRONG.some((other) => other === id),
  );

  it('are these', () => {
    expect(clean.map(({ name }) => name)).toEqual([
      'Osier Weir',
      'Osier Marl',
      'Osier Teasel Across',
      'Tussock Weir',
      'Osier',
      'Sluice',
      'Teasel',
      'Culvert',
      'Bittern',
      'Marl',
      'Withy',
      'Coppice',
      'Lapwing',
      'Sedge',
      'Tussock',
      'Millrace',
    ]);
  });

  it.each(clean.map((call) => [call.name, call] as const))('%s: no look, no spot says anything', (_, call) => {
    const allowed = LEFT_OUT_AGAINST_EMPTY.includes(call.id) ? ['.', '-'] : ['.'];
    for (const analysis of everywhere(call)) expect(allowed).toContain(sign(analysis));
  });

  // Force and contain on both sides. Sources: "Force Player in Football", Joe Daniel, QC 227;
  // "Pressure Coverages 101", New Orleans Sports Today.
  it.each(clean.map((call) => [call.name, call] as const))(
    '%s: force and contain are told on both sides',
    (_, call) => {
      for (const { assignments, setup } of everywhere(call)) {
        for (const side of SIDES) {
          const where = `${setup.look.id} ${setup.spot} ${side}`;
          const contains = assignments.filter(({ pass }) => pass.kind === 'contain' && pass.side === side);
          const forces = assignments.filter(({ run, aligned }) => run.support === 'force' && aligned.place === side);
          // Two may contain on one side (an end inside an edge rusher); two who force would be one too many.
          expect([where, contains.length > 0]).toEqual([where, true]);
          expect([where, forces.length]).toEqual([where, 1]);
        }
      }
    },
  );
});

describe('calls that are wrong everywhere', () => {
  it.each(Object.entries(ALWAYS_WRONG))('%s', (id, pattern) => {
    for (const analysis of everywhere(callOf(id))) expect(sign(analysis)).toMatch(pattern);
  });
});

/** Left hash, middle, right hash; `.` clean, `n` the nose is told two things, `l` the whole line is, `-` left out. */
// prettier-ignore
const TABLE: readonly (readonly [look: string, sluiceWeir: string, culvertWeir: string, bitternWeir: string, teaselMarl: string])[] = [
  ['empty-00',      'nn.', '---', '...', '...'],
  ['doubles-10',    'nnn', '..n', '.n.', 'll.'],
  ['trips-10',      '.nn', '.nn', '...', '...'],
  ['bunch-10',      'nn.', 'nn.', '...', '...'],
  ['pistol-10',     'nnn', '...', '...', '.l.'],
  ['tight-11',      'nn.', 'nn.', '...', '...'],
  ['trips-11',      'nn.', 'nn.', '...', '...'],
  ['trips-open-11', '..n', 'nn.', '...', 'lll'],
  ['flexed-11',     'nnn', '..n', '.n.', 'll.'],
  ['wing-11',       'nn.', 'nn.', '...', '...'],
  ['under-11',      '.nn', 'n..', '.n.', 'l..'],
  ['unbalanced-11', 'nn.', '..n', '.n.', 'lll'],
  ['empty-11',      'nn.', '---', '...', '...'],
  ['ace-12',        'nnn', '...', '...', '.l.'],
  ['wing-12',       'nn.', '..n', '...', '.ll'],
  ['heavy-13',      'nn.', '..n', '...', '.ll'],
  ['split-20',      '.nn', '.n.', '...', '...'],
  ['i-21',          'nn.', '..n', '...', '...'],
  ['offset-21',     '.nn', 'n..', '...', 'lll'],
  ['i-22',          'nn.', '...', '...', '...'],
];

describe('calls that are wrong only where the two sides fall badly', () => {
  it.each(SOMETIMES_WRONG.map((id, index) => [id, index] as const))('%s', (id, index) => {
    expect(rows(callOf(id))).toEqual(Object.fromEntries(TABLE.map((row) => [row[0], row[index + 1]])));
  });
});

describe('the mend a coach would find first', () => {
  it('the default call is the first: wrong in some looks, clean in all once the second is turned opposite', () => {
    const call = playbook.calls[0];
    if (call === undefined) throw new Error('The demo has no calls');
    expect(call.id).toBe('sluice-weir');
    expect(new Set(everywhere(call).map(sign))).toEqual(new Set(['n', '.']));
    expect(new Set(everywhere(turned(call, 'opposite')).map(sign))).toEqual(new Set(['.']));
    expect(new Set(everywhere(turned(call, 'same')).map(sign))).toEqual(new Set(['n']));
  });

  it('Culvert Weir is clean wherever it is run once the second is turned the same', () => {
    expect(new Set(everywhere(turned(callOf('culvert-weir'), 'same')).map(sign))).toEqual(new Set(['.', '-']));
  });

  it('Teasel Marl is clean once the second is turned the same', () => {
    expect(new Set(everywhere(turned(callOf('teasel-marl'), 'same')).map(sign))).toEqual(new Set(['.']));
  });
});
