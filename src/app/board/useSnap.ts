import { useMemo } from 'react';
import { nearestLine, unsnapped, type Snapped } from '../../editor/index.ts';
import {
  defenceLandmarks,
  fieldAt,
  offenceLandmarks,
  type Analysis,
  type Landmark,
  type Point,
  type StandingMate,
  type Yards,
} from '../../engine/index.ts';
import { landmarkText, makeLexicon, type StaffWords } from '../../report/index.ts';
import { includesMan, keptPoint, manKey, standings, type Man } from '../../store/index.ts';

/** Where a man comes to stand who is brought to a point, by the lines within reach. */
export type Snap = (man: Man, moving: readonly Man[], at: Point, reach: Yards) => Snapped;

/** The lines of that look, named in the staff's words. */
export function useSnap(analysis: Analysis, staff: StaffWords): Snap {
  return useMemo(() => snapIn(analysis, staff), [analysis, staff]);
}

/** The lines are worked out once for the men who are dragged. */
function snapIn(analysis: Analysis, staff: StaffWords): Snap {
  const lexicon = makeLexicon(analysis.setup, staff);
  let known: { readonly key: string; readonly lines: readonly Landmark[] } | null = null;
  return (man, moving, at, reach) => {
    const key = [man, ...moving].map(manKey).join();
    if (known?.key !== key) known = { key, lines: linesFor(analysis, man, moving) };
    const { lines } = known;
    const across = nearestLine(lines, 'x', at.x, reach);
    const deep = nearestLine(lines, 'y', at.y, reach);
    if (across === null && deep === null) return unsnapped(at);
    const to = keptPoint({ x: across === null ? at.x : inward(across), y: deep?.at ?? at.y });
    const near = [across, deep].flatMap((line) => line ?? []);
    return {
      at: to,
      lineX: across === null ? null : to.x,
      lineY: deep === null ? null : to.y,
      name: landmarkText(near, to, analysis.facts, lexicon, staff),
    };
  };
}

/** A hair less than half of the step spots are kept in, in yards. */
const HAIR: Yards = 0.024;

/**
 * A shade a little toward the ball, so that it is not rounded past the half way to the next man: outside the tackle is a
 * wide 5, and not inside a tight end who is not there.
 */
function inward({ at, what }: Landmark): Yards {
  return what.kind === 'shade' && Math.abs(at) > HAIR ? at - Math.sign(at) * HAIR : at;
}

function linesFor(analysis: Analysis, man: Man, moving: readonly Man[]): readonly Landmark[] {
  const { facts, setup } = analysis;
  const marks = fieldAt(setup.level, setup.spot);
  const mates = standings(analysis)
    .filter((each) => each.man.kind === man.kind && !includesMan(moving, each.man))
    .map(({ man: mate, at }): StandingMate => ({ mate, at }));
  if (man.kind === 'defender') return defenceLandmarks(facts, marks, mates);
  const player = facts.players.get(man.player);
  return player === undefined ? [] : offenceLandmarks(player, facts, marks, mates);
}
