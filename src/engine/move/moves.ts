import { remembered } from '../../base/index.ts';
import { fieldAt } from '../facts/field.ts';
import { gapsEqual } from '../gaps.ts';
import type { Aligned, PlayedMan, Gap, LookFacts, RoleId } from '../types/index.ts';
import type { Place, RuleLevel } from '../vocabulary.ts';
import { firstMeeting, traceOf } from './crossings.ts';
import { errandOf } from './errands.ts';
import type { Ground, Runner, Way } from './geometry/ground.ts';
import { lanesOf } from './geometry/lanes.ts';
import { distance } from './geometry/points.ts';
import { waysOf, type Together } from './geometry/ways.ts';
import { quarterRank } from './geometry/zones.ts';
import { dropping, READ_TIME, SPEED_MODELS, type SpeedModel } from './speed.ts';
import { likelySpot } from './throws.ts';
import { turnsOf, type Turn } from './turns.ts';
import type { Move } from './types.ts';
import { lengthOf, rounded, staying, walk } from './walk.ts';

/** Everything stage 8 asks: the analysis so far, and how fast men are. */
export interface MoveInput {
  readonly facts: LookFacts;
  readonly assignments: readonly PlayedMan[];
  readonly level: RuleLevel;
  readonly spot: Place;
  /** Left out: the model of the rule level. */
  readonly speeds?: SpeedModel;
}

/**
 * Paths round the edge are at least so much longer than the straight way to the passer, because the man who blocks there is in
 * it. Derived with the arrival times the model is tested against (an estimate).
 */
export const EDGE_ARC = 1.08;

/**
 * A man who goes after another waits one of these, in seconds: the first after which the two no longer meet. Estimates. A man
 * told to go second waits at least the first that is not 0.
 */
const HOLDS = [0, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2] as const;

/**
 * Stage 8: every man's job as a timed path in yards, in the order of the assignments. Estimates for a man whom nobody blocks,
 * against a pass. Pure: the same input gives the same moves to the byte.
 */
export function movesOf(input: MoveInput): readonly Move[] {
  const timing = timingOf(input);
  const moves = input.assignments.map((assignment) => knownMoveOf(timing, assignment));
  const byRole = new Map(moves.map((move) => [move.role, move]));
  const turns = turnsOf(input.assignments);
  return moves.map((move) => inTurn(move, byRole, turns, []));
}

/**
 * The move of a man once everybody he goes after has gone, the first of a chain first. `before` are the men whose turn waits for
 * him: where two are each told to go after the other, neither waits for the other's wait.
 */
function inTurn(
  move: Move,
  byRole: ReadonlyMap<RoleId, Move>,
  turns: readonly Turn[],
  before: readonly RoleId[],
): Move {
  const mine = turns.filter(({ role, first }) => role === move.role && first !== role && !before.includes(first));
  const firsts = mine.flatMap(({ first }) => {
    const found = byRole.get(first);
    return found === undefined ? [] : [inTurn(found, byRole, turns, [...before, move.role])];
  });
  const told = mine.some((turn) => turn.told);
  return firsts.length === 0 ? move : held(move, firsts, told);
}

/** The move of a man who goes after others. Where no hold keeps them apart he goes as he is told, and they meet. */
function held(move: Move, firsts: readonly Move[], told: boolean): Move {
  const known = knownHolds(move);
  const same = known.find((each) => each.told === told && sameList(each.firsts, firsts));
  if (same !== undefined) return same.made;
  const made = holdBack(move, firsts, told);
  known.push({ told, firsts, made });
  return made;
}

/** What came of holding a move back, each time it was. */
const knownHolds = remembered(
  (_move: Move): { readonly told: boolean; readonly firsts: readonly Move[]; readonly made: Move }[] => [],
);

function sameList(a: readonly Move[], b: readonly Move[]): boolean {
  return a.length === b.length && a.every((move, index) => move === b[index]);
}

function holdBack(move: Move, firsts: readonly Move[], told: boolean): Move {
  const holds = HOLDS.filter((hold) => hold > 0 || !told);
  const before = firsts.map((first) => traceOf(first));
  const apart = holds.find((hold) => {
    const trace = traceOf(later(move, hold));
    return before.every((first) => firstMeeting(first, trace) === null);
  });
  return later(move, apart ?? holds[0] ?? 0);
}

/** The same move, begun later. */
function later(move: Move, hold: number): Move {
  if (hold === 0) return move;
  const [start, ...rest] = move.path;
  if (start === undefined) return move;
  return {
    ...move,
    path: [start, ...rest.map((stamp) => ({ ...stamp, t: rounded(stamp.t + hold) }))],
    starts: rounded(move.starts + hold),
    gapAt: move.gapAt === null ? null : rounded(move.gapAt + hold),
  };
}

/** What the moves of one picture share. */
interface Timing {
  readonly input: MoveInput;
  readonly speeds: SpeedModel;
  readonly ground: Ground;
  readonly together: Together<Runner>;
  readonly runners: ReadonlyMap<RoleId, Runner>;
}

function timingOf(input: MoveInput): Timing {
  const { facts, assignments, level, spot, speeds = SPEED_MODELS[level] } = input;
  const men = new Map(assignments.map(({ aligned }) => [aligned.role.id, aligned]));
  const runners = new Map(
    assignments.flatMap((assignment): readonly (readonly [RoleId, Runner])[] => {
      const job = errandOf(assignment);
      return job === null ? [] : [[assignment.aligned.role.id, { aligned: assignment.aligned, job }]];
    }),
  );
  const all = [...runners.values()];
  const ground: Ground = {
    field: fieldAt(level, spot),
    gapX: (gap) => facts.gaps.find((each) => gapsEqual(each.gap, gap))?.x ?? null,
    manAt: (role) => men.get(role) ?? null,
    playerAt: (player) => facts.players.get(player) ?? null,
    passer: likelySpot(facts),
  };
  return { input, speeds, ground, together: { runners: all, lanes: lanesOf(all) }, runners };
}

/** The moves that are known on one ground: men have few jobs in a look, and many calls give them the same ones. */
const movesOn = remembered(
  (_facts: LookFacts, _speeds: SpeedModel, _level: RuleLevel, _spot: Place): Map<string, Move> => new Map(),
);

/** So many are kept at most; then it begins again. */
const MOST_MOVES = 1_000;

function standingOf({ role, x, y }: Aligned): string {
  return `${role.id} ${role.room} ${x} ${y}`;
}

/** A man's move from memory, if he has made it before: whatever his way refers to is in its name. */
function knownMoveOf(timing: Timing, assignment: PlayedMan): Move {
  const { input, speeds } = timing;
  const moves = movesOn(input.facts, speeds, input.level, input.spot);
  const name = nameOfMove(timing, assignment);
  const known = moves.get(name);
  if (known !== undefined) return known;
  if (moves.size >= MOST_MOVES) moves.clear();
  const made = moveOf(timing, assignment);
  moves.set(name, made);
  return made;
}

/** Where he stands, what he does, his lane in each of his gaps, his place among the quarters, where his neighbour stands. */
function nameOfMove({ runners, together, ground }: Timing, { aligned }: PlayedMan): string {
  const runner = runners.get(aligned.role.id);
  if (runner === undefined) return standingOf(aligned);
  const { job } = runner;
  const name = `${standingOf(aligned)} ${job.kind}`;
  switch (job.kind) {
    case 'rush':
    case 'contain': {
      const neighbour = job.track.kind === 'past' ? ground.manAt(job.track.neighbour) : null;
      const past = neighbour === null ? '' : `${neighbour.x} ${neighbour.y}`;
      const how = job.track.kind === 'past' ? job.track.how : '';
      return `${name} ${job.manner} ${lanesText(together, runner, job.gaps)} ${how} ${past}`;
    }
    case 'fit':
      return `${name} ${job.manner} ${lanesText(together, runner, job.gaps)}`;
    case 'drop':
      return `${name} ${job.zone} ${job.side} ${quarterRank(together.runners, runner)}`;
    case 'man':
      return `${name} ${job.receiver}`;
    case 'spy':
      return name;
  }
}

function lanesText({ lanes }: Together<Runner>, runner: Runner, gaps: readonly Gap[]): string {
  let text = '';
  for (const gap of gaps) text += `${gap.side} ${gap.letter} ${lanes(runner, gap)} `;
  return text;
}

function moveOf(timing: Timing, { aligned }: PlayedMan): Move {
  const { speeds, runners } = timing;
  const runner = runners.get(aligned.role.id);
  const full = speeds.rooms[aligned.role.room];
  const way = runner === undefined ? null : wayOf(timing, runner);
  const errand = way === null || runner === undefined ? 'stand' : runner.job.kind;
  const pace = errand === 'drop' ? dropping(full) : full;
  const starts = rounded(speeds.reaction + (errand === 'fit' ? READ_TIME : 0));
  const edge = way !== null && roundTheEdge(timing, way);
  const common = { role: aligned.role.id, errand, starts, edge, pace, estimate: true } as const;
  if (way === null) return { ...common, ...staying(aligned) };
  return { ...common, ...walk(way, { starts, pace, stretch: edge ? stretchOf(way) : 1 }) };
}

/** The one way he goes: of two gaps to play straight between them, of two to fit the first. Null: his job leads nowhere here. */
function wayOf({ ground, together }: Timing, runner: Runner): Way | null {
  const ways = waysOf(ground, together, runner);
  const [first] = ways;
  if (first === undefined) return null;
  const { job } = runner;
  if (job.kind === 'drop' || job.kind === 'man' || job.kind === 'spy' || job.manner !== 'two-gap') return first;
  const [start] = first.points;
  const ends = ways.flatMap(({ points }) => points.at(-1) ?? []);
  if (start === undefined || ends.length === 0) return first;
  const middle = ends.reduce((sum, { x }) => sum + x, 0) / ends.length;
  return { ...first, gap: null, points: [start, { x: middle, y: ends[0]?.y ?? 0 }] };
}

/** Whether he crosses the line outside the last man of the surface. */
function roundTheEdge({ input }: Timing, { gap, crossing }: Way): boolean {
  if (gap === null || crossing === null) return false;
  return input.facts.gaps.some((each) => gapsEqual(each.gap, gap) && each.outside === null);
}

function stretchOf(way: Way): number {
  const [start] = way.points;
  const end = way.points.at(-1);
  const length = lengthOf(way);
  if (start === undefined || end === undefined || length === 0) return 1;
  return Math.max(1, (EDGE_ARC * distance(start, end)) / length);
}
