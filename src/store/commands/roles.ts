import { ok, refused, type Result } from '../../base/index.ts';
import { references, sideFaults, type Playbook } from '../../document/index.ts';
import { asGroupId, type GroupId, type Role, type RoleId, type RoleSide, type Room } from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { nextIds } from './entries.ts';
import { freshId, withEntry } from './lists.ts';
import { freeName, keptLetter } from './names.ts';

/** Makes a role that stands in the middle and is told by himself; both can be changed. */
export function newRole(
  playbook: Playbook,
  args: { readonly name: string; readonly letter: string; readonly room: Room },
): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.roles, args.name, null, 'role');
  if (!name.ok) return name;
  const letter = keptLetter(args.letter);
  if (!letter.ok) return letter;
  const role: Role = {
    id: nextIds.role(playbook),
    letter: letter.value,
    name: name.value,
    room: args.room,
    group: freshGroup(playbook),
    side: { kind: 'middle' },
  };
  return ok({ ...playbook, roles: [...playbook.roles, role] });
}

/** Gives a role another letter; two roles may share one, as both ends often do. */
export function setRoleLetter(
  playbook: Playbook,
  args: { readonly role: RoleId; readonly letter: string },
): Result<Playbook, CommandProblem> {
  const letter = keptLetter(args.letter);
  return letter.ok ? withRole(playbook, args.role, (role) => ({ ...role, letter: letter.value })) : letter;
}

/** Puts a role into another position room. */
export function setRoleRoom(
  playbook: Playbook,
  args: { readonly role: RoleId; readonly room: Room },
): Result<Playbook, CommandProblem> {
  return withRole(playbook, args.role, (role) => ({ ...role, room: args.room }));
}

/**
 * Makes him the mate of another role, so that rules can speak of "the end on the call side"; null: of nobody. Refused when a
 * rule speaks of the mates he leaves and nobody would be left among them.
 */
export function setRoleMate(
  playbook: Playbook,
  args: { readonly role: RoleId; readonly mate: RoleId | null },
): Result<Playbook, CommandProblem> {
  const mate = playbook.roles.find(({ id }) => id === args.mate);
  if (args.mate !== null && mate === undefined) return refused({ kind: 'not-there', what: 'role' });
  const group = mate?.group ?? freshGroup(playbook);
  const changed = withRole(playbook, args.role, (role) => ({ ...role, group }));
  if (!changed.ok) return changed;
  const by = tellersOfNobody(changed.value);
  return by.length === 0 ? changed : refused({ kind: 'group-told', by });
}

/** Says how he chooses his side. Refused when a role, this one or one that follows him, would then have none in some look. */
export function setRoleSide(
  playbook: Playbook,
  args: { readonly role: RoleId; readonly side: RoleSide },
): Result<Playbook, CommandProblem> {
  const changed = withRole(playbook, args.role, (role) => ({ ...role, side: args.side }));
  if (!changed.ok) return changed;
  const [fault] = sideFaults(changed.value.roles);
  if (fault === undefined) return changed;
  return refused({ kind: fault.kind === 'circle' ? 'side-circle' : 'side-undecided', whose: fault.role.name });
}

/** The pressures and coverages, by name, that tell a group nobody is in. */
function tellersOfNobody(playbook: Playbook): readonly string[] {
  const groups = new Set<string>(playbook.roles.map(({ group }) => group));
  const names = references(playbook).flatMap(({ to, id, path }) => {
    const [list, at] = path;
    if (to !== 'group' || groups.has(id) || typeof at !== 'number') return [];
    return list === 'pressures' || list === 'coverages' ? [playbook[list][at]?.name ?? ''] : [];
  });
  return [...new Set(names)];
}

/** A group nobody is in yet. */
function freshGroup({ roles }: Playbook): GroupId {
  return asGroupId(
    freshId(
      roles.map(({ group }) => ({ id: group })),
      'group',
    ),
  );
}

function withRole(playbook: Playbook, id: RoleId, change: (role: Role) => Role): Result<Playbook, CommandProblem> {
  const roles = withEntry(playbook.roles, id, (role) => ok(change(role)), { kind: 'not-there', what: 'role' });
  return roles.ok ? ok({ ...playbook, roles: roles.value }) : roles;
}
