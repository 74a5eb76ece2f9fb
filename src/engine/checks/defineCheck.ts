import { gather } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import type { Account } from './account.ts';
import type {
  Analysis,
  Because,
  Finding,
  Gap,
  OwnedGap,
  Played,
  PlayerId,
  Point,
  ResolvedPressure,
  RoleId,
  ToldCall,
  Undetermined,
} from '../types/index.ts';
import type { Severity } from '../vocabulary.ts';

/** An analysis before it is judged. */
export type Draft = Omit<Analysis, 'findings' | 'undetermined' | 'verdict'>;

/** What a check reports: the sentence with its reasons, and the people, gaps and players it is about. */
export interface Report {
  readonly because: Because;
  /** True: nothing is found; this is what the check cannot tell, and `because` says why. */
  readonly undetermined?: true;
  /** Where one case of a rule is graver or lighter than the rule. */
  readonly severity?: Severity;
  readonly who?: readonly RoleId[];
  readonly gaps?: readonly Gap[];
  readonly players?: readonly PlayerId[];
}

/** What one check says of an analysis: what it found, and what it could not judge. */
export interface Judgement {
  readonly findings: readonly Finding[];
  readonly undetermined: readonly Undetermined[];
}

/** What is fixed about a check: the same in every call and look. */
export interface CheckFacts {
  /** Stable; an id never changes its meaning. */
  readonly id: string;
  /** A few words, as a heading. */
  readonly title: string;
  /** How grave a finding usually is; a single one may say otherwise. */
  readonly severity: Severity;
  /** Why it matters, one sentence a player would understand. */
  readonly matters: string;
  /** Where the rule comes from. */
  readonly source: string;
  /** True: it cannot tell anything as long as nothing decides the side of a pressure that is run. */
  readonly needsSide: boolean;
}

/** One rule of the checker. What it may look at is told by its kind, so nothing it says can hang on anything else. */
export type Check = CheckFacts &
  (
    | { readonly judges: 'telling'; readonly report: (told: ToldCall, account: Account) => readonly Report[] }
    | { readonly judges: 'play'; readonly report: (played: Played) => readonly Report[] }
  );

/** A check of what the men are told; of how that is played it may ask the account. */
export function checkOfTelling(
  check: CheckFacts & { readonly report: (told: ToldCall, account: Account) => readonly Report[] },
): Check {
  return { ...check, judges: 'telling' };
}

/** A check of how the call is played, whoever told whom. */
export function checkOfPlay(check: CheckFacts & { readonly report: (played: Played) => readonly Report[] }): Check {
  return { ...check, judges: 'play' };
}

/**
 * What one check says of a draft. What all checks share is done here once: saying that nothing can be told while a call side is
 * a tie, and looking up the places on the field.
 */
export function judgeBy(check: Check, draft: Draft, account: Account, tie: Report | null): Judgement {
  const isTied = tie !== null && check.needsSide;
  const reports = isTied ? [tie] : check.judges === 'play' ? check.report(draft) : check.report(draft, account);
  return {
    findings: gather(reports, (report): readonly Finding[] => {
      if (report.undetermined === true) return [];
      const severity = report.severity ?? check.severity;
      return [{ rule: check.id, severity, ...about(draft, report), waived: null }];
    }),
    undetermined: gather(reports, (report): readonly Undetermined[] =>
      report.undetermined === true ? [{ rules: [check.id], ...about(draft, report) }] : [],
    ),
  };
}

/**
 * The pressures of the call that are run here: both, or the half an either-or call chooses. A first pressure without a side is
 * among them if the key asks about that side: then nobody knows which half is run.
 */
export function pressuresRun(
  told: Pick<ToldCall, 'setup' | 'first' | 'second' | 'choice'>,
): readonly { readonly which: 'first' | 'second'; readonly pressure: ResolvedPressure }[] {
  const { first, second, choice } = told;
  const both = [
    { which: 'first' as const, pressure: first },
    ...(second === null ? [] : [{ which: 'second' as const, pressure: second }]),
  ];
  if (choice === null) return both;
  const asked = first.side.kind === 'tie' && keyAsksSide(told);
  return both.filter(({ which }) => which === choice.ran || (which === 'first' && asked));
}

/** Whether the key of an either-or call looks at the call side or away from it. */
function keyAsksSide({ setup }: Pick<ToldCall, 'setup'>): boolean {
  if (setup.combination.kind === 'together') return false;
  return setup.combination.key.some((test) => test.kind !== 'backs' && (test.side === 'call' || test.side === 'away'));
}

/** What is said of a pressure without a side: nothing of it can be told. Null when its side is decided. */
export function tieReport(which: 'first' | 'second', { side }: ResolvedPressure): Report | null {
  if (side.kind !== 'tie') return null;
  const named = { which: datum.pressure(which) };
  return {
    undetermined: true,
    because: because('nothing decides the side of {which}, so nobody knows his job', named, side.because),
  };
}

/** The same for the first of the pressures that are run and have no side. */
export function tieOf(told: Pick<ToldCall, 'setup' | 'first' | 'second' | 'choice'>): Report | null {
  const [tied] = gather(pressuresRun(told), ({ which, pressure }) => tieReport(which, pressure) ?? []);
  return tied ?? null;
}

function about(draft: Draft, report: Report): Pick<Finding, 'because' | 'who' | 'gaps' | 'players' | 'where'> {
  const { because: sentence, who = [], gaps = [], players = [] } = report;
  return { because: sentence, who, gaps, players, where: places(draft, who, gaps, players) };
}

function places(
  draft: Draft,
  who: readonly RoleId[],
  gaps: readonly Gap[],
  players: readonly PlayerId[],
): readonly Point[] {
  const men = draft.assignments.filter((each) => who.includes(each.aligned.role.id)).map((each) => each.aligned);
  const slots = draft.gaps.filter((each) => gaps.some((gap) => isGap(each, gap))).map((each) => ({ x: each.x, y: 0 }));
  const offence = gather(players, (id) => draft.facts.players.get(id) ?? []);
  return [...men, ...slots, ...offence].map(({ x, y }) => ({ x, y }));
}

function isGap(owned: OwnedGap, gap: Gap): boolean {
  return owned.gap.side === gap.side && owned.gap.letter === gap.letter;
}
