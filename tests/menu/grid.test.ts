/** Which case stands where in each kind of grid. */
import { describe, expect, it } from 'vitest';
import { PLACES, TURNS } from '../../src/engine/index.ts';
import { gridOf, NO_CASE, sizeOfGrid, unanswered, WAITING } from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

const playbook = demo();
const { calls, looks, pressures, fronts } = playbook;
const front = fronts[0]?.id;
const first = pressures[0]?.id;
if (front === undefined || first === undefined) throw new Error('The demo has no front or pressure');

describe('grids', () => {
  it('calls against looks: every call, look and spot once', () => {
    const grid = gridOf(playbook, { kind: 'calls' });
    expect(sizeOfGrid(grid)).toBe(calls.length * looks.length * PLACES.length);
    const seen = Array.from({ length: sizeOfGrid(grid) }, (_, index) => {
      const at = grid.caseAt(index);
      return `${at?.call.id ?? ''} ${at?.look.id ?? ''} ${at?.spot ?? ''}`;
    });
    const wanted = calls.flatMap((call) =>
      looks.flatMap((look) => PLACES.map((spot) => `${call.id} ${look.id} ${spot}`)),
    );
    expect(seen).toEqual(wanted);
  });

  it('pairs: first down the side, second across, looks and spots behind, none with itself', () => {
    const grid = gridOf(playbook, { kind: 'pairs', front, turn: 'opposite' });
    const depth = looks.length * PLACES.length;
    const caseOf = (row: number, column: number, layer: number) =>
      grid.caseAt((row * pressures.length + column) * depth + layer);
    expect(caseOf(2, 5, 4)).toMatchObject({
      call: { front, first: pressures[2]?.id, second: pressures[5]?.id, turn: 'opposite' },
      look: looks[1],
      spot: PLACES[1],
    });
    expect(caseOf(3, 3, 0)).toBeNull();
    const numbers = unanswered(grid);
    expect(numbers.filter((each) => each === NO_CASE)).toHaveLength(pressures.length * depth);
    expect(numbers.filter((each) => each === WAITING)).toHaveLength(pressures.length * (pressures.length - 1) * depth);
  });

  it('partners: every other pressure, turned every way', () => {
    const grid = gridOf(playbook, { kind: 'partners', front, first });
    expect(grid.rows).toHaveLength((pressures.length - 1) * TURNS.length);
    expect(grid.caseAt(0)?.call).toMatchObject({ first, second: pressures[1]?.id, turn: TURNS[0] });
  });

  it('a place outside is a mistake of the program', () => {
    const grid = gridOf(playbook, { kind: 'calls' });
    expect(() => grid.caseAt(sizeOfGrid(grid))).toThrow(RangeError);
  });
});
