import { useMemo, type ReactElement } from 'react';
import { PickLayer, pickGround, pickStep, type PickEvent, type Size, type Viewport } from '../../../editor/index.ts';
import type { BoardModel } from '../../session/model.ts';
import { useSession } from '../../session/session.ts';
import { placeName } from './picked.ts';

interface Props {
  readonly model: BoardModel;
  readonly viewport: Viewport;
  readonly size: Size;
}

/** What lies over the field while a job is picked. */
export function PickOverlay({ model, viewport, size }: Props): ReactElement | null {
  const { store } = useSession();
  const { picking } = model.state.view;
  const { lexicon, shown } = model;
  const man = picking?.man ?? null;
  const ground = useMemo(() => pickGround(shown.analysis, shown.scene, man), [shown, man]);
  if (picking === null) return null;
  const nameOf = (event: PickEvent): string => {
    if (event.kind === 'back') return '';
    return event.kind === 'man' ? lexicon.roleName(event.role) : placeName(event.place, lexicon);
  };
  return (
    <PickLayer
      ground={ground}
      picking={picking}
      viewport={viewport}
      size={size}
      nameOf={nameOf}
      onEvent={(event) => store.setView({ picking: pickStep(picking, event) })}
    />
  );
}
