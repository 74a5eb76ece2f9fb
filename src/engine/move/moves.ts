import { gather, remembered } from '../../base/index.ts';
import { fieldAt } from '../facts/field.ts';
import { gapKey, gapsEqual } from '../gaps.ts';
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
  const moves = input.assignments.map((man) => knownMoveOf(timing, man, runnerOf(man)));
  const turns = turnsOf(input.assignments);
  if (turns.length === 0) return moves;
  const byRole = new Map(moves.map((move) => [move.role, move]));
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
  const firsts = gather(mine, ({ first }) => {
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

/** The same move, begun later; whomever he waits for, he waits one of few times. */
const later = remembered((move: Move, hold: number): Move => {
  if (hold === 0) return move;
  const [start, ...rest] = move.path;
  if (start === undefined) return move;
  return {
    ...move,
    path: [start, ...rest.map((stamp) => ({ ...stamp, t: rounded(stamp.t + hold) }))],
    starts: rounded(move.starts + hold),
    gapAt: move.gapAt === null ? null : rounded(move.gapAt + hold),
  };
});

/** What the moves of one picture share. */
interface Timing {
  readonly input: MoveInput;
  readonly speeds: SpeedModel;
  readonly ground: Ground;
  readonly together: Together<Runner>;
  readonly known: KnownMoves;
}

function timingOf(input: MoveInput): Timing {
  const { facts, assignments, level, spot, speeds = SPEED_MODELS[level] } = input;
  const runners = gather(assignments, (assignment) => runnerOf(assignment) ?? []);
  const manAt = (role: RoleId): Aligned | null =>
    assignments.find(({ aligned }) => aligned.role.id === role)?.aligned ?? null;
  return {
    input,
    speeds,
    ground: { ...groundOf(facts, level, spot), manAt },
    together: { runners, lanes: lanesOf(runners) },
    known: movesOn(facts, speeds, level, spot),
  };
}

/** A man with something to do once the ball is snapped; null: he has nothing to do. */
const runnerOf = remembered((man: PlayedMan): Runner | null => {
  const job = errandOf(man);
  return job === null ? null : { aligned: man.aligned, job };
});

/** As much of the ground as is the same for every call. */
const groundOf = remembered((facts: LookFacts, level: RuleLevel, spot: Place): Omit<Ground, 'manAt'> => ({
  field: fieldAt(level, spot),
  gapX: (gap) => facts.gaps.find((each) => gapsEqual(each.gap, gap))?.x ?? null,
  playerAt: (player) => facts.players.get(player) ?? null,
  passer: likelySpot(facts),
}));

/**
 * The moves that are known on one ground: men have few jobs in a look, and many calls give them the same ones. By the man, and
 * what his way hangs on besides him; and by the name of all that, for a man who is another object with the same job.
 */
interface KnownMoves {
  readonly byMan: WeakMap<PlayedMan, Map<string, Move>>;
  readonly byName: Map<string, Move>;
}

const movesOn = remembered((_facts: LookFacts, _speeds: SpeedModel, _level: RuleLevel, _spot: Place): KnownMoves => ({
  byMan: new WeakMap(),
  byName: new Map(),
}));

/** So many are kept by name at most; then it begins again. */
const MOST_MOVES = 1_000;

/** A man's move from memory, if he has made it before. */
function knownMoveOf(timing: Timing, man: PlayedMan, runner: Runner | null): Move {
  const { byMan, byName } = timing.known;
  const others = runner === null ? '' : othersInHisWay(timing, runner);
  const mine = byMan.get(man);
  const same = mine?.get(others);
  if (same !== undefined) return same;
  const name = `${nameOf(man)} ${others}`;
  const move = byName.get(name) ?? moveOf(timing, man);
  if (byName.size >= MOST_MOVES) byName.clear();
  byName.set(name, move);
  if (mine === undefined) byMan.set(man, new Map([[others, move]]));
  else mine.set(others, move);
  return move;
}

/** What a man's way hangs on besides him: his lane in each of his gaps, his place among the quarters, where his neighbour is. */
function othersInHisWay({ together, ground }: Timing, runner: Runner): string {
  const { job } = runner;
  switch (job.kind) {
    case 'rush':
    case 'contain': {
      const neighbour = job.track.kind === 'past' ? ground.manAt(job.track.neighbour) : null;
      const lanes = lanesText(together, runner, job.gaps);
      return neighbour === null ? lanes : `${lanes} ${neighbour.x} ${neighbour.y}`;
    }
    case 'fit':
      return lanesText(together, runner, job.gaps);
    case 'drop':
      return job.zone === 'quarter' ? String(quarterRank(together.runners, runner)) : '';
    case 'man':
    case 'spy':
      return '';
  }
}

/** A man's lanes in his gaps; most men have theirs to themselves. */
function lanesText({ lanes }: Together<Runner>, runner: Runner, gaps: readonly Gap[]): string {
  let text = '';
  for (const gap of gaps) {
    const lane = lanes(runner, gap);
    text += lane === 0 ? '.' : `${lane} `;
  }
  return text;
}

/** All of a man that his way hangs on: where he stands and what he does. */
const nameOf = remembered((man: PlayedMan): string => {
  const { role, x, y } = man.aligned;
  const stands = `${role.id} ${role.room} ${x} ${y}`;
  const runner = runnerOf(man);
  if (runner === null) return stands;
  const { job } = runner;
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return `${stands} ${job.kind} ${job.manner} ${job.gaps.map(gapKey).join()} ${job.track.kind === 'past' ? job.track.how : ''}`;
    case 'fit':
      return `${stands} ${job.kind} ${job.manner} ${job.gaps.map(gapKey).join()}`;
    case 'drop':
      return `${stands} ${job.kind} ${job.zone} ${job.side}`;
    case 'man':
      return `${stands} ${job.kind} ${job.receiver}`;
    case 'spy':
      return `${stands} ${job.kind}`;
  }
});

function moveOf(timing: Timing, man: PlayedMan): Move {
  const { speeds } = timing;
  const { aligned } = man;
  const runner = runnerOf(man);
  const full = speeds.rooms[aligned.role.room];
  const way = runner === null ? null : wayOf(timing, runner);
  const errand = way === null || runner === null ? 'stand' : runner.job.kind;
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
  const ends = gather(ways, ({ points }) => points.at(-1) ?? []);
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
