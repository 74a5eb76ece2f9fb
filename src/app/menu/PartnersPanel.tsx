import { useMemo, useState, type ReactElement } from 'react';
import type { LookId } from '../../engine/index.ts';
import {
  caseIndex,
  partnerCalls,
  rankPartners,
  VERDICT_ORDER,
  WAITING,
  type GridKind,
  type MenuFilter,
  type Partner,
  type RankedPartner,
} from '../../menu/index.ts';
import { TURN_WORDS } from '../call/turnWords.ts';
import { standInCall } from '../../store/index.ts';
import { VERDICT_NAMES } from '../parts/VerdictMark.tsx';
import { useSession } from '../session/session.ts';
import { titleOf } from './cellWords.ts';
import { FitMark, fitWords } from './FitMark.tsx';
import { MenuProgress } from './MenuProgress.tsx';
import type { MenuState } from './menuBook.ts';
import { useMenu, useMenuView } from './useMenu.ts';

interface Props {
  readonly kind: Extract<GridKind, { kind: 'partners' }>;
  readonly filter: MenuFilter;
  readonly onBoard: () => void;
}

/** Every second pressure for one first, the best fit first, each turned its best way. */
export function PartnersPanel({ kind, ...rest }: Props): ReactElement {
  const state = useMenu(kind);
  return state === null ? <p className="menu-empty">Checking…</p> : <Ranking kind={kind} state={state} {...rest} />;
}

function Ranking({ kind, state, filter, onBoard }: Props & { readonly state: MenuState }): ReactElement {
  const [all, setAll] = useState(false);
  const ranked = useRanked(kind, state, filter);
  const best = all ? ranked : bestTurns(ranked);
  return (
    <>
      <div className="menu-line">
        <MenuProgress state={state} />
        <label className="menu-tick">
          <input type="checkbox" checked={all} onChange={(event) => setAll(event.target.checked)} /> every way to turn
          it
        </label>
      </div>
      <ol className="partners" aria-label="Second pressures, the best fit first">
        {best.map((partner) => (
          <PartnerRow
            key={`${partner.second} ${partner.turn}`}
            partner={partner}
            kind={kind}
            state={state}
            onBoard={onBoard}
          />
        ))}
      </ol>
    </>
  );
}

/** Of each second pressure the first row, which is its best. */
function bestTurns(ranked: readonly RankedPartner[]): readonly RankedPartner[] {
  return ranked.filter((partner, index) => ranked.findIndex(({ second }) => second === partner.second) === index);
}

/** The partners whose answers are all in, ranked. */
function useRanked(kind: Props['kind'], state: MenuState, filter: MenuFilter): readonly RankedPartner[] {
  const { columns, layers } = useMenuView(state, filter, 'kept');
  return useMemo(() => {
    const { grid, answers, playbook } = state;
    const partners = partnerCalls(playbook, kind.front, kind.first).flatMap((call, row): readonly Partner[] => {
      const places = columns.flatMap((column) => layers.map((layer) => caseIndex(grid, row, column, layer)));
      const missing = places.some((place) => (answers.numbers[place] ?? WAITING) < 0);
      if (missing || call.second === null) return [];
      const cases = places.flatMap((place) => {
        const known = grid.caseAt(place);
        const summary = answers.summaries[answers.numbers[place] ?? WAITING];
        return known === null || summary === undefined ? [] : [{ look: known.look.id, spot: known.spot, summary }];
      });
      return [{ second: call.second, turn: call.turn, cases }];
    });
    return rankPartners(partners, filter);
  }, [kind, state, columns, layers, filter]);
}

interface RowProps {
  readonly partner: RankedPartner;
  readonly kind: Props['kind'];
  readonly state: MenuState;
  readonly onBoard: () => void;
}

/** One second pressure: in how many looks it fits, and where not and why in a line each. */
function PartnerRow({ partner, kind, state, onBoard }: RowProps): ReactElement {
  const { store } = useSession();
  const { second, turn, looks, fits, tally, misfits } = partner;
  const { playbook, grid } = state;
  const name = playbook.pressures.find(({ id }) => id === second)?.name ?? second;
  const open = (look: LookId | null): void => {
    const call = partnerCalls(playbook, kind.front, kind.first).find(
      (each) => each.second === second && each.turn === turn,
    );
    const shown = playbook.looks.find(({ id }) => id === look) ?? playbook.looks[0];
    if (call === undefined || shown === undefined) return;
    const row = grid.rows.findIndex(({ id }) => id === call.id);
    const column = grid.columns.findIndex(({ id }) => id === shown.id);
    const spot = worstSpot(state, row, column);
    store.setBoard({ ...standInCall(store.get().board, call), look: shown.id, spot });
    onBoard();
  };
  return (
    <li className="partner">
      <div className="partner-head">
        <FitMark looks={looks} fits={fits} />
        <button type="button" className="link-button partner-name" onClick={() => open(misfits[0]?.looks[0] ?? null)}>
          {name}
        </button>
        <span className="quiet">{TURN_WORDS[turn]}</span>
        <strong>{fitWords({ looks, fits })}</strong>
        <span className="quiet">
          {VERDICT_ORDER.flatMap((verdict, rank) => {
            const count = tally[rank] ?? 0;
            return count === 0 ? [] : [`${VERDICT_NAMES[verdict]} ${String(count)}`];
          }).join(', ')}
          {/* Each look counts once for every ball spot. */}
          {tally.reduce((sum, count) => sum + count, 0) > looks && ', over looks and ball spots'}
        </span>
      </div>
      {misfits.length > 0 && (
        <ul className="misfits">
          {misfits.map((misfit) => (
            <li key={misfit.rule}>
              {titleOf(misfit.rule)}:{' '}
              {misfit.looks.length === looks ? (
                <button type="button" className="link-button" onClick={() => open(misfit.looks[0] ?? null)}>
                  in every look
                </button>
              ) : (
                misfit.looks.map((look) => (
                  <button key={look} type="button" className="link-button" onClick={() => open(look)}>
                    {playbook.looks.find(({ id }) => id === look)?.name}
                  </button>
                ))
              )}
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

/** The ball spot with the gravest answer in that cell. */
function worstSpot({ grid, answers }: MenuState, row: number, column: number) {
  const from = caseIndex(grid, row, column, 0);
  const rank = (layer: number): number => {
    const summary = answers.summaries[answers.numbers[from + layer] ?? WAITING];
    return summary === undefined ? VERDICT_ORDER.length : VERDICT_ORDER.indexOf(summary.verdict);
  };
  const worst = [...grid.layers.keys()].sort((a, b) => rank(a) - rank(b))[0] ?? 0;
  return grid.layers[worst]?.spot ?? 'middle';
}
