import type { Basis, EdgePlay, Leverage, Severity, Side, Support, Zone } from '../vocabulary.ts';
import type { Because } from './because.ts';
import type { Answer, FilledZone, PassCount } from './cover.ts';
import type { Role } from './defence.ts';
import type { LookFacts } from './facts.ts';
import type { PlayerId, RoleId } from './ids.ts';
import type { Gap, Job } from './job.ts';
import type { ProtectionAnswer, RunAnswer } from './plays.ts';
import type { Point, Yards } from './look.ts';
import type { Setup } from './setup.ts';

/** A technique as facts: the body he stands on, counted from the snapper outward, and the leverage on it. */
export interface Technique {
  readonly side: Side | 'middle';
  readonly index: number;
  readonly leverage: Leverage;
  /** True: no body is there; he stands where one would. */
  readonly ghost: boolean;
}

/** Where a defender stands at the snap, and what put him there. */
export interface Aligned extends Point {
  readonly role: Role;
  /** The side he plays: the one he stands on, or `middle` over the ball. */
  readonly place: Side | 'middle';
  readonly by: 'rule' | 'hand' | 'pressure';
  readonly technique: Technique | null;
  readonly inBox: boolean;
  readonly because: Because;
}

/** Which side a rule picked, or that it is a tie. A tie is a finding, never a guess. */
export type SideDecision =
  | { readonly kind: 'decided'; readonly side: Side; readonly because: Because }
  | { readonly kind: 'tie'; readonly because: Because };

/** What one pressure tells one man in this look. */
export type Telling =
  | {
      readonly kind: 'told';
      readonly basis: Exclude<Basis, 'base'>;
      readonly job: Job;
      /** Where it has him stand before the snap; null: where his front has him. */
      readonly preSnap: { readonly depth: Yards; readonly because: Because } | null;
      readonly because: Because;
    }
  /** The rule points at somebody or something that is not in this look. */
  | { readonly kind: 'unresolved'; readonly because: Because };

/** One pressure in one look: its call side and what it tells each man. Men not in the map are told nothing. */
export interface ResolvedPressure {
  readonly side: SideDecision;
  readonly tellings: ReadonlyMap<RoleId, Telling>;
  /** Tellings whose addressee is not in this front or cannot be found. */
  readonly lost: readonly Because[];
  /** Men its rush tells a second job; the first one told is what it tells. */
  readonly again: readonly { readonly role: RoleId; readonly kept: Job; readonly heard: Job }[];
}

/** How the two tellings of one man go together. */
export type CombinedStatus =
  /** Neither pressure tells him anything. */
  | 'untold'
  /** One of them tells him. */
  | 'one'
  /** Both tell him the same thing. */
  | 'same'
  /** The two differ, and the weaker one gives way (never for a lineman). */
  | 'yields'
  /** Same gap, taught two ways. */
  | 'two-manners'
  /** Two things that cannot both be done. */
  | 'conflict'
  /** An either-or call: the halves tell him different things, and he plays the one that is run. */
  | 'either'
  /** What he is told points at somebody who is not there. */
  | 'unresolved';

/** What stands for one man, whoever told him. How the call is played follows from this; who told him is only in the words. */
export interface Settled {
  /** The job that stands; on a conflict the first pressure's, until the coach decides. Null: nothing told. */
  readonly job: Job | null;
  /** On a conflict both jobs, of which nobody can say which he will do; else empty. */
  readonly torn: readonly Job[];
  /** What he is told is one thing, and it can be done. */
  readonly sure: boolean;
  /** Only the shell gives it to him, so the shell may give him another zone. */
  readonly byShell: boolean;
  readonly because: Because;
}

/** One man of the combined call: what the first says, what the second says, what stands. */
export interface Combined extends Settled {
  readonly role: Role;
  readonly first: Telling | null;
  readonly second: Telling | null;
  readonly status: CombinedStatus;
  /** Who told him: a pressure, both, or the shell that had nobody for a zone. */
  readonly from: 'first' | 'second' | 'both' | 'shell' | null;
}

/** Who has a run gap, and how he came to it. */
export interface GapOwner {
  readonly role: RoleId;
  /** Sent by a pressure, given by the shell, kept from the base front, or filled in because nobody else had it. */
  readonly how: 'told' | 'base' | 'filled';
  /** False: he is in conflict, so whether he really comes here is open. */
  readonly sure: boolean;
  /** He two-gaps: this is one of his two. */
  readonly shared: boolean;
  readonly because: Because;
}

/** A run gap of the look with its owners: none is an open gap. */
export interface OwnedGap {
  readonly gap: Gap;
  readonly x: Yards;
  readonly owners: readonly GapOwner[];
  /**
   * For an open gap, the set that proves it: these gaps can only be reached by these men, and there are more gaps.
   * Null for an owned gap.
   */
  readonly proof: { readonly gaps: readonly Gap[]; readonly reachable: readonly RoleId[] } | null;
}

/** The run column of a man's job. */
export interface RunColumn {
  readonly gaps: readonly Gap[];
  readonly twoGaps: boolean;
  readonly edge: EdgePlay | null;
  readonly support: Support | null;
}

/** The pass column of a man's job. */
export type PassColumn =
  | { readonly kind: 'rush' }
  | { readonly kind: 'contain'; readonly side: Side }
  | { readonly kind: 'zone'; readonly zone: Zone; readonly side: Side | 'middle' }
  | { readonly kind: 'man'; readonly receiver: PlayerId }
  | { readonly kind: 'spy' }
  | { readonly kind: 'none' };

/** One of the eleven as he goes into the play: where he stands, what stands for him, and both columns of his job. */
export interface PlayedMan {
  readonly aligned: Aligned;
  readonly combined: Settled;
  readonly run: RunColumn;
  readonly pass: PassColumn;
}

/** The same, with what each pressure tells him. */
export interface Assignment extends PlayedMan {
  readonly combined: Combined;
}

/** What the look's motion does to the call: the sides before it, who stands elsewhere after it. */
export interface MotionEffect {
  readonly first: SideDecision;
  readonly second: SideDecision | null;
  /** Defenders whose spot or job is another one after the motion. */
  readonly moved: readonly RoleId[];
}

/** Which half of an either-or call is run in this look, and who must hear it. */
export interface Choice {
  readonly ran: 'first' | 'second';
  /** Everybody whose job differs between the halves, linemen first. */
  readonly mustHear: readonly RoleId[];
  readonly because: Because;
}

/** What a check says of this call in this look. */
export interface Finding {
  /** Stable id of the check; its meaning never changes. */
  readonly rule: string;
  readonly severity: Severity;
  /** The sentence, with its data and the reasons below it. */
  readonly because: Because;
  readonly who: readonly RoleId[];
  readonly gaps: readonly Gap[];
  readonly players: readonly PlayerId[];
  /** Where to look on the field. */
  readonly where: readonly Point[];
  /** The coach's reason for living with it, while its evidence is the one he saw; null: not waived. */
  readonly waived: string | null;
}

/**
 * What checks could not judge, and why: never the same as clean. Nobody can say who has a gap while the man who is sent
 * there is told two things, or who covers whom while the call side is a tie. Checks that cannot say for one and the same
 * reason are told together.
 */
export interface Undetermined {
  /** Ids of the checks that cannot say, in their order; at least one. */
  readonly rules: readonly string[];
  /** What cannot be told, with the reasons below it. */
  readonly because: Because;
  readonly who: readonly RoleId[];
  readonly gaps: readonly Gap[];
  readonly players: readonly PlayerId[];
  /** Where to look on the field. */
  readonly where: readonly Point[];
}

/**
 * The worst severity found, or `clean`; at least `check` when something could not be judged; `left-out` when a pressure of the
 * call is not run against this look.
 */
export type Verdict = 'stop' | 'check' | 'note' | 'clean' | 'left-out';

/**
 * How a call is played, stage 6: all that follows from where the eleven stand and from what stands for each of them. Two calls
 * that come to the same eleven are played the same, whatever their pressures are.
 */
export interface Played {
  /** Where it is played: nothing of the call. */
  readonly setup: Pick<Setup, 'level' | 'spot' | 'roles' | 'front' | 'look'>;
  readonly facts: LookFacts;
  /** Which side breaks a perfect tie between two equal fits. */
  readonly lean: Side;
  /** The eleven in a fixed order: line, linebackers, secondary, each from left to right. */
  readonly assignments: readonly PlayedMan[];
  readonly gaps: readonly OwnedGap[];
  readonly zones: readonly FilledZone[];
  readonly answers: readonly Answer[];
  readonly passCount: PassCount;
  /** The runs and protections the look is known for, against this call. */
  readonly runs: readonly RunAnswer[];
  readonly protections: readonly ProtectionAnswer[];
}

/** One of the eleven with what each pressure tells him, before anybody asks how it is played. */
export type ToldMan = Pick<Assignment, 'aligned' | 'combined'>;

/** What a call tells the eleven in a look, stages 1 to 5: all that is known before anybody asks how it is played. */
export interface ToldCall {
  readonly setup: Setup;
  readonly facts: LookFacts;
  readonly first: ResolvedPressure;
  readonly second: ResolvedPressure | null;
  /** For an either-or call; null when both run, or there is one pressure. */
  readonly choice: Choice | null;
  /** Null when the look has no motion. Everything else is as the ball is snapped, after it. */
  readonly motion: MotionEffect | null;
  /** The eleven in any order. */
  readonly assignments: readonly ToldMan[];
}

/** One call in one look at one ball spot, worked through: every stage's answer. */
export interface Analysis extends ToldCall, Played {
  readonly setup: Setup;
  /** In a fixed order: line, linebackers, secondary, each from left to right. */
  readonly assignments: readonly Assignment[];
  readonly findings: readonly Finding[];
  /** What could not be judged. A list of findings is only whole together with it. */
  readonly undetermined: readonly Undetermined[];
  readonly verdict: Verdict;
}
