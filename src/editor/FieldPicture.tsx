import type { Context } from 'konva/lib/Context';
import { useCallback, type ReactElement } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import type { Scene, Theme } from '../scene/index.ts';
import { paintScene } from './paint/paintScene.ts';
import { fitViewport, type Size } from './viewport.ts';

interface Props {
  readonly scene: Scene;
  readonly theme: Theme;
  readonly size: Size;
}

/** The field to be looked at; nothing on it can be moved. Hidden from screen readers: what it shows is said beside it. */
export function FieldPicture({ scene, theme, size }: Props): ReactElement {
  const paint = useCallback(
    (context: Context) => paintScene(context._context, scene, theme, fitViewport(scene.bounds, size, false)),
    [scene, theme, size],
  );
  return (
    <div aria-hidden="true">
      <Stage width={size.width} height={size.height} listening={false}>
        <Layer listening={false}>
          <Shape sceneFunc={paint} listening={false} />
        </Layer>
      </Stage>
    </div>
  );
}
