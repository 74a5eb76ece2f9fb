import type { ReactElement } from 'react';
import type { Suggestions } from '../../engine/index.ts';
import type { FindingRow } from '../../report/index.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import { WhyFold } from '../parts/Why.tsx';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { lightProps, litBy } from './lighting.ts';
import { Mends } from './Mends.tsx';

interface Props {
  readonly row: FindingRow;
  readonly model: BoardModel;
  /** It was not there before the last change. */
  readonly isNew: boolean;
  readonly suggestions: Suggestions | undefined;
  readonly onWaive: () => void;
  readonly onApplied: () => void;
}

/** One finding, and what can be done about it. Pointing at it, or tabbing to it, lights it on the field. */
export function FindingCard({ row, model, isNew, suggestions, onWaive, onApplied }: Props): ReactElement {
  const { store } = useSession();
  const { view, readOnly } = model.state;
  const lit = view.lit?.key === row.key ? ' is-lit' : '';
  return (
    <li
      className={`finding finding-${row.severity}${lit}`}
      data-rule={row.rule}
      {...lightProps(row.key, row, (next) => store.setView({ lit: next }))}
    >
      <h5>
        <VerdictMark verdict={row.severity} />
        <span className="severity-word">{VERDICT_NAMES[row.severity]}</span> {row.title}
        {isNew && <span className="new-mark">new</span>}
      </h5>
      <p className="finding-text">{row.text}</p>
      <Mends model={model} title={row.title} suggestions={suggestions} onApplied={onApplied} />
      <div className="finding-tools">
        {/* For touch and keyboard, where nothing hovers. */}
        <button type="button" className="link-button" onClick={() => store.setView({ lit: litBy(row.key, row) })}>
          Show on the field<span className="unseen">: {row.title}</span>
        </button>
        <button type="button" className="link-button" disabled={readOnly} onClick={onWaive}>
          Live with it…<span className="unseen"> {row.title}</span>
        </button>
        <WhyFold of={`: ${row.title}`} matters={row.matters} reasons={row.why} />
      </div>
    </li>
  );
}
