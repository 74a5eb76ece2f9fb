import type { ReactElement } from 'react';
import { shoved, type Camera, type Sight } from '../../editor/index.ts';

interface Props {
  readonly sight: Sight;
  readonly camera: Camera;
  readonly onCamera: (camera: Camera) => void;
}

/** How far one press shoves the field, as a part of its height. */
const SHOVE = 0.25;

/** Over a corner of an enlarged field: other parts of it without dragging. */
export function ShoveButtons({ sight, camera, onCamera }: Props): ReactElement {
  const step = sight.size.height * SHOVE;
  return (
    <div className="shove-buttons" role="group" aria-label="Other parts of the field">
      {SHOVES.map(({ sign, words, px, py }) => (
        <button
          key={words}
          type="button"
          title={words}
          aria-label={words}
          onClick={() => onCamera(shoved(sight, camera, { px: px * step, py: py * step }))}
        >
          {sign}
        </button>
      ))}
    </div>
  );
}

/** What is seen moves the other way than the field. */
const SHOVES = [
  { sign: '←', words: 'Look to the left', px: 1, py: 0 },
  { sign: '↑', words: 'Look up', px: 0, py: 1 },
  { sign: '↓', words: 'Look down', px: 0, py: -1 },
  { sign: '→', words: 'Look to the right', px: -1, py: 0 },
] as const;
