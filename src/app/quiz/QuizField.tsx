import { useMemo, type ReactElement } from 'react';
import { FieldPicture } from '../../editor/index.ts';
import type { Analysis, RoleId } from '../../engine/index.ts';
import { buildScene, buildStanceScene, WHOLE_PICTURE, type SceneOptions } from '../../scene/index.ts';
import { useSize } from '../parts/useSize.ts';
import { useTheme } from '../theme/useTheme.ts';

interface Props {
  readonly analysis: Analysis;
  /** The man who is asked; he is ringed. */
  readonly role: RoleId;
  /** Not before the answer: what everybody does. */
  readonly answered: boolean;
}

/** The field of a question: where everybody stands, and after the answer what everybody does. */
export function QuizField({ analysis, role, answered }: Props): ReactElement {
  const theme = useTheme();
  const { size, ref } = useSize();
  const scene = useMemo(() => {
    const man = analysis.assignments.find(({ aligned }) => aligned.role.id === role)?.aligned;
    const ringed: SceneOptions = { ...WHOLE_PICTURE, lit: { roles: [role], players: [], gaps: [] } };
    return answered
      ? buildScene(analysis, { ...ringed, room: man?.role.room ?? null })
      : buildStanceScene(analysis, ringed);
  }, [analysis, role, answered]);
  return (
    <div className="field-frame quiz-field" ref={ref}>
      {size !== null && size.width > 0 && <FieldPicture scene={scene} theme={theme} size={size} />}
    </div>
  );
}
