import { compareBy, rememberedLast } from '../../base/index.ts';
import type { Played, PlayedMan } from '../types/index.ts';
import type { Side } from '../vocabulary.ts';
import { outcomesOf, whoDoes, type Known, type Outcome } from './outcomes.ts';

/** The side a man works on: that of his zone, his gap, or the one he stands on. */
export function sideOf({ pass, gaps }: Pick<Outcome, 'pass' | 'gaps'>, man: PlayedMan): Side | 'middle' {
  if (pass.kind === 'zone' && pass.side !== 'middle') return pass.side;
  return gaps[0]?.side ?? man.aligned.place;
}

/** Men told to be force on a side. */
export function forceMen(draft: Played, side: Side): Known {
  return whoDoes(draft, (outcome, man) => outcome.support === 'force' && sideOf(outcome, man) === side);
}

/** Men in the outermost gap of a side. */
export function inTheEdge(outcome: Outcome, draft: Played, side: Side): boolean {
  return outcome.gaps.some((gap) => gap.side === side && gap.letter === draft.facts.edge[side]);
}

/**
 * Who turns the ball back in on a side: a man told to be force there, or one in the edge gap who boxes and so does it himself.
 */
export function turnsBack(draft: Played, side: Side): Known {
  return onBothSides(draft)[side];
}

/** Several checks of one play ask it. */
const onBothSides = rememberedLast((draft: Played): Readonly<Record<Side, Known>> => {
  const on = (side: Side): Known =>
    whoDoes(
      draft,
      (outcome, man) =>
        (outcome.support === 'force' && sideOf(outcome, man) === side) ||
        (outcome.edge === 'box' && inTheEdge(outcome, draft, side)),
    );
  return { left: on('left'), right: on('right') };
});

/** Who keeps the passer in on a side; a man who spies him does so on both. */
export function containMen(draft: Played, side: Side): Known {
  return whoDoes(draft, ({ pass }) => pass.kind === 'spy' || (pass.kind === 'contain' && pass.side === side));
}

/** A rusher in the edge gap of a side who is not told to contain; null: nobody. */
export function edgeRusher(draft: Played, side: Side): PlayedMan | null {
  const found = outermostFirst(draft).find((man) =>
    outcomesOf(man, draft).every((outcome) => outcome.pass.kind === 'rush' && inTheEdge(outcome, draft, side)),
  );
  return found ?? null;
}

/** From the sideline inward, without a left or right: a flipped look must get the flipped answer. */
function outermostFirst({ assignments }: Played): readonly PlayedMan[] {
  return assignments.toSorted(
    compareBy(
      ({ aligned }) => -Math.round(Math.abs(aligned.x) * 1000),
      ({ aligned }) => aligned.y,
      ({ aligned }) => aligned.role.id,
    ),
  );
}
