import { compareBy, gather, remembered } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { ownGapsOf } from '../combine/compareJobs.ts';
import { gapsEqual } from '../gaps.ts';
import { gapsThatExist } from '../resolve/names.ts';
import { GAP_LETTERS, ROOMS, type Side } from '../vocabulary.ts';
import type {
  Aligned,
  BaseJob,
  Gap,
  GapFact,
  GapOwner,
  Job,
  LookFacts,
  OwnedGap,
  RoleId,
  Settled,
} from '../types/index.ts';
import { matchSeekers, type Seeker } from './matchGaps.ts';

/** One of the eleven before the gaps are shared out. */
export interface Man<Known extends Settled = Settled> {
  readonly aligned: Aligned;
  readonly combined: Known;
  readonly base: BaseJob;
}

/**
 * What makes a fit unnatural, as whole thousandths of a yard: any place down a man's own list outweighs any distance on the
 * field, and a man of the base front giving up his first gap outweighs every coverage player's choices together.
 */
const RANK_COST = 100_000;
const LEAVE_BASE_COST = 10_000_000;
/** A man this deep comes late to any gap, so he is asked after everybody in front of him. */
const DEEP_DEPTH = 7;
const DEEP_COST = 5 * RANK_COST;

/** A man who is still free to take a gap, with the gaps he may take, the most natural first. */
interface FreeMan {
  readonly man: Man;
  readonly gaps: readonly Gap[];
  readonly how: 'base' | 'filled';
  /** A two-gap man may take two. */
  readonly twoGaps: boolean;
}

/**
 * Stage 6 for run gaps. First come the gaps men are sent to; then whoever is free takes what is left: his base gap if it is
 * still his, else the nearest one he may fit. A gap nobody is left for stays open, with the set that proves it.
 * A man in conflict counts for both gaps he is told, but surely for neither.
 */
export function ownGaps(men: readonly Man[], facts: LookFacts, lean: Side): readonly OwnedGap[] {
  const owners = facts.gaps.map((): GapOwner[] => []);
  const give = (gap: Gap, owner: GapOwner): void => {
    owners[facts.gaps.findIndex((each) => gapsEqual(each.gap, gap))]?.push(owner);
  };
  for (const man of men) {
    for (const { gap, owner } of sentTo(man)) give(gap, owner);
  }
  const open = openGaps(facts, owners, lean);
  const free = gather(men, (man) => freeMan(man, facts) ?? []).sort(naturalOrder(lean));
  const slots = gather(free, (each) => (each.twoGaps ? [each, each] : [each]));
  const matching = matchSeekers(
    open.length,
    slots.map((slot) => seekerOf(slot, open)),
  );
  matching.taken.forEach((item, index) => {
    const slot = slots[index];
    const gap = item === null ? undefined : open[item];
    if (slot === undefined || gap === undefined) return;
    const both = matching.taken.filter((other, at) => other !== null && slots[at] === slot).length > 1;
    give(gap.gap, filledOwner(slot, gap.gap, both));
  });
  return facts.gaps.map(({ gap, x }, at) => {
    const item = open.findIndex((each) => gapsEqual(each.gap, gap));
    const proof = matching.proofs.get(item);
    return {
      gap,
      x,
      owners: owners[at] ?? [],
      proof:
        proof === undefined
          ? null
          : {
              gaps: gather(proof.items, (each) => open[each]?.gap ?? []),
              reachable: uniqueRoles(gather(proof.seekers, (each) => slots[each]?.man.aligned.role.id ?? [])),
            },
    };
  });
}

function uniqueRoles(roles: readonly RoleId[]): readonly RoleId[] {
  return [...new Set(roles)];
}

/** The gaps a man is sent to by what stands of his tellings. */
const sentTo = remembered((man: Man): readonly { readonly gap: Gap; readonly owner: GapOwner }[] => {
  const { combined, aligned } = man;
  const sent = (job: Job, sure: boolean): readonly { gap: Gap; owner: GapOwner }[] => {
    const gaps = ownGapsOf(job);
    return gaps.map((gap) => ({
      gap,
      owner: {
        role: aligned.role.id,
        how: 'told',
        sure,
        shared: gaps.length > 1,
        because: because('{who} is sent there', { who: datum.role(aligned.role.id) }, combined.because),
      },
    }));
  };
  if (combined.torn.length > 0) {
    // Both may send him to one gap, by different work: he is there once.
    return gather(combined.torn, (job) => sent(job, false)).filter(
      ({ gap }, index, all) => all.findIndex((other) => gapsEqual(other.gap, gap)) === index,
    );
  }
  return combined.job === null ? [] : sent(combined.job, true);
});

/** A man told nothing has his base gaps; a coverage player has the gaps he may fit. Null: anybody else is not free. */
const freeMan = remembered((man: Man, facts: LookFacts): FreeMan | null => {
  const { job, torn } = man.combined;
  if (torn.length > 0) return null;
  if (job === null) {
    const mySide = man.aligned.place === 'middle' ? null : man.aligned.place;
    const gaps = gapsThatExist(man.base.gaps, { facts, callSide: null, mySide });
    return gaps.length === 0 ? null : { man, gaps, how: 'base', twoGaps: man.base.style === 'two-gap' };
  }
  if (job.kind !== 'drop' && job.kind !== 'man' && job.kind !== 'spy') return null;
  if (job.run.firm || job.run.fits.length === 0) return null;
  return { man, gaps: job.run.fits, how: 'filled', twoGaps: false };
});

/** Line before linebackers before secondary, then from the ball outward, the leaning side first. */
function naturalOrder(lean: Side): (a: FreeMan, b: FreeMan) => number {
  return compareBy(
    (each) => ROOMS.indexOf(each.man.aligned.role.room),
    (each) => Math.round(Math.abs(each.man.aligned.x) * 1000),
    (each) => (each.man.aligned.place === lean ? 0 : 1),
    (each) => each.man.aligned.y,
    (each) => each.man.aligned.role.id,
  );
}

function openGaps(facts: LookFacts, owners: readonly (readonly GapOwner[])[], lean: Side): readonly GapFact[] {
  return facts.gaps
    .filter((_, at) => owners[at]?.length === 0)
    .sort(
      compareBy(
        (each) => GAP_LETTERS.indexOf(each.gap.letter),
        (each) => (each.gap.side === lean ? 0 : 1),
      ),
    );
}

function seekerOf(slot: FreeMan, open: readonly GapFact[]): Seeker {
  const costs = new Map<number, number>();
  slot.gaps.forEach((gap, listed) => {
    const item = open.findIndex((each) => gapsEqual(each.gap, gap));
    const at = open[item];
    if (at === undefined || costs.has(item)) return;
    const { x, y } = slot.man.aligned;
    const rank = slot.twoGaps && listed < 2 ? 0 : listed;
    const leaves = slot.how === 'base' && rank > 0 ? LEAVE_BASE_COST : 0;
    const late = y >= DEEP_DEPTH ? DEEP_COST : 0;
    costs.set(item, leaves + late + rank * RANK_COST + Math.round(Math.hypot(at.x - x, y) * 1000));
  });
  return { name: slot.man.aligned.role.id, costs };
}

function filledOwner(slot: FreeMan, gap: Gap, shared: boolean): GapOwner {
  const who = datum.role(slot.man.aligned.role.id);
  const listed = slot.gaps.findIndex((each) => gapsEqual(each, gap));
  const keeps = slot.how === 'base' && (listed === 0 || (slot.twoGaps && listed < 2));
  return {
    role: slot.man.aligned.role.id,
    how: keeps ? 'base' : 'filled',
    sure: true,
    shared,
    because: keeps
      ? because('{who} keeps his base gap', { who }, slot.man.combined.because)
      : because(
          '{who} may fit it and nobody nearer has to',
          { who },
          fact('nobody is sent there'),
          slot.man.combined.because,
        ),
  };
}
