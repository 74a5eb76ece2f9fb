import { compareBy } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import { signOf } from '../../facts/surface.ts';
import type { Because, Block, IdleBlocker, UnblockedRusher } from '../../types/index.ts';
import { thousandths } from '../row.ts';
import type { Comer } from './comers.ts';
import type { Duty, Plan } from './plan.ts';
import type { Rusher } from './types.ts';

/** The rush met by the plan: who has whom, who comes free, who has nobody. */
export interface PickUp {
  readonly blocks: readonly Block[];
  readonly unblocked: readonly UnblockedRusher[];
  readonly idle: readonly IdleBlocker[];
}

/**
 * Every duty takes at most one man: a man blocker follows his own wherever he goes; a gap blocker takes the first who comes to
 * his gap (told to go first, else the nearest); a back takes the first left over, from the inside out. Whoever has no blocker
 * then is free, even if somebody stands idle: that is the rule told strictly ("It Really Isn't That Simple", Blitzology, 2020:
 * six blockers, five rushers, one of them free).
 */
export function pickUp({ duties, inTurn }: Plan, comers: readonly Comer[]): PickUp {
  const met: Comer[] = [];
  const blocks: Block[] = [];
  const idle: IdleBlocker[] = [];
  for (const duty of inTurn) {
    const taken = firstFor(duty, comers, met);
    if (taken === null) {
      idle.push(idleBlocker(duty));
      continue;
    }
    met.push(taken);
    blocks.push(blockOf(duty, taken.rusher));
  }
  const left = comers.filter((comer) => !met.includes(comer));
  return { blocks, unblocked: left.map((comer) => freeRusher(comer, duties, blocks)), idle };
}

/** Whom a duty takes of those who are not met yet. */
function firstFor(duty: Duty, comers: readonly Comer[], met: readonly Comer[]): Comer | null {
  let first: Comer | null = null;
  for (const comer of comers) {
    if (met.includes(comer) || !mayTake(duty, comer)) continue;
    if (first === null || orderOf(duty)(comer, first) < 0) first = comer;
  }
  return first;
}

/** Whether a duty is for a man who comes there. */
function mayTake(duty: Duty, { rusher, end }: Comer): boolean {
  switch (duty.kind) {
    case 'man':
      return rusher.role === duty.man;
    case 'gap':
      return duty.gaps.includes(end);
    case 'scan':
      return rusher.endGap.side === duty.side;
    case 'scan-as-aligned':
      return duty.side === null || rusher.from.x * signOf(duty.first) >= 0;
  }
}

/** Which of several a duty takes first. */
function orderOf(duty: Duty): (a: Comer, b: Comer) => number {
  switch (duty.kind) {
    case 'man':
    case 'scan':
      return compareBy(({ outward }) => outward, ...WITHIN_A_GAP);
    case 'gap':
      return compareBy(({ end }) => duty.gaps.indexOf(end), ...WITHIN_A_GAP);
    case 'scan-as-aligned':
      return compareBy(
        ({ rusher }) => thousandths(Math.abs(rusher.from.x)),
        ({ rusher }) => thousandths(-rusher.from.x * signOf(duty.first)),
        ({ turn }) => turn,
        ({ rusher }) => thousandths(rusher.from.y),
        ({ rusher }) => rusher.role,
      );
  }
}

const WITHIN_A_GAP = [({ turn }: Comer) => turn, ({ way }: Comer) => way, ({ rusher }: Comer) => rusher.role] as const;

function blockOf(duty: Duty, rusher: Rusher): Block {
  const data = {
    blocker: datum.player(duty.blocker),
    rusher: datum.role(rusher.role),
    gap: datum.gap(rusher.endGap),
  };
  return {
    blocker: duty.blocker,
    rusher: rusher.role,
    by: duty.kind === 'scan-as-aligned' ? 'scan' : duty.kind,
    because:
      duty.kind === 'man'
        ? because('{blocker} follows {rusher} to {gap}', data, duty.because)
        : because('{blocker} takes {rusher}, who comes to {gap}', data, duty.because),
  };
}

function idleBlocker(duty: Duty): IdleBlocker {
  const reason = duty.kind === 'man' ? fact('his man does not come') : fact('nobody left over comes there');
  return {
    blocker: duty.blocker,
    lineman: duty.body !== null,
    because: because('{blocker} has nobody', { blocker: datum.player(duty.blocker) }, reason, duty.because),
  };
}

/** Why nobody has him: whoever could take him has another man, or nobody is told to. */
function freeRusher(comer: Comer, duties: readonly Duty[], blocks: readonly Block[]): UnblockedRusher {
  const { rusher } = comer;
  const busy: Because[] = [];
  for (const duty of duties) {
    const block = mayTake(duty, comer) ? blocks.find((each) => each.blocker === duty.blocker) : undefined;
    if (block !== undefined) busy.push(block.because);
  }
  const reasons = busy.length > 0 ? busy : [fact('no blocker is told to take him')];
  const data = { rusher: datum.role(rusher.role), gap: datum.gap(rusher.endGap) };
  return {
    rusher: rusher.role,
    endGap: rusher.endGap,
    because: because('nobody has {rusher}, who comes to {gap}', data, ...reasons),
  };
}
