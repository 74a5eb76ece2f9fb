import { gather } from '../../../base/index.ts';
import type { Library } from '../library.ts';
import type { Bench } from '../bench.ts';
import type { Edit, Half } from '../edit.ts';

/** The halves of the call, the second first: the first is what the call is built on. */
export function halvesOf({ analysis: { setup } }: Bench): readonly Half[] {
  return setup.second === null ? ['first'] : ['second', 'first'];
}

/** Turn the second pressure another way than it is. */
export function turns({ analysis: { setup } }: Bench): readonly Edit[] {
  if (setup.second === null) return [];
  return (['same', 'opposite', 'own'] as const)
    .filter((turn) => turn !== setup.turn)
    .map((turn) => ({ kind: 'turn', turn }));
}

/** First and second change places. */
export function swap({ analysis: { setup } }: Bench): readonly Edit[] {
  return setup.second === null ? [] : [{ kind: 'swap' }];
}

/** Every other shell of the library. */
export function shells({ shell }: Bench, { coverages }: Library): readonly Edit[] {
  return coverages
    .filter((coverage) => coverage.id !== shell.coverage.id)
    .map((coverage) => ({ kind: 'coverage', coverage }));
}

/** Do not run one of the two against this look. */
export function leaveOuts(bench: Bench): readonly Edit[] {
  const { setup } = bench.analysis;
  const { id, name } = setup.look;
  return gather(halvesOf(bench), (which): readonly Edit[] => {
    const pressure = setup[which]?.id;
    return pressure === undefined ? [] : [{ kind: 'leave-out', which, pressure, look: { id, name } }];
  });
}
