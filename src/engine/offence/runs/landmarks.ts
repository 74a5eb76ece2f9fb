import { opposite } from '../../resolve/sides.ts';
import type { Because, Gap, LookFacts, ManRule, SurfaceBody, Yards } from '../../types/index.ts';
import { GAP_LETTERS, type GapLetter, type Side } from '../../vocabulary.ts';
import { gapAt, gapIndex } from '../row.ts';

/**
 * A place a concept speaks of, before its side is known. `off-tackle` is outside the tackle where a tight end is attached,
 * inside him where none is.
 */
export interface Place {
  readonly of: 'run' | 'away';
  readonly at: 'A' | 'B' | 'inside-tackle' | 'outside-tackle' | 'off-tackle' | 'edge';
}

/** A defender a concept speaks of, before its side is known. */
export interface ManPlace {
  readonly of: 'run' | 'away';
  readonly from: 'snapper' | 'guard' | 'tackle' | 'last';
  readonly headUp: boolean;
  readonly atLineOnly: boolean;
  readonly which: 'first' | 'next';
  readonly words: Because;
}

/** A man at the line stands at most this far outside the last body (a convention of ours, in yards). */
const LINE_REACH: Yards = 2.5;

/** The tackle's place in a surface, counted from the snapper outward. */
const TACKLE = 2;

/** The side a concept means by the run's side or the one away from it. */
export function sideMeant(of: 'run' | 'away', side: Side): Side {
  return of === 'run' ? side : opposite(side);
}

/**
 * The body at the tackle's place: the second one from the snapper outward, whoever stands there; the outermost one where a side
 * is shorter. Beside an unbalanced line the third counts as an end, as letters and techniques count him.
 */
export function tackleOf(facts: LookFacts, side: Side): SurfaceBody {
  const surface = facts.surface[side];
  const body = surface[TACKLE] ?? surface[surface.length - 1];
  if (body === undefined) throw new Error('A surface without a snapper');
  return body;
}

/** The bodies outside the tackle's place, from the line outward: tight ends, wings, a tackle too many. */
export function endsOf(facts: LookFacts, side: Side): readonly SurfaceBody[] {
  return facts.surface[side].slice(TACKLE + 1);
}

/** The gap a place is in this look. Where a side is too short for it, its edge. */
export function gapOf({ of, at }: Place, runSide: Side, facts: LookFacts): Gap {
  const side = sideMeant(of, runSide);
  const tackle = tackleOf(facts, side).index;
  const gap = (index: number): Gap => {
    const edge = GAP_LETTERS.indexOf(facts.edge[side]);
    return { side, letter: GAP_LETTERS[Math.max(0, Math.min(index, edge))] ?? facts.edge[side] };
  };
  switch (at) {
    case 'A':
      return gap(0);
    case 'B':
      return gap(1);
    case 'inside-tackle':
      return gap(tackle - 1);
    case 'outside-tackle':
      return gap(tackle);
    case 'off-tackle':
      return gap(endsOf(facts, side).length > 0 ? tackle : tackle - 1);
    case 'edge':
      return { side, letter: facts.edge[side] };
  }
}

/** The gap that closes when a body leaves the surface: the one inside him. The snapper has none. */
export function gapInside(body: SurfaceBody, side: Side): Gap {
  const letter: GapLetter | undefined = GAP_LETTERS[body.index - 1];
  if (letter === undefined) throw new Error(`No gap inside body ${String(body.index)}`);
  return { side, letter };
}

/** Where a gap is, in yards from the ball. */
export function xOf(gap: Gap, facts: LookFacts): Yards {
  return gapAt(gapIndex(gap, facts), facts).x;
}

/** The rule that finds a defender in this look. */
export function manRule(place: ManPlace, runSide: Side, facts: LookFacts): ManRule {
  const side = sideMeant(place.of, runSide);
  const surface = facts.surface[side];
  const last = surface[surface.length - 1];
  const body = {
    snapper: surface[0],
    guard: surface[1],
    tackle: tackleOf(facts, side),
    last,
  }[place.from];
  const outward = (each: SurfaceBody | undefined): Yards => Math.abs(each?.x ?? 0);
  return {
    side,
    from: outward(body),
    headUp: place.headUp,
    atLineOnly: place.atLineOnly,
    reach: outward(last) + LINE_REACH,
    which: place.which,
    words: place.words,
  };
}
