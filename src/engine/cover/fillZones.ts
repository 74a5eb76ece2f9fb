import { compareBy } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { matchSeekers, type Seeker } from '../complete/matchGaps.ts';
import type { Man } from '../complete/ownGaps.ts';
import { allHold } from '../resolve/holds.ts';
import { findSide } from '../resolve/names.ts';
import { findWho } from '../resolve/who.ts';
import { ROOMS, type Side, type Zone } from '../vocabulary.ts';
import type { Aligned, Coverage, DropJob, FilledZone, LookFacts, LookNames, RoleId } from '../types/index.ts';

/** A zone the shell needs in this look, its side known, with the men who may take it, the most natural first. */
interface Need {
  readonly zone: Zone;
  readonly side: Side | 'middle';
  readonly takers: readonly RoleId[];
}

/** The men with their zones filled in, and the account of every zone the shell needs. */
export interface ZonesFilled {
  readonly men: readonly Man[];
  readonly zones: readonly FilledZone[];
}

/**
 * Stage 6 for zones. Men told to drop fill the zones they are told; a needed zone nobody drops to goes to somebody who is
 * free: told nothing, or told by the shell to a zone that another man already fills. Without a call side nothing is needed.
 */
export function fillZones(
  men: readonly Man[],
  coverage: Coverage,
  callSide: Side | null,
  facts: LookFacts,
): ZonesFilled {
  if (callSide === null) return { men, zones: [] };
  const needs = needsHere(coverage, callSide, facts, men);
  const told = new Map<number, Man>();
  for (const man of men) {
    const item = needs.findIndex((need, index) => !told.has(index) && dropsTo(man, need));
    if (item >= 0) told.set(item, man);
  }
  const missing = needs.map((_, index) => index).filter((index) => !told.has(index));
  const free = men
    .filter((man) => isFree(man) && ![...told.values()].includes(man))
    .sort(
      compareBy(
        (man) => ROOMS.indexOf(man.aligned.role.room),
        (man) => man.aligned.role.id,
      ),
    );
  const matching = matchSeekers(
    missing.length,
    free.map((man): Seeker => seekerOf(man, missing, needs)),
  );
  const filled = new Map<number, Man>();
  matching.taken.forEach((taken, index) => {
    const item = taken === null ? undefined : missing[taken];
    const man = free[index];
    if (item !== undefined && man !== undefined) filled.set(item, man);
  });
  const zones = needs.map((need, index): FilledZone => {
    const man = told.get(index) ?? filled.get(index);
    const proof = matching.proofs.get(missing.indexOf(index));
    const reachable = proof?.seekers.flatMap((each) => free[each]?.aligned.role.id ?? []) ?? [];
    return {
      zone: need.zone,
      side: need.side,
      by: man?.aligned.role.id ?? null,
      how: told.has(index) ? 'told' : filled.has(index) ? 'filled' : null,
      because: zoneBecause(man ?? null, told.has(index)),
      proof: man === undefined ? { zones: proof?.items.length ?? 1, reachable } : null,
    };
  });
  const jobs = new Map(
    [...filled].flatMap(([item, man]) => (needs[item] === undefined ? [] : [[man, needs[item]] as const])),
  );
  return { men: men.map((man) => withZone(man, jobs.get(man))), zones };
}

function needsHere(coverage: Coverage, callSide: Side, facts: LookFacts, men: readonly Man[]): readonly Need[] {
  const aligned = new Map<RoleId, Aligned>(men.map((man) => [man.aligned.role.id, man.aligned]));
  const context = { facts, callSide, mySide: null };
  return coverage.needs.flatMap((need): readonly Need[] => {
    if (!allHold(need.when, context)) return [];
    const side = need.side === 'middle' ? null : findSide(need.side, context);
    if (side !== null && !side.ok) return [];
    const takers = need.takers.flatMap((who) => {
      const man = findWho(who, callSide, aligned);
      return man.ok ? [man.value] : [];
    });
    return [{ zone: need.zone, side: side === null ? 'middle' : side.value, takers }];
  });
}

function dropsTo(man: Man, need: Need): boolean {
  const { job } = man.combined;
  return job?.kind === 'drop' && job.zone === need.zone && job.side === need.side;
}

/** Told nothing, or only given a zone by the shell. */
function isFree(man: Man): boolean {
  const { status, first, second, from, job } = man.combined;
  if (status === 'conflict' || status === 'unresolved') return false;
  if (job === null) return man.base.pass === 'none';
  const telling = from === 'first' ? first : from === 'second' ? second : null;
  return job.kind === 'drop' && telling?.kind === 'told' && telling.basis === 'coverage';
}

function seekerOf(man: Man, missing: readonly number[], needs: readonly Need[]): Seeker {
  const costs = new Map<number, number>();
  missing.forEach((item, index) => {
    const rank = needs[item]?.takers.indexOf(man.aligned.role.id) ?? -1;
    if (rank >= 0) costs.set(index, rank);
  });
  return { name: man.aligned.role.id, costs };
}

function zoneBecause(man: Man | null, told: boolean): FilledZone['because'] {
  if (man === null) return fact('nobody drops there, and nobody who is free may take it');
  const who = { who: datum.role(man.aligned.role.id) };
  return told
    ? because('{who} is told to drop there', who, man.combined.because)
    : because('{who} is free and may take it', who, fact('nobody else drops there'));
}

/** A man who fills a zone keeps whatever gaps he may fit and takes the zone as his job. */
function withZone(man: Man, need: Need | undefined): Man {
  if (need === undefined) return man;
  const before = man.combined.job;
  const run: DropJob<LookNames>['run'] =
    before?.kind === 'drop' ? { ...before.run, support: null } : { fits: [], firm: false, support: null };
  return {
    ...man,
    combined: {
      ...man.combined,
      job: { kind: 'drop', zone: need.zone, side: need.side, run },
      from: 'shell',
      because: zoneBecause(man, false),
    },
  };
}
