import { gather, remembered } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import {
  arrival,
  BALL_SPEEDS,
  distance,
  errandOf,
  likelySpot,
  movesOfDraft,
  runTime,
  tenth,
  THROW_TIMES,
  type Move,
} from '../move/index.ts';
import type { LookFacts, PlayedMan, PlayerId, Point, Yards } from '../types/index.ts';
import type { RuleLevel, Zone } from '../vocabulary.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/** A rush whose way to the line is longer comes too late to count on. The limit is from memory; its reason is the source below. */
const FAR_RUSH: Yards = 10;

/**
 * A man who comes round the edge from the line starts where the receiver stands whom he leaves, and is there for the passer who
 * holds the ball: a published corner pressure has some 13 yd ("Blitz of the Week #3", Blitzology, 16 Mar 2010). How deep he may
 * stand and how far he may run are from memory.
 */
const UP_ON_THE_LINE: Yards = 3;
const FAR_ROUND_THE_EDGE: Yards = 13.5;

/** In his zone he breaks on the throw: so near to its middle is there (from memory). */
const NEAR_ENOUGH: Yards = 2;

/** How deep a receiver is, at most, when he catches a quick throw: 5 to 6 yd (common practice, no source). */
const QUICK_DEPTH: Yards = 6;

/** No quick throw goes so deep: a man in these has the time of a five-step throw. */
const DEEP: readonly Zone[] = ['middle', 'third', 'half', 'quarter'];

/** A man stands too far from his job for the time he has: a rush from depth, a zone or a receiver he cannot reach. */
export const alignReach = checkOfPlay({
  id: 'align.reach',
  title: 'A job too far from where he stands',
  severity: 'check',
  matters: 'He gets there, but the ball is gone.',
  source:
    'do not blitz from depth: "5 Tips for Developing a Blitz", MatchQuarters; ball speed: "Does Ball Velocity Tell Us Anything About QB Success?", rotoviz.com, 2016; throw times from memory; every time is an estimate',
  needsSide: true,
  report: (draft) => {
    const moves = movesOfDraft(draft);
    const tooFar = reachIn(draft.facts, draft.setup.level);
    return gather(draft.assignments, (assignment, index): readonly Report[] => {
      const move = moves[index];
      const found = move === undefined ? null : tooFar(move, assignment);
      return found === null ? [] : [found];
    });
  },
});

/** Whether a man who makes a move comes too late, in one look; many calls have him make it. */
const reachIn = remembered((facts: LookFacts, level: RuleLevel): ((move: Move, man: PlayedMan) => Report | null) => {
  const passer = likelySpot(facts);
  if (passer === null) return () => null;
  const knownOf = remembered((_man: PlayedMan): Map<Move, Report | null> => new Map<Move, Report | null>());
  return (move, man) => {
    const known = knownOf(man);
    let report = known.get(move);
    if (report === undefined) known.set(move, (report = tooFar({ facts, level, passer }, man, move)));
    return report;
  };
});

function tooFar(thrown: Thrown, man: PlayedMan, move: Move): Report | null {
  const job = errandOf(man);
  switch (job?.kind) {
    case 'rush':
    case 'contain':
      return rushTooFar(man, move, thrown.passer);
    case 'drop':
      return dropTooFar(thrown, man, move, job.zone);
    case 'man':
      return manTooFar(thrown, man, move, job.receiver);
    case 'fit':
    case 'spy':
    case undefined:
      return null;
  }
}

/** What a throw hangs on: where it comes from, and how fast it flies. */
interface Thrown {
  readonly facts: LookFacts;
  readonly level: RuleLevel;
  readonly passer: Point;
}

function rushTooFar({ aligned, run }: PlayedMan, move: Move, passer: Point): Report | null {
  const there = arrival(move, passer);
  const far = move.edge && aligned.y <= UP_ON_THE_LINE ? FAR_ROUND_THE_EDGE : FAR_RUSH;
  if (there === null || move.toGap === null || move.toGap <= far) return null;
  const who = aligned.role.id;
  return {
    because: because(
      '{who} has {yards} yd to run before he crosses the line',
      { who: datum.role(who), yards: datum.number(tenth(move.toGap)) },
      because(
        'by estimate he is at the passer {time} s after the snap, and a five-step throw is gone after {throw} s',
        {
          time: datum.number(tenth(there)),
          throw: datum.number(THROW_TIMES['five-step']),
        },
      ),
      aligned.because,
    ),
    who: [who],
    gaps: run.gaps,
  };
}

function dropTooFar(thrown: Thrown, { aligned }: PlayedMan, move: Move, zone: Zone): Report | null {
  const middle = move.path.at(-1);
  if (middle === undefined) return null;
  const ball = caught(thrown, middle, DEEP.includes(zone) ? 'five-step' : 'quick');
  const there = runTime(move, Math.max(0, move.length - NEAR_ENOUGH));
  if (tenth(there) <= tenth(ball)) return null;
  const who = aligned.role.id;
  return {
    because: because(
      '{who} is {yards} yd from the middle of his zone',
      { who: datum.role(who), yards: datum.number(tenth(move.length)) },
      because('by estimate he is within {near} yd of it {time} s after the snap, and a throw to it after {throw} s', {
        near: datum.number(NEAR_ENOUGH),
        time: datum.number(tenth(there)),
        throw: datum.number(tenth(ball)),
      }),
      aligned.because,
    ),
    who: [who],
  };
}

function manTooFar(thrown: Thrown, { aligned }: PlayedMan, move: Move, receiver: PlayerId): Report | null {
  const player = thrown.facts.players.get(receiver);
  if (player === undefined) return null;
  // He meets the receiver at his own depth if he can; a quick throw is caught no deeper than this.
  const meets = { x: player.x, y: Math.min(QUICK_DEPTH, aligned.y) };
  const yards = distance(aligned, meets);
  const there = runTime(move, yards);
  const ball = caught(thrown, meets, 'quick');
  if (tenth(there) <= tenth(ball)) return null;
  const who = aligned.role.id;
  return {
    because: because(
      '{who} is {yards} yd from where he meets {player}',
      { who: datum.role(who), yards: datum.number(tenth(yards)), player: datum.player(receiver) },
      because('by estimate he is there {time} s after the snap, and a quick throw after {throw} s', {
        time: datum.number(tenth(there)),
        throw: datum.number(tenth(ball)),
      }),
      fact('he covers the receiver man to man from the snap on'),
    ),
    who: [who],
    players: [receiver],
  };
}

/** Seconds after the snap when a throw of that kind is caught there. */
function caught({ passer, level }: Thrown, at: Point, time: 'quick' | 'five-step'): number {
  return THROW_TIMES[time] + distance(passer, at) / BALL_SPEEDS[level];
}
