import { useMemo, type ReactElement } from 'react';
import { FieldPicture, fitViewport, pickGround, PickLayer, type PickGround } from '../../editor/index.ts';
import type { Analysis, RoleId } from '../../engine/index.ts';
import { sameSpotted, type Asked, type Spotted } from '../../quiz/index.ts';
import { buildScene, buildStanceScene, WHOLE_PICTURE, type Scene, type SceneOptions } from '../../scene/index.ts';
import { useSize } from '../parts/useSize.ts';
import { useTheme } from '../theme/useTheme.ts';

interface Props {
  readonly analysis: Analysis;
  /** The man who is asked; he is ringed. */
  readonly role: RoleId;
  readonly asked: Asked;
  readonly offered: readonly Spotted[];
  /** Not before the answer: what everybody does. Then nothing can be pointed at any more. */
  readonly answered: boolean;
  readonly nameOf: (spotted: Spotted) => string;
  readonly onPoint: (spotted: Spotted) => void;
}

/** The field of a question: where everybody stands, to be pointed at, and after the answer what everybody does. */
export function QuizField(props: Props): ReactElement {
  const { analysis, role, asked, offered, answered, nameOf, onPoint } = props;
  const theme = useTheme();
  const { size, ref } = useSize();
  const scene = useMemo(() => {
    const man = analysis.assignments.find(({ aligned }) => aligned.role.id === role)?.aligned;
    const ringed: SceneOptions = { ...WHOLE_PICTURE, lit: { roles: [role], players: [], gaps: [] } };
    return answered
      ? buildScene(analysis, { ...ringed, room: man?.role.room ?? null })
      : buildStanceScene(analysis, ringed);
  }, [analysis, role, answered]);
  const ground = useMemo(
    () => groundOf(analysis, scene, { role, asked, offered }),
    [analysis, scene, role, asked, offered],
  );
  return (
    <div className="field-frame quiz-field" ref={ref}>
      {size !== null && size.width > 0 && (
        <>
          <FieldPicture scene={scene} theme={theme} size={size} />
          {!answered && (
            <PickLayer
              ground={ground}
              picking={{ man: role, place: null }}
              viewport={fitViewport(scene.bounds, size, false)}
              size={size}
              nameOf={(event) => (event.kind === 'place' ? nameOf(event.place) : '')}
              onEvent={(event) => {
                if (event.kind === 'place') onPoint(event.place);
              }}
            />
          )}
        </>
      )}
    </div>
  );
}

type About = Pick<Props, 'role' | 'asked' | 'offered'>;

/** Against the run only gaps can be pointed at; against the pass everything else that is offered. */
function groundOf(analysis: Analysis, scene: Scene, { role, asked, offered }: About): PickGround {
  const all = pickGround(analysis, scene, role);
  const nothing: PickGround = { defenders: [], gaps: [], receivers: [], passer: null, zones: [] };
  if (asked === 'run') return { ...nothing, gaps: all.gaps };
  const zones = all.zones.filter(({ zone, side }) =>
    offered.some((each) => sameSpotted(each, { kind: 'zone', zone, side })),
  );
  return { ...nothing, receivers: all.receivers, passer: all.passer, zones };
}
