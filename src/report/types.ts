import type { CombinedStatus, Gap, PlayerId, RoleId, Severity, Verdict } from '../engine/index.ts';

/** A reason in words, with the reasons below it. */
export interface Why {
  readonly text: string;
  readonly because: readonly Why[];
}

/** One lineman of the pair table: what each pressure says to him, and the verdict in a word. */
export interface LinemanRow {
  readonly role: RoleId;
  readonly letter: string;
  readonly name: string;
  readonly first: string;
  /** "—" when the call has one pressure only. */
  readonly second: string;
  readonly status: CombinedStatus;
  /** "Same", "Told once", "Gives way", "Two jobs", "Two ways", "Nobody there", "Base job". */
  readonly verdict: string;
  readonly why: Why;
}

/** One of the eleven in the job table. */
export interface JobRow {
  readonly role: RoleId;
  readonly letter: string;
  readonly name: string;
  readonly room: string;
  /** Technique or spot, in the staff's words. */
  readonly aligns: string;
  /** The whole job at the snap in one line. */
  readonly job: string;
  readonly run: string;
  readonly pass: string;
  /** "first", "second", "both", "shell", "base", "filled in". */
  readonly toldBy: string;
  readonly why: Why;
}

/** A finding in words. */
export interface FindingRow {
  /** Unique and stable inside one report: rule, people and gaps. Holds ids: not for readers. */
  readonly key: string;
  readonly rule: string;
  readonly title: string;
  readonly severity: Severity;
  readonly text: string;
  /** Why it matters, one sentence a player would understand. */
  readonly matters: string;
  readonly why: readonly Why[];
  readonly who: readonly RoleId[];
  readonly gaps: readonly Gap[];
  readonly players: readonly PlayerId[];
}

/** Who has each gap, for the line under the board and for sheets. */
export interface GapRow {
  readonly gap: Gap;
  readonly name: string;
  readonly owners: string;
  readonly open: boolean;
}

/** One call in one look in words: reads an analysis, computes nothing. */
export interface Report {
  readonly verdict: Verdict;
  /** "Stop: do not install", "Check: you decide", "Note", "Clean", "Not run against this look". */
  readonly verdictText: string;
  /** "Call side: right" with why; one a pressure. */
  readonly sides: readonly { readonly pressure: string; readonly text: string; readonly why: Why }[];
  readonly linemen: readonly LinemanRow[];
  readonly jobs: readonly JobRow[];
  readonly gaps: readonly GapRow[];
  /** Empty for a look left out: it is not judged. */
  readonly findings: readonly FindingRow[];
  /** Titles of the faults that were looked for, so that an empty list of findings is not taken for more than it is. Empty for a look left out. */
  readonly checked: readonly string[];
}
