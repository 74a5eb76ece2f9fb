import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import {
  asCoverageId,
  asFrontId,
  asLookId,
  asPressureId,
  asRoleId,
  type CoverageId,
  type FrontId,
  type LookId,
  type PressureId,
  type RoleId,
} from '../../engine/index.ts';
import type { CommandProblem, Part } from '../problems.ts';
import { usesOf, type Entry, type Section } from '../uses.ts';
import { freshId, withEntry } from './lists.ts';
import { freeName } from './names.ts';

/** Ids for what is made next; the same playbook always gives the same ones. */
export const nextIds = {
  pressure: ({ pressures }: Playbook): PressureId => asPressureId(freshId(pressures, 'pressure')),
  look: ({ looks }: Playbook): LookId => asLookId(freshId(looks, 'look')),
  front: ({ fronts }: Playbook): FrontId => asFrontId(freshId(fronts, 'front')),
  coverage: ({ coverages }: Playbook): CoverageId => asCoverageId(freshId(coverages, 'coverage')),
  role: ({ roles }: Playbook): RoleId => asRoleId(freshId(roles, 'role')),
} as const;

/** The entry that is made next in a section. */
export function nextEntry(playbook: Playbook, section: Section): Entry {
  switch (section) {
    case 'pressures':
      return { section, id: nextIds.pressure(playbook) };
    case 'looks':
      return { section, id: nextIds.look(playbook) };
    case 'fronts':
      return { section, id: nextIds.front(playbook) };
    case 'coverages':
      return { section, id: nextIds.coverage(playbook) };
    case 'roles':
      return { section, id: nextIds.role(playbook) };
  }
}

/** Gives an entry another name; no two of a list have the same. */
export function renameEntry(
  playbook: Playbook,
  { entry, name }: { readonly entry: Entry; readonly name: string },
): Result<Playbook, CommandProblem> {
  switch (entry.section) {
    case 'pressures':
      return inList(renamed(playbook.pressures, entry.id, name, 'pressure'), (pressures) => ({
        ...playbook,
        pressures,
      }));
    case 'looks':
      return inList(renamed(playbook.looks, entry.id, name, 'look'), (looks) => ({ ...playbook, looks }));
    case 'fronts':
      return inList(renamed(playbook.fronts, entry.id, name, 'front'), (fronts) => ({ ...playbook, fronts }));
    case 'coverages':
      return inList(renamed(playbook.coverages, entry.id, name, 'coverage'), (coverages) => ({
        ...playbook,
        coverages,
      }));
    case 'roles':
      return inList(renamed(playbook.roles, entry.id, name, 'role'), (roles) => ({ ...playbook, roles }));
  }
}

/** Puts a copy of an entry behind it, under that name and the id that is next. A front's copy stands by hand as it does. */
export function copyEntry(
  playbook: Playbook,
  { entry, name }: { readonly entry: Entry; readonly name: string },
): Result<Playbook, CommandProblem> {
  switch (entry.section) {
    case 'pressures': {
      const id = nextIds.pressure(playbook);
      return inList(copied(playbook.pressures, entry.id, { id, name }, 'pressure'), (pressures) => ({
        ...playbook,
        pressures,
      }));
    }
    case 'looks': {
      const id = nextIds.look(playbook);
      return inList(copied(playbook.looks, entry.id, { id, name }, 'look'), (looks) => ({ ...playbook, looks }));
    }
    case 'fronts': {
      const id = nextIds.front(playbook);
      return inList(copied(playbook.fronts, entry.id, { id, name }, 'front'), (fronts) => ({ ...playbook, fronts }));
    }
    case 'coverages': {
      const id = nextIds.coverage(playbook);
      return inList(copied(playbook.coverages, entry.id, { id, name }, 'coverage'), (coverages) => ({
        ...playbook,
        coverages,
      }));
    }
    case 'roles': {
      const id = nextIds.role(playbook);
      return inList(copied(playbook.roles, entry.id, { id, name }, 'role'), (roles) => ({ ...playbook, roles }));
    }
  }
}

/** Takes an entry out, and every mere mention of it. Refused while something cannot be without it. */
export function deleteEntry(
  playbook: Playbook,
  { entry }: { readonly entry: Entry },
): Result<Playbook, CommandProblem> {
  const holding = usesOf(playbook, entry).filter(({ holds }) => holds);
  if (holding.length > 0) return refused({ kind: 'in-use', by: holding.map(({ name }) => name) });
  switch (entry.section) {
    case 'pressures':
      return inList(without(playbook.pressures, entry.id, 'pressure'), (pressures) => ({ ...playbook, pressures }));
    case 'looks':
      return inList(without(playbook.looks, entry.id, 'look'), (looks) => ({
        ...forgetLook(playbook, entry.id),
        looks,
      }));
    case 'fronts':
      return inList(without(playbook.fronts, entry.id, 'front'), (fronts) => ({ ...playbook, fronts }));
    case 'coverages':
      return inList(without(playbook.coverages, entry.id, 'coverage'), (coverages) => ({ ...playbook, coverages }));
    case 'roles':
      return inList(without(playbook.roles, entry.id, 'role'), (roles) => ({ ...playbook, roles }));
  }
}

/** What mentions a look, without it; whatever does not is the very same object. */
function forgetLook(playbook: Playbook, look: LookId): Playbook {
  return {
    ...playbook,
    fronts: playbook.fronts.map((front) =>
      front.byHand.some((hand) => hand.look === look)
        ? { ...front, byHand: front.byHand.filter((hand) => hand.look !== look) }
        : front,
    ),
    pressures: playbook.pressures.map((pressure) =>
      pressure.notAgainst.includes(look)
        ? { ...pressure, notAgainst: pressure.notAgainst.filter((each) => each !== look) }
        : pressure,
    ),
    calls: playbook.calls.map((call) =>
      call.waivers.some((waiver) => waiver.look === look)
        ? { ...call, waivers: call.waivers.filter((waiver) => waiver.look !== look) }
        : call,
    ),
    opponents: playbook.opponents.map((opponent) =>
      opponent.looks.includes(look) ? { ...opponent, looks: opponent.looks.filter((each) => each !== look) } : opponent,
    ),
  };
}

interface Named {
  readonly id: string;
  readonly name: string;
}

function renamed<Item extends Named>(
  list: readonly Item[],
  id: Item['id'],
  name: string,
  what: Part,
): Result<readonly Item[], CommandProblem> {
  const kept = freeName(list, name, id, what);
  return kept.ok ? withEntry(list, id, (item) => ok({ ...item, name: kept.value }), { kind: 'not-there', what }) : kept;
}

function copied<Item extends Named>(
  list: readonly Item[],
  id: Item['id'],
  own: Pick<Item, 'id' | 'name'>,
  what: Part,
): Result<readonly Item[], CommandProblem> {
  const kept = freeName(list, own.name, null, what);
  if (!kept.ok) return kept;
  if (!list.some((item) => item.id === id)) return refused({ kind: 'not-there', what });
  return ok(list.flatMap((item) => (item.id === id ? [item, { ...item, ...own, name: kept.value }] : [item])));
}

function without<Item extends Named>(
  list: readonly Item[],
  id: Item['id'],
  what: Part,
): Result<readonly Item[], CommandProblem> {
  const left = list.filter((item) => item.id !== id);
  return left.length === list.length ? refused({ kind: 'not-there', what }) : ok(left);
}

function inList<List>(
  list: Result<List, CommandProblem>,
  put: (list: List) => Playbook,
): Result<Playbook, CommandProblem> {
  return list.ok ? ok(put(list.value)) : list;
}
