import { gather } from '../../../base/index.ts';
import type { SideStep } from '../../types/index.ts';
import { STRENGTHS } from '../../vocabulary.ts';
import type { Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';
import { halvesOf } from './callWide.ts';

/**
 * A last step for every pressure whose own rule ends in a tie here: a strength that decides in this look, else a plain
 * right or left. A turned second pressure has no say of its own.
 */
export function tieBreaks(bench: Bench): readonly Edit[] {
  const { setup, facts } = bench.analysis;
  const strengths = STRENGTHS.filter((by) => facts.strengths[by].side !== 'even');
  const steps: readonly SideStep[] = [
    ...strengths.map((by): SideStep => ({ kind: 'strength', by, toward: 'to' })),
    { kind: 'fixed', side: 'right' },
    { kind: 'fixed', side: 'left' },
  ];
  return gather(halvesOf(bench), (which): readonly Edit[] => {
    const pressure = setup[which];
    const ownRule = which === 'first' || setup.turn === 'own';
    if (pressure === null || !ownRule || bench.sideOf(which) !== null) return [];
    return steps.map((step) => ({ kind: 'tie-break', which, pressure: pressure.id, step }));
  });
}
