import type { Playbook } from '../document/index.ts';
import {
  asCallId,
  PLACES,
  TURNS,
  type Call,
  type FrontId,
  type Look,
  type Place,
  type Pressure,
  type PressureId,
  type Turn,
} from '../engine/index.ts';
import { fitsFront } from './fitsFront.ts';
import type { MenuCase } from './types.ts';

/** Which grid is meant. */
export type GridKind =
  /** Every kept call down the side, every look across. */
  | { readonly kind: 'calls' }
  /** Every pressure that is written for one front down the side as the first, and across as the second. */
  | { readonly kind: 'pairs'; readonly front: FrontId; readonly turn: Turn }
  /** Every other pressure written for the front, turned every way, down the side as the second of one first; every look across. */
  | { readonly kind: 'partners'; readonly front: FrontId; readonly first: PressureId };

/** What stands behind one layer of every cell: the ball spot, and in a grid of pairs the look. */
export interface Layer {
  readonly look: Look | null;
  readonly spot: Place;
}

/** The head of a row or column. */
export interface Head {
  readonly id: string;
  readonly name: string;
}

/**
 * A grid of cases. A cell holds `layers.length` of them; `caseIndex` says where each stands.
 */
export interface Grid {
  readonly rows: readonly Head[];
  readonly columns: readonly Head[];
  readonly layers: readonly Layer[];
  /** The case at a place of the list; null where there is none, as of a pressure with itself. */
  readonly caseAt: (index: number) => MenuCase | null;
}

/** How many cases a grid has, those that do not exist included. */
export function sizeOfGrid({ rows, columns, layers }: Grid): number {
  return rows.length * columns.length * layers.length;
}

/** Where the case of a row, column and layer stands in the list. */
export function caseIndex({ columns, layers }: Grid, row: number, column: number, layer: number): number {
  return (row * columns.length + column) * layers.length + layer;
}

/** The grid of that kind over a playbook. */
export function gridOf(playbook: Playbook, kind: GridKind): Grid {
  switch (kind.kind) {
    case 'calls':
      return callsGrid(playbook);
    case 'pairs':
      return pairsGrid(playbook, kind.front, kind.turn);
    case 'partners':
      return partnersGrid(playbook, kind.front, kind.first);
  }
}

function callsGrid({ calls, looks }: Playbook): Grid {
  const layers = PLACES.map((spot): Layer => ({ look: null, spot }));
  return gridFrom(calls, looks, layers, (call, look, { spot }) => ({ call, look, spot }));
}

/** The pressures that are written for a front: with the others every cell would only say that somebody is not there. */
export function pressuresOf({ pressures, fronts, roles }: Playbook, id: FrontId): readonly Pressure[] {
  const front = fronts.find((each) => each.id === id);
  return front === undefined ? [] : pressures.filter((each) => fitsFront(each, front, roles));
}

function pairsGrid(playbook: Playbook, front: FrontId, turn: Turn): Grid {
  const { looks } = playbook;
  const pressures = pressuresOf(playbook, front);
  const layers = looks.flatMap((look) => PLACES.map((spot) => ({ look, spot })));
  // One call for each pair, so that what is known of it can be kept by it.
  const pairs = new Map<Pressure, Map<Pressure, Call>>();
  const callOf = (first: Pressure, second: Pressure): Call => {
    const row = pairs.get(first) ?? new Map<Pressure, Call>();
    const call = row.get(second) ?? pairCall(front, first, second, turn);
    pairs.set(first, row.set(second, call));
    return call;
  };
  return gridFrom(pressures, pressures, layers, (first, second, { look, spot }) =>
    first === second ? null : { call: callOf(first, second), look, spot },
  );
}

/** The rows of a grid of partners, in its order. */
export function partnerCalls(playbook: Playbook, front: FrontId, first: PressureId): readonly Call[] {
  const own = playbook.pressures.find(({ id }) => id === first);
  if (own === undefined) return [];
  return pressuresOf(playbook, front).flatMap((second) =>
    second === own ? [] : TURNS.map((turn) => pairCall(front, own, second, turn)),
  );
}

function partnersGrid(playbook: Playbook, front: FrontId, first: PressureId): Grid {
  const layers = PLACES.map((spot): Layer => ({ look: null, spot }));
  return gridFrom(partnerCalls(playbook, front, first), playbook.looks, layers, (call, look, { spot }) => ({
    call,
    look,
    spot,
  }));
}

/** The call that combines two pressures at once, nothing else said. */
export function pairCall(front: FrontId, first: Pressure, second: Pressure, turn: Turn): Call {
  return {
    // The blank keeps it apart from every id a file may hold.
    id: asCallId(`${first.id} ${second.id} ${turn}`),
    name: `${first.name} ${second.name}`,
    front,
    first: first.id,
    second: second.id,
    turn,
    combination: { kind: 'together' },
    coverage: null,
    rushers: null,
    waivers: [],
    tags: [],
    installDay: null,
  };
}

function gridFrom<Row extends Head, Column extends Head, Depth extends Layer>(
  rows: readonly Row[],
  columns: readonly Column[],
  layers: readonly Depth[],
  caseOf: (row: Row, column: Column, layer: Depth) => MenuCase | null,
): Grid {
  return {
    rows,
    columns,
    layers,
    caseAt: (index) => {
      const layer = layers[index % layers.length];
      const cell = Math.floor(index / layers.length);
      const column = columns[cell % columns.length];
      const row = rows[Math.floor(cell / columns.length)];
      if (layer === undefined || column === undefined || row === undefined) {
        throw new RangeError(`The grid has no case ${String(index)}`);
      }
      return caseOf(row, column, layer);
    },
  };
}
