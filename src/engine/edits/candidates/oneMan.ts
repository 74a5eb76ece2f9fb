import { gather } from '../../../base/index.ts';
import type { RoleId, RuleJob } from '../../types/index.ts';
import { nameOf, type Bench, type TellInForce } from '../bench.ts';
import type { Edit, Half, SurfaceTest, Told } from '../edit.ts';
import { halvesOf } from './callWide.ts';

/** Told in every look where that is all he is told; else in the one case that holds here. */
function placeOfCase({ cases, at, now }: TellInForce): number | null {
  return cases.length === 1 && now.when.length === 0 ? null : at;
}

function told({ basis, job, preSnap }: Told): Told {
  return { basis, job, preSnap };
}

/** Each half that tells him something here, the second first. */
function tellsOf(bench: Bench, role: RoleId): readonly TellInForce[] {
  return gather(halvesOf(bench), (which) => bench.tellInForce(which, role) ?? []);
}

/** Tell him in one pressure what the other tells him. */
export function likeTheOther(bench: Bench, role: RoleId): readonly Edit[] {
  return gather(tellsOf(bench, role), ({ which, pressure, who }): readonly Edit[] => {
    const other = bench.otherTells(which, role);
    if (other === null) return [];
    return [{ kind: 'job', which, pressure: pressure.id, who, to: { kind: 'other', cases: other.cases } }];
  });
}

/** Tell him nothing in one pressure. */
export function toldNothing(bench: Bench, role: RoleId): readonly Edit[] {
  return tellsOf(bench, role).map(({ which, pressure, who }) => ({
    kind: 'untell',
    which,
    pressure: pressure.id,
    who,
  }));
}

/**
 * The surface he has here: on his own side, for a man over the ball on the call side. Three bodies or more (a tight end, a
 * wing) are told as at least so many, two (the end man is the tackle) as at most.
 */
function surfaceHere(bench: Bench, which: Half, role: RoleId): SurfaceTest | null {
  const place = bench.aligned.get(role)?.place ?? 'middle';
  const side = place === 'middle' ? bench.sideOf(which) : place;
  if (side === null) return null;
  const count = bench.analysis.facts.surface[side].length - 1;
  return { side: place === 'middle' ? 'call' : 'mine', compare: count >= 3 ? 'at-least' : 'at-most', count };
}

/** On the surface he has here, tell him in one pressure what the other tells him, or nothing. */
export function onThisSurface(bench: Bench, role: RoleId): readonly Edit[] {
  return gather(tellsOf(bench, role), ({ which, pressure, who }): readonly Edit[] => {
    const surface = surfaceHere(bench, which, role);
    if (surface === null) return [];
    const other = bench.otherTells(which, role);
    const at = { kind: 'surface', which, pressure: pressure.id, who, surface } as const;
    return [...(other === null ? [] : [{ ...at, told: told(other.now) }]), { ...at, told: null }];
  });
}

/** Everything that settles what two pressures tell one man: the one, the other, nothing, and each for this surface only. */
export function settle(bench: Bench, role: RoleId): readonly Edit[] {
  return [...likeTheOther(bench, role), ...onThisSurface(bench, role), ...toldNothing(bench, role)];
}

/** The job he is told here, changed, in each pressure that tells him one; null: no such change of that job. */
export function retold(
  bench: Bench,
  role: RoleId,
  change: (job: RuleJob, which: Half) => RuleJob | null,
): readonly Edit[] {
  return toldOtherwise(bench, role, (now, which) => {
    const job = change(now.job, which);
    return job === null ? null : { ...now, job };
  });
}

/** The same for all he is told: the job, and where it has him stand before the snap. */
export function toldOtherwise(
  bench: Bench,
  role: RoleId,
  change: (now: Told, which: Half) => Told | null,
): readonly Edit[] {
  return gather(tellsOf(bench, role), (tell): readonly Edit[] => {
    const { which, pressure, who } = tell;
    const now = told(tell.now);
    const changed = change(now, which);
    if (changed === null || JSON.stringify(changed) === JSON.stringify(now)) return [];
    const to = { kind: 'given', at: placeOfCase(tell), told: changed } as const;
    return [{ kind: 'job', which, pressure: pressure.id, who, to }];
  });
}

/** A job for a man the first pressure tells nothing. */
export function toldAnew(bench: Bench, role: RoleId, jobOf: (callSide: 'left' | 'right') => RuleJob): readonly Edit[] {
  const { first } = bench.analysis.setup;
  const side = bench.sideOf('first');
  if (side === null || bench.tellInForce('first', role) !== null) return [];
  const to = { kind: 'given', at: null, told: { basis: 'movement', job: jobOf(side), preSnap: null } } as const;
  return [{ kind: 'job', which: 'first', pressure: first.id, who: nameOf(role, side, bench.aligned), to }];
}
