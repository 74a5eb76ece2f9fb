import { compareBy, remembered } from '../../base/index.ts';
import { matchSeekers, type Seeker } from '../complete/matchGaps.ts';
import { gapsEqual } from '../gaps.ts';
import type {
  Assignment,
  FloatingFit,
  Gap,
  KnownProtection,
  KnownRun,
  LookFacts,
  OptionDuties,
  OwnedGap,
  ProtectionAnswer,
  RoleId,
  RunAnswer,
  RunPicture,
} from '../types/index.ts';
import { protect } from './protections/protect.ts';
import { PROTECTIONS } from '../offenceVocabulary.ts';
import type { ProtectionScheme, Rusher } from './protections/types.ts';
import { optionDuties } from './runs/optionDuties.ts';
import { findMan, readMan } from './runs/readMan.ts';
import { runConcept } from './runs/runConcept.ts';
import type { OptionMan } from './runs/types.ts';
import { READ_REACTIONS } from '../offenceVocabulary.ts';

/** What an answer is worked out from: the eleven with their jobs, the gaps with their owners. */
export interface Defence {
  readonly facts: LookFacts;
  readonly assignments: readonly Assignment[];
  readonly gaps: readonly OwnedGap[];
}

/** A man this deep or this far outside the last body does not fit a gap that opens at the snap (from memory: the alley). */
const FIT_DEPTH = 12;
const FIT_WIDTH = 9;

/** One run the look is known for against this defence. */
export function answerRun(known: KnownRun, defence: Defence): RunAnswer {
  const result = runConcept(defence.facts, known.concept, known.side);
  if (!result.ok) return { kind: 'not-here', known, because: result.problem };
  const picture = result.value;
  const men = defence.assignments.map(optionMan);
  const { fits, spare } = fitFloating(picture, defence);
  return {
    kind: 'answered',
    known,
    picture,
    atAim: ownersOf(picture.aim, defence),
    atCutback: picture.cutback === null ? [] : ownersOf(picture.cutback, defence),
    unblocked:
      picture.leftUnblocked?.man === undefined || picture.leftUnblocked.man === null
        ? null
        : findMan(picture.leftUnblocked.man, men),
    read: readMan(picture, men),
    floating: fits,
    spare,
    option: bestDuties(picture, men),
  };
}

function optionMan({ aligned, run }: Assignment): OptionMan {
  return { role: aligned.role.id, x: aligned.x, y: aligned.y, gaps: run.gaps };
}

function ownersOf(gap: Gap, { gaps }: Defence): readonly RoleId[] {
  return gaps.filter((owned) => gapsEqual(owned.gap, gap)).flatMap((owned) => owned.owners.map((owner) => owner.role));
}

/** The option is defended as well as the best reaction of the read man allows; the first of equals. */
function bestDuties(picture: RunPicture, men: readonly OptionMan[]): OptionDuties | null {
  const duties = READ_REACTIONS.flatMap((reaction) => {
    const result = optionDuties(picture, men, reaction);
    return result.ok ? [result.value] : [];
  });
  const [best] = duties.toSorted(compareBy((each) => each.missing.length));
  return best ?? null;
}

/** Floating gaps go to men near the box without a gap of their own, the nearest first. */
function fitFloating(
  picture: RunPicture,
  { facts, assignments }: Defence,
): { readonly fits: readonly FloatingFit[]; readonly spare: number } {
  const reach = Math.max(...facts.gaps.map((gap) => Math.abs(gap.x))) + FIT_WIDTH;
  const free = assignments
    .filter(({ aligned, run, pass }) => {
      const near = aligned.y <= FIT_DEPTH && Math.abs(aligned.x) <= reach;
      return near && run.gaps.length === 0 && pass.kind !== 'rush' && pass.kind !== 'contain';
    })
    .toSorted(
      compareBy(
        ({ aligned }) => aligned.y,
        ({ aligned }) => Math.abs(aligned.x),
        ({ aligned }) => aligned.role.id,
      ),
    );
  const floating = picture.floating.filter((each) => each.kind !== 'passer' && each.kind !== 'pitch');
  const matching = matchSeekers(
    floating.length,
    free.map(({ aligned }): Seeker => ({
      name: aligned.role.id,
      costs: new Map(
        floating.map((each, item) => [item, Math.round(Math.hypot(each.x - aligned.x, aligned.y) * 1000)] as const),
      ),
    })),
  );
  const by = new Map(matching.taken.flatMap((item, index) => (item === null ? [] : [[item, free[index]] as const])));
  return {
    fits: floating.map((each, item) => ({ floating: each, by: by.get(item)?.aligned.role.id ?? null })),
    spare: free.length - floating.length,
  };
}

/** One protection the look is known for against this rush. A rusher in conflict is taken where he stands for now. */
export function answerProtection(known: KnownProtection, { facts, assignments }: Defence): ProtectionAnswer {
  const rushers = assignments.flatMap(({ aligned, run, pass, combined }): readonly Rusher[] => {
    const [endGap] = run.gaps;
    if ((pass.kind !== 'rush' && pass.kind !== 'contain') || endGap === undefined) return [];
    const { job } = combined;
    const order = job?.kind === 'rush' || job?.kind === 'contain' ? (job.order?.turn ?? null) : null;
    return [{ role: aligned.role.id, from: { x: aligned.x, y: aligned.y }, endGap, order }];
  });
  const result = protect({
    facts,
    scheme: schemeOf(known),
    defenders: assignments.map(({ aligned }) => ({ role: aligned.role.id, x: aligned.x, y: aligned.y })),
    rushers,
  });
  return result.ok
    ? { kind: 'answered', known, picture: result.value }
    : { kind: 'not-here', known, because: result.problem };
}

const schemeOf = remembered((known: KnownProtection): ProtectionScheme => {
  const named = PROTECTIONS.find((each) => each.id === known.protection);
  if (named === undefined) throw new Error(`Unknown protection ${known.protection}`);
  return { scheme: named.scheme, back: named.back, tightEnds: named.tightEnds, slideSide: known.slideSide };
});
