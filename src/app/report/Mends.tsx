import type { ReactElement } from 'react';
import type { Edit, Suggestions } from '../../engine/index.ts';
import { fill } from '../../report/index.ts';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { sentenceOf } from '../suggest/sentences.ts';
import { useApply } from '../suggest/useApply.ts';

/** Suggestions shown at once; the smallest changes come first. */
const SHOWN = 2;

interface Props {
  readonly model: BoardModel;
  /** The title of the finding, for those who hear a button out of its place. */
  readonly title: string;
  /** Undefined: still being looked for. */
  readonly suggestions: Suggestions | undefined;
  /** Called when one was applied: the finding is likely to be gone, and the focus with it. */
  readonly onApplied: () => void;
}

/** What would mend a finding, as sentences; pointing at one shows its outcome on the field, pressing it does it. */
export function Mends({ model, title, suggestions, onApplied }: Props): ReactElement {
  if (suggestions === undefined) return <p className="hint mends-none">Looking for what would mend it…</p>;
  if (suggestions.kind === 'none') {
    const why = fill(suggestions.because, model.lexicon).text;
    return <p className="hint mends-none">No suggestion: {why.slice(0, 1).toLowerCase() + why.slice(1)}.</p>;
  }
  const { edits } = suggestions;
  if (edits.length === 0) return <p className="hint mends-none">No suggestion found in the time there was.</p>;
  const items = edits.map((edit, index) => (
    <Mend key={index} model={model} edit={edit} title={title} onApplied={onApplied} />
  ));
  return (
    <div className="mends">
      <p className="mends-head">What would mend it</p>
      <ul>{items.slice(0, SHOWN)}</ul>
      {items.length > SHOWN && (
        <details>
          <summary>
            {items.length - SHOWN} more<span className="unseen"> for {title}</span>
          </summary>
          <ul>{items.slice(SHOWN)}</ul>
        </details>
      )}
    </div>
  );
}

interface MendProps {
  readonly model: BoardModel;
  readonly edit: Edit;
  readonly title: string;
  readonly onApplied: () => void;
}

function Mend({ model, edit, title, onApplied }: MendProps): ReactElement {
  const { store } = useSession();
  const { text, reach } = sentenceOf(edit, model.lexicon, model.state.playbook);
  const { look, front } = model.analysis.setup;
  const apply = useApply(model.state);
  const tryIt = (): void => store.setTrial(edit);
  const letGo = (): void => store.setTrial(null);
  return (
    <li>
      <button
        type="button"
        className="mend"
        disabled={model.state.readOnly}
        onPointerEnter={tryIt}
        onPointerLeave={letGo}
        onFocus={tryIt}
        onBlur={letGo}
        onClick={() => {
          if (apply({ edits: [edit], label: text, look: look.id, front: front.id })) onApplied();
        }}
      >
        {text}
        <span className="hint">{reach}</span>
        <span className="unseen"> (mends {title})</span>
      </button>
    </li>
  );
}
