import { wholeOf, type Brief } from '../engine/index.ts';
import type { Found, Summary } from './types.ts';

/** What the menu keeps of what the checks say. */
export function summarise(brief: Brief): Summary {
  const { found: spoken, doubts } = wholeOf(brief);
  const found: Found[] = [];
  for (const { rule, severity } of spoken) {
    const at = found.findIndex((each) => each.rule === rule && each.severity === severity);
    const known = found[at];
    if (known === undefined) found.push({ rule, severity, count: 1 });
    else found[at] = { rule, severity, count: known.count + 1 };
  }
  return { verdict: brief.verdict, found, doubts: doubts.length };
}

/** All that a summary says: equal texts, equal summaries. */
export function summaryText({ verdict, found, doubts }: Summary): string {
  let text = `${verdict} ${doubts}`;
  for (const { rule, severity, count } of found) text += ` ${rule} ${severity} ${count}`;
  return text;
}
