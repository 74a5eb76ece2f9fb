import { gapKey } from './gaps.ts';
import type { Finding, Setup, Waiver } from './types/index.ts';

/** As much of a finding as says what it is about. */
type About = Pick<Finding, 'rule' | 'who' | 'gaps' | 'players'>;

/**
 * What a finding is about, as a stable text: its people, gaps and players, never coordinates. A waiver holds as long as
 * this stays the same for its rule and look; nudging a man does not lift it, another man or gap in it does.
 */
export function evidenceOf(finding: Pick<Finding, 'who' | 'gaps' | 'players'>): string {
  const sorted = (list: readonly string[]): string => [...list].sort().join(' ');
  return [sorted(finding.who), sorted(finding.gaps.map(gapKey)), sorted(finding.players)].join('|');
}

/** The waiver of a finding that holds, if the coach has waived it in this look. */
function waiverOf(finding: About, setup: Setup): Waiver | undefined {
  if (setup.waivers.length === 0) return undefined;
  const evidence = evidenceOf(finding);
  return setup.waivers.find(
    (each) => each.rule === finding.rule && each.look === setup.look.id && each.evidence === evidence,
  );
}

/** Whether the coach lives with it. */
export function isWaived(finding: About, setup: Setup): boolean {
  return waiverOf(finding, setup) !== undefined;
}

/** The same findings, those the coach has waived with their reason. */
export function applyWaivers(findings: readonly Finding[], setup: Setup): readonly Finding[] {
  return findings.map((finding) => {
    const waiver = waiverOf(finding, setup);
    return waiver === undefined ? finding : { ...finding, waived: waiver.reason };
  });
}
