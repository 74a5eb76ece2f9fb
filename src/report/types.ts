import type { CombinedStatus, Gap, PlayerId, RoleId, Severity, Verdict } from '../engine/index.ts';

/** A reason in words, with the reasons below it. */
export interface Why {
  readonly text: string;
  readonly because: readonly Why[];
}

/** The men a row is about, for lighting them on the field: never words. */
export interface About {
  readonly who: readonly RoleId[];
  readonly players: readonly PlayerId[];
  readonly gaps: readonly Gap[];
}

/** One man of the pair table: what each pressure says to him, what stands, and the verdict in a word. */
export interface PairRow {
  readonly role: RoleId;
  readonly letter: string;
  readonly name: string;
  readonly room: string;
  readonly first: string;
  /** "—" when the call has one pressure only. */
  readonly second: string;
  /** The job he plays; on a conflict the first pressure's, until the coach decides. */
  readonly stands: string;
  readonly status: CombinedStatus;
  /** A job gave way, and it was only the shell's, as whenever a coverage man is sent to rush. */
  readonly shellGaveWay: boolean;
  /** "Same", "Told once", "Gives way", "Two jobs", "Two ways", "By the key", "Nobody there", "Base job". */
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
  /** The whole job in one line. */
  readonly job: string;
  /** Its beginning, for a table that has the run and the pass in columns of their own: "Drop to the seam left". */
  readonly move: string;
  readonly run: string;
  readonly pass: string;
  /** "first", "second", "both", "shell", "base", "filled in". */
  readonly toldBy: string;
  readonly why: Why;
}

/** A finding in words. */
export interface FindingRow extends About {
  /** Unique and stable inside one report: rule, people and gaps. Holds ids: not for readers. */
  readonly key: string;
  readonly rule: string;
  readonly title: string;
  readonly severity: Severity;
  readonly text: string;
  /** Why it matters, one sentence a player would understand. */
  readonly matters: string;
  readonly why: readonly Why[];
  /** It is as grave as the verdict: with the others like it, it made the verdict. */
  readonly decides: boolean;
}

/** A finding the coach lives with, and his reason. It does not count toward the verdict. */
export interface WaivedRow extends FindingRow {
  readonly reason: string;
}

/** Something the checks could not judge, and why: never the same as clean. */
export interface CannotTellRow extends About {
  /** Unique inside one report. Holds ids: not for readers. */
  readonly key: string;
  /** Ids of the checks that cannot say. */
  readonly rules: readonly string[];
  /** Their titles. */
  readonly titles: readonly string[];
  readonly text: string;
  readonly why: readonly Why[];
}

/** Who has each gap, for the line under the board and for sheets. */
export interface GapRow {
  readonly gap: Gap;
  readonly name: string;
  readonly owners: string;
  readonly open: boolean;
}

/** What the call's check-out table makes of it against this formation: "Trips: check to Osier and Weir". */
export interface CheckOutNote {
  readonly text: string;
  readonly why: Why;
}

/** An either-or call: which half is run in this look, by what key, and who must hear it. */
export interface ChoiceNote {
  /** "Osier is run". */
  readonly text: string;
  /** "Osier if a man is attached outside the tackle on the call side, otherwise Marl". */
  readonly key: string;
  /** "N, M and W must hear the check", linemen first. */
  readonly hear: string;
  readonly who: readonly RoleId[];
  readonly why: Why;
}

/** What the motion of the look does to the call. */
export interface MotionNote {
  /** "H goes 9 yd to the right, across the ball". */
  readonly text: string;
  /** For each pressure its call side before and after: "Osier turns from left to right". */
  readonly sides: readonly { readonly text: string; readonly turns: boolean }[];
  /** "S and R have another spot or job after it". */
  readonly moves: string;
  /** The men of `moves`, and the man in motion. */
  readonly who: readonly RoleId[];
  readonly players: readonly PlayerId[];
}

/** A zone of the shell with whoever drops to it. */
export interface ZoneRow extends About {
  /** "seam right", "deep middle". */
  readonly zone: string;
  /** "R", or "nobody". */
  readonly by: string;
  /** Null where nobody drops. */
  readonly how: 'told' | 'filled in' | null;
  readonly open: boolean;
  readonly why: Why;
}

/** An eligible receiver with whoever answers him. */
export interface ReceiverRow extends About {
  /** "number 2 left H", "the back B". */
  readonly receiver: string;
  readonly by: string;
  /** "out of the seam", "man to man", "leaves his rush with him"; null where nobody answers. */
  readonly how: string | null;
  /** Both in one line: "Number 2 left H: S, out of the seam". */
  readonly text: string;
  readonly open: boolean;
  readonly why: Why;
}

/** The pass half of the call: how many do what, every zone the shell needs, every receiver. */
export interface CoverageSection {
  /** The shell that is played. */
  readonly shell: string;
  /** "5 rush, 3 under, 3 deep". */
  readonly count: string;
  /** "Every receiver has somebody", "Nobody has number 1 right Z; nobody drops to the hook left". */
  readonly headline: string;
  readonly open: boolean;
  readonly zones: readonly ZoneRow[];
  readonly receivers: readonly ReceiverRow[];
}

/** One thing that must be done against a run, and who does it. */
export interface DutyRow extends About {
  /** "Hits C gap right", "Winds back to A gap left", "G left pulls to C gap right", "Dive". */
  readonly what: string;
  /** "S", or "nobody". */
  readonly by: string;
  readonly open: boolean;
}

/** One run the look is known for against this call. */
export interface RunRow {
  /** "power to the right". */
  readonly name: string;
  /** A pass is read off the same snap. */
  readonly passOption: boolean;
  /** False: this look lacks somebody the run needs, and `headline` says whom; all lists are empty. */
  readonly here: boolean;
  /** The short line: what nobody has, else who is where it hits. */
  readonly headline: string;
  /** Somebody the run needs has nobody. */
  readonly open: boolean;
  /** Where it hits, where it winds back, each gap that opens, each phase of an option. */
  readonly duties: readonly DutyRow[];
  /** Whom nobody blocks, who is read, how many are to spare: whole sentences. */
  readonly notes: readonly string[];
  readonly why: readonly Why[];
}

/** One blocker and the rusher he has. */
export interface BlockRow extends About {
  /** "T left". */
  readonly blocker: string;
  readonly rusher: string;
  /** "his man", "in his gap", "on his read". */
  readonly how: string;
  readonly why: Why;
}

/** A rusher nobody has. */
export interface FreeRow extends About {
  readonly rusher: string;
  /** "D gap right". */
  readonly through: string;
  readonly why: Why;
}

/** One protection the look is known for against this rush. */
export interface ProtectionRow {
  /** "half slide with the back, to the right". */
  readonly name: string;
  /** False: this look lacks somebody the protection keeps in, and `headline` says whom; all lists are empty. */
  readonly here: boolean;
  /** The short line: "J comes free through D gap right; hot to the right", "everybody is blocked". */
  readonly headline: string;
  readonly free: readonly FreeRow[];
  readonly blocks: readonly BlockRow[];
  /** Blockers with nobody to block: "the back B". */
  readonly idle: readonly { readonly blocker: string; readonly players: readonly PlayerId[]; readonly why: Why }[];
  /** Blocks that are bad ones, and men who could be passed on: whole sentences. */
  readonly notes: readonly Why[];
  /** "hot to the right"; null when he need not. */
  readonly hot: { readonly text: string; readonly why: Why } | null;
  readonly why: Why;
}

/** One call in one look in words: reads an analysis, computes nothing. */
export interface Report {
  readonly verdict: Verdict;
  /** "Stop: do not install", "Check: you decide", "Note", "Clean", "Not run against this look". */
  readonly verdictText: string;
  /** "2 stops, 1 check; 1 cannot be told; 1 waived", "nothing found", "not judged". */
  readonly counts: string;
  /** "Call side: right" with why; one a pressure. */
  readonly sides: readonly { readonly pressure: string; readonly text: string; readonly why: Why }[];
  /** Null: the call has no row for this formation. */
  readonly checkOut: CheckOutNote | null;
  /** Null: both halves run, or there is one. */
  readonly choice: ChoiceNote | null;
  /** Null: nobody is in motion. */
  readonly motion: MotionNote | null;
  /** Every man's two tellings, in the order of `jobs`. */
  readonly pair: readonly PairRow[];
  /** The linemen among them. */
  readonly linemen: readonly PairRow[];
  readonly jobs: readonly JobRow[];
  readonly gaps: readonly GapRow[];
  readonly coverage: CoverageSection;
  /** In the order of the look's list, so that an index is the same here, in the analysis and in a scene's options. */
  readonly runs: readonly RunRow[];
  readonly protections: readonly ProtectionRow[];
  /** What stands, the gravest first. Empty for a look left out: it is not judged. */
  readonly findings: readonly FindingRow[];
  /** What the coach lives with. */
  readonly waived: readonly WaivedRow[];
  /** What could not be judged. The findings are only whole together with it. */
  readonly cannotTell: readonly CannotTellRow[];
  /** Titles of the faults that were looked for, so that an empty list of findings is not taken for more than it is. Empty for a look left out. */
  readonly checked: readonly string[];
}

/** Something that happens after the snap, in words. */
export interface MomentRow extends About {
  /** Unique in one walk-through. Holds ids: not for readers. */
  readonly key: string;
  /** Seconds after the snap. */
  readonly t: number;
  /** "0.9 s". */
  readonly time: string;
  /** "N is in the A gap left". */
  readonly text: string;
}

/** A walk-through in words. */
export interface WalkReport {
  /** In the order of time. */
  readonly moments: readonly MomentRow[];
  /** What the picture cannot or does not show, the estimate first. */
  readonly notes: readonly string[];
}
