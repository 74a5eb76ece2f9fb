import { compareBy, gather } from '../../../base/index.ts';
import { LEVERAGE_OFFSET } from '../../align/spots.ts';
import { signOf } from '../../facts/surface.ts';
import { gapKey } from '../../gaps.ts';
import type { Aligned, Gap, Point, RoleId, Yards } from '../../types/index.ts';
import { LEVERAGES, SIDES } from '../../vocabulary.ts';
import type { Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';

/** A man whose middle is this far off the ball is behind the neutral zone with his hand down (convention of ours). */
const HAND_DOWN: Yards = 0.5;
/** Half a man: he stands in bounds when his middle is this far inside the sideline. */
const IN_BOUNDS: Yards = 0.5;
/** Two men side by side are two feet of each other apart at least (2 ft bodies). */
const BODY: Yards = 2 / 3;
/** A twentieth of a yard: as fine as spots set by hand are kept. Adding zero turns -0 into 0: the two are written alike. */
const kept = (value: Yards): Yards => Math.round(value * 20) / 20 + 0;

function stand(bench: Bench, role: RoleId, at: Point): Edit {
  const { id, name } = bench.analysis.setup.look;
  return { kind: 'stand', look: { id, name }, role, x: kept(at.x), y: kept(at.y) };
}

/** The nearest spot where he may stand: behind the neutral zone, between the sidelines. */
export function legalSpot(bench: Bench, role: RoleId): readonly Edit[] {
  const man = bench.aligned.get(role);
  if (man === undefined) return [];
  const { left, right } = bench.analysis.facts.sidelines;
  const x = Math.min(Math.max(man.x, left + IN_BOUNDS), right - IN_BOUNDS);
  return [stand(bench, role, { x, y: Math.max(man.y, HAND_DOWN) })];
}

/**
 * The techniques between him and the gap he is sent to, the nearest to him first, as deep as he stands now. Spots another
 * man stands on are left out.
 */
export function nearerSpots(bench: Bench, role: RoleId, gap: Gap): readonly Edit[] {
  const man = bench.aligned.get(role);
  const target = bench.analysis.facts.gaps.find((each) => gapKey(each.gap) === gapKey(gap));
  if (man === undefined || target === undefined) return [];
  return techniqueSpots(bench)
    .filter((x) => (x - man.x) * (x - target.x) <= 0 && Math.abs(x - man.x) > 1e-6)
    .filter((x) => isFree(bench, man, { x, y: man.y }))
    .toSorted(compareBy((x) => Math.round(Math.abs(x - man.x) * 1000)))
    .map((x) => stand(bench, role, { x, y: man.y }));
}

/** Shares of his way that a man is stood nearer, the smallest first. */
const NEARER = [0.25, 0.5, 0.75] as const;

/** Spots on the way to a place, the nearest to him first: behind the neutral zone, in bounds and nobody else's. */
export function onTheWay(bench: Bench, role: RoleId, to: Point): readonly Edit[] {
  const man = bench.aligned.get(role);
  if (man === undefined) return [];
  const { left, right } = bench.analysis.facts.sidelines;
  return NEARER.map((share) => ({ x: man.x + (to.x - man.x) * share, y: man.y + (to.y - man.y) * share }))
    .filter((at) => at.y >= HAND_DOWN && at.x >= left + IN_BOUNDS && at.x <= right - IN_BOUNDS)
    .filter((at) => isFree(bench, man, at))
    .map((at) => stand(bench, role, at));
}

/** Every technique on a body that is there, as a distance from the ball, each once. */
function techniqueSpots(bench: Bench): readonly Yards[] {
  const spots = gather(SIDES, (side) =>
    gather(bench.analysis.facts.surface[side], (body) =>
      LEVERAGES.map((leverage) => kept(body.x + LEVERAGE_OFFSET[leverage] * signOf(side))),
    ),
  );
  return [...new Set(spots)];
}

function isFree(bench: Bench, man: Aligned, { x, y }: Point): boolean {
  return bench.men.every(
    ({ aligned }) => aligned.role.id === man.role.id || Math.hypot(aligned.x - x, aligned.y - y) >= BODY,
  );
}
