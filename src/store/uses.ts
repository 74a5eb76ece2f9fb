import { references, type Playbook, type Reference } from '../document/index.ts';
import type { CoverageId, FrontId, GroupId, LookId, PressureId, RoleId } from '../engine/index.ts';

/** The lists of a playbook that have an editor of their own, by the names they have in the file. */
export const SECTIONS = ['pressures', 'looks', 'fronts', 'coverages', 'roles'] as const;
export type Section = (typeof SECTIONS)[number];

/** One entry of one of those lists. */
export type Entry =
  | { readonly section: 'pressures'; readonly id: PressureId }
  | { readonly section: 'looks'; readonly id: LookId }
  | { readonly section: 'fronts'; readonly id: FrontId }
  | { readonly section: 'coverages'; readonly id: CoverageId }
  | { readonly section: 'roles'; readonly id: RoleId };

/** A part of the playbook that names the entry. */
export interface Use {
  readonly by: Section | 'calls' | 'opponents' | 'check-outs';
  /** The name the coach knows it by; of a check-out table, its call's. */
  readonly name: string;
  /**
   * True: it cannot be without the entry, which therefore cannot be deleted. False: it only mentions it (a spot by hand, an
   * opponent's look), and the mention goes when the entry goes.
   */
  readonly holds: boolean;
}

const TARGETS = {
  pressures: 'pressure',
  looks: 'look',
  fronts: 'front',
  coverages: 'coverage',
  roles: 'role',
} as const satisfies Record<Section, Reference['to']>;

/** Everything that uses the entry, each user once, in the order of the file. Empty: nothing changes when it is deleted. */
export function usesOf(playbook: Playbook, entry: Entry): readonly Use[] {
  const group = entry.section === 'roles' ? groupOfHisOwn(playbook, entry.id) : null;
  const uses = references(playbook)
    .filter(({ to, id }) => (to === TARGETS[entry.section] && id === entry.id) || (to === 'group' && id === group))
    .flatMap((reference) => useOf(playbook, reference));
  // A role that leans on itself is no reason to keep it.
  const ofOthers = uses.filter(({ by, at }) => by !== entry.section || playbook[by][at]?.id !== entry.id);
  const seen = new Map<string, Use>();
  for (const { by, at, name, holds } of ofOthers) {
    const key = `${by} ${at}`;
    seen.set(key, { by, name, holds: holds || seen.get(key)?.holds === true });
  }
  return [...seen.values()];
}

/** The group of a role that is alone in it, so that whoever tells the group tells him; null: he has mates. */
function groupOfHisOwn({ roles }: Playbook, id: RoleId): GroupId | null {
  const group = roles.find((role) => role.id === id)?.group ?? null;
  return roles.some((role) => role.id !== id && role.group === group) ? null : group;
}

function useOf(playbook: Playbook, { path }: Reference): readonly (Use & { readonly at: number })[] {
  const [list, at, part] = path;
  if (typeof at !== 'number') return [];
  const mention = part === 'byHand' || part === 'notAgainst' || part === 'waivers';
  switch (list) {
    case 'pressures':
    case 'fronts':
    case 'coverages':
    case 'roles':
    case 'calls':
      return [{ by: list, at, name: playbook[list][at]?.name ?? '', holds: !mention }];
    case 'opponents':
      return [{ by: list, at, name: playbook.opponents[at]?.name ?? '', holds: false }];
    case 'checkOuts': {
      const call = playbook.checkOuts[at]?.call;
      return [{ by: 'check-outs', at, name: playbook.calls.find(({ id }) => id === call)?.name ?? '', holds: true }];
    }
    default:
      throw new Error(`A reference from a list that names nothing: ${String(list)}`);
  }
}
