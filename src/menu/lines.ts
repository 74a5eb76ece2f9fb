import type { Severity } from '../engine/index.ts';
import { sizeOfGrid, type Grid } from './grid.ts';
import type { MenuCase, Summary } from './types.ts';

/** One case of a grid as a line of a table; names are the coach's, ids are for programs. */
export interface MenuLine {
  readonly call: string;
  readonly front: string;
  readonly first: string;
  readonly second: string | null;
  readonly turn: string;
  readonly look: string;
  readonly spot: string;
  readonly verdict: Summary['verdict'];
  readonly stops: number;
  readonly checks: number;
  readonly notes: number;
  /** How many things cannot be told. */
  readonly doubts: number;
  /** Ids of the checks that spoke, in their order. */
  readonly rules: readonly string[];
}

/** Every wanted case of a grid in its order, answered by `judge` only when its line is asked for. */
export function* linesOf(
  grid: Grid,
  wanted: (menuCase: MenuCase) => boolean,
  judge: (menuCase: MenuCase) => Summary,
): Generator<MenuLine> {
  for (let index = 0; index < sizeOfGrid(grid); index += 1) {
    const menuCase = grid.caseAt(index);
    if (menuCase !== null && wanted(menuCase)) yield lineOf(menuCase, judge(menuCase));
  }
}

function lineOf({ call, look, spot }: MenuCase, { verdict, found, doubts }: Summary): MenuLine {
  const count = (severity: Severity): number =>
    found.reduce((sum, each) => (each.severity === severity ? sum + each.count : sum), 0);
  return {
    call: call.id,
    front: call.front,
    first: call.first,
    second: call.second,
    turn: call.turn,
    look: look.id,
    spot,
    verdict,
    stops: count('stop'),
    checks: count('check'),
    notes: count('note'),
    doubts,
    rules: [...new Set(found.map(({ rule }) => rule))],
  };
}
