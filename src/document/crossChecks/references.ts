import type { SideStep, Who } from '../../engine/index.ts';
import type { Path, Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';
import { tellings, type PlacedCase } from './tellings.ts';

/** What can be named by its id. */
export type Target = 'role' | 'group' | 'front' | 'look' | 'coverage' | 'pressure' | 'call';

/** A place that names something by its id. */
export interface Reference {
  readonly path: Path;
  readonly to: Target;
  readonly id: string;
}

/** Every place that names something the playbook does not have. */
export function missing(playbook: Playbook): readonly Problem[] {
  const known: { readonly [Each in Target]: ReadonlySet<string> } = {
    role: idsOf(playbook.roles),
    group: new Set(playbook.roles.map(({ group }) => group)),
    front: idsOf(playbook.fronts),
    look: idsOf(playbook.looks),
    coverage: idsOf(playbook.coverages),
    pressure: idsOf(playbook.pressures),
    call: idsOf(playbook.calls),
  };
  return references(playbook)
    .filter(({ to, id }) => !known[to].has(id))
    .map(({ path, to }) => ({ path, found: null, expected: `the id of a ${to} of this playbook` }));
}

/** Every place of the playbook that names something by its id, in the order of the file's lists. */
export function references(playbook: Playbook): readonly Reference[] {
  return [
    ...playbook.roles.flatMap(({ side }, index) =>
      side.kind === 'steps' ? ofSteps(side.steps, ['roles', index, 'side', 'steps']) : [],
    ),
    ...playbook.fronts.flatMap(ofFront),
    ...playbook.pressures.flatMap(ofPressure),
    ...playbook.coverages.flatMap(ofCoverage),
    ...tellings(playbook).flatMap(({ path, who, cases }) => [ofWho(who, [...path, 'who']), ...cases.flatMap(ofCase)]),
    ...playbook.calls.flatMap(ofCall),
    ...playbook.checkOuts.flatMap(ofCheckOut),
    ...playbook.opponents.flatMap(({ looks }, index) => ofList('look', looks, ['opponents', index, 'looks'])),
  ];
}

function ofFront({ roles, byHand }: Playbook['fronts'][number], index: number): readonly Reference[] {
  const path: Path = ['fronts', index];
  return [
    ...roles.map(({ role }, at): Reference => ({ path: [...path, 'roles', at, 'role'], to: 'role', id: role })),
    ...byHand.flatMap(({ look, role }, at): readonly Reference[] => [
      { path: [...path, 'byHand', at, 'look'], to: 'look', id: look },
      { path: [...path, 'byHand', at, 'role'], to: 'role', id: role },
    ]),
  ];
}

function ofPressure(
  { callSide, coverage, notAgainst }: Playbook['pressures'][number],
  index: number,
): readonly Reference[] {
  const path: Path = ['pressures', index];
  return [
    ...ofSteps(callSide, [...path, 'callSide']),
    { path: [...path, 'coverage'], to: 'coverage', id: coverage },
    ...ofList('look', notAgainst, [...path, 'notAgainst']),
  ];
}

function ofCheckOut({ call, rows }: Playbook['checkOuts'][number], index: number): readonly Reference[] {
  const path: Path = ['checkOuts', index];
  return [
    { path: [...path, 'call'], to: 'call', id: call },
    ...rows.flatMap(({ action }, at): readonly Reference[] => {
      const place: Path = [...path, 'rows', at, 'action'];
      if (action.kind === 'coverage') return [{ path: [...place, 'coverage'], to: 'coverage', id: action.coverage }];
      return action.kind === 'check-to' ? [{ path: [...place, 'call'], to: 'call', id: action.call }] : [];
    }),
  ];
}

function ofCoverage({ needs }: Playbook['coverages'][number], index: number): readonly Reference[] {
  return needs.flatMap(({ takers }, at) =>
    takers.map((taker, place) => ofWho(taker, ['coverages', index, 'needs', at, 'takers', place])),
  );
}

function ofCall(
  { front, first, second, coverage, waivers }: Playbook['calls'][number],
  index: number,
): readonly Reference[] {
  const path: Path = ['calls', index];
  return [
    { path: [...path, 'front'], to: 'front', id: front },
    { path: [...path, 'first'], to: 'pressure', id: first },
    ...ofNullable('pressure', second, [...path, 'second']),
    ...ofNullable('coverage', coverage, [...path, 'coverage']),
    ...waivers.map(({ look }, at): Reference => ({ path: [...path, 'waivers', at, 'look'], to: 'look', id: look })),
  ];
}

function ofCase({ path, job, preSnap }: PlacedCase): readonly Reference[] {
  const rush = job.kind === 'rush' || job.kind === 'contain' ? job : null;
  const track = rush?.track ?? null;
  const order = rush?.order ?? null;
  return [
    ...(order === null ? [] : [ofWho(order.neighbour, [...path, 'job', 'order', 'neighbour'])]),
    ...(track?.kind === 'past' ? [ofWho(track.neighbour, [...path, 'job', 'track', 'neighbour'])] : []),
    ...(preSnap?.kind === 'heels' ? [ofWho(preSnap.of, [...path, 'preSnap', 'of'])] : []),
  ];
}

function ofWho(who: Who, path: Path): Reference {
  return who.kind === 'role'
    ? { path: [...path, 'role'], to: 'role', id: who.role }
    : { path: [...path, 'group'], to: 'group', id: who.group };
}

function ofSteps(steps: readonly SideStep[], path: Path): readonly Reference[] {
  return steps.flatMap((step, index): readonly Reference[] =>
    step.kind === 'role' ? [{ path: [...path, index, 'role'], to: 'role', id: step.role }] : [],
  );
}

function ofList(to: Target, ids: readonly string[], path: Path): readonly Reference[] {
  return ids.map((id, index) => ({ path: [...path, index], to, id }));
}

function ofNullable(to: Target, id: string | null, path: Path): readonly Reference[] {
  return id === null ? [] : [{ path, to, id }];
}

function idsOf(items: readonly { readonly id: string }[]): ReadonlySet<string> {
  return new Set(items.map(({ id }) => id));
}
