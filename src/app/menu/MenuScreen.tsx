import { useMemo, useState, type ReactElement } from 'react';
import { TURNS, type FrontId, type Pressure, type PressureId, type Turn } from '../../engine/index.ts';
import { NO_FILTER, type GridKind, type MenuFilter, type RowOrder } from '../../menu/index.ts';
import { TURN_WORDS } from '../call/turnWords.ts';
import { named, Radios, Select, type Option } from '../parts/Choice.tsx';
import { useApp } from '../session/session.ts';
import { ComparePanel } from './ComparePanel.tsx';
import { GridPanel } from './GridPanel.tsx';
import { MenuTools } from './MenuTools.tsx';
import { PartnersPanel } from './PartnersPanel.tsx';

type Tab = GridKind['kind'] | 'compare';

const TABS: readonly Option<Tab>[] = [
  { value: 'calls', label: 'Calls against looks' },
  { value: 'pairs', label: 'Pressure with pressure' },
  { value: 'partners', label: 'What goes with…' },
  { value: 'compare', label: 'What changed' },
];

const ORDERS: readonly Option<RowOrder>[] = [
  { value: 'kept', label: 'playbook order' },
  { value: 'gravest', label: 'gravest first' },
  { value: 'soundest', label: 'soundest first' },
];

/** All calls, or all pairs of pressures, against all looks at once. */
export function MenuScreen({ onBoard }: { readonly onBoard: () => void }): ReactElement {
  const playbook = useApp((state) => state.playbook);
  const board = useApp((state) => state.board);
  const [tab, setTab] = useState<Tab>('calls');
  const [front, setFront] = useState<FrontId | null>(board.front);
  const [first, setFirst] = useState<PressureId | null>(board.first);
  const [turn, setTurn] = useState<Turn>('own');
  const [filter, setFilter] = useState<MenuFilter>(NO_FILTER);
  const [order, setOrder] = useState<RowOrder>('kept');
  const kind = useKind(tab, front, first, turn);
  return (
    <main className="menu-screen">
      <h2 className="unseen">Whole menu</h2>
      <div className="menu-head">
        <Radios legend="What is shown" hideLegend value={tab} options={TABS} onChoose={setTab} />
        {(tab === 'pairs' || tab === 'partners') && (
          <Select label="Front" wide value={front} options={named(playbook.fronts)} onChoose={setFront} />
        )}
        {tab === 'pairs' && (
          <Select
            label="The second goes"
            wide
            value={turn}
            options={TURNS.map((value) => ({ value, label: TURN_WORDS[value] }))}
            onChoose={(chosen) => setTurn(chosen ?? 'own')}
          />
        )}
        {tab === 'partners' && (
          <Select
            label="First pressure"
            wide
            value={first}
            options={withTags(playbook.pressures)}
            onChoose={setFirst}
          />
        )}
        {(tab === 'calls' || tab === 'pairs') && (
          <Select label="Rows" value={order} options={ORDERS} onChoose={(chosen) => setOrder(chosen ?? 'kept')} />
        )}
        {tab !== 'compare' && <MenuTools filter={filter} onFilter={setFilter} />}
      </div>
      {tab === 'compare' ? (
        <ComparePanel />
      ) : kind === null ? (
        <p className="menu-empty">This playbook has nothing to combine yet: it needs a front and pressures.</p>
      ) : kind.kind === 'partners' ? (
        <PartnersPanel kind={kind} filter={filter} onBoard={onBoard} />
      ) : (
        <GridPanel kind={kind} filter={filter} order={order} onBoard={onBoard} />
      )}
    </main>
  );
}

/** Pressures by their names and what they are tagged with: a coach looks for "my inside backer one". */
function withTags(pressures: readonly Pressure[]): readonly Option<PressureId>[] {
  return named(pressures).map((option, at) => {
    const tags = pressures[at]?.tags ?? [];
    return tags.length === 0 ? option : { ...option, label: `${option.label} (${tags.join(', ')})` };
  });
}

/** The grid that is asked for, the same object as long as nothing else is chosen. */
function useKind(tab: Tab, front: FrontId | null, first: PressureId | null, turn: Turn): GridKind | null {
  return useMemo(() => {
    if (tab === 'calls') return { kind: 'calls' };
    if (front === null || tab === 'compare') return null;
    if (tab === 'pairs') return { kind: 'pairs', front, turn };
    return first === null ? null : { kind: 'partners', front, first };
  }, [tab, front, first, turn]);
}
