import { compareBy } from '../../base/index.ts';
import type { Account } from '../checks/account.ts';
import type { Check, Report } from '../checks/defineCheck.ts';
import { standardChecks } from '../checks/standardChecks.ts';
import type { Analysis, Finding, Played, ToldCall } from '../types/index.ts';
import type { Brief, Said, Spoken } from './types.ts';

type Of<Kind extends Check['judges']> = Extract<Check, { readonly judges: Kind }>;

const ofPlay = standardChecks.filter((check): check is Of<'play'> => check.judges === 'play');
const ofTelling = standardChecks.filter((check): check is Of<'telling'> => check.judges === 'telling');

/** Nothing found, nothing open. */
export const NOTHING: Said = { found: [], doubts: [] };

/** What is said of a play; of one whose call side is a tie only what needs no side, the rest is said of the telling. */
export function sayOfPlay(played: Played, isTied: boolean): Said {
  return saidBy(ofPlay, (check) => (isTied && check.needsSide ? [] : check.report(played)));
}

/** What is said of the telling; where its call side is a tie, that nothing can be told, for every check that needs a side. */
export function sayOfTelling(told: ToldCall, account: Account, tie: Report | null): Said {
  if (tie === null) return saidBy(ofTelling, (check) => check.report(told, account));
  return saidBy(standardChecks, (check) =>
    check.needsSide ? [tie] : check.judges === 'telling' ? check.report(told, account) : [],
  );
}

function saidBy<Kind extends Check>(checks: readonly Kind[], report: (check: Kind) => readonly Report[]): Said {
  const found: Spoken[] = [];
  const doubts: { readonly report: Report; readonly rules: string[] }[] = [];
  for (const check of checks) {
    for (const each of report(check)) {
      const { severity = check.severity, who = [], gaps = [], players = [] } = each;
      if (each.undetermined !== true) {
        found.push({ rule: check.id, severity, who, gaps, players });
        continue;
      }
      const same = doubts.find((doubt) => isSameDoubt(doubt.report, each));
      if (same === undefined) doubts.push({ report: each, rules: [check.id] });
      else if (!same.rules.includes(check.id)) same.rules.push(check.id);
    }
  }
  if (found.length === 0 && doubts.length === 0) return NOTHING;
  return { found, doubts: doubts.map(({ rules }) => rules) };
}

/** Two that cannot say for one reason say it in the same words. */
function isSameDoubt(a: Report, b: Report): boolean {
  return a === b || (a.because.template === b.because.template && wordsOf(a) === wordsOf(b));
}

function wordsOf({ because, who = [], gaps = [], players = [] }: Report): string {
  return JSON.stringify({ because, who, gaps, players });
}

/** What a whole analysis says, its words left out. */
export function inBrief({ verdict, findings, undetermined }: Analysis): Brief {
  const spoken = ({ rule, severity, who, gaps, players }: Finding): Spoken => ({ rule, severity, who, gaps, players });
  const found = findings.filter(({ waived }) => waived === null).map(spoken);
  return { verdict, play: { found, doubts: undetermined.map(({ rules }) => rules) }, telling: NOTHING };
}

const PLACE_OF = new Map(standardChecks.map(({ id }, place) => [id, place]));
const inOrder = compareBy(({ rule }: Pick<Spoken, 'rule'>) => PLACE_OF.get(rule) ?? PLACE_OF.size);

/** All of a brief, what is found in the order of the checks. */
export function wholeOf({ play, telling }: Brief): Said {
  if (telling === NOTHING) return play;
  return { found: [...play.found, ...telling.found].sort(inOrder), doubts: [...play.doubts, ...telling.doubts] };
}
