import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { readLook } from '../../engine/index.ts';
import {
  cellReader,
  letsLayer,
  rowsInOrder,
  type Cell,
  type GridKind,
  type MenuFilter,
  type RowOrder,
} from '../../menu/index.ts';
import type { Playbook } from '../../document/index.ts';
import { useApp, useSession } from '../session/session.ts';
import { sameKind, type MenuState } from './menuBook.ts';

/** A grid through a filter: which rows, columns and layers are shown, and what stands in a cell. */
export interface MenuView {
  readonly state: MenuState;
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly layers: readonly number[];
  readonly cellAt: (row: number, column: number) => Cell;
}

/** The grid of that kind over the playbook as it stands, as far as it is answered. */
export function useMenu(kind: GridKind): MenuState | null {
  const { menu } = useSession();
  const playbook = useApp((state) => state.playbook);
  useEffect(() => menu.ask(playbook, kind), [menu, playbook, kind]);
  const state = useSyncExternalStore(menu.subscribe, menu.state);
  return state !== null && state.playbook === playbook && sameKind(state.kind, kind) ? state : null;
}

/** The grid through a filter. Cells that have been read are kept as long as neither grid nor filter is another. */
export function useMenuView(state: MenuState, filter: MenuFilter, order: RowOrder): MenuView {
  const personnelOf = usePersonnel(state.playbook);
  const { grid, kind, answers } = state;
  const read = useMemo(() => {
    const layers = grid.layers.flatMap((layer, index) => (letsLayer(layer, filter, personnelOf) ? [index] : []));
    // In a grid of pairs the columns are pressures, and the looks are layers of a cell.
    const columns = grid.columns.flatMap(({ id }, index) =>
      kind.kind === 'pairs' || filter.personnel === null || personnelOf(id) === filter.personnel ? [index] : [],
    );
    return { layers, columns, cellAt: cellReader(grid, layers, answers, filter) };
  }, [grid, kind, answers, filter, personnelOf]);
  return useMemo(
    () => ({ ...read, state, rows: rowsInOrder(grid, read.columns, read.cellAt, order) }),
    [read, state, grid, order],
  );
}

/** The personnel of each look, as "11". */
export function usePersonnel({ looks, team }: Playbook): (look: string) => string | null {
  return useMemo(() => {
    const byId = new Map<string, string>(
      looks.map((look) => [look.id, readLook(look, team.level, 'middle').personnel]),
    );
    return (look) => byId.get(look) ?? null;
  }, [looks, team.level]);
}
