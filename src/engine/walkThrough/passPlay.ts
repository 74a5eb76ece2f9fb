import { compareBy, gather } from '../../base/index.ts';
import { arrival } from '../move/arrival.ts';
import { toward } from '../move/geometry/points.ts';
import { dropping, runIn } from '../move/speed.ts';
import { likelySpot, THROW_TIMES } from '../move/throws.ts';
import type { Move, Stamp } from '../move/types.ts';
import { rounded } from '../move/walk.ts';
import type { Analysis, Block, PlayerId, Point, ProtectionPicture, RoleId } from '../types/index.ts';
import { offencePace, type PlayTracks } from './play.ts';
import { AT_ARMS_LENGTH, cutAt, meetingOf, shortOf, through, type Meeting } from './tracks.ts';
import type { Against, Moment } from './types.ts';

/** A pass: the passer drops, blockers meet their rushers and hold them, and whoever comes free is at the passer. */
export function passPlay(analysis: Analysis, against: Against, moves: readonly Move[]): PlayTracks {
  const spot = likelySpot(analysis.facts);
  const dropped = dropTrack(analysis, spot);
  const answer = against.kind === 'protection' ? analysis.protections[against.index] : undefined;
  if (answer?.kind !== 'answered') {
    const moments = spot === null ? [] : firstThere(moves, spot);
    return { defence: shortOfPasser(moves, spot), offence: dropped, moments };
  }
  const { picture } = answer;
  const met = gather(picture.blocks, (block) => metBy(analysis, block, moves));
  const free = spot === null ? [] : freeOf(picture, moves, spot);
  const thrown = picture.hot === null ? THROW_TIMES['five-step'] : THROW_TIMES.quick;
  return {
    defence: new Map<RoleId, readonly Stamp[]>([
      ...shortOfPasser(moves, spot),
      ...met.map(({ block, held }) => [block.rusher, held] as const),
      ...free.map(({ move, path }) => [move.role, path] as const),
    ]),
    offence: new Map<PlayerId, readonly Stamp[]>([
      ...dropped,
      ...met.map(({ block, path }) => [block.blocker, path] as const),
    ]),
    moments: [
      ...met.map(({ block, meeting }): Moment => ({ kind: 'meets', t: meeting.t, ...namesOf(block) })),
      ...free.map(({ move, t }): Moment => ({ kind: 'at-passer', t, role: move.role, free: true, thrown: t > thrown })),
      { kind: 'thrown', t: thrown, hot: picture.hot?.side ?? null },
    ],
  };
}

/** Rushers stop before they run into the passer. */
function shortOfPasser(moves: readonly Move[], spot: Point | null): PlayTracks['defence'] {
  if (spot === null) return new Map();
  const rushers = moves.filter(({ errand }) => errand === 'rush' || errand === 'contain');
  return new Map(rushers.map(({ role, path }) => [role, shortOf(path, spot)]));
}

function namesOf({ blocker, rusher }: Block): Pick<Block, 'blocker' | 'rusher'> {
  return { blocker, rusher };
}

/** The passer goes back to where he throws from, at the pace of a man who drops. */
function dropTrack(analysis: Analysis, spot: Point | null): ReadonlyMap<PlayerId, readonly Stamp[]> {
  const { passer, players } = analysis.facts;
  const man = passer === null ? undefined : players.get(passer);
  if (man === undefined || spot === null) return new Map();
  const from = { x: man.x, y: man.y };
  return new Map([[man.id, through([from, spot], dropping(offencePace(analysis, man)))]]);
}

/** Where no protection is told: the first who would be at the passer if nobody blocked him. */
function firstThere(moves: readonly Move[], spot: Point): readonly Moment[] {
  const [first] = gather(moves, (move) => {
    const t = arrival(move, spot);
    return t === null ? [] : [{ role: move.role, t }];
  }).toSorted(compareBy(({ t }) => t));
  return first === undefined ? [] : [{ kind: 'at-passer', ...first, free: false, thrown: false }];
}

interface Met {
  readonly block: Block;
  readonly meeting: Meeting;
  /** The rusher's path, as far as he comes. */
  readonly held: readonly Stamp[];
  /** The blocker's. */
  readonly path: readonly Stamp[];
}

function metBy(analysis: Analysis, block: Block, moves: readonly Move[]): readonly Met[] {
  const man = analysis.facts.players.get(block.blocker);
  const move = moves.find(({ role }) => role === block.rusher);
  if (man === undefined || move === undefined) return [];
  const pace = offencePace(analysis, man);
  const from = { x: man.x, y: man.y };
  const meeting = meetingOf(move, from, (t) => runIn(pace, t));
  if (meeting === null) return [];
  return [{ block, meeting, held: cutAt(move.path, meeting.t), path: through([from, meeting.blocker], pace) }];
}

interface Free {
  readonly move: Move;
  readonly t: number;
  readonly path: readonly Stamp[];
}

/** Whom nobody blocks, on his way from his gap to the passer: he is there when the engine says so everywhere else. */
function freeOf({ unblocked }: ProtectionPicture, moves: readonly Move[], spot: Point): readonly Free[] {
  return gather(unblocked, ({ rusher }) => {
    const move = moves.find(({ role }) => role === rusher);
    const t = move === undefined ? null : arrival(move, spot);
    if (move === undefined || t === null) return [];
    const before = move.gapAt === null ? move.path.slice(0, 1) : cutAt(move.path, move.gapAt);
    const way = before.filter((stamp) => stamp.t < t);
    const { x, y } = toward(spot, way.at(-1) ?? spot, AT_ARMS_LENGTH);
    return [{ move, t, path: [...way, { x: rounded(x), y: rounded(y), t }] }];
  });
}
