import { useMemo, useState, type ReactElement } from 'react';
import type { GridKind, MenuFilter, RowOrder } from '../../menu/index.ts';
import { caseIndex, VERDICT_ORDER } from '../../menu/index.ts';
import { standInCall } from '../../store/index.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import { useSession } from '../session/session.ts';
import { BALL_WORDS } from '../session/words.ts';
import { cellWords, reasonsOf } from './cellWords.ts';
import { MenuProgress } from './MenuProgress.tsx';
import { useMenu, useMenuView, type MenuView } from './useMenu.ts';
import type { Spot } from './GridRow.tsx';
import { VerdictGrid } from './VerdictGrid.tsx';
import type { MenuState } from './menuBook.ts';

interface Props {
  readonly kind: GridKind;
  readonly filter: MenuFilter;
  readonly order: RowOrder;
  readonly onBoard: () => void;
}

/** One grid, how far it is, and what the cell that is pointed at says. */
export function GridPanel({ kind, ...rest }: Props): ReactElement {
  const state = useMenu(kind);
  return state === null ? <p className="menu-empty">Checking…</p> : <ShownGrid state={state} {...rest} />;
}

interface ShownProps extends Omit<Props, 'kind'> {
  readonly state: MenuState;
}

function ShownGrid({ state, filter, order, onBoard }: ShownProps): ReactElement {
  const { store, menu } = useSession();
  const view = useMenuView(state, filter, order);
  const [pointed, setPointed] = useState<Spot | null>(null);
  const { grid, kind } = state;
  const pairs = kind.kind === 'pairs';
  if (view.columns.length === 0 || view.rows.length === 0) {
    return (
      <p className="menu-empty">
        Nothing to show:{' '}
        {grid.rows.length > 0 ? 'no look like that' : pairs ? 'no pressure is written for this front' : 'no calls yet'}.
      </p>
    );
  }
  return (
    <>
      <div className="menu-line">
        <MenuProgress state={state} />
        {pairs && <LeftOut count={state.playbook.pressures.length - grid.rows.length} />}
        <Totals view={view} pairs={pairs} />
      </div>
      <CellNote view={view} spot={pointed} filter={filter} />
      <VerdictGrid
        // Another grid starts at its own first cell.
        key={pairs ? 'pairs' : 'calls'}
        view={view}
        label={pairs ? 'Pressures as the first, against pressures as the second' : 'Calls against looks'}
        onPoint={setPointed}
        onSight={menu.see}
        onOpen={({ row, column }) => {
          const at = caseIndex(grid, row, column, view.cellAt(row, column).layer);
          const opened = grid.caseAt(at);
          if (opened === null) return;
          const { call, look, spot } = opened;
          store.setBoard({ ...standInCall(store.get().board, call), look: look.id, spot });
          onBoard();
        }}
      />
    </>
  );
}

/** Pressures that speak to somebody this front does not have are not among the pairs. */
function LeftOut({ count }: { readonly count: number }): ReactElement | null {
  if (count === 0) return null;
  return (
    <span className="hint">
      {count === 1 ? '1 pressure is' : `${String(count)} pressures are`} written for other fronts and left out
    </span>
  );
}

/** How many cells have which verdict. */
function Totals({ view, pairs }: { readonly view: MenuView; readonly pairs: boolean }): ReactElement {
  const counts = useMemo(() => countVerdicts(view), [view]);
  return (
    <ul className="tally" aria-label={`How many ${pairs ? 'pairs' : 'cells'} have which verdict`}>
      {VERDICT_ORDER.map((verdict) => (
        <li key={verdict}>
          <VerdictMark verdict={verdict} size={15} /> {VERDICT_NAMES[verdict]}: {counts.get(verdict) ?? 0}
        </li>
      ))}
    </ul>
  );
}

function countVerdicts({ rows, columns, cellAt }: MenuView): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const row of rows) {
    for (const column of columns) {
      const { verdict } = cellAt(row, column);
      if (verdict !== null) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    }
  }
  return counts;
}

interface NoteProps {
  readonly view: MenuView;
  readonly spot: Spot | null;
  readonly filter: MenuFilter;
}

/** The cell that is pointed at, in one line. */
function CellNote({ view, spot, filter }: NoteProps): ReactElement {
  const { grid, answers, kind } = view.state;
  const row = spot === null ? undefined : grid.rows[spot.row];
  const column = spot === null ? undefined : grid.columns[spot.column];
  if (spot === null || row === undefined || column === undefined) {
    return (
      <p className="pointed-words hint">
        {kind.kind === 'pairs'
          ? 'A cell shows the worst verdict of the pair and in how many looks and spots it has it.'
          : 'A cell shows the worst verdict of the three ball spots and how many findings are so grave.'}{' '}
        Click one, or press Enter, to open it on the board.
      </p>
    );
  }
  const cell = view.cellAt(spot.row, spot.column);
  const number = answers.numbers[caseIndex(grid, spot.row, spot.column, cell.layer)];
  const summary = number === undefined ? undefined : answers.summaries[number];
  const layer = grid.layers[cell.layer];
  const reasons = summary === undefined ? '' : reasonsOf(summary, filter);
  const where = [layer?.look?.name, layer === undefined ? undefined : BALL_WORDS[layer.spot]]
    .filter(Boolean)
    .join(', ');
  return (
    <p className="pointed-words">
      <strong>
        {row.name} {kind.kind === 'pairs' ? 'with' : 'against'} {column.name}
      </strong>
      : {cellWords(cell, kind.kind === 'pairs')}
      {reasons === '' ? '' : `. Worst with ${where}: ${reasons}`}
    </p>
  );
}
