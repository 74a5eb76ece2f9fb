import type { Context } from 'konva/lib/Context';
import {
  useCallback,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
  type PointerEvent,
  type ReactElement,
} from 'react';
// Of Konva only its core is loaded: everything on the field is painted by functions of our own.
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import { sameMan } from '../store/index.ts';
import type { Scene, Shape as Drawn, Theme } from '../scene/index.ts';
import { viewportOf, ZOOM_STEP, zoomed } from './camera.ts';
import { HIT_RADIUS, manAt } from './hit.ts';
import { paintHand } from './paint/paintHand.ts';
import { paintScene, paintShapes } from './paint/paintScene.ts';
import { createPointer, pixelOf, type Pointer, type PointerTask } from './pointer.ts';
import type { Hints } from './tools/index.ts';
import type { Viewport } from './viewport.ts';

interface Props extends Omit<PointerTask, 'onHints'> {
  readonly scene: Scene;
  readonly theme: Theme;
  /** What moves over the scene; null: nothing does, and men can be grabbed. */
  readonly moving: Moving | null;
}

/** Shapes that change with time, in a layer of their own: the scene below them is not painted again. */
export interface Moving {
  /** The time shown, in seconds. */
  readonly now: () => number;
  readonly subscribe: (listener: () => void) => () => void;
  readonly shapesAt: (t: number) => readonly Drawn[];
}

/**
 * The field as a picture that can be pointed at. It is hidden from screen readers: the list of players beside it says and
 * does the same. Few layers, none of which Konva has to listen on, since the nearest man is found by distance.
 */
export function FieldStage(props: Props): ReactElement {
  const { scene, theme, sight, camera, men, selection, placing, moving } = props;
  const { size } = sight;
  const viewport = viewportOf(sight, camera);
  const [over, setOver] = useState(false);
  const [hints, setHints] = useState<Hints | null>(null);
  const field = useRef<HTMLDivElement>(null);
  const pointer = usePointer({ ...props, onHints: setHints });
  useWheel(field, props);
  const paint = useCallback(
    (context: Context) => paintScene(context._context, scene, theme, viewport),
    // The viewport is another object each time; the picture only changes with what is in it.
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [scene, theme, viewport.scale, viewport.ball.px, viewport.ball.py, viewport.turned],
  );
  const move = (event: PointerEvent<HTMLElement>): void => {
    if (event.buttons === 0) setOver(manAt(men, pixelOf(event), viewport, HIT_RADIUS.fine) !== null);
    pointer.move(event);
  };
  const cursor = placing !== null ? 'is-placing' : over ? 'is-over-man' : '';
  const spots = selection.flatMap((man) => men.find((standing) => sameMan(standing.man, man))?.at ?? []);

  return (
    <div
      ref={field}
      className={`field-stage ${cursor}`}
      aria-hidden="true"
      data-scale={viewport.scale}
      data-ball-x={viewport.ball.px}
      data-ball-y={viewport.ball.py}
      data-snapped={hints?.snapped?.to.name ?? ''}
      onPointerDown={pointer.down}
      onPointerMove={move}
      onPointerUp={pointer.up}
      onPointerCancel={pointer.lost}
      // The middle button shoves the field; it must not start the browser's own scrolling.
      onMouseDown={(event) => {
        if (event.button === 1) event.preventDefault();
      }}
    >
      <Stage width={size.width} height={size.height} listening={false}>
        <Layer listening={false}>
          <Shape sceneFunc={paint} listening={false} />
        </Layer>
        {moving !== null && <MovingLayer moving={moving} theme={theme} viewport={viewport} />}
        <Layer listening={false}>
          <Shape
            sceneFunc={(context: Context) => paintHand(context._context, { spots, hints, theme, viewport, size })}
            listening={false}
          />
        </Layer>
      </Stage>
    </div>
  );
}

interface MovingProps {
  readonly moving: Moving;
  readonly theme: Theme;
  readonly viewport: Viewport;
}

/** Painted at every change of the time, alone. */
function MovingLayer({ moving, theme, viewport }: MovingProps): ReactElement {
  const t = useSyncExternalStore(moving.subscribe, moving.now);
  const { shapesAt } = moving;
  const paint = useCallback(
    (context: Context) => paintShapes(context._context, shapesAt(t), theme, viewport),
    [shapesAt, t, theme, viewport],
  );
  return (
    <Layer listening={false}>
      <Shape sceneFunc={paint} listening={false} />
    </Layer>
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
