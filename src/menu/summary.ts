import type { Analysis } from '../engine/index.ts';
import type { Found, Summary } from './types.ts';

/** What the menu keeps of an analysis. */
export function summarise({ verdict, findings, undetermined }: Analysis): Summary {
  const found: Found[] = [];
  for (const { rule, severity, waived } of findings) {
    if (waived !== null) continue;
    const at = found.findIndex((each) => each.rule === rule && each.severity === severity);
    const known = found[at];
    if (known === undefined) found.push({ rule, severity, count: 1 });
    else found[at] = { ...known, count: known.count + 1 };
  }
  return { verdict, found, doubts: undetermined.length };
}
