import type { ReactElement } from 'react';
import { MOST_ZOOM, ZOOM_STEP, zoomedInMiddle, type Area, type Camera } from '../../editor/index.ts';
import type { View } from '../../store/index.ts';
import { useSession } from '../session/session.ts';

interface Props {
  /** What fits the field. */
  readonly area: Area;
  readonly camera: Camera;
  readonly view: View;
  readonly onCamera: (camera: Camera) => void;
}

/** One press is two notches of a wheel. */
const PRESS = ZOOM_STEP ** 2;

/** How close the field is looked at, whether lines draw men, whether several are picked. */
export function FieldTools({ area, camera, view, onCamera }: Props): ReactElement {
  const { store } = useSession();
  return (
    <div className="field-tools" role="group" aria-label="Tools of the field">
      <button
        type="button"
        title="Look closer (wheel, or two fingers)"
        aria-label="Look closer"
        disabled={(camera?.zoom ?? 1) >= MOST_ZOOM}
        onClick={() => onCamera(zoomedInMiddle(area, camera, PRESS))}
      >
        +
      </button>
      <button
        type="button"
        title="Look from farther"
        aria-label="Look from farther"
        disabled={camera === null}
        onClick={() => onCamera(zoomedInMiddle(area, camera, 1 / PRESS))}
      >
        −
      </button>
      <button
        type="button"
        title="Fit the field (0)"
        aria-label="Fit the field"
        disabled={camera === null}
        onClick={() => onCamera(null)}
      >
        Fit
      </button>
      <button
        type="button"
        title="Dragged men stop at techniques, depths and landmarks; hold Alt to pass them"
        aria-pressed={view.snapping}
        onClick={() => store.setView({ snapping: !view.snapping })}
      >
        Snap
      </button>
      <button
        type="button"
        title="Every man you press is picked too, as with Shift"
        aria-pressed={view.several}
        onClick={() => store.setView({ several: !view.several })}
      >
        Several
      </button>
    </div>
  );
}
