/**
 * The questions of one check as a general solver is asked them: who may take what, and what each man is told. They are made
 * from what goes into a stage of the engine (the jobs, and who may take which gap, zone or receiver), never from what comes out
 * of it; who takes whom out of a zone is written down here once more, from the same sources.
 */
import {
  gapKey,
  type Analysis,
  type Assignment,
  type Combined,
  type Gap,
  type GapRef,
  type Job,
  type RoleId,
  type Side,
  type Telling,
} from '../../../src/engine/index.ts';
import { combineMan } from '../../../src/engine/combine/combine.ts';
import { allHold } from '../../../src/engine/resolve/holds.ts';
import { findSide } from '../../../src/engine/resolve/names.ts';
import { findWho } from '../../../src/engine/resolve/who.ts';

/** Items to be shared out, each to one man at most: how many can be, and can all? */
export interface Sharing {
  readonly items: number;
  /** What each man may take, and how many of them at most. */
  readonly men: readonly { readonly may: readonly number[]; readonly most: number }[];
}

/** What one man is told: exactly these gaps are his own, and this is what he does against the pass. Can he do all of it? */
export interface TwoTellings {
  readonly role: RoleId;
  readonly told: readonly { readonly gaps: readonly string[]; readonly duty: string }[];
}

/** All that is asked of one check. */
export interface Questions {
  readonly gaps: Sharing;
  readonly zones: Sharing;
  readonly receivers: Sharing;
  readonly men: readonly TwoTellings[];
}

/** The questions of a call whose two pressures run at once; its call side must be decided. */
export function questionsOf(analysis: Analysis): Questions {
  return {
    gaps: gapsToShare(analysis),
    zones: zonesToFill(analysis),
    receivers: receiversToAnswer(analysis),
    men: analysis.assignments.flatMap(({ combined }) => toldTwice(combined)),
  };
}

/** What the engine says to the same questions. */
export function engineSays({ gaps, zones, answers, assignments }: Analysis) {
  return {
    openGaps: gaps.filter(({ owners }) => owners.length === 0).length,
    emptyZones: zones.filter(({ by }) => by === null).length,
    unanswered: answers.filter(({ by }) => by === null).length,
    conflicts: assignments.flatMap(({ combined }) => (combined.status === 'conflict' ? [combined.role.id] : [])),
  };
}

/** The gaps a job makes a man's own. */
function ownGaps(job: Job): readonly Gap[] {
  if (job.kind === 'rush' || job.kind === 'contain' || job.kind === 'fit') return job.gaps;
  return job.run.firm ? job.run.fits : [];
}

/** The jobs a man may end up with: one, none, or both while he is told two things. */
function jobsOf({ status, first, second, job }: Combined): readonly Job[] {
  if (status !== 'conflict') return job === null ? [] : [job];
  return [first, second].flatMap((telling) => (telling?.kind === 'told' ? [telling.job] : []));
}

function gapsToShare({ assignments, facts, setup }: Analysis): Sharing {
  const sentTo = new Set(assignments.flatMap(({ combined }) => jobsOf(combined).flatMap(ownGaps).map(gapKey)));
  const left = facts.gaps.map(({ gap }) => gapKey(gap)).filter((key) => !sentTo.has(key));
  const places = (gaps: readonly Gap[]): readonly number[] =>
    left.flatMap((key, at) => (gaps.some((gap) => gapKey(gap) === key) ? [at] : []));
  const men = assignments.flatMap((man): Sharing['men'] => {
    const { job, status } = man.combined;
    if (status === 'conflict') return [];
    if (job === null) {
      const base = setup.front.roles.find(({ role }) => role === man.aligned.role.id)?.base;
      if (base === undefined) throw new Error('A man outside his front');
      const may = places(base.gaps.flatMap((ref) => gapFor(ref, man, facts)));
      return [{ may, most: base.style === 'two-gap' ? 2 : 1 }];
    }
    const fits = 'run' in job && !job.run.firm ? job.run.fits : [];
    return fits.length === 0 ? [] : [{ may: places(fits), most: 1 }];
  });
  return { items: left.length, men };
}

/** A gap of the base front in this look; none where it is not there. Bodies are counted from the snapper outward. */
function gapFor(ref: GapRef, { aligned: { place } }: Assignment, { surface }: Analysis['facts']): readonly Gap[] {
  const side = sideFor(ref.side, place);
  if (side === null) return [];
  const letters = ['A', 'B', 'C', 'D', 'E', 'F', 'G'] as const;
  const bodies = surface[side].length;
  const outside = { snapper: 0, guard: 1, tackle: 2, end: 3, wing: 4, last: bodies - 1 } as const;
  const at = ref.kind === 'letter' ? letters.indexOf(ref.letter) : ref.kind === 'edge' ? bodies - 1 : outside[ref.body];
  const letter = letters[at];
  return letter === undefined || at >= bodies ? [] : [{ side, letter }];
}

function sideFor(ref: GapRef['side'], place: Side | 'middle'): Side | null {
  if (ref === 'left' || ref === 'right') return ref;
  if (place === 'middle' || ref === 'call' || ref === 'away') return null;
  return (ref === 'mine') === (place === 'left') ? 'left' : 'right';
}

/**
 * Of the zones the shell needs, those nobody keeps: kept is a zone by the man the rush sends there, else by the one man the
 * shell tells, else by a man who is told two things. Who is free may take one he is told or one he is named for.
 */
function zonesToFill({ assignments, facts, setup, first }: Analysis): Sharing {
  if (first.side.kind === 'tie') return { items: 0, men: [] };
  const callSide = first.side.side;
  const context = { facts, callSide, mySide: null };
  const aligned = new Map(assignments.map((man) => [man.aligned.role.id, man.aligned]));
  // What they are told, before anybody is moved into an empty zone.
  const men = assignments.map(({ aligned: { role }, combined }) => combineMan(role, combined.first, combined.second));
  const free = (man: Combined): boolean => {
    if (man.status === 'conflict' || man.status === 'unresolved') return false;
    if (man.job === null) return setup.front.roles.find(({ role }) => role === man.role.id)?.base.pass === 'none';
    const telling = man.from === 'first' ? man.first : man.from === 'second' ? man.second : null;
    return man.job.kind === 'drop' && telling?.kind === 'told' && telling.basis === 'coverage';
  };
  const kept = new Set<Combined>();
  const open: { readonly dropping: readonly Combined[]; readonly takers: readonly RoleId[] }[] = [];
  for (const need of setup.coverage.needs) {
    if (!allHold(need.when, context)) continue;
    const found = need.side === 'middle' ? null : findSide(need.side, context);
    if (found?.ok === false) continue;
    const side = found === null ? 'middle' : found.value;
    const takers = need.takers.flatMap((who) => {
      const man = findWho(who, callSide, aligned);
      return man.ok ? [man.value] : [];
    });
    const dropping = men.filter(({ job }) => job?.kind === 'drop' && job.zone === need.zone && job.side === side);
    const there = dropping.filter((man) => !kept.has(man));
    const byShell = there.filter(free);
    const sent = there.find((man) => !free(man) && man.status !== 'conflict' && man.status !== 'unresolved');
    const keeper =
      sent ?? (byShell.length > 0 ? (byShell.length === 1 ? byShell[0] : undefined) : byRank(there, takers)[0]);
    if (keeper === undefined) open.push({ dropping, takers });
    else kept.add(keeper);
  }
  return {
    items: open.length,
    men: men
      .filter((man) => free(man) && !kept.has(man))
      .map((man) => ({
        may: open.flatMap(({ dropping, takers }, at) =>
          dropping.includes(man) || takers.includes(man.role.id) ? [at] : [],
        ),
        most: 1,
      })),
  };
}

function byRank(men: readonly Combined[], takers: readonly RoleId[]): readonly Combined[] {
  const rank = ({ role }: Combined): number => (takers.includes(role.id) ? takers.indexOf(role.id) : takers.length);
  const rooms = ['line', 'linebackers', 'secondary'];
  return men.toSorted(
    (a, b) =>
      rank(a) - rank(b) || rooms.indexOf(a.role.room) - rooms.indexOf(b.role.room) || (a.role.id < b.role.id ? -1 : 1),
  );
}

/**
 * Which receivers a zone may take ("Fire Zone Techniques" after M. Archer, 2003; "3 Receiver Hook Drop", Blitzology, 30 Dec
 * 2010; "Fire Zone Coverage Series", Blitzology, 31 Dec 2010; quarter from memory), by number on his own side; and backs.
 */
const TAKES = {
  third: { numbers: [1], across: [], back: 'never' },
  half: { numbers: [1, 2], across: [], back: 'never' },
  quarter: { numbers: [1, 2], across: [], back: 'never' },
  middle: { numbers: [], across: [], back: 'never' },
  seam: { numbers: [2, 3, 4, 5], across: [], back: 'always' },
  hot: { numbers: [2, 3, 4, 5], across: [], back: 'always' },
  'curl-flat': { numbers: [1, 2, 3, 4, 5], across: [], back: 'always' },
  flat: { numbers: [1, 2], across: [], back: 'near' },
  hook: { numbers: [2, 3, 4, 5], across: [3, 4, 5], back: 'always' },
  hole: { numbers: [2, 3, 4, 5], across: [3, 4, 5], back: 'always' },
} as const;

/** Eligible receivers nobody has man to man, and who may answer each: a zone, or a rusher who leaves with the back. */
function receiversToAnswer({ assignments, facts }: Analysis): Sharing {
  const jobs = assignments.map(({ aligned, combined: { job } }) => ({ place: aligned.place, job }));
  const taken = new Set(jobs.flatMap(({ job }) => (job?.kind === 'man' ? [job.receiver] : [])));
  const left = [
    ...facts.receivers
      .filter(({ eligible }) => eligible)
      .map(({ player, side, number }) => ({ player, place: side, number })),
    ...facts.backs.map(({ player, place }) => ({ player, place, number: null })),
  ].filter(({ player }) => !taken.has(player));
  const has = (list: readonly number[], number: number): boolean => list.includes(number);
  const may = ({ place, job }: (typeof jobs)[number], receiver: (typeof left)[number]): boolean => {
    if (job?.kind === 'rush' || job?.kind === 'contain') {
      return job.peel && receiver.number === null && (receiver.place === 'middle' || receiver.place === place);
    }
    if (job?.kind !== 'drop') return false;
    const takes = TAKES[job.zone];
    const mine = job.side === 'middle' || receiver.place === job.side;
    if (receiver.number === null)
      return takes.back === 'always' || (takes.back === 'near' && (mine || receiver.place === 'middle'));
    return has(mine ? takes.numbers : takes.across, receiver.number);
  };
  return {
    items: left.length,
    men: jobs.map((man) => ({ may: left.flatMap((each, at) => (may(man, each) ? [at] : [])), most: 1 })),
  };
}

/** Weakest first (docs/decisions/0001). On the line nothing gives way; off it the weaker telling does, and is not asked for. */
const RANKS = ['coverage', 'consequence', 'movement', 'path'];

function toldTwice({ role, first, second }: Combined): readonly TwoTellings[] {
  if (first?.kind !== 'told' || second?.kind !== 'told') return [];
  const rank = ({ basis }: Extract<Telling, { kind: 'told' }>): number => RANKS.indexOf(basis);
  const strongest = Math.max(rank(first), rank(second));
  const heard = [first, second].filter((telling) => role.room === 'line' || rank(telling) === strongest);
  return [{ role: role.id, told: heard.map(({ job }) => ({ gaps: ownGaps(job).map(gapKey), duty: dutyOf(job) })) }];
}

/** What he does against the pass: to contain is to rush. */
function dutyOf(job: Job): string {
  if (job.kind === 'contain') return 'rush';
  if (job.kind === 'drop') return `${job.zone} ${job.side}`;
  return job.kind === 'man' ? `man ${job.receiver}` : job.kind;
}
