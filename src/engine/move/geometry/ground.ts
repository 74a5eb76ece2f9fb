import type { Aligned, Gap, Job, PlayerId, Point, RoleId, Yards } from '../../types/index.ts';
import type { FieldMarks } from '../../facts/field.ts';

/** A man with one job to be shown or timed: where he stands and what he is sent to do. */
export interface Runner {
  readonly aligned: Aligned;
  readonly job: Job;
}

/** What every way refers to: the field, and where everybody stands at the snap. */
export interface Ground {
  readonly field: FieldMarks;
  /** Where a gap crosses the line; null for a gap this look does not have. */
  readonly gapX: (gap: Gap) => Yards | null;
  /** A defender; null for a role that is not on the field. */
  readonly manAt: (role: RoleId) => Point | null;
  /** An offensive player; null for one who is not in this look. */
  readonly playerAt: (player: PlayerId) => Point | null;
  /** Null: nobody in this look passes. */
  readonly passer: Point | null;
}

/** Where a job takes a man, as the corners of his way. The first is where he stands. */
export interface Way {
  readonly points: readonly Point[];
  /** Smooth through its points; else straight between them. */
  readonly curved: boolean;
  /** The gap this way leads to; null for one that leads to no gap. */
  readonly gap: Gap | null;
  /** Which of the points is the one where he crosses the line; null when he does not. */
  readonly crossing: number | null;
  /**
   * How near to the line he goes before he knows more: a man in cover waits on his side for the receiver who comes out. Null:
   * he goes his whole way.
   */
  readonly waitsAt: Yards | null;
}
