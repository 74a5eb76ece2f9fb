import { useId, useState, type ReactElement } from 'react';
import type { Call } from '../../engine/index.ts';
import type { FindingRow } from '../../report/index.ts';
import { aboutOf, LEAST_REASON, waive, waiverHome } from '../../store/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import type { BoardModel } from '../session/model.ts';
import { useCommit } from '../session/session.ts';

interface Props {
  readonly model: BoardModel;
  readonly row: FindingRow;
  readonly onClose: () => void;
}

/** Asks why the coach lives with a finding; without a kept call there is no place for the answer. */
export function WaiveDialog({ model, row, onClose }: Props): ReactElement {
  const home = waiverHome(model.state, model.analysis);
  return (
    <Dialog title={`Live with it: ${row.title}`} onClose={onClose}>
      <p>{row.text}</p>
      {home.kind === 'call' ? (
        <ReasonForm model={model} row={row} call={home.call} onClose={onClose} />
      ) : (
        <>
          <p>
            {home.kind === 'not-kept'
              ? 'Keep the call first (“Keep as call…”): the reason is kept with it, and printed with it.'
              : `${home.call.name} has been changed since it was kept. Keep the change first: the reason is kept with the call.`}
          </p>
          <div className="button-row">
            <button type="button" className="is-main" onClick={onClose}>
              Close
            </button>
          </div>
        </>
      )}
    </Dialog>
  );
}

function ReasonForm({ model, row, call, onClose }: Props & { readonly call: Call }): ReactElement {
  const id = useId();
  const commit = useCommit();
  const [reason, setReason] = useState('');
  const [tooShort, setTooShort] = useState(false);
  const left = LEAST_REASON - reason.trim().length;
  const { analysis } = model;
  const keep = (): void => {
    const done = commit({
      label: `lives with “${row.title}” on ${call.name}`,
      look: analysis.setup.look.id,
      gesture: null,
      change: (playbook) => waive(playbook, { call: call.id, about: aboutOf(analysis, row), reason }),
    });
    if (done) onClose();
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (left > 0) setTooShort(true);
        else keep();
      }}
    >
      <div className="field">
        <label htmlFor={id}>Why do you live with it?</label>
        <textarea
          id={id}
          rows={3}
          value={reason}
          aria-describedby={`${id}-hint ${id}-problem`}
          onChange={(event) => setReason(event.target.value)}
        />
        <p className="hint" id={`${id}-hint`}>
          Kept with {call.name} for this look, and printed. If other men or gaps come into it, it is shown again.
        </p>
        <p className="problem" id={`${id}-problem`} role="alert">
          {tooShort && left > 0 ? `Say why in at least ${LEAST_REASON} characters: ${left} to go.` : ''}
        </p>
      </div>
      <div className="button-row">
        <button type="submit" className="is-main">
          Live with it
        </button>
        <button type="button" onClick={onClose}>
          Cancel
        </button>
      </div>
    </form>
  );
}
