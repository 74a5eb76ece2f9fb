import { FORMATION_CLASSES, SIDES, type FormationClass, type Side } from '../vocabulary.ts';
import type { LookFacts } from '../types/index.ts';

/** Three receivers this close together, in yards from the first to the third, are a bunch (convention of ours). */
const BUNCH_WIDTH = 3.5;

interface SideCount {
  readonly receivers: number;
  readonly attached: number;
}

function count(facts: LookFacts, side: Side): SideCount {
  const mine = facts.receivers.filter((each) => each.side === side && each.eligible);
  return { receivers: mine.length, attached: mine.filter((each) => each.attached).length };
}

function isBunch(facts: LookFacts, side: Side): boolean {
  const split = facts.receivers.filter((each) => each.side === side && !each.attached);
  const xs = split.map((each) => facts.players.get(each.player)?.x ?? 0);
  return split.length >= 3 && Math.max(...xs) - Math.min(...xs) <= BUNCH_WIDTH;
}

/** Whether both sides of the line have as many linemen. */
function isBalanced(facts: LookFacts): boolean {
  const linemen = (side: Side): number =>
    facts.surface[side].filter((body) => facts.players.get(body.player)?.kind === 'lineman').length;
  return linemen('left') === linemen('right');
}

/** Every class a look belongs to, the most special first, in the order of `FORMATION_CLASSES`. */
export function formationClasses(facts: LookFacts): readonly FormationClass[] {
  const [left, right] = [count(facts, 'left'), count(facts, 'right')];
  const most = Math.max(left.receivers, right.receivers);
  const strong = left.receivers >= right.receivers ? left : right;
  const weak = left.receivers >= right.receivers ? right : left;
  const attached = left.attached + right.attached;
  const backs = facts.backs.length;
  const holds: Readonly<Record<FormationClass, boolean>> = {
    unbalanced: !isBalanced(facts),
    'empty-four-by-one': backs === 0 && most >= 4,
    'empty-three-by-two': backs === 0 && most === 3,
    heavy: attached >= 3 || (attached >= 2 && backs >= 2),
    'two-backs': backs >= 2,
    quads: most >= 4,
    bunch: SIDES.some((side) => isBunch(facts, side)),
    'trips-nub': most === 3 && strong.attached === 0 && weak.receivers === 1 && weak.attached === 1,
    'trips-tight-end': most === 3 && strong.attached >= 1,
    trips: most === 3,
    wing: SIDES.some((side) => facts.surface[side].some((body) => body.how === 'wing')),
    'two-tight-ends': attached >= 2,
    'doubles-tight-end': most === 2 && attached === 1,
    doubles: most <= 2,
  };
  return FORMATION_CLASSES.filter((name) => holds[name]);
}
