import { because, datum, fact } from '../because.ts';
import { gapKey } from '../gaps.ts';
import type { OwnedGap } from '../types/index.ts';
import { defineCheck, type Report } from './defineCheck.ts';

/** A run gap nobody is left to take. */
export const gapOpen = defineCheck({
  id: 'gap.open',
  title: 'A run gap is open',
  severity: 'stop',
  matters: 'The ball finds the gap nobody has.',
  source: '"leave a gap open and the offence will find it", "5 Tips for Developing a Blitz", MatchQuarters',
  judge: (draft) => {
    const told = new Set<string>();
    return draft.gaps.flatMap((owned): readonly Report[] => {
      if (owned.proof === null) return [];
      const key = owned.proof.gaps.map(gapKey).join();
      if (told.has(key)) return [];
      told.add(key);
      return [reportOpen(owned, draft.gaps)];
    });
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
        'nobody owns {gaps}',
        { gaps: datum.gaps(gaps) },
        fact('nobody is sent there, and nobody who is free may fit it'),
      ),
      gaps,
    };
  }
  return {
    because: because(
      'nobody is left for {gaps}',
      { gaps: datum.gaps(gaps) },
      because('{all} can only be reached by {who}', { all: datum.gaps(proof.gaps), who: datum.roles(proof.reachable) }),
    ),
    who: proof.reachable,
    gaps,
  };
}
