/** The call list: pairs that run at once, and the pressures that also stand alone. */
import {
  asCallId,
  asCoverageId,
  asFrontId,
  asLookId,
  asPressureId,
  asRoleId,
  evidenceOf,
  type Call,
  type Combination,
  type Turn,
  type Waiver,
} from '../../src/engine/index.ts';
import { backOn, tightEnd } from '../../src/starter/index.ts';

interface Row {
  readonly name: string;
  readonly front: 'odd' | 'tite' | 'odd-fifth-back' | 'odd-three-safeties' | 'odd-sixth-back' | 'even' | 'bear';
  readonly first: string;
  readonly second?: string;
  readonly turn?: Turn;
  readonly coverage?: string;
  readonly rushers?: number;
  readonly combination?: Combination;
  readonly waivers?: readonly Waiver[];
  readonly tags?: readonly string[];
  readonly day?: number;
}

const call = (row: Row): Call => ({
  id: asCallId(row.name.toLowerCase().replaceAll(' ', '-')),
  name: row.name,
  combination: row.combination ?? { kind: 'together' },
  front: asFrontId(row.front),
  first: asPressureId(row.first),
  second: row.second === undefined ? null : asPressureId(row.second),
  turn: row.turn ?? 'own',
  coverage: row.coverage === undefined ? null : asCoverageId(row.coverage),
  rushers: row.rushers ?? null,
  waivers: row.waivers ?? [],
  tags: row.tags ?? [],
  installDay: row.day ?? null,
});

/** The trade turns the call, and this staff has everybody turn with it: found, and lived with. */
const TRADE_TURNS_IT: Waiver = {
  rule: 'side.motion-flips',
  look: asLookId('trade-11'),
  evidence: evidenceOf({
    who: [
      'left-end',
      'right-end',
      'strong-edge',
      'weak-edge',
      'strong-inside',
      'weak-inside',
      'strong-safety',
      'free-safety',
    ].map(asRoleId),
    gaps: [],
    players: [],
  }),
  reason: 'We see the wing trade every week of the season, and everybody turns with him before the snap.',
};

export const calls: readonly Call[] = [
  call({ name: 'Sluice Weir', front: 'tite', first: 'sluice', second: 'weir', day: 11, rushers: 5 }),
  call({
    name: 'Weir Osier',
    front: 'tite',
    first: 'weir',
    second: 'osier',
    day: 11,
    turn: 'same',
    coverage: 'three-deep-roll',
    rushers: 5,
  }),
  call({ name: 'Osier Marl', front: 'odd', first: 'osier', second: 'marl', day: 12, turn: 'opposite', rushers: 4 }),
  call({
    name: 'Tussock Weir',
    front: 'tite',
    first: 'tussock',
    second: 'weir',
    day: 12,
    turn: 'same',
    coverage: 'man-nobody-free',
    rushers: 6,
  }),
  call({ name: 'Culvert Weir', front: 'odd', first: 'culvert', second: 'weir', day: 13, turn: 'same', rushers: 5 }),
  call({
    name: 'Bittern Weir Across',
    front: 'odd',
    first: 'bittern',
    second: 'weir',
    day: 13,
    turn: 'opposite',
    rushers: 5,
  }),
  call({ name: 'Teasel Marl', front: 'odd', first: 'teasel', second: 'marl', day: 14, rushers: 4 }),
  call({
    name: 'Sluice Teasel Across',
    front: 'odd',
    first: 'sluice',
    second: 'teasel',
    day: 14,
    turn: 'opposite',
    rushers: 5,
  }),
  call({
    name: 'Culvert Weir Across',
    front: 'odd',
    first: 'culvert',
    second: 'weir',
    day: 15,
    turn: 'opposite',
    rushers: 5,
  }),
  call({ name: 'Culvert Marl', front: 'odd', first: 'culvert', second: 'marl', day: 15, rushers: 4 }),
  call({
    name: 'Coppice or Bittern',
    front: 'odd',
    first: 'coppice',
    second: 'bittern',
    day: 16,
    combination: { kind: 'either-or', key: [tightEnd('call')] },
  }),
  call({
    name: 'Weir or Sluice',
    front: 'tite',
    first: 'weir',
    second: 'sluice',
    day: 16,
    rushers: 4,
    combination: { kind: 'either-or', key: [backOn('call')] },
  }),
  call({ name: 'Osier', front: 'odd', first: 'osier', waivers: [TRADE_TURNS_IT] }),
  call({ name: 'Sluice', front: 'tite', first: 'sluice' }),
  call({ name: 'Weir', front: 'tite', first: 'weir' }),
  call({ name: 'Teasel', front: 'odd', first: 'teasel' }),
  call({ name: 'Culvert', front: 'odd', first: 'culvert' }),
  call({ name: 'Bittern', front: 'odd', first: 'bittern' }),
  call({ name: 'Marl', front: 'odd', first: 'marl' }),
  call({ name: 'Withy', front: 'odd-fifth-back', first: 'withy' }),
  call({ name: 'Coppice', front: 'tite', first: 'coppice' }),
  call({ name: 'Lapwing', front: 'tite', first: 'lapwing' }),
  call({ name: 'Sedge', front: 'tite', first: 'sedge' }),
  call({ name: 'Tussock', front: 'tite', first: 'tussock' }),
  call({ name: 'Spate', front: 'tite', first: 'spate' }),
  call({ name: 'Spate Two', front: 'tite', first: 'spate', coverage: 'two-deep-three-under' }),
  call({ name: 'Millrace', front: 'tite', first: 'millrace' }),
  call({ name: 'Carr', front: 'even', first: 'carr' }),
  call({ name: 'Staithe', front: 'bear', first: 'staithe' }),
  call({ name: 'Leat', front: 'odd-three-safeties', first: 'leat' }),
  call({ name: 'Eyot', front: 'odd-sixth-back', first: 'eyot' }),
];
