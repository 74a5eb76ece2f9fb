/** The call list: pairs that run at once, and the pressures that also stand alone. */
import { asCallId, asCoverageId, asFrontId, asPressureId, type Call, type Turn } from '../../src/engine/index.ts';

interface Row {
  readonly name: string;
  readonly front: 'odd' | 'tite' | 'odd-fifth-back';
  readonly first: string;
  readonly second?: string;
  readonly turn?: Turn;
  readonly coverage?: string;
}

const call = (row: Row): Call => ({
  id: asCallId(row.name.toLowerCase().replaceAll(' ', '-')),
  name: row.name,
  kind: 'together',
  front: asFrontId(row.front),
  first: asPressureId(row.first),
  second: row.second === undefined ? null : asPressureId(row.second),
  turn: row.turn ?? 'own',
  coverage: row.coverage === undefined ? null : asCoverageId(row.coverage),
});

export const calls: readonly Call[] = [
  call({ name: 'Sluice Weir', front: 'tite', first: 'sluice', second: 'weir' }),
  call({ name: 'Osier Weir', front: 'tite', first: 'osier', second: 'weir', turn: 'same' }),
  call({ name: 'Osier Marl', front: 'odd', first: 'osier', second: 'marl' }),
  call({ name: 'Osier Teasel Across', front: 'odd', first: 'osier', second: 'teasel', turn: 'opposite' }),
  call({
    name: 'Tussock Weir',
    front: 'odd',
    first: 'tussock',
    second: 'weir',
    turn: 'same',
    coverage: 'three-deep-hot',
  }),
  call({ name: 'Culvert Weir', front: 'odd', first: 'culvert', second: 'weir' }),
  call({ name: 'Bittern Weir', front: 'odd', first: 'bittern', second: 'weir' }),
  call({ name: 'Teasel Marl', front: 'odd', first: 'teasel', second: 'marl' }),
  call({ name: 'Sluice Teasel Across', front: 'odd', first: 'sluice', second: 'teasel', turn: 'opposite' }),
  call({ name: 'Culvert Weir Across', front: 'odd', first: 'culvert', second: 'weir', turn: 'opposite' }),
  call({ name: 'Culvert Marl', front: 'odd', first: 'culvert', second: 'marl' }),
  call({ name: 'Osier', front: 'odd', first: 'osier' }),
  call({ name: 'Sluice', front: 'tite', first: 'sluice' }),
  call({ name: 'Teasel', front: 'odd', first: 'teasel' }),
  call({ name: 'Culvert', front: 'odd', first: 'culvert' }),
  call({ name: 'Bittern', front: 'odd', first: 'bittern' }),
  call({ name: 'Marl', front: 'odd', first: 'marl' }),
  call({ name: 'Withy', front: 'odd-fifth-back', first: 'withy' }),
  call({ name: 'Coppice', front: 'tite', first: 'coppice' }),
  call({ name: 'Lapwing', front: 'tite', first: 'lapwing' }),
  call({ name: 'Sedge', front: 'tite', first: 'sedge' }),
  call({ name: 'Tussock', front: 'odd', first: 'tussock' }),
  call({ name: 'Millrace', front: 'tite', first: 'millrace' }),
];
