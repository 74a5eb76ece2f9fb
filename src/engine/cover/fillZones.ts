import { compareBy, gather, remembered } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { matchSeekers, type Seeker } from '../complete/matchGaps.ts';
import type { Man } from '../complete/ownGaps.ts';
import { allHold } from '../resolve/holds.ts';
import { findSide, gapsThatExist } from '../resolve/names.ts';
import { findWho } from '../resolve/who.ts';
import { ROOMS, type Side, type Zone } from '../vocabulary.ts';
import type {
  Aligned,
  Coverage,
  DropJob,
  FilledZone,
  LookFacts,
  LookNames,
  RoleId,
  Settled,
  Who,
} from '../types/index.ts';

/** A zone the shell needs in this look, its side known, with the men who may take it, the most natural first. */
interface Need {
  readonly zone: Zone;
  readonly side: Side | 'middle';
  /** Worked out when it is asked: most zones are filled by the one man who is told to. */
  readonly takers: () => readonly RoleId[];
}

/** The same, its takers by the names the shell's rules have for them. */
interface ZoneHere extends Pick<Need, 'zone' | 'side'> {
  readonly takers: readonly Who[];
}

/** The men with their zones filled in, and the account of every zone the shell needs. */
export interface ZonesFilled<Known extends Settled> {
  readonly men: readonly Man<Known>[];
  readonly zones: readonly FilledZone[];
}

/**
 * Stage 6 for zones. Men told to drop fill the zones they are told; a needed zone nobody drops to goes to somebody who is
 * free: told nothing, or told by the shell to a zone that another man fills as well. Of several told to one zone he keeps it
 * whom the rush sent there, else whoever leaves the fewest zones empty, the most natural taker first. Without a call side
 * nothing is needed.
 */
export function fillZones<Known extends Settled>(
  men: readonly Man<Known>[],
  coverage: Coverage,
  callSide: Side | null,
  facts: LookFacts,
): ZonesFilled<Known> {
  if (callSide === null) return { men, zones: [] };
  const needs = needsHere(coverage, callSide, facts, men);
  const { kept, open, free } = whoIsTold(men, needs);
  const matching = matchSeekers(
    open.length,
    free.map((man): Seeker => seekerOf(man, open, needs)),
  );
  const taken = new Map<number, Man>();
  matching.taken.forEach((place, index) => {
    const item = place === null ? undefined : open[place];
    const man = free[index];
    if (item !== undefined && man !== undefined) taken.set(item, man);
  });
  const zones = needs.map((need, index): FilledZone => {
    const man = kept.get(index) ?? taken.get(index) ?? null;
    const how = man === null ? null : dropsTo(man, need) ? 'told' : 'filled';
    const proof = matching.proofs.get(open.indexOf(index));
    const reachable = gather(proof?.seekers ?? [], (each) => free[each]?.aligned.role.id ?? []);
    return {
      zone: need.zone,
      side: need.side,
      by: man?.aligned.role.id ?? null,
      how,
      because: zoneBecause(man, how === 'told'),
      proof: man === null ? { zones: proof?.items.length ?? 1, reachable } : null,
    };
  });
  const moves = new Map<Man, Need>(
    gather([...taken], ([item, man]) => {
      const need = needs[item];
      return need === undefined || dropsTo(man, need) ? [] : [[man, need] as const];
    }),
  );
  const moved = (man: Man<Known>): Man<Known> => {
    const need = moves.get(man);
    return need === undefined ? man : inZone(man, facts, need.zone, need.side);
  };
  return { men: moves.size === 0 ? men : men.map(moved), zones };
}

/** Who keeps the zone he is told, the zones that are open to the others, and the men who may take one of these. */
function whoIsTold(
  men: readonly Man[],
  needs: readonly Need[],
): { readonly kept: ReadonlyMap<number, Man>; readonly open: readonly number[]; readonly free: readonly Man[] } {
  const kept = new Map<number, Man>();
  const open: number[] = [];
  needs.forEach((need, index) => {
    // A zone may be needed twice: a man who keeps the one does not fill the other.
    const told = men.filter((man) => dropsTo(man, need) && ![...kept.values()].includes(man));
    const keeper = told.length > 1 ? keeperOf(need, told) : told[0];
    if (keeper === undefined) open.push(index);
    else kept.set(index, keeper);
  });
  const keepers = [...kept.values()];
  const free = men.filter((man) => isFree(man) && !keepers.includes(man)).sort(naturalOrder);
  return { kept, open, free };
}

/** Which of several who are told to one zone keeps it; undefined: that is still open. */
function keeperOf(need: Need, several: readonly Man[]): Man | undefined {
  const told = several.toSorted(byTaker(need));
  const byShell = told.filter(isFree);
  const sent = told.find((man) => man.combined.sure && !isFree(man));
  // A man who is told two things is not counted on while somebody else is told the same.
  const [only] = byShell.length === 0 ? told : byShell;
  return sent ?? (byShell.length > 1 ? undefined : only);
}

/** An order that has no left and right in it: a flipped look must get the flipped answer. */
const naturalOrder = compareBy(
  (man: Man) => ROOMS.indexOf(man.aligned.role.room),
  (man: Man) => man.aligned.role.id,
);

const rankOf = (man: Man, need: Need): number => {
  const takers = need.takers();
  const rank = takers.indexOf(man.aligned.role.id);
  return rank < 0 ? takers.length : rank;
};

/** The most natural taker first. */
function byTaker(need: Need): (a: Man, b: Man) => number {
  return (a, b) => rankOf(a, need) - rankOf(b, need) || naturalOrder(a, b);
}

function needsHere(coverage: Coverage, callSide: Side, facts: LookFacts, men: readonly Man[]): readonly Need[] {
  let aligned: ReadonlyMap<RoleId, Aligned> | null = null;
  return zonesHere(coverage, callSide, facts).map(({ zone, side, takers }): Need => {
    let found: readonly RoleId[] | null = null;
    const find = (): readonly RoleId[] => {
      const standing = (aligned ??= new Map(men.map((man) => [man.aligned.role.id, man.aligned])));
      return gather(takers, (who) => {
        const man = findWho(who, callSide, standing);
        return man.ok ? [man.value] : [];
      });
    };
    return { zone, side, takers: () => (found ??= find()) };
  });
}

/** The zones a shell needs in this look, and by what names its rules call those who may take them. */
const zonesHere = remembered((coverage: Coverage, callSide: Side, facts: LookFacts): readonly ZoneHere[] => {
  const context = { facts, callSide, mySide: null };
  return gather(coverage.needs, (need): readonly ZoneHere[] => {
    if (!allHold(need.when, context)) return [];
    if (need.side === 'middle') return [{ zone: need.zone, side: need.side, takers: need.takers }];
    const side = findSide(need.side, context);
    return side.ok ? [{ zone: need.zone, side: side.value, takers: need.takers }] : [];
  });
});

function dropsTo(man: Man, need: Need): boolean {
  const { job } = man.combined;
  return job?.kind === 'drop' && job.zone === need.zone && job.side === need.side;
}

/** Told nothing, or only given a zone by the shell. */
function isFree({ combined: { job, sure, byShell }, base }: Man): boolean {
  if (!sure) return false;
  return job === null ? base.pass === 'none' : job.kind === 'drop' && byShell;
}

/** A man leaves the zone he is told only if that fills one more zone. */
const LEAVE_COST = 1000;

function seekerOf(man: Man, open: readonly number[], needs: readonly Need[]): Seeker {
  const costs = new Map<number, number>();
  open.forEach((item, index) => {
    const need = needs[item];
    if (need === undefined) return;
    if (dropsTo(man, need)) costs.set(index, rankOf(man, need));
    else if (need.takers().includes(man.aligned.role.id)) costs.set(index, LEAVE_COST + rankOf(man, need));
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

/**
 * A man who fills a zone takes it as his job and keeps whatever gaps he may fit; one who was told nothing keeps those of his
 * base front, for he plays run first and drops when it is a pass. The same man of the same zone is the same one again.
 */
const inZone = remembered(
  <Known extends Settled>(man: Man<Known>, facts: LookFacts, zone: Zone, side: Side | 'middle'): Man<Known> => {
    const before = man.combined.job;
    const mySide = man.aligned.place === 'middle' ? null : man.aligned.place;
    const run: DropJob<LookNames>['run'] =
      before?.kind === 'drop'
        ? { ...before.run, support: null }
        : { fits: gapsThatExist(man.base.gaps, { facts, callSide: null, mySide }), firm: false, support: null };
    return {
      ...man,
      combined: {
        ...man.combined,
        job: { kind: 'drop', zone, side, run },
        from: 'shell',
        byShell: true,
        because: zoneBecause(man, false),
      },
    };
  },
);
