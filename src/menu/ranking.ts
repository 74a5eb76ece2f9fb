import type { LookId, Place, Turn, Verdict } from '../engine/index.ts';
import { rate, VERDICT_ORDER, type MenuFilter } from './filter.ts';
import type { Summary } from './types.ts';

/** One case of a pair with its answer. */
export interface RankedCase {
  readonly look: LookId;
  readonly spot: Place;
  readonly summary: Summary;
}

/** A second pressure, turned one way, with all its answers. */
export interface Partner {
  readonly second: string;
  readonly turn: Turn;
  readonly cases: readonly RankedCase[];
}

/** How well a second pressure fits the first. */
export interface RankedPartner {
  readonly second: string;
  readonly turn: Turn;
  /** In how many looks the pair is run at all, and in how many of them nothing stops it at any spot. */
  readonly looks: number;
  readonly fits: number;
  /** How many cases have each verdict, in `VERDICT_ORDER`. */
  readonly tally: readonly number[];
  /** Where it does not fit: the looks, the gravest check first, with the spots at stop. */
  readonly misfits: readonly Misfit[];
}

/** A check that stops the pair, and the looks in which it does. */
export interface Misfit {
  readonly rule: string;
  readonly looks: readonly LookId[];
}

/**
 * Second pressures from the best to the worst: fewest looks at stop, then fewest cases at stop, at check, at note, then by name
 * as given. Each look at stop is told under the check that stops it in most looks, so that a coach reads few reasons.
 */
export function rankPartners(partners: readonly Partner[], filter: MenuFilter): readonly RankedPartner[] {
  return partners
    .map((partner, order) => ({ ranked: rankOne(partner, filter), order }))
    .sort((a, b) => compare(a.ranked, b.ranked) || a.order - b.order)
    .map(({ ranked }) => ranked);
}

function compare(a: RankedPartner, b: RankedPartner): number {
  const [stopsA, stopsB] = [a.looks - a.fits, b.looks - b.fits];
  if (stopsA !== stopsB) return stopsA - stopsB;
  for (const rank of VERDICT_ORDER.keys()) {
    const difference = (a.tally[rank] ?? 0) - (b.tally[rank] ?? 0);
    if (difference !== 0) return VERDICT_ORDER[rank] === 'clean' ? -difference : difference;
  }
  return 0;
}

function rankOne({ second, turn, cases }: Partner, filter: MenuFilter): RankedPartner {
  const tally = VERDICT_ORDER.map(() => 0);
  const looks = new Set<LookId>();
  const stopped = new Map<LookId, Set<string>>();
  for (const { look, summary } of cases) {
    const { verdict } = rate(summary, filter);
    const rank = VERDICT_ORDER.indexOf(verdict);
    tally[rank] = (tally[rank] ?? 0) + 1;
    if (verdict !== 'left-out') looks.add(look);
    if (verdict === 'stop') {
      const rules = stopped.get(look) ?? new Set<string>();
      for (const { rule } of stopsOf(summary, filter)) rules.add(rule);
      stopped.set(look, rules);
    }
  }
  return { second, turn, looks: looks.size, fits: looks.size - stopped.size, tally, misfits: misfitsOf(stopped) };
}

function stopsOf({ found }: Summary, { rule }: MenuFilter): Summary['found'] {
  return found.filter((each) => each.severity === ('stop' satisfies Verdict) && (rule === null || each.rule === rule));
}

/** Few reasons for many looks: again and again the check that stops most of the looks that have no reason yet. */
function misfitsOf(stopped: ReadonlyMap<LookId, ReadonlySet<string>>): readonly Misfit[] {
  const left = new Map(stopped);
  const misfits: Misfit[] = [];
  while (left.size > 0) {
    const byRule = new Map<string, LookId[]>();
    for (const [look, rules] of left) {
      for (const rule of rules) byRule.set(rule, [...(byRule.get(rule) ?? []), look]);
    }
    const [most] = [...byRule].sort(([a, looksA], [b, looksB]) => looksB.length - looksA.length || (a < b ? -1 : 1));
    if (most === undefined) throw new Error('A look at stop without a check that stops it');
    misfits.push({ rule: most[0], looks: most[1] });
    for (const look of most[1]) left.delete(look);
  }
  return misfits;
}
