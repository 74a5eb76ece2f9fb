/** Which case stands where in each kind of grid. */
import { describe, expect, it } from 'vitest';
import { PLACES, TURNS } from '../../src/engine/index.ts';
import {
  caseIndex,
  countCases,
  createWorkOrder,
  fitsFront,
  gridOf,
  NO_CASE,
  pressuresOf,
  sizeOfGrid,
  unanswered,
  WAITING,
} from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

const playbook = demo();
const { calls, looks, fronts } = playbook;
const front = fronts[0]?.id;
const pressures = front === undefined ? [] : pressuresOf(playbook, front);
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
    expect(countCases(numbers)).toBe(pressures.length * (pressures.length - 1) * depth);
  });

  it('pairs: only pressures that are written for the front', () => {
    const names = (id: string): readonly string[] =>
      gridOf(playbook, {
        kind: 'pairs',
        front: fronts.find((each) => each.id === id)?.id ?? front,
        turn: 'own',
      }).rows.map(({ name }) => name);
    // Carr tells two tackles what to do, and only the four-man line has any; the others tell a nose.
    expect(names('odd')).not.toContain('Carr');
    expect(names('even')).toContain('Carr');
    expect(names('even')).not.toContain('Sluice');
    expect(names('odd')).toContain('Sluice');
  });

  it('a pressure that sends somebody past a man who is not there is not written for the front', () => {
    const [even, sluice] = [fronts.find(({ id }) => id === 'even'), pressures.find(({ id }) => id === 'sluice')];
    if (even === undefined || sluice === undefined) throw new Error('The demo has no such front or pressure');
    const [backer] = sluice.tells;
    if (backer === undefined) throw new Error('Sluice tells nobody anything');
    expect(fitsFront({ ...sluice, tells: [backer] }, even, playbook.roles)).toBe(true);
    const withoutEnds = { ...even, roles: even.roles.filter(({ role }) => !role.endsWith('-end')) };
    expect(fitsFront({ ...sluice, tells: [backer] }, withoutEnds, playbook.roles)).toBe(false);
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

describe('the order of the work', () => {
  const grid = gridOf(playbook, { kind: 'calls' });
  const all = (order: ReturnType<typeof createWorkOrder>): readonly number[] => {
    const seen: number[] = [];
    for (let next = order.next(); next !== null; next = order.next()) seen.push(next);
    return seen;
  };
  const inList = Array.from({ length: sizeOfGrid(grid) }, (_, index) => index);

  it('nothing in sight: as the list stands', () => {
    expect(all(createWorkOrder(grid))).toEqual(inList);
  });

  it('what is in sight comes first, also when it changes on the way; every case once', () => {
    const order = createWorkOrder(grid);
    order.prefer([5, 6], [3, 4]);
    const first = Array.from({ length: 7 }, () => order.next());
    const at = (row: number, column: number) => PLACES.map((_, layer) => caseIndex(grid, row, column, layer));
    expect(first).toEqual([...at(5, 3), ...at(5, 4), at(6, 3)[0]]);
    order.prefer([20], [0]);
    // The cell that is begun is finished.
    expect(Array.from({ length: 6 }, () => order.next())).toEqual([...at(6, 3).slice(1), ...at(20, 0), 0]);
    expect(new Set([...first, ...at(6, 3), ...at(20, 0), 0, ...all(order)])).toEqual(new Set(inList));
  });

  it('an empty grid has no work', () => {
    expect(createWorkOrder(gridOf({ ...playbook, calls: [] }, { kind: 'calls' })).next()).toBeNull();
  });
});
