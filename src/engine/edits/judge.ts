import { evidenceOf } from '../waivers.ts';
import type { Doubt } from '../brief/index.ts';
import type { Analysis, Finding } from '../types/index.ts';

/** As much of a finding as says which one it is. */
type About = Pick<Finding, 'rule' | 'who' | 'gaps' | 'players'>;

/** What makes two findings the same one: the rule and its evidence. */
export function findingKey(finding: About): string {
  return `${finding.rule} ${evidenceOf(finding)}`;
}

/** The findings that stand against a call in a look: the waived ones not, and none where it is not run at all. */
export function standing({ findings, verdict }: Analysis): readonly Finding[] {
  return verdict === 'left-out' ? [] : findings.filter((finding) => finding.waived === null);
}

/** Findings of `after` that `before` does not have; where it has one of two alike, the second is new. */
export function newFindings<Found extends About>(before: readonly About[], after: readonly Found[]): readonly Found[] {
  const left = new Map<string, number>();
  for (const finding of before) {
    const key = findingKey(finding);
    left.set(key, (left.get(key) ?? 0) + 1);
  }
  return after.filter((finding) => {
    const key = findingKey(finding);
    const known = left.get(key) ?? 0;
    left.set(key, known - 1);
    return known <= 0;
  });
}

/** Rules that can say of the call before an edit what they see, and after it no longer can; of each doubt its rules are given. */
export function newDoubts(before: readonly Doubt[], after: readonly Doubt[]): readonly string[] {
  const known = new Set(before.flat());
  return after.flat().filter((rule) => !known.has(rule));
}

/**
 * Whether an edit mends a finding in this look: the finding (its rule and evidence) is gone, its rule finds nothing new
 * instead, no stop stands that was not there before, and every rule that could be judged still can: not to know is not
 * mended.
 */
export function isMended(finding: Finding, before: Analysis, after: Analysis): boolean {
  const then = after.verdict === 'left-out' ? [] : after.findings;
  const key = findingKey(finding);
  const count = (list: readonly Finding[]): number => list.filter((each) => findingKey(each) === key).length;
  if (
    count(then) >= count(before.findings) ||
    newDoubts(doubtsOf(before), after.verdict === 'left-out' ? [] : doubtsOf(after)).length > 0
  )
    return false;
  return newFindings(before.findings, standing(after)).every(
    ({ rule, severity }) => rule !== finding.rule && severity !== 'stop',
  );
}

function doubtsOf({ undetermined }: Analysis): readonly Doubt[] {
  return undetermined.map(({ rules }) => rules);
}
