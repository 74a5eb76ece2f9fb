import type { ReactElement } from 'react';
import type { Front, FrontId } from '../../../engine/index.ts';
import { useApp, useSession } from '../../session/session.ts';
import { useRuleWords } from '../parts/useRuleWords.ts';
import { BaseJobFields } from './BaseJobFields.tsx';
import { HandSpots } from './HandSpots.tsx';
import { menOf, type FrontManOf } from './men.ts';
import { ReplaceMan } from './ReplaceMan.tsx';
import { RuleList } from './RuleList.tsx';

/** Where each of a front's eleven stands and what he plays when nobody tells him anything else. */
export function FrontDesk({ id }: { readonly id: FrontId }): ReactElement | null {
  const { store } = useSession();
  const front = useApp((state) => state.playbook.fronts.find((each) => each.id === id) ?? null);
  const roles = useApp((state) => state.playbook.roles);
  const [selected] = useApp((state) => state.view.selection);
  if (front === null) return null;
  const men = menOf(front, roles);
  const picked = selected?.kind === 'defender' ? men.find(({ role }) => role.id === selected.role) : undefined;
  const shown = picked ?? men[0];
  return (
    <div className="editor">
      <p className="hint">Pick a man here or on the field.</p>
      <div className="man-tabs" role="group" aria-label={`The eleven of ${front.name}`}>
        {men.map(({ role }) => (
          <button
            key={role.id}
            type="button"
            aria-pressed={role.id === shown?.role.id}
            aria-label={`${role.letter}, ${role.name}`}
            title={role.name}
            onClick={() => store.setView({ selection: [{ kind: 'defender', role: role.id }] })}
          >
            {role.letter}
          </button>
        ))}
      </div>
      <HandSpots front={front} />
      {shown !== undefined && <Man key={`${front.id} ${shown.role.id}`} front={front} man={shown} />}
    </div>
  );
}

interface ManProps {
  readonly front: Front;
  readonly man: FrontManOf;
}

function Man({ front, man }: ManProps): ReactElement {
  const words = useRuleWords();
  const readOnly = useApp((state) => state.readOnly);
  const { role } = man;
  return (
    <section className="editor-part" aria-label={`${role.letter}, ${role.name}`}>
      <h3>
        {role.letter} · {role.name}
      </h3>
      <p className="hint">{words.roleSide(role.side)}</p>
      <h4>Where he stands</h4>
      <RuleList front={front.id} man={man} words={words} disabled={readOnly} />
      <h4>What he plays when nobody tells him anything</h4>
      <BaseJobFields front={front.id} man={man} words={words} disabled={readOnly} />
      <ReplaceMan front={front} role={role} />
    </section>
  );
}
