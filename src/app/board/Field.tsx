import { useState, type ReactElement } from 'react';
import { FieldStage, fitViewport, type Area, type EditorCommand } from '../../editor/index.ts';
import { LIGHT_THEME } from '../../scene/index.ts';
import { moveMan, sameMan } from '../../store/index.ts';
import { useSize } from '../parts/useSize.ts';
import { manName } from '../players/manName.ts';
import type { BoardModel } from '../session/model.ts';
import { useCommit, useSession } from '../session/session.ts';

interface Props {
  readonly model: BoardModel;
  /** The next click puts the selected man down. */
  readonly placing: boolean;
  readonly onPlaced: () => void;
}

/** The picture, and what pointing at it does. */
export function Field({ model, placing, onPlaced }: Props): ReactElement {
  const { store } = useSession();
  const commit = useCommit();
  const { size, ref } = useSize();
  const { state, lexicon } = model;
  const { scene, men } = model.shown;
  const { selected, turned } = state.view;
  const area = useStillArea(scene.bounds, state.preview !== null);
  const selectedAt = men.find(({ man }) => sameMan(man, selected))?.at ?? null;

  const obey = (command: EditorCommand): void => {
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
          men={men}
          selectedAt={selectedAt}
          placing={placing ? selected : null}
          onCommand={obey}
          onPreview={store.setPreview}
        />
      )}
    </div>
  );
}

/** The area to show, which holds still while a man is dragged: the field must not shift under the pointer. */
function useStillArea(bounds: Area, held: boolean): Area {
  const [still, setStill] = useState(bounds);
  if (!held && still !== bounds) setStill(bounds);
  return held ? still : bounds;
}
