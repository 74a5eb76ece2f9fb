import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { gapKey } from '../gaps.ts';
import type { OwnedGap } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/** A run gap nobody is left to take; cannot tell of one that only men who are told two things would take. */
export const gapOpen = checkOfPlay({
  id: 'gap.open',
  title: 'A run gap is open',
  severity: 'stop',
  matters: 'The ball finds the gap nobody has.',
  source: '"leave a gap open and the offence will find it", "5 Tips for Developing a Blitz", MatchQuarters',
  needsSide: true,
  report: (draft) => {
    const told = new Set<string>();
    const open = gather(draft.gaps, (owned): readonly Report[] => {
      if (owned.proof === null) return [];
      const key = owned.proof.gaps.map(gapKey).join();
      if (told.has(key)) return [];
      told.add(key);
      return [reportOpen(owned, draft.gaps)];
    });
    return [...open, ...doubtful(draft.gaps)];
  },
});

function reportOpen(owned: OwnedGap, all: readonly OwnedGap[]): Report {
  const proof = owned.proof ?? { gaps: [], reachable: [] };
  const open = all.filter(
    (each) => each.proof !== null && each.proof.gaps.map(gapKey).join() === proof.gaps.map(gapKey).join(),
  );
  const gaps = open.map((each) => each.gap);
  if (proof.reachable.length === 0) {
    return {
      because: because(
        'nobody owns the {gaps}',
        { gaps: datum.gaps(gaps) },
        fact('nobody is sent there, and nobody who is free may fit it'),
      ),
      gaps,
    };
  }
  return {
    because: because(
      'nobody is left for the {gaps}',
      { gaps: datum.gaps(gaps) },
      because('the {all} can only be reached by {who}', {
        all: datum.gaps(proof.gaps),
        who: datum.roles(proof.reachable),
      }),
    ),
    who: proof.reachable,
    gaps,
  };
}

/** Gaps whose only owners are told two things. Which of them stays open depends on what stands (docs/decisions/0002). */
function doubtful(all: readonly OwnedGap[]): readonly Report[] {
  const gaps = all.filter((owned) => owned.owners.length > 0 && owned.owners.every((owner) => !owner.sure));
  if (gaps.length === 0) return [];
  const who = [...new Set(gather(gaps, (owned) => owned.owners.map((owner) => owner.role)))];
  return [
    {
      undetermined: true,
      because: because(
        'whether anybody has the {gaps} depends on {who}',
        { gaps: datum.gaps(gaps.map((owned) => owned.gap)), who: datum.roles(who) },
        fact('nobody else is sent there, and he is told two things'),
      ),
      who,
      gaps: gaps.map((owned) => owned.gap),
    },
  ];
}
