import { compareBy, remembered } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import type { Basis, Side, Turn } from '../vocabulary.ts';
import type {
  Aligned,
  Because,
  Coverage,
  LookFacts,
  LookTest,
  PreSnap,
  Pressure,
  ResolvedPressure,
  RoleId,
  RuleJob,
  SideDecision,
  Telling,
  Who,
} from '../types/index.ts';
import { allHold } from './holds.ts';
import type { Found } from './names.ts';
import { resolveJob } from './resolveJob.ts';
import { decideSide, opposite } from './sides.ts';
import { findWho } from './who.ts';

type ByRole = ReadonlyMap<RoleId, Aligned>;

/** The call side of a pressure by its own rule (stage 3). A role counts by where he stands. */
export const ownSide = remembered(sideOnce);

function sideOnce(pressure: Pressure, facts: LookFacts, aligned: ByRole): SideDecision {
  const sideOfRole = (role: RoleId): Side | null => {
    const place = aligned.get(role)?.place;
    return place === undefined || place === 'middle' ? null : place;
  };
  return decideSide(pressure.callSide, { facts, sideOfRole });
}

/** The call side of the second pressure, turned as the call says. A tie of the first is a tie of one that follows it. */
export function turnedSide(turn: Turn, first: SideDecision, own: SideDecision): SideDecision {
  return turn === 'own' ? own : following(first, turn);
}

const following = remembered((first: SideDecision, turn: Exclude<Turn, 'own'>): SideDecision => {
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
});

interface Rule {
  readonly who: Who;
  readonly cases: readonly {
    readonly when: readonly LookTest[];
    readonly basis: Exclude<Basis, 'base'>;
    readonly job: RuleJob;
    readonly preSnap: PreSnap | null;
  }[];
}

/** The rules in the order they are asked: the rush first, then the shell for whoever the rush leaves free. */
function rulesOf(pressure: Pressure, coverage: Coverage | null): readonly Rule[] {
  const shell = (coverage?.tells ?? []).map((tell): Rule => ({
    who: tell.who,
    cases: tell.cases.map((each) => ({ ...each, basis: 'coverage' as const, preSnap: null })),
  }));
  return [...pressure.tells, ...shell];
}

/**
 * Stage 4: one pressure in this look. The shell, where one is given, tells only men whom the rush tells nothing. A second
 * telling of the rush for one man is kept apart: it is never heard. Without a call side nobody can be told anything.
 * A pressure is told the same in every pair it is part of, as long as its side is picked for the same reason.
 */
export const resolvePressure = remembered(resolveOnce);

function resolveOnce(
  pressure: Pressure,
  coverage: Coverage | null,
  side: SideDecision,
  facts: LookFacts,
  aligned: ByRole,
): ResolvedPressure {
  const tellings = new Map<RoleId, Telling>();
  const lost: { readonly who: Who; readonly why: Because }[] = [];
  const again: ResolvedPressure['again'][number][] = [];
  if (side.kind === 'tie') return { side, tellings, lost: [], again };
  const findMan = (who: Who) => findWho(who, side.side, aligned);
  for (const rule of rulesOf(pressure, coverage)) {
    const man = findMan(rule.who);
    if (!man.ok) {
      lost.push({ who: rule.who, why: man.problem });
      continue;
    }
    const place = aligned.get(man.value)?.place ?? 'middle';
    const context = { facts, callSide: side.side, mySide: place === 'middle' ? null : place, findMan };
    const index = rule.cases.findIndex((each) => allHold(each.when, context));
    const found = rule.cases[index];
    if (found === undefined) continue;
    const heard = tellings.get(man.value);
    const job = resolveJob(found.job, context);
    if (heard === undefined) {
      tellings.set(man.value, tellingOf(found, job, index, side.because, findMan, aligned));
    } else if (found.basis !== 'coverage' && heard.kind === 'told' && job.ok) {
      again.push({ role: man.value, kept: heard.job, heard: job.value });
    }
  }
  return { side, tellings, lost: lost.sort(byName).map(({ why }) => why), again };
}

/** Rules that reach nobody, in an order that does not hang on the order of the rules: roles, groups, the call side first. */
const byName = compareBy(
  ({ who }: { readonly who: Who }) => (who.kind === 'role' ? 0 : 1),
  ({ who }: { readonly who: Who }) => (who.kind === 'role' ? who.role : who.group),
  ({ who }: { readonly who: Who }) => (who.kind === 'group' && who.side === 'away' ? 1 : 0),
);

function tellingOf(
  { basis, preSnap }: Rule['cases'][number],
  job: ReturnType<typeof resolveJob>,
  index: number,
  side: Because,
  findMan: (who: Who) => Found<RoleId>,
  aligned: ByRole,
): Telling {
  if (!job.ok) return { kind: 'unresolved', because: job.problem };
  return {
    kind: 'told',
    basis,
    job: job.value,
    preSnap: preSnap === null ? null : depthOf(preSnap, findMan, aligned),
    because: toldBecause(basis, index, side),
  };
}

/** Where a job has him stand before the snap; a neighbour who is not there leaves him where he was. */
function depthOf(
  preSnap: PreSnap,
  findMan: (who: Who) => Found<RoleId>,
  aligned: ByRole,
): Extract<Telling, { kind: 'told' }>['preSnap'] {
  if (preSnap.kind === 'depth') {
    const { depth } = preSnap;
    return { depth, because: because('the pressure has him {n} yards deep', { n: datum.number(depth) }) };
  }
  const of = findMan(preSnap.of);
  const neighbour = of.ok ? aligned.get(of.value) : undefined;
  if (neighbour === undefined) return null;
  const who = datum.role(neighbour.role.id);
  return {
    depth: neighbour.y + HEELS,
    because: because('the pressure has him on the heels of {who}', { who }),
  };
}

/** Why a man is told this: by the rush or the shell, by which of his cases, and why the call side is what it is. */
function toldBecause(basis: Exclude<Basis, 'base'>, index: number, side: Because): Because {
  const n = { n: datum.number(index + 1) };
  switch (basis) {
    case 'path':
      return because('the pressure sends him (his rule {n})', n, side);
    case 'movement':
      return because('the pressure moves the line (his rule {n})', n, side);
    case 'consequence':
      return because('it follows from what another man does (his rule {n})', n, side);
    case 'coverage':
      return because('the shell behind the rush gives it to him (his rule {n})', n, side);
  }
}

/** A lineman's heels are about a yard behind the middle of his stance (convention of ours). */
const HEELS = 1;
