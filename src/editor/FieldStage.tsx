import { useEffect, useLayoutEffect, useRef, useState, type PointerEvent, type ReactElement } from 'react';
import type { Scene, Theme } from '../scene/index.ts';
import type { Preview } from '../store/index.ts';
import { viewportOf, ZOOM_STEP, zoomed } from './camera.ts';
import { FieldLayers, type Moving } from './FieldLayers.tsx';
import { HIT_RADIUS, manAt } from './hit.ts';
import { createLive, type Live } from './live.ts';
import { createPointer, pixelOf, type Pointer, type PointerTask } from './pointer.ts';
import type { Hints } from './tools/index.ts';

interface Props extends Omit<PointerTask, 'onHints'> {
  readonly scene: Scene;
  readonly theme: Theme;
  /** What moves over the scene; null: nothing does, and men can be grabbed. */
  readonly moving: Moving | null;
  /** Those who are being dragged, where they are shown now: what `onPreview` was told last, as far as they may go. */
  readonly dragged: Live<Preview | null>;
}

/**
 * The field as a picture that can be pointed at. It is hidden from screen readers: the list of players beside it says and
 * does the same. The nearest man is found by distance.
 */
export function FieldStage(props: Props): ReactElement {
  const { scene, theme, sight, camera, men, selection, placing, moving, dragged } = props;
  const { size } = sight;
  const viewport = viewportOf(sight, camera);
  const [over, setOver] = useState(false);
  const [hints] = useState(() => createLive<Hints | null>(null));
  const field = useRef<HTMLDivElement>(null);
  const pointer = usePointer({ ...props, onHints: hints.set });
  useWheel(field, props);
  useEffect(() => {
    let name = '';
    return hints.subscribe(() => {
      const next = hints.now()?.snapped?.to.name ?? '';
      if (next !== name) field.current?.setAttribute('data-snapped', next);
      name = next;
    });
  }, [hints]);
  const move = (event: PointerEvent<HTMLElement>): void => {
    if (event.buttons === 0) setOver(manAt(men, pixelOf(event), viewport, HIT_RADIUS.fine) !== null);
    pointer.move(event);
  };
  const cursor = placing !== null ? 'is-placing' : over ? 'is-over-man' : '';

  return (
    <div
      ref={field}
      className={`field-stage ${cursor}`}
      aria-hidden="true"
      data-scale={viewport.scale}
      data-ball-x={viewport.ball.px}
      data-ball-y={viewport.ball.py}
      data-snapped=""
      onPointerDown={pointer.down}
      onPointerMove={move}
      onPointerUp={pointer.up}
      onPointerCancel={pointer.lost}
      // The middle button shoves the field; it must not start the browser's own scrolling.
      onMouseDown={(event) => {
        if (event.button === 1) event.preventDefault();
      }}
    >
      <FieldLayers {...{ scene, theme, viewport, size, men, selection, dragged, hints, moving }} />
    </div>
  );
}

/** The pointer of this field, told of every change, and of Escape and the space bar wherever the focus is. */
function usePointer(task: PointerTask): Pointer {
  const [pointer] = useState(() => createPointer(task));
  useLayoutEffect(() => pointer.update(task));
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') pointer.cancel();
      if (event.key === ' ' && (event.target === document.body || event.target === null)) {
        event.preventDefault();
        pointer.holdSpace(true);
      }
    };
    const letGo = (event: KeyboardEvent): void => {
      if (event.key === ' ') pointer.holdSpace(false);
    };
    const leave = (): void => pointer.holdSpace(false);
    window.addEventListener('keydown', press);
    window.addEventListener('keyup', letGo);
    window.addEventListener('blur', leave);
    return () => {
      window.removeEventListener('keydown', press);
      window.removeEventListener('keyup', letGo);
      window.removeEventListener('blur', leave);
      pointer.stop();
    };
  }, [pointer]);
  return pointer;
}

/** One notch of a wheel, in the pixels browsers count it in. */
const NOTCH = 100;

/** The wheel, or two fingers on a touch pad, looks closer at what is under the pointer. */
function useWheel(field: { readonly current: HTMLElement | null }, props: Props): void {
  const now = useRef(props);
  useLayoutEffect(() => {
    now.current = props;
  });
  useEffect(() => {
    const element = field.current;
    if (element === null) return undefined;
    const turn = (event: WheelEvent): void => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      const pixel = { px: event.clientX - box.left, py: event.clientY - box.top };
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 33 : 1;
      const factor = ZOOM_STEP ** (-(event.deltaY * lines) / NOTCH);
      const { sight, camera, onCamera } = now.current;
      onCamera(zoomed(sight, camera, pixel, factor));
    };
    // React listens passively, and then the page would scroll as well.
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [field]);
}
