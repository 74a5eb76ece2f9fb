import type { ReactElement } from 'react';
import { ROOMS, type Role, type RoleId, type RoleSide } from '../../../engine/index.ts';
import { ROOM_WORDS } from '../../../report/index.ts';
import { setRoleLetter, setRoleMate, setRoleRoom, setRoleSide } from '../../../store/index.ts';
import { Radios, Select, type Option } from '../../parts/Choice.tsx';
import { useApp } from '../../session/session.ts';
import { SideSteps } from '../parts/SideSteps.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useEdit } from '../parts/useEdit.ts';
import { useRuleWords } from '../parts/useRuleWords.ts';

const SIDE_KINDS: readonly Option<RoleSide['kind']>[] = [
  { value: 'middle', label: 'in the middle' },
  { value: 'steps', label: 'on a side' },
];

/** One defensive role: his letter, his room, his mate, and how he chooses his side. */
export function RoleDesk({ id }: { readonly id: RoleId }): ReactElement | null {
  const edit = useEdit();
  const words = useRuleWords();
  const roles = useApp((state) => state.playbook.roles);
  const readOnly = useApp((state) => state.readOnly);
  const role = roles.find((each) => each.id === id);
  if (role === undefined) return null;
  const said = `${role.letter} (${role.name})`;
  const putSide = (side: RoleSide): void => {
    edit(`changed the side of ${said}`, null, (now) => setRoleSide(now, { role: id, side }));
  };
  return (
    <section className="editor" aria-label={role.name} key={id}>
      <div className="rule-fields">
        <TextField
          label="Letter"
          unit="one or two"
          value={role.letter}
          disabled={readOnly}
          onChange={(letter) =>
            edit(`changed the letter of ${said}`, null, (now) => setRoleLetter(now, { role: id, letter }))
          }
        />
        <Select
          label="Room"
          value={role.room}
          options={ROOMS.map((value) => ({ value, label: ROOM_WORDS[value] }))}
          disabled={readOnly}
          onChoose={(room) => {
            if (room !== null) edit(`changed the room of ${said}`, null, (now) => setRoleRoom(now, { role: id, room }));
          }}
        />
        <Select
          label="Told as one with"
          wide
          value={mateOf(role, roles)?.id ?? null}
          none="nobody: he is told by himself"
          options={mates(role, roles)}
          hint="Rules can then speak of the one of them on the call side, and the one away from it."
          disabled={readOnly}
          onChoose={(mate) =>
            edit(`changed who is told with ${said}`, null, (now) => setRoleMate(now, { role: id, mate }))
          }
        />
      </div>
      <p className="rule-said">{words.roleSide(role.side)}</p>
      <Radios
        legend="He plays"
        value={role.side.kind}
        options={SIDE_KINDS}
        onChoose={(kind) => putSide(kind === 'middle' ? { kind } : { kind, steps: [{ kind: 'fixed', side: 'right' }] })}
      />
      {role.side.kind === 'steps' && (
        <>
          <p className="hint">The first step that decides is his side; the last one must always decide.</p>
          <SideSteps
            of={`of ${role.letter}`}
            steps={role.side.steps}
            roles={roles.filter((other) => other.id !== id && other.side.kind === 'steps')}
            words={words}
            disabled={readOnly}
            onChange={(steps) => putSide({ kind: 'steps', steps })}
          />
        </>
      )}
    </section>
  );
}

/** The first other role of his group. */
function mateOf(role: Role, roles: readonly Role[]): Role | undefined {
  return roles.find((other) => other.id !== role.id && other.group === role.group);
}

/** One entry for each group there is, by everybody who is in it. */
function mates(role: Role, roles: readonly Role[]): readonly Option<RoleId>[] {
  const others = roles.filter(({ id }) => id !== role.id);
  const first = others.filter((each, at) => others.findIndex(({ group }) => group === each.group) === at);
  return first.map(({ id, group }) => ({
    value: id,
    label: others
      .filter((each) => each.group === group)
      .map(({ letter, name }) => `${letter} (${name})`)
      .join(', '),
  }));
}
