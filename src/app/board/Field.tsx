import { useMemo, useState, type ReactElement } from 'react';
import { FieldStage, fitViewport, type Area, type EditorCommand, type Moving } from '../../editor/index.ts';
import { LIGHT_THEME, shapesAt } from '../../scene/index.ts';
import { moveMan, sameMan } from '../../store/index.ts';
import { useSize } from '../parts/useSize.ts';
import { manName } from '../players/manName.ts';
import type { BoardModel } from '../session/model.ts';
import { useCommit, useSession } from '../session/session.ts';
import { useWalking, type Walk } from '../walk/useWalk.ts';

interface Props {
  readonly model: BoardModel;
  readonly walk: Walk;
  /** The next click puts the selected man down. */
  readonly placing: boolean;
  readonly onPlaced: () => void;
}

/** The picture, and what pointing at it does. */
export function Field({ model, walk, placing, onPlaced }: Props): ReactElement {
  const { store } = useSession();
  const commit = useCommit();
  const { size, ref } = useSize();
  const { state, lexicon } = model;
  const { men } = model.shown;
  const { selected, turned } = state.view;
  const moving = useMoving(walk);
  const scene = moving === null ? model.shown.scene : walk.scene.still;
  const area = useStillArea(scene.bounds, state.preview !== null);
  const selectedAt = men.find(({ man }) => sameMan(man, selected))?.at ?? null;

  const obey = (command: EditorCommand): void => {
    // Once the ball is snapped nobody can be picked or moved here.
    if (moving !== null) return;
    switch (command.kind) {
      case 'select':
        store.setView({ selected: command.man });
        break;
      case 'done':
        onPlaced();
        break;
      case 'move':
        commit({
          label: `moved ${manName(command.man, lexicon)}`,
          look: state.board.look,
          gesture: null,
          change: (playbook) => moveMan(playbook, store.get().board, command.man, command.to),
        });
        // A refused move would leave him where the pointer let him go.
        store.setPreview(null);
        break;
    }
  };

  return (
    <div className="field-frame" ref={ref}>
      {size !== null && size.width > 0 && (
        <FieldStage
          scene={scene}
          theme={LIGHT_THEME}
          viewport={fitViewport(area, size, turned)}
          size={size}
          men={moving === null ? men : NOBODY}
          selectedAt={moving === null ? selectedAt : null}
          moving={moving}
          placing={placing && moving === null ? selected : null}
          onCommand={obey}
          onPreview={store.setPreview}
        />
      )}
    </div>
  );
}

const NOBODY: BoardModel['shown']['men'] = [];

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

/** The area to show, which holds still while a man is dragged: the field must not shift under the pointer. */
function useStillArea(bounds: Area, held: boolean): Area {
  const [still, setStill] = useState(bounds);
  if (!held && still !== bounds) setStill(bounds);
  return held ? still : bounds;
}
