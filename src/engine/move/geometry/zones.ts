import { assertNever } from '../../../base/index.ts';
import type { FieldMarks } from '../../facts/field.ts';
import type { Job, Point, Yards } from '../../types/index.ts';
import type { Place } from '../../vocabulary.ts';
import type { Runner } from './ground.ts';
import { clamp } from './points.ts';

/** A drop of the shell. */
export type DropJob = Extract<Job, { kind: 'drop' }>;

/**
 * Depth of each zone's middle. Common practice, no one source: hook 8 to 12 yd ("3 Receiver Hook Drop", Blitzology, 2010, has
 * a 10 yd rule), seam 6 to 10 yd, flat 4 to 6 yd, deep zones as deep as the deepest.
 */
const DEPTH = { seam: 9, hook: 10, hole: 8, 'curl-flat': 8.5, flat: 5, hot: 7, deep: 14.5 } as const;

/** Short zones go with the receivers: on the wide side of the field they stop this far from the ball. Common practice. */
const FROM_THE_BALL = { seam: 12, curl: 15, flat: 18 } as const;

/** How much of his own width a man keeps when his short zone is in the middle: he drifts to the ball. */
const DRIFT = 0.3;

/** Nobody drops nearer to the sideline than this. */
export const SIDELINE_ROOM: Yards = 1;

/**
 * Where the middle of a man's zone lies, inside the sidelines: relative to the ball, the hash, the numbers and the sideline.
 * Common practice, no one source (hook between hash and tackle; seam from inside the hash to the numbers; thirds, halves and
 * quarters divide the field's width). `rank` counts the men of one side's quarters from outside, the outermost 0.
 */
export function landmarkOf(field: FieldMarks, man: Point, job: DropJob, rank: number): Point {
  const { x, y } = landmark(field, man, job, rank);
  return { x: clamp(field.leftSideline + SIDELINE_ROOM, x, field.rightSideline - SIDELINE_ROOM), y };
}

function landmark(field: FieldMarks, man: Point, job: DropJob, rank: number): Point {
  const side = sideSign(job.side);
  const sideline = side < 0 ? -field.leftSideline : field.rightSideline;
  const hash = side * (side < 0 ? field.leftHash : field.rightHash);
  const numbers = side * (side < 0 ? field.leftNumbers : field.rightNumbers);
  const width = field.rightSideline - field.leftSideline;
  const middle = { x: (field.leftSideline + field.rightSideline) / 2, y: DEPTH.deep };
  /** Yards outward on his side; a zone in the middle is about the ball. */
  const out = (yards: Yards, depth: Yards): Point => ({ x: side === 0 ? man.x * DRIFT : side * yards, y: depth });
  const share = (of: number): Point => (side === 0 ? middle : out(sideline - width * of, DEPTH.deep));
  switch (job.zone) {
    case 'seam':
      return out(clamp(6.5, (Math.max(hash, 4) + numbers) / 2, FROM_THE_BALL.seam), DEPTH.seam);
    case 'hook':
      return out(4.2, DEPTH.hook);
    case 'hole':
      return out(0, DEPTH.hole);
    case 'curl-flat':
      return out(clamp(8, numbers - 2, FROM_THE_BALL.curl), DEPTH['curl-flat']);
    case 'flat':
      return out(clamp(9, (numbers + sideline) / 2, FROM_THE_BALL.flat), DEPTH.flat);
    case 'hot':
      return out(6, DEPTH.hot);
    case 'middle':
      return middle;
    case 'third':
      return share(1 / 6);
    case 'half':
      return share(1 / 4);
    case 'quarter':
      return share(rank === 0 ? 1 / 8 : 3 / 8);
    default:
      return assertNever(job.zone);
  }
}

/** Of the men who drop to a quarter on one side, the outermost has rank 0. Other zones: 0. */
export function quarterRank(runners: readonly Runner[], of: Runner): number {
  const { job } = of;
  if (job.kind !== 'drop' || job.zone !== 'quarter') return 0;
  const far = ({ aligned }: Runner): Yards => Math.abs(aligned.x);
  return runners.filter(
    (mate) =>
      mate.job.kind === 'drop' && mate.job.zone === 'quarter' && mate.job.side === job.side && far(mate) > far(of),
  ).length;
}

function sideSign(side: Place): -1 | 0 | 1 {
  return side === 'left' ? -1 : side === 'right' ? 1 : 0;
}
