import { compareBy } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import type { Block, IdleBlocker, LookFacts, RoleId, UnblockedRusher } from '../../types/index.ts';
import { GAP_LETTERS } from '../../vocabulary.ts';
import { gapAt, gapIndex, thousandths } from '../row.ts';
import type { Duty } from './plan.ts';
import type { Rusher } from './types.ts';

/** The rush met by the plan: who has whom, who comes free, who has nobody. */
export interface PickUp {
  readonly blocks: readonly Block[];
  readonly unblocked: readonly UnblockedRusher[];
  readonly idle: readonly IdleBlocker[];
}

const ORDER_RANK = { first: 0, none: 1, second: 2 } as const;

function orderRank(rusher: Rusher): number {
  return ORDER_RANK[rusher.order ?? 'none'];
}

/** How far a rusher has to the gap his path ends in. */
function wayToGap(rusher: Rusher, facts: LookFacts): number {
  const { x } = gapAt(gapIndex(rusher.endGap, facts), facts);
  return thousandths(Math.hypot(x - rusher.from.x, rusher.from.y));
}

/**
 * Every duty takes at most one man: a man blocker follows his own wherever he goes; a gap blocker takes the first who comes to
 * his gap (told to go first, else the nearest); a back takes the first left over, from the inside out. Whoever has no blocker
 * then is free, even if somebody stands idle: that is the rule told strictly ("It Really Isn't That Simple", Blitzology, 2020:
 * six blockers, five rushers, one of them free).
 */
export function pickUp(duties: readonly Duty[], rushers: readonly Rusher[], facts: LookFacts): PickUp {
  const left = new Map<RoleId, Rusher>(rushers.map((rusher) => [rusher.role, rusher]));
  const blocks: Block[] = [];
  const idle: IdleBlocker[] = [];
  for (const duty of [...duties].sort(compareBy(turnOf))) {
    const [taken] = candidates(duty, [...left.values()], facts);
    if (taken === undefined) {
      idle.push(idleBlocker(duty));
      continue;
    }
    left.delete(taken.role);
    blocks.push(blockOf(duty, taken));
  }
  const unblocked = rushers
    .filter((rusher) => left.has(rusher.role))
    .map((rusher) => freeRusher(rusher, duties, blocks, facts));
  return { blocks, unblocked, idle };
}

/** Men are followed, then gaps are held, then the backs look. */
function turnOf(duty: Duty): number {
  return duty.kind === 'man' ? 0 : duty.kind === 'gap' ? 1 : 2;
}

/** The rushers a duty could take, the one it takes first. */
function candidates(duty: Duty, left: readonly Rusher[], facts: LookFacts): readonly Rusher[] {
  const letterRank = (rusher: Rusher): number => GAP_LETTERS.indexOf(rusher.endGap.letter);
  const way = (rusher: Rusher): number => wayToGap(rusher, facts);
  const id = (rusher: Rusher): string => rusher.role;
  switch (duty.kind) {
    case 'man':
      return left.filter((rusher) => rusher.role === duty.man);
    case 'gap': {
      const rank = (rusher: Rusher): number => duty.gaps.indexOf(gapIndex(rusher.endGap, facts));
      return left.filter((rusher) => rank(rusher) >= 0).sort(compareBy(rank, orderRank, way, id));
    }
    case 'scan':
      return left.filter((rusher) => rusher.endGap.side === duty.side).sort(compareBy(letterRank, orderRank, way, id));
    case 'scan-as-aligned': {
      const outward = (rusher: Rusher): number => rusher.from.x * (duty.first === 'right' ? 1 : -1);
      return left
        .filter((rusher) => duty.side === null || outward(rusher) >= 0)
        .sort(
          compareBy(
            (rusher) => thousandths(Math.abs(rusher.from.x)),
            (rusher) => thousandths(-outward(rusher)),
            orderRank,
            (rusher) => thousandths(rusher.from.y),
            id,
          ),
        );
    }
  }
}

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
function freeRusher(
  rusher: Rusher,
  duties: readonly Duty[],
  blocks: readonly Block[],
  facts: LookFacts,
): UnblockedRusher {
  const busy = duties
    .filter((duty) => candidates(duty, [rusher], facts).length > 0)
    .flatMap((duty) => blocks.find((block) => block.blocker === duty.blocker)?.because ?? []);
  const reasons = busy.length > 0 ? busy : [fact('no blocker is told to take him')];
  const data = { rusher: datum.role(rusher.role), gap: datum.gap(rusher.endGap) };
  return {
    rusher: rusher.role,
    endGap: rusher.endGap,
    because: because('nobody has {rusher}, who comes to {gap}', data, ...reasons),
  };
}
