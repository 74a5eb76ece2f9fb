import { SEVERITIES, type Place, type Severity, type Verdict } from '../engine/index.ts';
import type { Layer } from './grid.ts';
import type { Summary } from './types.ts';

/** What of the answers is looked at; null means all of it. */
export interface MenuFilter {
  /** Only what this check says. */
  readonly rule: string | null;
  /** Nothing less grave than this. */
  readonly severity: Severity | null;
  /** Only with the ball there. */
  readonly spot: Place | null;
  /** Only looks of this personnel, as "11". */
  readonly personnel: string | null;
}

/** Everything is looked at. */
export const NO_FILTER: MenuFilter = { rule: null, severity: null, spot: null, personnel: null };

/** Verdicts from the gravest to the call that is not run. */
export const VERDICT_ORDER: readonly Verdict[] = ['stop', 'check', 'note', 'clean', 'left-out'];

/** An answer as the filter lets it be seen: what is the worst of it, and how many findings are so grave. */
export interface Rated {
  readonly verdict: Verdict;
  readonly count: number;
}

/** The answer seen through the filter. What cannot be told counts as a check, unless one check is asked for. */
export function rate({ verdict, found, doubts }: Summary, { rule, severity }: MenuFilter): Rated {
  if (verdict === 'left-out') return { verdict, count: 0 };
  const grave = severity === null ? SEVERITIES : SEVERITIES.slice(0, SEVERITIES.indexOf(severity) + 1);
  for (const level of grave) {
    const findings = found.filter((each) => each.severity === level && (rule === null || each.rule === rule));
    const unsure = level === 'check' && rule === null ? doubts : 0;
    const count = findings.reduce((sum, each) => sum + each.count, unsure);
    if (count > 0) return { verdict: level, count };
  }
  return { verdict: 'clean', count: 0 };
}

/** Whether a layer of a cell is looked at. `personnelOf` tells the personnel of a look, as "11". */
export function letsLayer(
  { look, spot }: Layer,
  filter: MenuFilter,
  personnelOf: (look: string) => string | null,
): boolean {
  if (filter.spot !== null && spot !== filter.spot) return false;
  return filter.personnel === null || look === null || personnelOf(look.id) === filter.personnel;
}
