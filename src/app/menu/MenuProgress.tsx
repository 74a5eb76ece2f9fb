import type { ReactElement } from 'react';
import { useSession } from '../session/session.ts';
import type { MenuState } from './menuBook.ts';

/** How far the checking is; it can be stopped and gone on with. */
export function MenuProgress({ state }: { readonly state: MenuState }): ReactElement {
  const { menu } = useSession();
  const { progress, done, total } = state;
  return (
    <div className="menu-progress">
      {progress.kind !== 'done' && <progress max={total} value={done} aria-label="Cases checked" />}
      <span role="status">{progressWords(state)}</span>
      {progress.kind === 'working' && (
        <button type="button" className="small-button" onClick={menu.stop}>
          Stop
        </button>
      )}
      {progress.kind === 'stopped' && (
        <button type="button" className="small-button" onClick={menu.goOn}>
          Go on
        </button>
      )}
    </div>
  );
}

function progressWords({ progress, done, total }: MenuState): string {
  switch (progress.kind) {
    case 'working':
      // A screen reader is not told every step: the numbers stand in the bar.
      return 'Checking…';
    case 'stopped':
      return `Stopped at ${counted(done)} of ${counted(total)}`;
    case 'done':
      return `${counted(total)} checked`;
    case 'failed':
      return `The checking has failed: ${progress.reason}`;
  }
}

function counted(number: number): string {
  return number.toLocaleString('en-US');
}
