import type { Pair } from '../../../src/engine/offence/protections/cover.ts';
import { thousandths, type RowBody } from '../../../src/engine/offence/row.ts';
import type { Threat } from '../../../src/engine/offence/index.ts';

/*
 * The slow, plain form of `pairInOrder`, kept as the oracle: it tries everything. It was the engine's own before a leaner one
 * took its place, which must answer the same to the last tie.
 */
export function pairPlainly(bodies: readonly RowBody[], men: readonly Threat[]): readonly Pair[] {
  return bestPairs(bodies, men).pairs;
}

interface Pairing {
  readonly pairs: readonly Pair[];
  readonly way: number;
}

function bestPairs(bodies: readonly RowBody[], men: readonly Threat[]): Pairing {
  const [body, ...otherBodies] = bodies;
  const [man, ...otherMen] = men;
  if (body === undefined || man === undefined) return { pairs: [], way: 0 };
  const rest = bestPairs(otherBodies, otherMen);
  const together: Pairing = {
    pairs: [{ body, man }, ...rest.pairs],
    way: rest.way + thousandths(Math.abs(body.x - man.x)),
  };
  return [bestPairs(otherBodies, men), bestPairs(bodies, otherMen)].reduce(
    (best, other) => (isBetter(other, best) ? other : best),
    together,
  );
}

function isBetter(a: Pairing, b: Pairing): boolean {
  return a.pairs.length === b.pairs.length ? a.way < b.way : a.pairs.length > b.pairs.length;
}
