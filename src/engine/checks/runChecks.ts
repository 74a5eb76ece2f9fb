import { gather } from '../../base/index.ts';
import type { Undetermined } from '../types/index.ts';
import { accountOf } from './account.ts';
import { judgeBy, tieOf, type Draft, type Judgement } from './defineCheck.ts';
import { standardChecks } from './standardChecks.ts';

/** All checks in their order. What several of them cannot tell for one reason is told once, with all their ids. */
export function runChecks(draft: Draft): Judgement {
  const account = accountOf(draft);
  const tie = tieOf(draft);
  const judgements = standardChecks.map((check) => judgeBy(check, draft, account, tie));
  return {
    findings: gather(judgements, (each) => each.findings),
    undetermined: together(gather(judgements, (each) => each.undetermined)),
  };
}

function together(all: readonly Undetermined[]): readonly Undetermined[] {
  const groups = new Map<string, Undetermined>();
  for (const each of all) {
    const { rules, ...about } = each;
    const key = JSON.stringify(about);
    const known = groups.get(key);
    groups.set(key, known === undefined ? each : { ...known, rules: [...new Set([...known.rules, ...rules])] });
  }
  return [...groups.values()];
}
