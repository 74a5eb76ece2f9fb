import {
  gapKey,
  SEVERITIES,
  standardChecks,
  type Check,
  type Finding,
  type Undetermined,
  type Verdict,
} from '../engine/index.ts';
import { fill } from './fill.ts';
import type { CannotTellRow, FindingRow, WaivedRow } from './types.ts';
import type { Lexicon } from './words/lexicon.ts';

/** The findings of a look in words: what stands, the gravest first, and what the coach lives with. */
export interface FindingRows {
  readonly standing: readonly FindingRow[];
  readonly waived: readonly WaivedRow[];
}

/** Findings of one severity keep the engine's order. Two of one rule about the same people get keys of their own. */
export function findingRows(findings: readonly Finding[], verdict: Verdict, lexicon: Lexicon): FindingRows {
  const used = new Map<string, number>();
  const rows = findings.map((finding) => {
    const about = [...finding.who, ...finding.gaps.map(gapKey), ...finding.players].join(',');
    const key = `${finding.rule}:${about}`;
    const times = (used.get(key) ?? 0) + 1;
    used.set(key, times);
    const row = findingRow(finding, times === 1 ? key : `${key}#${String(times)}`, verdict, lexicon);
    return { row, reason: finding.waived };
  });
  const standing = rows.flatMap(({ row, reason }) => (reason === null ? [row] : []));
  return {
    standing: SEVERITIES.flatMap((severity) => standing.filter((row) => row.severity === severity)),
    waived: rows.flatMap(({ row, reason }) => (reason === null ? [] : [{ ...row, decides: false, reason }])),
  };
}

function findingRow(finding: Finding, key: string, verdict: Verdict, lexicon: Lexicon): FindingRow {
  const check = checkOf(finding.rule);
  const why = fill(finding.because, lexicon);
  return {
    key,
    rule: finding.rule,
    title: check.title,
    severity: finding.severity,
    text: why.text,
    matters: check.matters,
    why: why.because,
    decides: finding.severity === verdict,
    who: finding.who,
    gaps: finding.gaps,
    players: finding.players,
  };
}

function checkOf(rule: string): Check {
  const check = standardChecks.find((each) => each.id === rule);
  if (check === undefined) throw new Error(`No check is called ${rule}`);
  return check;
}

/** What could not be judged, in words, in the engine's order. */
export function cannotTellRows(undetermined: readonly Undetermined[], lexicon: Lexicon): readonly CannotTellRow[] {
  return undetermined.map(({ rules, because, who, gaps, players }, index) => {
    const why = fill(because, lexicon);
    return {
      key: `${String(index)}:${rules.join(',')}`,
      rules,
      titles: rules.map((rule) => checkOf(rule).title),
      text: why.text,
      why: why.because,
      who,
      gaps,
      players,
    };
  });
}

/** "2 stops, 1 check; 1 cannot be told; 1 waived": how many of what. */
export function countText({ standing, waived }: FindingRows, cannotTell: readonly CannotTellRow[]): string {
  const counts = SEVERITIES.flatMap((severity) =>
    counted(
      standing.filter((row) => row.severity === severity),
      severity,
      `${severity}s`,
    ),
  );
  const parts = [
    ...(counts.length === 0 ? [] : [counts.join(', ')]),
    ...counted(cannotTell, 'cannot be told'),
    ...counted(waived, 'waived'),
  ];
  return parts.length === 0 ? 'nothing found' : parts.join('; ');
}

function counted(rows: readonly unknown[], one: string, many = one): readonly string[] {
  return rows.length === 0 ? [] : [`${String(rows.length)} ${rows.length === 1 ? one : many}`];
}
