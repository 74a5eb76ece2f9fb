import type { Context } from 'konva/lib/Context';
import type { Layer as KonvaLayer } from 'konva/lib/Layer';
import { useCallback, useEffect, useMemo, useRef, useSyncExternalStore, type ReactElement } from 'react';
// Of Konva only its core is loaded: everything on the field is painted by functions of our own.
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import {
  buildDragScene,
  draggedShapes,
  type DraggedMan,
  type DragScene,
  type Scene,
  type Shape as Drawn,
  type Theme,
} from '../scene/index.ts';
import { manKey, sameMan, type Man, type Preview, type Standing } from '../store/index.ts';
import type { Live } from './live.ts';
import { paintHand } from './paint/paintHand.ts';
import { paintShapes } from './paint/paintScene.ts';
import { minus, type Hints } from './tools/index.ts';
import type { Size, Viewport } from './viewport.ts';

/** Shapes that change with time, in a layer of their own: the scene below them is not painted again. */
export interface Moving extends Live<number> {
  readonly shapesAt: (t: number) => readonly Drawn[];
}

interface Props {
  readonly scene: Scene;
  readonly theme: Theme;
  readonly viewport: Viewport;
  readonly size: Size;
  /** Everybody, where the scene has him. */
  readonly men: readonly Standing[];
  readonly selection: readonly Man[];
  /** Those a hand drags, where they are now. */
  readonly dragged: Live<Preview | null>;
  readonly hints: Live<Hints | null>;
  /** What moves over the scene; null: nothing does. */
  readonly moving: Moving | null;
}

/**
 * The picture in layers, none of which Konva has to listen on: the scene, what moves with time, and what the hand is at. A man
 * who is dragged is lifted out of the scene into the layer of the hand, and each frame paints that one alone, past React.
 */
export function FieldLayers(props: Props): ReactElement {
  const { scene, theme, size, men, selection, dragged, hints, moving } = props;
  // The viewport is another object each time; the picture only changes with what is in it.
  const { scale, ball, turned } = props.viewport;
  const { px, py } = ball;
  const viewport = useMemo<Viewport>(() => ({ scale, ball: { px, py }, turned }), [scale, px, py, turned]);
  const apart = useMemo(() => rememberApart(scene), [scene]);
  const still = useRef<KonvaLayer>(null);
  const hand = useRef<KonvaLayer>(null);
  useHandPaints({ still, hand, dragged, hints });
  const paintStill = useCallback(
    (context: Context) => paintShapes(context._context, apart(dragged.now() ?? []).still, theme, viewport),
    [apart, dragged, theme, viewport],
  );
  const paintHeld = (context: Context): void => {
    const held = dragged.now() ?? [];
    const spotOf = (man: DraggedMan, of: readonly Standing[]) => of.find((each) => sameMan(each.man, man))?.at;
    const shapes = draggedShapes(apart(held), (man) => {
      const [from, to] = [spotOf(man, men), spotOf(man, held)];
      return from === undefined || to === undefined ? { x: 0, y: 0 } : minus(to, from);
    });
    paintShapes(context._context, shapes, theme, viewport);
    const spots = selection.flatMap((man) => spotOf(man, held) ?? spotOf(man, men) ?? []);
    paintHand(context._context, { spots, hints: hints.now(), theme, viewport, size });
  };
  return (
    <Stage width={size.width} height={size.height} listening={false}>
      <Layer listening={false} ref={still}>
        <Shape sceneFunc={paintStill} listening={false} />
      </Layer>
      {moving !== null && <MovingLayer moving={moving} theme={theme} viewport={viewport} />}
      <Layer listening={false} ref={hand}>
        <Shape sceneFunc={paintHeld} listening={false} />
      </Layer>
    </Stage>
  );
}

/** The scene taken apart for those men; done again only for others. */
function rememberApart(scene: Scene): (held: Preview) => DragScene {
  let last: { readonly key: string; readonly apart: DragScene } | null = null;
  return (held) => {
    const key = keyOf(held);
    if (last?.key !== key) {
      last = {
        key,
        apart: buildDragScene(
          scene,
          held.map(({ man }) => man),
        ),
      };
    }
    return last.apart;
  };
}

function keyOf(held: Preview | null): string {
  return (held ?? []).map(({ man }) => manKey(man)).join();
}

interface HandPaints extends Pick<Props, 'dragged' | 'hints'> {
  readonly still: { readonly current: KonvaLayer | null };
  readonly hand: { readonly current: KonvaLayer | null };
}

/** Paints what the hand is at whenever it changes, in the same frame; the scene only when other men are lifted out of it. */
function useHandPaints({ still, hand, dragged, hints }: HandPaints): void {
  useEffect(() => {
    let lifted = keyOf(dragged.now());
    let asked = false;
    const paint = (): void => {
      asked = false;
      const key = keyOf(dragged.now());
      if (key !== lifted) {
        // Once they are let go a new scene is on its way, and is painted in the same frame.
        if (key === '') still.current?.batchDraw();
        else still.current?.drawScene();
        lifted = key;
      }
      hand.current?.drawScene();
    };
    const ask = (): void => {
      if (!asked) queueMicrotask(paint);
      asked = true;
    };
    const ends = [dragged.subscribe(ask), hints.subscribe(ask)];
    return () => ends.forEach((end) => end());
  }, [still, hand, dragged, hints]);
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
