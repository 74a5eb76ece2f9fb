import { memo, lazy, Suspense, type ReactElement } from 'react';
import type { Camera } from '../../editor/index.ts';
import { ZOOMS } from '../../store/index.ts';
import { Radios } from '../parts/Choice.tsx';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { BALL_WORDS } from '../session/words.ts';
import { WalkBar } from '../walk/WalkBar.tsx';
import { useWalk, type Walk } from '../walk/useWalk.ts';
import { Field } from './Field.tsx';
import { FieldTools } from './FieldTools.tsx';
import { GapRow } from './GapRow.tsx';
import { Legend } from './Legend.tsx';
import { LookStrip } from './LookStrip.tsx';
import { useCamera } from './useCamera.ts';
import { ZOOM_WORDS } from './zoomWords.ts';

/** Loaded when a job is first picked on the field. */
const PickPanel = lazy(async () => ({ default: (await import('../desk/pressures/PickPanel.tsx')).PickPanel }));

interface Props {
  readonly model: BoardModel;
  readonly placing: boolean;
  readonly onPlaced: () => void;
}

/** The field with everything that belongs under it. */
export function BoardPanel({ model, placing, onPlaced }: Props): ReactElement {
  const walk = useWalk(model);
  const [camera, setCamera] = useCamera(model.state.view.zoom);
  return (
    <section className="panel board-panel" aria-labelledby="board-title">
      <BoardHead model={model} camera={camera} onCamera={setCamera} />
      <Field model={model} walk={walk} camera={camera} onCamera={setCamera} placing={placing} onPlaced={onPlaced} />
      {model.state.view.picking === null ? (
        <UnderField model={model} walk={walk} />
      ) : (
        // The field gets the room of what is not needed now.
        <Suspense fallback={null}>
          <PickPanel model={model} />
        </Suspense>
      )}
    </section>
  );
}

interface UnderProps {
  readonly model: BoardModel;
  readonly walk: Walk;
}

/** What stands under the field; made again only for what it shows. */
const UnderField = memo(function UnderField({ model, walk }: UnderProps): ReactElement {
  return (
    <>
      <WalkBar walk={walk} />
      <Legend scene={model.shown.scene} />
      <GapRow gaps={model.shown.report.gaps} turned={model.state.view.turned} />
      <LookStrip state={model.state} />
    </>
  );
});

interface HeadProps {
  readonly model: BoardModel;
  readonly camera: Camera;
  readonly onCamera: (camera: Camera) => void;
}

function BoardHead({ model, camera, onCamera }: HeadProps): ReactElement {
  const { store } = useSession();
  const { analysis, tried } = model.shown;
  const { view } = model.state;
  return (
    <header className={tried ? 'board-head is-tried' : 'board-head'}>
      <div className="board-title">
        <div className="board-names">
          <h2 id="board-title">{analysis.setup.look.name}</h2>
          <span className="verdict-word board-verdict">
            <VerdictMark verdict={analysis.verdict} /> {VERDICT_NAMES[analysis.verdict]}
          </span>
        </div>
        <p className="board-sub">
          {tried ? (
            'As the suggestion would make it'
          ) : (
            <>
              {analysis.facts.personnel} personnel, {BALL_WORDS[analysis.setup.spot]}
              <span className="where-room">{view.turned ? ', offence at the bottom' : ', defence at the bottom'}</span>
            </>
          )}
        </p>
      </div>
      <div className="view-tools">
        <Radios
          legend="How much of the field"
          hideLegend
          value={view.zoom}
          options={ZOOMS.map((value) => ({ value, label: ZOOM_WORDS[value] }))}
          onChoose={(zoom) => store.setView({ zoom })}
        />
        <button type="button" aria-pressed={view.answers} onClick={() => store.setView({ answers: !view.answers })}>
          Who has whom
        </button>
        <button type="button" aria-pressed={view.turned} onClick={() => store.setView({ turned: !view.turned })}>
          Turn<span className="long-words"> the board</span>
        </button>
        <FieldTools area={model.shown.scene.bounds} camera={camera} view={view} onCamera={onCamera} />
      </div>
    </header>
  );
}
