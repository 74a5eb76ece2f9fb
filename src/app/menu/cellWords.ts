import { standardChecks, type Verdict } from '../../engine/index.ts';
import type { Cell, MenuFilter, Summary } from '../../menu/index.ts';
import { rate } from '../../menu/index.ts';
import { VERDICT_NAMES } from '../parts/VerdictMark.tsx';

const TITLES = new Map(standardChecks.map(({ id, title }) => [id, title]));

/** What a check is about, as a coach reads it. */
export function titleOf(rule: string): string {
  const title = TITLES.get(rule);
  if (title === undefined) throw new Error(`There is no check ${rule}`);
  return title;
}

/** A verdict with its number: "Stop, 2 findings". */
export function countedVerdict(verdict: Verdict, findings: number): string {
  const counted = findings === 0 ? '' : `, ${String(findings)} ${findings === 1 ? 'finding' : 'findings'}`;
  return `${VERDICT_NAMES[verdict]}${counted}`;
}

/** A cell in words, its number included. In a grid of pairs the number is of looks and spots, else of findings. */
export function cellWords({ verdict, cases, findings, tally }: Cell, pairs: boolean): string {
  if (verdict === null) return 'not a pair';
  if (verdict === 'waiting') return 'not checked yet';
  if (!pairs) return countedVerdict(verdict, findings);
  const all = tally.reduce((sum, each) => sum + each, 0);
  return `${VERDICT_NAMES[verdict]} in ${String(cases)} of ${String(all)} cases`;
}

/** The number in a cell; nothing where the mark says it all. */
export function cellNumber({ verdict, cases, findings }: Cell, pairs: boolean): string {
  if (verdict === null || verdict === 'waiting' || verdict === 'clean' || verdict === 'left-out') return '';
  return String(pairs ? cases : findings);
}

/** What is said of one case that is so grave: "A lineman is told two jobs; nobody has a gap". */
export function reasonsOf(summary: Summary, filter: MenuFilter): string {
  const { verdict } = rate(summary, filter);
  const titles = summary.found
    .filter(({ rule, severity }) => severity === verdict && (filter.rule === null || rule === filter.rule))
    .map(({ rule }) => titleOf(rule));
  const doubt = verdict === 'check' && filter.rule === null && summary.doubts > 0 ? ['something cannot be told'] : [];
  return [...titles, ...doubt].join('; ');
}
