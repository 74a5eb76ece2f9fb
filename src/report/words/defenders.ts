import type { GroupId, Role, RoleId, Who } from '../../engine/index.ts';
import { listed } from './lists.ts';

/** The roles of a playbook in words. An unknown role is a broken promise, except inside a rule, where it can be read. */
export interface DefenderWords {
  /** "N". */
  readonly letter: (role: RoleId) => string;
  /** "nose". */
  readonly name: (role: RoleId) => string;
  /** In a sentence: "N", or "E (left end)" when two roles share a letter. */
  readonly role: (role: RoleId) => string;
  /** "E, N and T"; "nobody" for an empty list. */
  readonly roles: (roles: readonly RoleId[]) => string;
  /** A defender of a rule: "E", "the call-side E or T". */
  readonly who: (who: Who) => string;
  /** The same inside a sentence about somebody else: "the E". */
  readonly theMan: (who: Who) => string;
}

/** Said in a rule that points at a role or group the playbook does not have. */
const NOT_IN_PLAYBOOK = 'a man who is not in this playbook';

/** Words for the roles of a playbook. */
export function defenderWords(roles: readonly Role[]): DefenderWords {
  const byId = new Map(roles.map((role) => [role.id, role]));
  const found = (id: RoleId): Role => {
    const role = byId.get(id);
    if (role === undefined) throw new Error(`Role ${id} is not in the playbook`);
    return role;
  };
  const said = (role: Role): string => {
    const shared = roles.filter((other) => other.letter === role.letter).length > 1;
    return shared ? `${role.letter} (${role.name})` : role.letter;
  };
  const role = (id: RoleId): string => said(found(id));
  const who = (ref: Who): string => {
    if (ref.kind === 'group') return groupText(ref.group, ref.side, roles);
    const known = byId.get(ref.role);
    return known === undefined ? NOT_IN_PLAYBOOK : said(known);
  };
  return {
    letter: (id) => found(id).letter,
    name: (id) => found(id).name,
    role,
    roles: (ids) => listed(ids.map(role), 'nobody'),
    who,
    theMan: (ref) => (ref.kind === 'role' && byId.has(ref.role) ? `the ${who(ref)}` : who(ref)),
  };
}

/**
 * Both men of a group often have one letter; then he is "the call-side E". Where the letters differ he is called by what the
 * names of the first two end with: "the call-side outside backer"; and where they share no word, by the letters.
 */
function groupText(group: GroupId, side: 'call' | 'away', roles: readonly Role[]): string {
  const men = roles.filter((role) => role.group === group);
  const letters = [...new Set(men.map((role) => role.letter))];
  if (letters.length === 0) return NOT_IN_PLAYBOOK;
  const shared = letters.length > 1 ? sharedEnd(men.slice(0, 2).map(({ name }) => name)) : '';
  return `the ${side}-side ${shared === '' ? listed(letters, '', 'or') : shared}`;
}

/** The words two names end with: "outside backer" of "Strong outside backer" and "Weak outside backer". Lower case. */
function sharedEnd(names: readonly string[]): string {
  const [first = [], second = []] = names.map((name) => name.toLowerCase().split(/\s+/).toReversed());
  const differs = first.findIndex((word, index) => word !== second[index]);
  return first
    .slice(0, differs === -1 ? first.length : differs)
    .toReversed()
    .join(' ');
}
