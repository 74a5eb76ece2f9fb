import { compareBy } from '../base/index.ts';
import {
  gapKey,
  PLACES,
  SEVERITIES,
  type CallId,
  type LookId,
  type Place,
  type PlayerId,
  type RoleId,
  type Severity,
  type Side,
  type Verdict,
} from '../engine/index.ts';
import type { ReportEntry } from './entry.ts';
import type { CannotTellRow, FindingRow, JobRow, Report, Why } from './types.ts';

/** One of the eleven: his id, and the rest in the words of the printed report. */
export type JobJson = Pick<JobRow, 'role' | 'letter' | 'aligns' | 'run' | 'pass' | 'toldBy'>;

/** One finding. `who`, `gap` and `players` are for programs; `because` has the same in words. */
export interface FindingJson {
  readonly rule: string;
  readonly severity: Severity;
  readonly who: readonly RoleId[];
  /** Every gap it is about, as "A left". */
  readonly gap: readonly string[];
  readonly players: readonly PlayerId[];
  readonly because: Why;
  /** The coach's reason to live with it; null: it stands. */
  readonly waived: string | null;
}

/** Something that could not be judged. */
export interface CannotTellJson extends Omit<FindingJson, 'rule' | 'severity' | 'waived'> {
  readonly rules: readonly string[];
}

/** One look at one ball spot. `verdict` tells a clean look from one the call is not run against. */
export interface LookJson {
  readonly id: LookId;
  readonly spot: Place;
  readonly verdict: Verdict;
  /** The call side of the first pressure, the defence's left or right. */
  readonly callSide: Side | 'tie';
  /** The call side of the second pressure; null when the call has one pressure only. */
  readonly secondCallSide: Side | 'tie' | null;
  readonly jobs: readonly JobJson[];
  readonly findings: readonly FindingJson[];
  readonly cannotTell: readonly CannotTellJson[];
  /** The sections of the printed report, as they are: words, with ids in `who`, `players` and `gaps`. */
  readonly checkOut: Report['checkOut'];
  readonly choice: Report['choice'];
  readonly motion: Report['motion'];
  readonly coverage: Report['coverage'];
  readonly runs: Report['runs'];
  readonly protections: Report['protections'];
}

/** What `--json` prints. */
export interface ReportJson {
  readonly format: 'gapwright-report';
  readonly version: 1;
  readonly calls: readonly { readonly id: CallId; readonly looks: readonly LookJson[] }[];
}

/**
 * Entries as plain data, in an order of its own: calls and looks by id, spots from left to right, findings by severity,
 * rule, people and sentence. So the same entries in any order give the same bytes. Throws when one call, look and spot
 * comes twice.
 */
export function reportJson(entries: readonly ReportEntry[]): ReportJson {
  const sorted = [...entries].sort(
    compareBy(
      (entry) => entry.call.id,
      (entry) => entry.analysis.setup.look.id,
      (entry) => PLACES.indexOf(entry.analysis.setup.spot),
    ),
  );
  const calls = new Map<CallId, LookJson[]>();
  for (const entry of sorted) {
    const looks = calls.get(entry.call.id) ?? [];
    const look = lookJson(entry);
    const before = looks[looks.length - 1];
    if (before?.id === look.id && before.spot === look.spot) {
      throw new Error(`${entry.call.id} against ${look.id} at ${look.spot} is reported twice`);
    }
    looks.push(look);
    calls.set(entry.call.id, looks);
  }
  return { format: 'gapwright-report', version: 1, calls: [...calls].map(([id, looks]) => ({ id, looks })) };
}

function lookJson({ analysis, report }: ReportEntry): LookJson {
  const sideOf = ({ side }: typeof analysis.first): Side | 'tie' => (side.kind === 'decided' ? side.side : 'tie');
  const standing = report.findings.map((row) => ({ ...row, reason: null }));
  const findings = [...standing, ...report.waived].sort(
    compareBy(
      (row) => SEVERITIES.indexOf(row.severity),
      (row) => row.rule,
      (row) => row.key,
    ),
  );
  const { checkOut, choice, motion, coverage, runs, protections } = report;
  return {
    id: analysis.setup.look.id,
    spot: analysis.setup.spot,
    verdict: report.verdict,
    callSide: sideOf(analysis.first),
    secondCallSide: analysis.second === null ? null : sideOf(analysis.second),
    jobs: report.jobs.map(({ role, letter, aligns, run, pass, toldBy }) => ({
      role,
      letter,
      aligns,
      run,
      pass,
      toldBy,
    })),
    findings: findings.map(findingJson),
    cannotTell: report.cannotTell.map((row) => ({ rules: row.rules, ...aboutJson(row) })),
    checkOut,
    choice,
    motion,
    coverage,
    runs,
    protections,
  };
}

function findingJson(row: FindingRow & { readonly reason: string | null }): FindingJson {
  return { rule: row.rule, severity: row.severity, ...aboutJson(row), waived: row.reason };
}

function aboutJson({ who, gaps, players, text, why }: FindingRow | CannotTellRow): Omit<CannotTellJson, 'rules'> {
  return { who, gap: gaps.map(gapKey), players, because: { text, because: why } };
}
