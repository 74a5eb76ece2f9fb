import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asLookId,
  asPlayerId,
  OFFENCE_KINDS,
  parseLook,
  printLook,
  STANDARD_LINE,
  type Look,
  type OffencePlayer,
} from '../../../src/engine/index.ts';
import { look, LOOKS } from '../book.ts';

const MEN = 'wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@1.5,-5';

type Row = readonly [text: string, player: OffencePlayer];
const PLAYERS: readonly Row[] = [
  ['te:Y@4', { id: asPlayerId('Y'), letter: 'Y', kind: 'tight-end', x: 4, y: -0.6 }],
  ['wr:Z@14.25,-1.5', { id: asPlayerId('Z'), letter: 'Z', kind: 'receiver', x: 14.25, y: -1.5 }],
  ['rb:T@-1.5,-5', { id: asPlayerId('T'), letter: 'T', kind: 'back', x: -1.5, y: -5 }],
  ['qb:Q@0,-1.3', { id: asPlayerId('Q'), letter: 'Q', kind: 'passer', x: 0, y: -1.3 }],
  ['ol:T3@4', { id: asPlayerId('T3'), letter: 'T', kind: 'lineman', x: 4, y: -0.6 }],
  ['wr:slot-back=A@6,-1.5', { id: asPlayerId('slot-back'), letter: 'A', kind: 'receiver', x: 6, y: -1.5 }],
  ['wr:12@6,-1.5', { id: asPlayerId('12'), letter: '12', kind: 'receiver', x: 6, y: -1.5 }],
];

describe('a man of a look', () => {
  it.each(PLAYERS)('%s', (text, player) => {
    const drawn = look(`line ${text} wr:A1@-18 wr:A2@-9,-1.5 wr:A3@18 qb:A4@0,-5 rb:A5@1.5,-5`);
    expect(drawn.players[5]).toEqual(player);
  });

  it('the word line is five men with 2 ft splits, the snapper nearest to the ball', () => {
    expect(look(`line ${MEN}`).players.slice(0, 5)).toEqual(STANDARD_LINE);
    expect(STANDARD_LINE.map(({ letter, kind, y }) => `${letter} ${kind} ${String(y)}`)).toEqual([
      'T lineman -0.6',
      'G lineman -0.6',
      'C snapper -0.4',
      'G lineman -0.6',
      'T lineman -0.6',
    ]);
    // Centres 4 ft apart: 2 ft bodies and 2 ft splits.
    const [tackle, guard, snapper] = STANDARD_LINE.map(({ x }) => x);
    expect([tackle, guard, snapper]).toEqual([-8 / 3, -4 / 3, 0]);
  });

  it('has a name: the text itself, or the one given', () => {
    const text = `line ${MEN}`;
    expect(look(text).name).toBe(text);
    expect(parseLook(text, 'doubles')).toMatchObject({ ok: true, value: { name: 'doubles', id: 'look' } });
  });

  it('spaces and line breaks between men do not matter', () => {
    expect(look(`  line\n${MEN.split(' ').join('\n  ')} `).players).toEqual(look(`line ${MEN}`).players);
  });
});

const MAN = 'a man such as te:Y@4 or rb:T@1.5,-5, or the word line';
const BAD: readonly (readonly [text: string, found: string, expected: string])[] = [
  ['', '0 men', 'eleven'],
  ['line', '5 men', 'eleven'],
  [`line ${MEN} te:U@4`, '12 men', 'eleven'],
  [`lines ${MEN}`, 'lines', MAN],
  [`line xx:Y@4 ${MEN}`, 'xx:Y@4', MAN],
  [`line te:Y ${MEN}`, 'te:Y', MAN],
  [`line te:Y@ ${MEN}`, 'te:Y@', MAN],
  [`line te:Y@four ${MEN}`, 'te:Y@four', MAN],
  [`line te:Y@4, ${MEN}`, 'te:Y@4,', MAN],
  [`line te:Y=@4 ${MEN}`, 'te:Y=@4', MAN],
  [`line te:Y=Long@4 ${MEN}`, 'te:Y=Long@4', MAN],
  [`line te:@4 ${MEN}`, 'te:@4', MAN],
  [`line line wr:X@-18`, 'line line wr:X@-18', 'every name once'],
  [`line ${MEN.replace('wr:H', 'wr:X')}`, `line ${MEN.replace('wr:H', 'wr:X')}`, 'every name once'],
  [`line ${MEN.replace('rb:T', 'sn:S')}`, `line ${MEN.replace('rb:T', 'sn:S')}`, 'exactly one snapper'],
  [`ol:a@1 ol:b@2 ol:c@3 ol:d@4 ol:e@5 ${MEN}`, `ol:a@1 ol:b@2 ol:c@3 ol:d@4 ol:e@5 ${MEN}`, 'exactly one snapper'],
];

describe('a line that is no look', () => {
  it.each(BAD)('%s', (text, found, expected) => {
    expect(parseLook(text)).toEqual({ ok: false, problem: { found, expected } });
  });
});

describe('printing a look', () => {
  it.each(Object.entries(LOOKS))('%s', (_name, text) => {
    expect(printLook(look(text))).toBe(text);
  });

  it.each([
    [
      'a line in another order is written out',
      `ol:T1@-2.6666666666666665 ${MEN} ol:G1@-1.3333333333333333 sn:C@0 ol:G2@1.3333333333333333 ol:T2@2.6666666666666665`,
    ],
    ['a line with one man moved is written out', `ol:T1@-2.7 ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 ${MEN}`],
    [
      'a letter unlike the name is written',
      `line te:Y=U@4 ${MEN.replace('wr:Y', 'wr:A')}`.replace('wr:H@-9,-1.5 ', ''),
    ],
  ])('%s', (_name, text) => {
    expect(printLook(look(text))).toBe(text);
  });
});

/** Any eleven with one snapper. The document knows no -0, so neither does this. */
const yards = fc
  .oneof(
    fc.integer({ min: -4000, max: 4000 }).map((hundredths) => hundredths / 100),
    fc.double({ min: -60, max: 60, noNaN: true }),
  )
  .map((value) => (value === 0 ? 0 : value));
const player = (kind: fc.Arbitrary<OffencePlayer['kind']>): fc.Arbitrary<OffencePlayer> =>
  fc.record({
    id: fc.stringMatching(/^[A-Za-z0-9_-]{1,12}$/).map(asPlayerId),
    letter: fc.stringMatching(/^[A-Z0-9]{1,2}$/),
    kind,
    x: yards,
    y: yards,
  });
const eleven: fc.Arbitrary<Look> = fc
  .tuple(
    fc.boolean(),
    fc.uniqueArray(player(fc.constantFrom(...OFFENCE_KINDS.filter((kind) => kind !== 'snapper'))), {
      minLength: 10,
      maxLength: 10,
      selector: ({ id }) => id,
    }),
    player(fc.constant('snapper')),
    fc.nat(10),
  )
  .map(([standard, others, snapper, at]) => {
    const drawn = [...others.slice(0, at), snapper, ...others.slice(at)];
    const players = standard ? [...STANDARD_LINE, ...others.slice(0, 6)] : drawn;
    return { id: asLookId('look'), name: 'any', players, motion: null, runs: [], protections: [] };
  })
  .filter(({ players }) => new Set(players.map(({ id }) => id)).size === 11);

describe('printing and reading back', () => {
  it('gives the same eleven in the same order', () => {
    fc.assert(
      fc.property(eleven, (any) => {
        expect(parseLook(printLook(any), 'any')).toEqual({ ok: true, value: any });
      }),
      { numRuns: 500 },
    );
  });
});
