import { useMemo, type ReactElement } from 'react';
import { FieldStage, fitViewport } from '../../editor/index.ts';
import type { Analysis, RoleId } from '../../engine/index.ts';
import type { Spotted } from '../../quiz/index.ts';
import { buildScene, buildStanceScene, LIGHT_THEME, WHOLE_PICTURE } from '../../scene/index.ts';
import { useSize } from '../parts/useSize.ts';

interface Props {
  readonly analysis: Analysis;
  /** The man who is asked; he is ringed. */
  readonly role: RoleId;
  readonly offered: readonly Spotted[];
  /** Null: not answered yet, so nobody's job is shown. */
  readonly given: Spotted | null;
  readonly nameOf: (spotted: Spotted) => string;
  readonly onPoint: (spotted: Spotted) => void;
}

/** The field of a question: where everybody stands, and after the answer what everybody does. */
export function QuizField({ analysis, role, given }: Props): ReactElement {
  const { size, ref } = useSize();
  const stance = useMemo(() => buildStanceScene(analysis, WHOLE_PICTURE), [analysis]);
  const answered = given !== null;
  const scene = useMemo(
    () => (answered ? buildScene(analysis, { ...WHOLE_PICTURE, room: roomOf(analysis, role) }) : stance),
    [answered, analysis, role, stance],
  );
  const at = analysis.assignments.find(({ aligned }) => aligned.role.id === role)?.aligned ?? null;
  return (
    <div className="field-frame quiz-field" ref={ref}>
      {size !== null && size.width > 0 && (
        <FieldStage
          scene={scene}
          theme={LIGHT_THEME}
          viewport={fitViewport(scene.bounds, size, false)}
          size={size}
          men={[]}
          selectedAt={at}
          placing={null}
          onCommand={() => undefined}
          onPreview={() => undefined}
        />
      )}
    </div>
  );
}

function roomOf(analysis: Analysis, role: RoleId) {
  return analysis.assignments.find(({ aligned }) => aligned.role.id === role)?.aligned.role.room ?? null;
}
