import type { ReactElement } from 'react';
import { timeText } from '../session/clock.ts';
import { useSaved } from '../session/session.ts';

/** Whether the playbook is kept in this browser. "Saved" only appears once the browser has said so. */
export function SavedState({ onSave }: { readonly onSave: () => void }): ReactElement {
  const saved = useSaved();
  switch (saved.kind) {
    case 'saving':
      return <p className="saved-state">Saving…</p>;
    case 'saved':
      return (
        <p className="saved-state">
          Saved <span className="where-room">on this device </span>
          {timeText(saved.at)}
        </p>
      );
    case 'failed':
      return (
        <p className="saved-state is-bad" role="alert">
          Not saved: {saved.reason}{' '}
          <button type="button" onClick={onSave}>
            Save file
          </button>
        </p>
      );
    case 'off':
      return <p className="saved-state is-bad">Not kept on this device: {saved.reason}</p>;
  }
}
