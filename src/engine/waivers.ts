import { gapKey } from './gaps.ts';
import type { Finding, Setup } from './types/index.ts';

/**
 * What a finding is about, as a stable text: its people, gaps and players, never coordinates. A waiver holds as long as
 * this stays the same for its rule and look; nudging a man does not lift it, another man or gap in it does.
 */
export function evidenceOf(finding: Pick<Finding, 'who' | 'gaps' | 'players'>): string {
  const sorted = (list: readonly string[]): string => [...list].sort().join(' ');
  return [sorted(finding.who), sorted(finding.gaps.map(gapKey)), sorted(finding.players)].join('|');
}

/** The same findings, those the coach has waived with their reason. */
export function applyWaivers(findings: readonly Finding[], setup: Setup): readonly Finding[] {
  return findings.map((finding) => {
    const evidence = evidenceOf(finding);
    const waiver = setup.waivers.find(
      (each) => each.rule === finding.rule && each.look === setup.look.id && each.evidence === evidence,
    );
    return waiver === undefined ? finding : { ...finding, waived: waiver.reason };
  });
}
