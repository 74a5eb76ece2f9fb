import { lazy, Suspense, useMemo, useState, type ReactElement } from 'react';
import {
  FieldStage,
  pickStep,
  viewportOf,
  type Area,
  type Camera,
  type EditorCommand,
  type Live,
  type Moving,
} from '../../editor/index.ts';
import { shapesAt } from '../../scene/index.ts';
import { heldMen, type AppState, type AppStore, type Preview } from '../../store/index.ts';
import { useSize } from '../parts/useSize.ts';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { useTheme } from '../theme/useTheme.ts';
import { useWalking, type Walk } from '../walk/useWalk.ts';
import { ShoveButtons } from './ShoveButtons.tsx';
import { useMoveMen } from './useMoveMen.ts';
import { useSnap } from './useSnap.ts';

/** Loaded when a job is first picked on the field. */
const PickOverlay = lazy(async () => ({ default: (await import('../desk/pressures/PickOverlay.tsx')).PickOverlay }));

interface Props {
  readonly model: BoardModel;
  readonly walk: Walk;
  readonly camera: Camera;
  readonly onCamera: (camera: Camera) => void;
  /** The next click puts the selected man down. */
  readonly placing: boolean;
  readonly onPlaced: () => void;
}

/** The picture, and what pointing at it does. */
export function Field({ model, walk, camera, onCamera, placing, onPlaced }: Props): ReactElement {
  const { store } = useSession();
  const move = useMoveMen(model);
  const theme = useTheme();
  const { size, ref } = useSize();
  const { state, shown } = model;
  const { men } = shown;
  const { turned, several, snapping, picking } = state.view;
  // Nobody is selected, placed or dragged while a job is picked.
  const selection = picking === null ? state.view.selection : NOBODY_PICKED;
  const moving = useMoving(walk);
  const dragged = useMemo(() => draggedIn(store), [store]);
  const scene = moving === null ? shown.scene : walk.scene.still;
  const held = state.preview !== null;
  const area = useStill<Area>(scene.bounds, held);
  const snap = useSnap(useStill(shown.analysis, held), state.playbook.words);

  const obey = (command: EditorCommand): void => {
    // Once the ball is snapped nobody can be picked or moved here.
    if (moving !== null) return;
    if (picking !== null) {
      // What a job is picked by is still being loaded. Who is pressed until then is picked all the same; nobody is moved.
      const man = command.kind === 'select' ? command.men.at(-1) : undefined;
      if (man?.kind === 'defender') {
        store.setView({ picking: pickStep(picking, { kind: 'man', role: man.role }) });
      }
      return;
    }
    switch (command.kind) {
      case 'select':
        store.setView({ selection: command.men });
        break;
      case 'done':
        onPlaced();
        break;
      case 'move':
        move(command.moves, null);
        // A refused move would leave them where the pointer let them go.
        store.setPreview(null);
        break;
    }
  };

  // What stands under the field may grow by a line meanwhile.
  const room = useStill(size, held);
  const sight = room === null || room.width === 0 ? null : { area, size: room, turned };
  return (
    <div className="field-frame" ref={ref}>
      {sight !== null && (
        <>
          <FieldStage
            scene={scene}
            theme={theme}
            sight={sight}
            camera={camera}
            men={moving === null ? men : NOBODY}
            selection={selection}
            moving={moving}
            dragged={dragged}
            placing={placing && moving === null ? (selection[0] ?? null) : null}
            several={several}
            snapping={snapping}
            snap={snap}
            onCommand={obey}
            onPreview={picking === null ? store.setPreview : NO_PREVIEW}
            onCamera={onCamera}
          />
          {picking !== null && (
            <Suspense fallback={null}>
              <PickOverlay model={model} viewport={viewportOf(sight, camera)} size={sight.size} />
            </Suspense>
          )}
          {camera !== null && <ShoveButtons sight={sight} camera={camera} onCamera={onCamera} />}
        </>
      )}
    </div>
  );
}

const NOBODY: BoardModel['shown']['men'] = [];
const NOBODY_PICKED: AppState['view']['selection'] = [];
const NO_PREVIEW = (): void => undefined;

/** The men a hand drags, frame by frame; it passes React by. */
function draggedIn(store: AppStore): Live<Preview | null> {
  return {
    now: () => heldMen(store.get()),
    subscribe: (listener) =>
      store.subscribe((state, before) => {
        if (state.preview !== before.preview) listener();
      }),
  };
}

/** What moves over the field after the snap; null at the start, where the board is as it always is. */
function useMoving({ clock, scene }: Walk): Moving | null {
  const walking = useWalking(clock);
  return useMemo(
    () =>
      walking
        ? { now: () => clock.now().t, subscribe: clock.subscribe, shapesAt: (t: number) => shapesAt(scene, t) }
        : null,
    [walking, clock, scene],
  );
}

/** A value that holds still while men are dragged: the field must not shift under the pointer. */
function useStill<Value>(value: Value, held: boolean): Value {
  const [still, setStill] = useState(value);
  if (!held && still !== value) setStill(value);
  return held ? still : value;
}
