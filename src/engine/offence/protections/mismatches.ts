import { because, datum, fact } from '../../because.ts';
import type { Block, LookFacts, Mismatch } from '../../types/index.ts';
import { gapIndex, isAtLine } from '../row.ts';
import type { Duty } from './plan.ts';
import type { Rusher, Threat } from './types.ts';

/** A lineman may follow his man one gap beyond his own two. More is far. */
const FAR_GAPS = 2;

/**
 * Blocks that are had by rule but are bad ones: a back on a man who stood at the line ("What GT Does - Pass Blocking", GTSwarm:
 * a back on an end is a mismatch), and a lineman who must follow more than one gap beyond his own two ("Breaking Half Slide
 * with Blitz Angles", Blitzology, 2019, on angles that pull a blocker off; the number is ours).
 */
export function mismatches(
  duties: readonly Duty[],
  blocks: readonly Block[],
  rushers: readonly Rusher[],
  defenders: readonly Threat[],
  facts: LookFacts,
): readonly Mismatch[] {
  return blocks.flatMap((block): readonly Mismatch[] => {
    const duty = duties.find((each) => each.blocker === block.blocker);
    const rusher = rushers.find((each) => each.role === block.rusher);
    const man = defenders.find((each) => each.role === block.rusher);
    if (duty === undefined || rusher === undefined || man === undefined) return [];
    const { blocker } = block;
    const data = { blocker: datum.player(blocker), rusher: datum.role(rusher.role) };
    if (duty.body === null) {
      if (!isAtLine(man)) return [];
      const why = because('{blocker}, a back, has {rusher}, who stood at the line', data, block.because);
      return [{ kind: 'back-on-line-man', blocker, rusher: rusher.role, because: why }];
    }
    const end = gapIndex(rusher.endGap, facts);
    const gaps = Math.max(duty.body.leftGap - end, end - duty.body.rightGap, 0);
    if (gaps < FAR_GAPS) return [];
    const why = because(
      '{blocker} must follow {rusher} {n} gaps beyond his own',
      { ...data, n: datum.number(gaps) },
      block.because,
      fact('one gap is as far as a lineman turns'),
    );
    return [{ kind: 'far-redirect', blocker, rusher: rusher.role, because: why }];
  });
}
