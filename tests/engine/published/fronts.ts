import type { Front, GapRef, Room } from '../../../src/engine/index.ts';
import type { FrontMan } from './row.ts';

type Base = Front['roles'][number]['base'];

const mine = (letter: 'A' | 'B' | 'C'): GapRef => ({ kind: 'letter', side: 'mine', letter });
const edge: GapRef = { kind: 'edge', side: 'mine' };
const bothA: readonly GapRef[] = [
  { kind: 'letter', side: 'left', letter: 'A' },
  { kind: 'letter', side: 'right', letter: 'A' },
];
const base = (pass: Base['pass'], ...gaps: readonly GapRef[]): Base => ({ gaps, style: 'one-gap', pass });
const TWO_GAPS: Base = { gaps: bothA, style: 'two-gap', pass: 'rush' };

const one = (id: string, named: string, room: Room, group: string, side: FrontMan['side'], job: Base): FrontMan => ({
  id,
  named,
  room,
  group,
  side,
  base: job,
});

/** A pair of a group: c for the call side, a for away. A pressure speaks to them by group and side. */
const pair = (letter: string, group: string, room: Room, job: Base): readonly FrontMan[] =>
  (['call', 'away'] as const).map((side) =>
    one(`${side === 'call' ? 'C' : 'A'}${letter}`, `${group}-${side}`, room, group, side, job),
  );

/**
 * The three-man odd front: nose NT, ends CE and AE, outside backers CO and AO, inside backers CI and AI, safeties CS and AS,
 * corners CC and AC; C is the call side, A away from it. What everybody has at base: the ends' gap goes with where they stand.
 */
const odd = (ends: Base): readonly FrontMan[] => [
  one('NT', '@NT', 'line', 'nose', 'middle', TWO_GAPS),
  ...pair('E', 'end', 'line', ends),
  ...pair('O', 'outside', 'linebackers', base('none', edge)),
  ...pair('I', 'inside', 'linebackers', base('none', mine('A'), mine('B'))),
  ...pair('S', 'safety', 'secondary', base('none')),
  ...pair('C', 'corner', 'secondary', base('none')),
];

/** Ends outside the tackles: C at base. */
export const ODD_WIDE = odd(base('rush', mine('C'), mine('B')));

/** Ends inside the tackles, B at base. */
export const ODD_TIGHT = odd(base('rush', mine('B')));

/**
 * Four down, the three-technique to the boundary: ends FE and BE, tackles FT and BT, Sam SA, Mike MI, Will WI, safeties FS
 * and SS, corners FC and BC; F is the field, B the boundary. Everybody is told by his own name.
 */
export const FOUR_THREE: readonly FrontMan[] = [
  one('FE', '@FE', 'line', 'end', 'field', base('rush', mine('C'))),
  one('FT', '@FT', 'line', 'tackle', 'field', base('rush', mine('A'))),
  one('BT', '@BT', 'line', 'tackle', 'boundary', base('rush', mine('B'))),
  one('BE', '@BE', 'line', 'end', 'boundary', base('rush', mine('C'))),
  one('SA', '@SA', 'linebackers', 'backer', 'field', base('none', edge)),
  one('MI', '@MI', 'linebackers', 'backer', 'field', base('none', mine('B'))),
  one('WI', '@WI', 'linebackers', 'backer', 'boundary', base('none', mine('A'))),
  one('FS', '@FS', 'secondary', 'safety', 'boundary', base('none')),
  one('SS', '@SS', 'secondary', 'safety', 'field', base('none')),
  one('FC', '@FC', 'secondary', 'corner', 'field', base('none')),
  one('BC', '@BC', 'secondary', 'corner', 'boundary', base('none')),
];

/** Three down and three backers, five defensive backs; the backers and safeties told by name. */
export const THREE_THREE_FIVE: readonly FrontMan[] = [
  one('NT', '@NT', 'line', 'nose', 'middle', TWO_GAPS),
  ...pair('E', 'end', 'line', base('rush', mine('B'))),
  one('SA', '@SA', 'linebackers', 'backer', 'call', base('none', mine('C'))),
  one('MI', '@MI', 'linebackers', 'backer', 'call', base('none', mine('A'))),
  one('WI', '@WI', 'linebackers', 'backer', 'away', base('none', mine('C'))),
  one('SS', '@SS', 'secondary', 'safety', 'call', base('none')),
  one('WS', '@WS', 'secondary', 'safety', 'call', base('none')),
  one('FS', '@FS', 'secondary', 'safety', 'away', base('none')),
  ...pair('C', 'corner', 'secondary', base('none')),
];
