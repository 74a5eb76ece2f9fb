import type { Context } from 'konva/lib/Context';
import {
  useCallback,
  useEffect,
  useLayoutEffect,
  useState,
  useSyncExternalStore,
  type PointerEvent,
  type ReactElement,
} from 'react';
// Of Konva only its core and the shapes named here are loaded: another shape needs an import of its own beside this one.
import 'konva/lib/shapes/Circle';
import { Circle, Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import type { Point } from '../engine/index.ts';
import type { Scene, Shape as Drawn, Theme } from '../scene/index.ts';
import { HIT_RADIUS, manAt } from './hit.ts';
import { paintScene, paintShapes } from './paint/paintScene.ts';
import { createPointer, pixelOf, type Pointer, type PointerTask } from './pointer.ts';
import { toPixels, type Size, type Viewport } from './viewport.ts';

interface Props extends PointerTask {
  readonly scene: Scene;
  readonly theme: Theme;
  readonly size: Size;
  /** Where the selected man stands; null when nobody is selected. */
  readonly selectedAt: Point | null;
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
  const { scene, theme, viewport, size, men, selectedAt, placing, moving } = props;
  const [over, setOver] = useState(false);
  const pointer = usePointer(props);
  const paint = useCallback(
    (context: Context) => paintScene(context._context, scene, theme, viewport),
    [scene, theme, viewport],
  );
  const move = (event: PointerEvent<HTMLElement>): void => {
    if (event.buttons === 0) setOver(manAt(men, pixelOf(event), viewport, HIT_RADIUS.fine) !== null);
    pointer.move(event);
  };
  const cursor = placing !== null ? 'is-placing' : over ? 'is-over-man' : '';

  return (
    <div
      className={`field-stage ${cursor}`}
      aria-hidden="true"
      data-scale={viewport.scale}
      data-ball-x={viewport.ball.px}
      data-ball-y={viewport.ball.py}
      onPointerDown={pointer.down}
      onPointerMove={move}
      onPointerUp={pointer.up}
      onPointerCancel={pointer.cancel}
    >
      <Stage width={size.width} height={size.height} listening={false}>
        <Layer listening={false}>
          <Shape sceneFunc={paint} listening={false} />
        </Layer>
        {moving !== null && <MovingLayer moving={moving} theme={theme} viewport={viewport} />}
        <Layer listening={false}>
          {selectedAt !== null && <SelectionRing at={selectedAt} theme={theme} viewport={viewport} />}
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

/** The pointer of this field, told of every change, and of Escape wherever the focus is. */
function usePointer(task: PointerTask): Pointer {
  const [pointer] = useState(() => createPointer(task));
  useLayoutEffect(() => pointer.update(task));
  useEffect(() => {
    const giveUp = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') pointer.cancel();
    };
    window.addEventListener('keydown', giveUp);
    return () => {
      window.removeEventListener('keydown', giveUp);
      pointer.stop();
    };
  }, [pointer]);
  return pointer;
}

interface RingProps {
  readonly at: Point;
  readonly theme: Theme;
  readonly viewport: Viewport;
}

/** A double ring, dark and light, that shows on any ground. */
function SelectionRing({ at, theme, viewport }: RingProps): ReactElement {
  const { px, py } = toPixels(viewport, at);
  const radius = Math.max(viewport.scale * 0.7, 12);
  const ring = { x: px, y: py, listening: false };
  return (
    <>
      <Circle {...ring} radius={radius} stroke={theme.colours.ground} strokeWidth={4} />
      <Circle {...ring} radius={radius} stroke={theme.colours.defence} strokeWidth={2} />
    </>
  );
}
