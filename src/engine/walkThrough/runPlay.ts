import { gather } from '../../base/index.ts';
import { signOf } from '../facts/surface.ts';
import { gapsEqual } from '../gaps.ts';
import { READ_TIME, SPEED_MODELS } from '../move/speed.ts';
import type { Move, Stamp } from '../move/types.ts';
import { rounded } from '../move/walk.ts';
import type { Analysis, FloatingGap, Gap, OffencePlayer, PlayerId, Point, RoleId, Yards } from '../types/index.ts';
import { openedFor, type AnsweredRun } from './againstRun.ts';
import { offencePace, type PlayTracks } from './play.ts';
import { endOf, through } from './tracks.ts';
import type { Against, GapFill, Moment } from './types.ts';

/** Where a run meets the defence, and where a man who pulls or leads, and who fits what he opens, end. */
const AT_THE_LINE: Yards = 0;
const BEHIND_IT: Yards = -0.3;

/** A lineman who pulls first steps back so far and so far along (common practice, no source for the yards). */
const PULL: { readonly back: Yards; readonly along: Yards } = { back: 1, along: 0.5 };

/** A pitch is taken so far outside its gap: as it is drawn. */
const PITCH_WIDTH: Yards = 1.4;

/** A run by rule: the carrier, whoever may keep it or be pitched to, whoever pulls and leads, and who fits what they open. */
export function runPlay(
  analysis: Analysis,
  against: Extract<Against, { kind: 'run' }>,
  moves: readonly Move[],
  fills: readonly GapFill[],
): PlayTracks {
  const answer = analysis.runs[against.index];
  if (answer?.kind !== 'answered') return { defence: new Map(), offence: new Map(), moments: [] };
  const ball = ballTracks(analysis, answer);
  const opens = openTracks(analysis, answer);
  const fitters = gather(moves, (move) => fitTrack(analysis, answer, move));
  const carried = ball.find(({ carries }) => carries);
  return {
    defence: new Map(fitters.map(({ role, path }) => [role, path])),
    offence: new Map<PlayerId, readonly Stamp[]>([...ball, ...opens].map(({ player, path }) => [player, path])),
    moments: [
      ...opens.map(({ player, path, near }): Moment => ({ kind: 'opens', t: endOf(path), player, near })),
      ...fitters.map(({ path, ...fit }): Moment => ({ kind: 'fits-opened', t: endOf(path), ...fit })),
      ...(carried === undefined ? [] : [ballAt(analysis, answer, carried, fills)]),
    ],
  };
}

interface BallTrack {
  readonly player: PlayerId;
  readonly path: readonly Stamp[];
  /** He has it by rule; the others may have it. */
  readonly carries: boolean;
}

/** Who goes where with the ball or for it. Where the carrier is the man who may be pitched to, the passer carries it first. */
function ballTracks(analysis: Analysis, { picture }: AnsweredRun): readonly BallTrack[] {
  const { carrier, aim, keeper, pitch, side } = picture;
  const track = (player: PlayerId, gap: Gap, beyond: Yards, carries: boolean): readonly BallTrack[] => {
    const man = analysis.facts.players.get(player);
    const x = gapX(analysis, gap);
    if (man === undefined || x === null) return [];
    const end = { x: x + signOf(side) * beyond, y: AT_THE_LINE };
    return [{ player, path: through([pointOf(man), end], offencePace(analysis, man)), carries }];
  };
  const pitched = pitch === null ? [] : track(pitch.player, pitch.where, PITCH_WIDTH, false);
  if (keeper !== null && pitch?.player === carrier) return [...track(keeper.player, aim, 0, true), ...pitched];
  const kept = keeper === null || keeper.player === carrier ? [] : track(keeper.player, keeper.where, 0, false);
  return [...track(carrier, aim, 0, true), ...kept, ...pitched];
}

interface OpenTrack {
  readonly player: PlayerId;
  readonly path: readonly Stamp[];
  readonly near: Gap;
}

function openTracks(analysis: Analysis, { picture }: AnsweredRun): readonly OpenTrack[] {
  const made = picture.floating.filter(({ kind }) => kind === 'puller' || kind === 'lead');
  return gather(made, (floating): readonly OpenTrack[] => {
    const man = analysis.facts.players.get(floating.player);
    if (man === undefined) return [];
    const path = through(pullPoints(man, floating), offencePace(analysis, man));
    return [{ player: man.id, path, near: floating.near }];
  });
}

/** A lineman steps back before he goes along the line; a back goes straight. */
function pullPoints(man: OffencePlayer, { x }: FloatingGap): readonly Point[] {
  const from = pointOf(man);
  const end = { x, y: BEHIND_IT };
  if (from.y <= -PULL.back) return [from, end];
  return [from, { x: from.x + Math.sign(x - from.x) * PULL.along, y: from.y - PULL.back }, end];
}

interface FitTrack {
  readonly role: RoleId;
  readonly player: PlayerId;
  readonly near: Gap;
  readonly path: readonly Stamp[];
}

/** The man who has no gap of his own goes to the one that opens, once he has read it. */
function fitTrack({ setup }: Analysis, answer: AnsweredRun, { role, path, pace }: Move): readonly FitTrack[] {
  const fit = openedFor(answer, role);
  const [start] = path;
  if (fit === null || start === undefined) return [];
  const starts = rounded(SPEED_MODELS[setup.level].reaction + READ_TIME);
  const { x, near, player } = fit.floating;
  return [
    {
      role,
      player,
      near,
      path: through(
        [
          { x: start.x, y: start.y },
          { x, y: BEHIND_IT },
        ],
        pace,
        starts,
      ),
    },
  ];
}

function ballAt(
  { gaps }: Analysis,
  { picture: { aim } }: AnsweredRun,
  { player, path }: BallTrack,
  fills: readonly GapFill[],
): Moment {
  const t = endOf(path);
  const owners = gaps.find((owned) => gapsEqual(owned.gap, aim))?.owners ?? [];
  const there = owners
    .map(({ role }) => role)
    .filter((role) => fills.some((fill) => fill.role === role && gapsEqual(fill.gap, aim) && fill.t <= t));
  return { kind: 'ball-at', t, player, gap: aim, there };
}

function gapX({ gaps }: Analysis, gap: Gap): Yards | null {
  return gaps.find((owned) => gapsEqual(owned.gap, gap))?.x ?? null;
}

function pointOf({ x, y }: Point): Point {
  return { x, y };
}
