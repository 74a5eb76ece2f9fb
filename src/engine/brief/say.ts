import { compareBy } from '../../base/index.ts';
import type { Account } from '../checks/account.ts';
import { tieOf, type Check, type Report } from '../checks/defineCheck.ts';
import { standardChecks } from '../checks/standardChecks.ts';
import type { Analysis, Finding, Played, ToldCall } from '../types/index.ts';
import type { Brief, Doubt, Said, Spoken } from './types.ts';

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
export function sayOfTelling(told: ToldCall, account: Account): Said {
  const tie = tieOf(told);
  const said = saidBy(ofTelling, (check) => (tie !== null && check.needsSide ? [tie] : check.report(told, account)));
  if (tie === null) return said;
  return { found: said.found, doubts: [...said.doubts, ...doubtsOf(ofPlay.filter(needsSide), tie)] };
}

const needsSide = (check: Check): boolean => check.needsSide;

function doubtsOf(checks: readonly Check[], report: Report): readonly Doubt[] {
  const about = aboutOf(report);
  return checks.map((check) => ({ rule: check.id, about }));
}

function saidBy<Kind extends Check>(checks: readonly Kind[], report: (check: Kind) => readonly Report[]): Said {
  const found: Spoken[] = [];
  const doubts: Doubt[] = [];
  for (const check of checks) {
    for (const each of report(check)) {
      const { severity = check.severity, who = [], gaps = [], players = [] } = each;
      if (each.undetermined === true) doubts.push({ rule: check.id, about: aboutOf(each) });
      else found.push({ rule: check.id, severity, who, gaps, players });
    }
  }
  return found.length === 0 && doubts.length === 0 ? NOTHING : { found, doubts };
}

function aboutOf({ because, who = [], gaps = [], players = [] }: Report): string {
  return JSON.stringify({ because, who, gaps, players });
}

/** What a whole analysis says, its words left out. */
export function saidIn({
  findings,
  undetermined,
}: Pick<Analysis, 'findings' | 'undetermined'>): Pick<Brief, 'play' | 'telling'> {
  const spoken = ({ rule, severity, who, gaps, players }: Finding): Spoken => ({ rule, severity, who, gaps, players });
  const found = findings.filter(({ waived }) => waived === null).map(spoken);
  const doubts = undetermined.flatMap(({ rules, ...about }) => rules.map((rule) => ({ rule, about: aboutOf(about) })));
  const of = (all: readonly Check[]): Said => {
    const isOf = ({ rule }: { readonly rule: string }): boolean => all.some(({ id }) => id === rule);
    return { found: found.filter(isOf), doubts: doubts.filter(isOf) };
  };
  return { play: of(ofPlay), telling: of(ofTelling) };
}

const PLACE_OF = new Map(standardChecks.map(({ id }, place) => [id, place]));

/** All of a brief in the order of the checks. */
export function wholeOf({ play, telling }: Brief): Said {
  if (telling === NOTHING) return play;
  const inOrder = compareBy(({ rule }: { readonly rule: string }) => PLACE_OF.get(rule) ?? PLACE_OF.size);
  return {
    found: [...play.found, ...telling.found].sort(inOrder),
    doubts: [...play.doubts, ...telling.doubts].sort(inOrder),
  };
}
