import { useEffect, useMemo, useRef, type ReactElement } from 'react';
import { PlayerList, SpotFields, type ManRow } from '../../editor/index.ts';
import type { Point } from '../../engine/index.ts';
import { clearHand, handToRule, manKey, moveMan, sameMan, type Man } from '../../store/index.ts';
import { isRoomy } from '../parts/roomy.ts';
import { useSettled } from '../parts/useSettled.ts';
import type { BoardModel } from '../session/model.ts';
import { useCommit, useSession } from '../session/session.ts';
import { manName } from './manName.ts';
import { placedBy } from './placedBy.ts';
import { manRows } from './rows.ts';

interface Props {
  readonly model: BoardModel;
  /** The next click on the field puts the selected man down. */
  readonly placing: boolean;
  readonly onPlacing: (placing: boolean) => void;
}

/** Everybody on the field as buttons, and what can be done with the one who is selected. */
export function PlayersPanel({ model, placing, onPlacing }: Props): ReactElement {
  const { store } = useSession();
  const commit = useCommit();
  const rows = useMemo(() => manRows(model), [model]);
  const { selected, turned } = model.state.view;
  const row = rows.find(({ man }) => sameMan(man, selected)) ?? null;
  const select = (man: Man): void => store.setView({ selected: man });
  const move = (man: Man, to: Point, gesture: string): void => {
    commit({
      label: `moved ${manName(man, model.lexicon)}`,
      look: model.state.board.look,
      gesture: `${gesture} ${manKey(man)}`,
      change: (playbook) => moveMan(playbook, store.get().board, man, to),
    });
  };
  return (
    <section className="panel players-panel" aria-labelledby="players-title">
      <h2 id="players-title">Players on the field</h2>
      <p className="hint" id="players-help">
        Pick one here or on the field. Arrows move him ¼ yard, with Shift 1 yard; Page Down: the next man.
      </p>
      <PlayerList
        rows={rows}
        selected={selected}
        turned={turned}
        onSelect={select}
        onMove={move}
        onMoveEnd={store.endGesture}
      />
      {row !== null && <ManCard model={model} row={row} placing={placing} onPlacing={onPlacing} onMove={move} />}
    </section>
  );
}

interface CardProps extends Props {
  readonly row: ManRow;
  readonly onMove: (man: Man, to: Point, gesture: string) => void;
}

/** The man who is selected: who he is, what he has to do, and the ways to move him. */
function ManCard({ model, row, placing, onPlacing, onMove }: CardProps): ReactElement {
  const { store } = useSession();
  const { readOnly } = model.state;
  const { man } = row;
  const card = useRef<HTMLDivElement>(null);
  const key = manKey(man);
  useEffect(() => {
    // Elsewhere this would scroll the field away from under his finger.
    if (isRoomy()) card.current?.scrollIntoView({ block: 'nearest' });
  }, [key]);
  const job = man.kind === 'defender' ? model.report.jobs.find(({ role }) => role === man.role) : undefined;
  return (
    <div className="man-card" ref={card}>
      <h3>{job === undefined ? manName(man, model.lexicon) : `${job.letter} · ${job.name}`}</h3>
      {job !== undefined && (
        <>
          <p className="man-aligns">
            Lines up: {job.aligns} ({placedBy(model.analysis, job.role)})
          </p>
          <p className="man-job">{job.job}</p>
        </>
      )}
      <p className="unseen" role="status">
        {useSettled(spotText(row, job?.aligns ?? null))}
      </p>
      <SpotFields
        // Another man is another pair of fields: nothing half typed goes over to him.
        key={key}
        at={row.at}
        offence={man.kind === 'offence'}
        disabled={readOnly}
        onMove={(to, gesture) => onMove(man, to, gesture)}
        onMoveEnd={store.endGesture}
      />
      <div className="button-row">
        <button type="button" aria-pressed={placing} disabled={readOnly} onClick={() => onPlacing(!placing)}>
          {placing ? 'Now click his new spot' : 'Place by click'}
        </button>
        <ByHand model={model} man={man} />
      </div>
    </div>
  );
}

/** Where he stands, as it is read out once he stands still. */
function spotText({ letter, at }: ManRow, aligns: string | null): string {
  const across = at.x === 0 ? 'over the ball' : `${Math.abs(at.x).toFixed(2)} ${at.x < 0 ? 'left' : 'right'}`;
  const place = `${letter}: ${across}, ${Math.abs(at.y).toFixed(2)} deep`;
  return aligns === null ? place : `${place}, ${aligns}`;
}

/** What can be done with a defender who stands by hand in this look: give him back to his rule, or make a rule of it. */
function ByHand({ model, man }: { readonly model: BoardModel; readonly man: Man }): ReactElement | null {
  const commit = useCommit();
  const { setup } = model.analysis;
  const look = setup.look.id;
  // The front he stands in, which need not be the one called: the call may be checked out of here.
  const front = setup.front.id;
  if (man.kind !== 'defender') return null;
  if (!setup.front.byHand.some((hand) => hand.look === look && hand.role === man.role)) return null;
  const name = manName(man, model.lexicon);
  return (
    <>
      <button
        type="button"
        disabled={model.state.readOnly}
        onClick={() =>
          commit({
            label: `gave ${name} back to his rule`,
            look,
            gesture: null,
            change: (now) => clearHand(now, { front, look, role: man.role }),
          })
        }
      >
        Back to the rule
      </button>
      <button
        type="button"
        title="He then stands like this in every look with the same surface on his side"
        disabled={model.state.readOnly}
        onClick={() =>
          commit({
            label: `made a rule of where ${name} stands`,
            look,
            gesture: null,
            change: (now) => handToRule(now, { front, look, role: man.role, spot: setup.spot }),
          })
        }
      >
        Make this hand a rule
      </button>
    </>
  );
}
