import type { ReactElement } from 'react';
import type { Front, Role, RoleId } from '../../../engine/index.ts';
import { replaceRole } from '../../../store/index.ts';
import { Select } from '../../parts/Choice.tsx';
import { useApp, useSession } from '../../session/session.ts';
import { useEdit } from '../parts/useEdit.ts';

/** Another man for this one: he takes over rules, base job and spots by hand. For sub packages. */
export function ReplaceMan({ front, role }: { readonly front: Front; readonly role: Role }): ReactElement | null {
  const { store } = useSession();
  const edit = useEdit();
  const roles = useApp((state) => state.playbook.roles);
  const readOnly = useApp((state) => state.readOnly);
  const bench = roles.filter(({ id }) => !front.roles.some((each) => each.role === id));
  if (bench.length === 0) return <p className="hint">Everybody of the playbook is on the field in this front.</p>;
  const bring = (by: RoleId | null): void => {
    const man = bench.find(({ id }) => id === by);
    if (man === undefined) return;
    const done = edit(`brought in ${man.letter} (${man.name}) for ${role.letter} in ${front.name}`, null, (now) =>
      replaceRole(now, { front: front.id, role: role.id, by: man.id }),
    );
    if (done) store.setView({ selection: [{ kind: 'defender', role: man.id }] });
  };
  return (
    <Select
      label={`Bring in for ${role.letter}`}
      value={null}
      none="nobody"
      options={bench.map(({ id, letter, name }) => ({ value: id, label: `${letter} (${name})` }))}
      hint="He takes over where the other one stands and what he plays."
      disabled={readOnly}
      onChoose={bring}
    />
  );
}
