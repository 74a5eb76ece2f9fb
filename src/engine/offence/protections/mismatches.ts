import { because, datum, fact } from '../../because.ts';
import type { Block, Mismatch } from '../../types/index.ts';
import { isAtLine, type RowBody } from '../row.ts';
import type { Comer } from './comers.ts';
import type { Duty } from './plan.ts';

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
  comers: readonly Comer[],
): readonly Mismatch[] {
  const found: Mismatch[] = [];
  for (const block of blocks) {
    const duty = duties.find((each) => each.blocker === block.blocker);
    const comer = comers.find((each) => each.rusher.role === block.rusher);
    if (duty === undefined || comer === undefined) continue;
    const mismatch = duty.body === null ? ofBack(block, comer) : ofLineman(block, duty.body, comer);
    if (mismatch !== null) found.push(mismatch);
  }
  return found;
}

function ofBack(block: Block, comer: Comer): Mismatch | null {
  if (!isAtLine(comer.rusher.from)) return null;
  const { blocker, rusher } = block;
  const data = { blocker: datum.player(blocker), rusher: datum.role(rusher) };
  const why = because('{blocker}, a back, has {rusher}, who stood at the line', data, block.because);
  return { kind: 'back-on-line-man', blocker, rusher, because: why };
}

function ofLineman(block: Block, body: RowBody, { end }: Comer): Mismatch | null {
  const gaps = Math.max(body.leftGap - end, end - body.rightGap, 0);
  if (gaps < FAR_GAPS) return null;
  const { blocker, rusher } = block;
  const why = because(
    '{blocker} must follow {rusher} {n} gaps beyond his own',
    { blocker: datum.player(blocker), rusher: datum.role(rusher), n: datum.number(gaps) },
    block.because,
    fact('one gap is as far as a lineman turns'),
  );
  return { kind: 'far-redirect', blocker, rusher, because: why };
}
