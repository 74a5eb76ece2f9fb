import { compareBy } from '../base/index.ts';
import { align, standAt } from './align/align.ts';
import { standardChecks } from './checks/standardChecks.ts';
import type { Draft } from './checks/defineCheck.ts';
import { combineMan } from './combine/combine.ts';
import { assign } from './complete/columns.ts';
import { ownGaps, type Man } from './complete/ownGaps.ts';
import { readLook } from './facts/readLook.ts';
import { ownSide, preSnapDepths, resolvePressure, turnedSide } from './resolve/resolvePressure.ts';
import type {
  Aligned,
  Analysis,
  Finding,
  Front,
  LookFacts,
  ResolvedPressure,
  RoleId,
  Setup,
  SideDecision,
  Verdict,
} from './types/index.ts';
import { ROOMS, SEVERITIES, type Side } from './vocabulary.ts';

/**
 * One call in one look at one ball spot, from what was drawn to the verdict: the stages of the engine in order, each
 * stage's answer kept. Pure: the same setup gives the same analysis to the byte.
 */
export function analyse(setup: Setup): Analysis {
  const facts = readLook(setup.look, setup.level, setup.spot);
  const atRule = align(setup.front, setup.roles, facts, setup.look.id);
  const firstSide = ownSide(setup.first, facts, atRule);
  const secondSide =
    setup.second === null ? null : turnedSide(setup.turn, firstSide, ownSide(setup.second, facts, atRule));
  const aligned = moveBeforeSnap(setup, firstSide, secondSide, facts, atRule);
  const first = resolvePressure(setup.first, setup.coverage, firstSide, facts, aligned);
  const second =
    setup.second === null || secondSide === null
      ? null
      : resolvePressure(setup.second, null, secondSide, facts, aligned);
  const men = menInOrder(setup.front, aligned, first, second);
  const gaps = ownGaps(men, facts, leaningSide(firstSide, facts));
  const draft: Draft = { setup, facts, first, second, assignments: men.map((man) => assign(man, gaps)), gaps };
  const findings = standardChecks.flatMap((check) => check.judge(draft));
  return { ...draft, findings, verdict: verdictOf(setup, findings) };
}

/** Where the men stand after the pressures have moved them; a spot set by hand stays. */
function moveBeforeSnap(
  setup: Setup,
  firstSide: SideDecision,
  secondSide: SideDecision | null,
  facts: LookFacts,
  atRule: ReadonlyMap<RoleId, Aligned>,
): ReadonlyMap<RoleId, Aligned> {
  const pressures = [{ pressure: setup.first, side: firstSide }];
  if (setup.second !== null && secondSide !== null) pressures.push({ pressure: setup.second, side: secondSide });
  const depths = preSnapDepths(pressures, facts, atRule);
  return new Map(
    [...atRule].map(([id, man]) => {
      const moved = depths.get(id);
      if (moved === undefined || man.by === 'hand') return [id, man];
      return [id, standAt(man.role, { x: man.x, y: moved.depth }, 'pressure', facts, moved.because)];
    }),
  );
}

/** The eleven with their tellings: line, linebackers, secondary, each from left to right. */
function menInOrder(
  front: Front,
  aligned: ReadonlyMap<RoleId, Aligned>,
  first: ResolvedPressure,
  second: ResolvedPressure | null,
): readonly Man[] {
  const bases = new Map(front.roles.map((entry) => [entry.role, entry.base]));
  return [...aligned.values()]
    .sort(
      compareBy(
        (man) => ROOMS.indexOf(man.role.room),
        (man) => man.x,
        (man) => man.y,
        (man) => man.role.id,
      ),
    )
    .map((man) => {
      const id = man.role.id;
      const base = bases.get(id);
      if (base === undefined) throw new Error(`Role ${id} stands in a front it is not part of`);
      const combined = combineMan(man.role, first.tellings.get(id) ?? null, second?.tellings.get(id) ?? null);
      return { aligned: man, combined, base };
    });
}

/** Which side breaks a perfect tie between two equal fits: the call side, else any strength the look has. */
function leaningSide(first: SideDecision, facts: LookFacts): Side {
  if (first.kind === 'decided') return first.side;
  const { strengths } = facts;
  const strong = [strengths['tight-end'], strengths.receivers, strengths.back, strengths.field]
    .map((strength) => strength.side)
    .find((side): side is Side => side !== 'even');
  return strong ?? 'left';
}

/** The worst thing found; a call that is not run against this look is not judged. */
function verdictOf(setup: Setup, findings: readonly Finding[]): Verdict {
  const leftOut = [setup.first, setup.second].some((pressure) => pressure?.notAgainst.includes(setup.look.id) ?? false);
  if (leftOut) return 'left-out';
  return SEVERITIES.find((severity) => findings.some((finding) => finding.severity === severity)) ?? 'clean';
}
