import type { Because, Finding, Gap, OwnedGap, Analysis, PlayerId, Point, RoleId } from '../types/index.ts';
import type { Severity } from '../vocabulary.ts';

/** An analysis before it is judged. */
export type Draft = Omit<Analysis, 'findings' | 'verdict'>;

/** What a check reports: the sentence with its reasons, and the people, gaps and players it is about. */
export interface Report {
  readonly because: Because;
  /** Where one case of a rule is graver than the rule. */
  readonly severity?: Severity;
  readonly who?: readonly RoleId[];
  readonly gaps?: readonly Gap[];
  readonly players?: readonly PlayerId[];
}

/** One rule of the checker. An id never changes its meaning. */
export interface Check {
  readonly id: string;
  /** A few words, as a heading. */
  readonly title: string;
  readonly severity: Severity;
  /** Why it matters, one sentence a player would understand. */
  readonly matters: string;
  /** Where the rule comes from. */
  readonly source: string;
  readonly judge: (draft: Draft) => readonly Finding[];
}

/** Makes a check from its facts and a judge that reports; places on the field are looked up here, once for all checks. */
export function defineCheck(
  check: Omit<Check, 'judge'> & { readonly judge: (draft: Draft) => readonly Report[] },
): Check {
  return {
    ...check,
    judge: (draft) =>
      check.judge(draft).map((report): Finding => {
        const { who = [], gaps = [], players = [] } = report;
        return {
          rule: check.id,
          severity: report.severity ?? check.severity,
          because: report.because,
          who,
          gaps,
          players,
          where: places(draft, who, gaps, players),
        };
      }),
  };
}

function places(
  draft: Draft,
  who: readonly RoleId[],
  gaps: readonly Gap[],
  players: readonly PlayerId[],
): readonly Point[] {
  const men = draft.assignments.filter((each) => who.includes(each.aligned.role.id)).map((each) => each.aligned);
  const slots = draft.gaps.filter((each) => gaps.some((gap) => isGap(each, gap))).map((each) => ({ x: each.x, y: 0 }));
  const offence = players.flatMap((id) => draft.facts.players.get(id) ?? []);
  return [...men, ...slots, ...offence].map(({ x, y }) => ({ x, y }));
}

function isGap(owned: OwnedGap, gap: Gap): boolean {
  return owned.gap.side === gap.side && owned.gap.letter === gap.letter;
}
