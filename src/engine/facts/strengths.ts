import { because, datum, fact } from '../because.ts';
import type { Place, Side } from '../vocabulary.ts';
import type { BackFact, LookFacts, OffencePlayer, ReceiverFact, StrengthFact, SurfaceBody } from '../types/index.ts';
import type { FieldMarks } from './field.ts';

/** The bigger of two counts, or even. */
function bigger(left: number, right: number): Side | 'even' {
  if (left === right) return 'even';
  return left > right ? 'left' : 'right';
}

/**
 * Tight-end strength: the side with more attached bodies. Source for setting strength by a player or by the passing side:
 * "Setting a Strength", The Call Sheet newsletter no. 004.
 */
function byTightEnd(left: readonly SurfaceBody[], right: readonly SurfaceBody[]): StrengthFact {
  const [l, r] = [left.length - 1, right.length - 1];
  const counts = { l: datum.number(l), r: datum.number(r) };
  const side = bigger(l, r);
  return side === 'even'
    ? { side, because: because('both sides have {l} attached men', { l: counts.l }) }
    : {
        side,
        because: because('the surface is {l} men on the left and {r} on the right', counts),
      };
}

/** Passing strength: the side with more eligible receivers outside the backfield. */
function byReceivers(receivers: readonly ReceiverFact[]): StrengthFact {
  const count = (side: Side): number => receivers.filter((each) => each.eligible && each.side === side).length;
  const [l, r] = [count('left'), count('right')];
  const side = bigger(l, r);
  return side === 'even'
    ? { side, because: because('both sides have {l} receivers', { l: datum.number(l) }) }
    : {
        side,
        because: because('there are {l} receivers on the left and {r} on the right', {
          l: datum.number(l),
          r: datum.number(r),
        }),
      };
}

/** The side the backs are offset to; even when they are behind the ball, split to both sides, or gone. */
function byBack(backs: readonly BackFact[]): StrengthFact {
  const count = (place: Place): number => backs.filter((back) => back.place === place).length;
  const side = bigger(count('left'), count('right'));
  if (backs.length === 0) return { side: 'even', because: fact('there is no back') };
  if (side === 'even') return { side, because: fact('no back is offset more to one side than to the other') };
  return { side, because: because('the back is offset to the {side}', { side: datum.side(side) }) };
}

/** The wide side of the field. */
function byField(marks: FieldMarks): StrengthFact {
  const [l, r] = [-marks.leftSideline, marks.rightSideline];
  const side = Math.abs(l - r) < 1e-9 ? 'even' : bigger(l, r);
  if (side === 'even') return { side, because: fact('the ball is in the middle of the field') };
  return { side, because: because('the wide side of the field is {side}', { side: datum.side(side) }) };
}

/** All strengths of a look at one ball spot. */
export function readStrengths(
  surface: LookFacts['surface'],
  receivers: readonly ReceiverFact[],
  backs: readonly BackFact[],
  marks: FieldMarks,
): LookFacts['strengths'] {
  return {
    'tight-end': byTightEnd(surface.left, surface.right),
    receivers: byReceivers(receivers),
    back: byBack(backs),
    field: byField(marks),
  };
}

/**
 * Personnel code: backs, then tight ends, whoever came in, wherever they stand. Source: "Offensive Personnel Groupings",
 * Pigskin Ninja.
 */
export function personnelCode(players: readonly OffencePlayer[]): string {
  const count = (kind: OffencePlayer['kind']): number => players.filter((player) => player.kind === kind).length;
  return `${String(count('back'))}${String(count('tight-end'))}`;
}
