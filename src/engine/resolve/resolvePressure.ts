import { because, datum } from '../because.ts';
import type { Basis, Side, Turn } from '../vocabulary.ts';
import type {
  Aligned,
  Because,
  Coverage,
  LookFacts,
  LookTest,
  Pressure,
  ResolvedPressure,
  RoleId,
  RuleJob,
  SideDecision,
  Telling,
  Who,
} from '../types/index.ts';
import { allHold } from './holds.ts';
import { resolveJob } from './resolveJob.ts';
import { decideSide, opposite } from './sides.ts';
import { findWho } from './who.ts';

type ByRole = ReadonlyMap<RoleId, Aligned>;

/** The call side of a pressure by its own rule (stage 3). A role counts by where he stands. */
export function ownSide(pressure: Pressure, facts: LookFacts, aligned: ByRole): SideDecision {
  const sideOfRole = (role: RoleId): Side | null => {
    const place = aligned.get(role)?.place;
    return place === undefined || place === 'middle' ? null : place;
  };
  return decideSide(pressure.callSide, { facts, sideOfRole });
}

/** The call side of the second pressure, turned as the call says. A tie of the first is a tie of one that follows it. */
export function turnedSide(turn: Turn, first: SideDecision, own: SideDecision): SideDecision {
  if (turn === 'own') return own;
  if (first.kind === 'tie') {
    return {
      kind: 'tie',
      because: because('it follows the first pressure, and that one has no side', {}, first.because),
    };
  }
  const side = turn === 'same' ? first.side : opposite(first.side);
  const words =
    turn === 'same'
      ? because('the call turns it to the side of the first, {side}', { side: datum.side(side) }, first.because)
      : because('the call turns it opposite the first, {side}', { side: datum.side(side) }, first.because);
  return { kind: 'decided', side, because: words };
}

interface Rule {
  readonly who: Who;
  readonly cases: readonly {
    readonly when: readonly LookTest[];
    readonly basis: Exclude<Basis, 'base'>;
    readonly job: RuleJob;
  }[];
}

/** The rules in the order they are asked: the rush first, then the shell for whoever the rush leaves free. */
function rulesOf(pressure: Pressure, coverage: Coverage | null): readonly Rule[] {
  const shell = (coverage?.tells ?? []).map((tell): Rule => ({
    who: tell.who,
    cases: tell.cases.map((each) => ({ ...each, basis: 'coverage' as const })),
  }));
  return [...pressure.tells, ...shell];
}

/**
 * Stage 4: one pressure in this look. The shell, where one is given, tells only men whom the rush tells nothing. A second
 * telling of the rush for one man is kept apart: it is never heard. Without a call side nobody can be told anything.
 */
export function resolvePressure(
  pressure: Pressure,
  coverage: Coverage | null,
  side: SideDecision,
  facts: LookFacts,
  aligned: ByRole,
): ResolvedPressure {
  const tellings = new Map<RoleId, Telling>();
  const lost: Because[] = [];
  const again: ResolvedPressure['again'][number][] = [];
  if (side.kind === 'tie') return { side, tellings, lost, again };
  const findMan = (who: Who) => findWho(who, side.side, aligned);
  for (const rule of rulesOf(pressure, coverage)) {
    const man = findMan(rule.who);
    if (!man.ok) {
      lost.push(man.problem);
      continue;
    }
    const place = aligned.get(man.value)?.place ?? 'middle';
    const context = { facts, callSide: side.side, mySide: place === 'middle' ? null : place, findMan };
    const index = rule.cases.findIndex((each) => allHold(each.when, context));
    const found = rule.cases[index];
    if (found === undefined) continue;
    const heard = tellings.get(man.value);
    const job = resolveJob(found.job, context);
    if (heard !== undefined) {
      if (found.basis !== 'coverage' && heard.kind === 'told' && job.ok) {
        again.push({ role: man.value, kept: heard.job, heard: job.value });
      }
      continue;
    }
    tellings.set(
      man.value,
      job.ok
        ? { kind: 'told', basis: found.basis, job: job.value, because: toldBecause(found.basis, index, side.because) }
        : { kind: 'unresolved', because: job.problem },
    );
  }
  return { side, tellings, lost, again };
}

/** Why a man is told this: by the rush or the shell, by which of his cases, and why the call side is what it is. */
function toldBecause(basis: Exclude<Basis, 'base'>, index: number, side: Because): Because {
  const n = { n: datum.number(index + 1) };
  switch (basis) {
    case 'path':
      return because('the pressure sends him (his case {n})', n, side);
    case 'movement':
      return because('the pressure moves the line (his case {n})', n, side);
    case 'consequence':
      return because('it follows from what another man does (his case {n})', n, side);
    case 'coverage':
      return because('the shell behind the rush gives it to him (his case {n})', n, side);
  }
}

/**
 * Where the pressures move men before the snap. A spot set by hand stays; the first pressure's word comes before the
 * second's.
 */
export function preSnapDepths(
  pressures: readonly { readonly pressure: Pressure; readonly side: SideDecision }[],
  facts: LookFacts,
  aligned: ByRole,
): ReadonlyMap<RoleId, { readonly depth: number; readonly because: Because }> {
  const depths = new Map<RoleId, { readonly depth: number; readonly because: Because }>();
  for (const { pressure, side } of pressures) {
    if (side.kind === 'tie') continue;
    for (const tell of pressure.tells) {
      const man = findWho(tell.who, side.side, aligned);
      if (!man.ok || depths.has(man.value)) continue;
      const place = aligned.get(man.value)?.place ?? 'middle';
      const context = { facts, callSide: side.side, mySide: place === 'middle' ? null : place };
      const preSnap = tell.cases.find((each) => allHold(each.when, context))?.preSnap ?? null;
      if (preSnap === null) continue;
      if (preSnap.kind === 'depth') {
        const depth = preSnap.depth;
        depths.set(man.value, {
          depth,
          because: because('the pressure has him {n} yards deep', { n: datum.number(depth) }),
        });
        continue;
      }
      const of = findWho(preSnap.of, side.side, aligned);
      const neighbour = of.ok ? aligned.get(of.value) : undefined;
      if (neighbour === undefined) continue;
      depths.set(man.value, {
        depth: neighbour.y + HEELS,
        because: because('the pressure has him on the heels of {who}', { who: datum.role(neighbour.role.id) }),
      });
    }
  }
  return depths;
}

/** A lineman's heels are about a yard behind the middle of his stance (convention of ours). */
const HEELS = 1;
