import { useEffect, useRef, type ReactElement } from 'react';
import { SpotFields, type ManRow } from '../../editor/index.ts';
import { manKey } from '../../store/index.ts';
import { useMoveMen } from '../board/useMoveMen.ts';
import { isRoomy } from '../parts/roomy.ts';
import { useSettled } from '../parts/useSettled.ts';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { manName } from './manName.ts';
import { placedBy } from './placedBy.ts';
import { StepButtons } from './StepButtons.tsx';
import type { Hand } from './useHand.ts';

interface Props {
  readonly model: BoardModel;
  readonly row: ManRow;
  readonly hand: Hand;
  readonly placing: boolean;
  readonly onPlacing: (placing: boolean) => void;
}

/** The man who is selected: who he is, what he has to do, and the ways to move him. */
export function ManCard({ model, row, hand, placing, onPlacing }: Props): ReactElement {
  const { store } = useSession();
  const move = useMoveMen(model);
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
        {useSettled(spotText(row, job?.aligns ?? null), model.state.preview !== null)}
      </p>
      <SpotFields
        // Another man is another pair of fields: nothing half typed goes over to him.
        key={key}
        at={row.at}
        offence={man.kind === 'offence'}
        disabled={readOnly}
        onMove={(at, gesture) => move([{ man, at }], `${gesture} ${key}`)}
        onMoveEnd={store.endGesture}
      />
      <div className="button-row">
        <button type="button" aria-pressed={placing} disabled={readOnly} onClick={() => onPlacing(!placing)}>
          {placing ? 'Now click his new spot' : 'Place by click'}
        </button>
        <button type="button" onClick={hand.copy}>
          Copy his spot
        </button>
        {hand.byHand.length > 0 && (
          <>
            <button type="button" disabled={readOnly} onClick={hand.backToRule}>
              Back to the rule
            </button>
            <button
              type="button"
              title="He then stands like this in every look with the same surface on his side"
              disabled={readOnly}
              onClick={hand.makeRule}
            >
              Make this hand a rule
            </button>
          </>
        )}
      </div>
      <StepButtons hand={hand} disabled={readOnly} />
    </div>
  );
}

/** Where he stands, as it is read out once he stands still. */
function spotText({ letter, at }: ManRow, aligns: string | null): string {
  const across = at.x === 0 ? 'over the ball' : `${Math.abs(at.x).toFixed(2)} ${at.x < 0 ? 'left' : 'right'}`;
  const place = `${letter}: ${across}, ${Math.abs(at.y).toFixed(2)} deep`;
  return aligns === null ? place : `${place}, ${aligns}`;
}
