import { compareBy, gather } from '../../base/index.ts';
import { gapsEqual } from '../gaps.ts';
import { errandOf } from '../move/errands.ts';
import { movesOfDraft } from '../move/draftMoves.ts';
import { tenth } from '../move/estimate.ts';
import { movesOf } from '../move/moves.ts';
import { likelySpot } from '../move/throws.ts';
import type { Move } from '../move/types.ts';
import type { Analysis, Assignment, Gap } from '../types/index.ts';
import { againstRun } from './againstRun.ts';
import { passPlay } from './passPlay.ts';
import type { PlayTracks } from './play.ts';
import { runPlay } from './runPlay.ts';
import { cutAt, endOf } from './tracks.ts';
import type { Against, GapFill, Moment, WalkThrough } from './types.ts';

/** It goes on so long after the last moment, and takes at least so long, in whole halves of a second. */
const AFTER = 0.4;
const AT_LEAST = 3;

/**
 * The snap of one analysis, walked through: the defence along its moves, the offence by the run or protection that is asked for
 * and by nothing else. Against a run a rusher stops in his gap, and who owns no gap stays; in a protection a blocked rusher is
 * held where his blocker meets him. What happens is told to a tenth of a second, which is as good as the estimate is. A play that cannot be had from this look is walked as a pass.
 */
export function walkThrough(analysis: Analysis, asked: Against): WalkThrough {
  const { assignments, setup, facts } = analysis;
  const against = answerable(analysis, asked);
  const men = against.kind === 'run' ? againstRun(assignments) : assignments;
  const moves =
    against.kind === 'run'
      ? movesOf({ facts, assignments: men, level: setup.level, spot: setup.spot })
      : movesOfDraft(analysis);
  const exact = gather(men, (man, index) => fillsOf(analysis, man, moves[index]));
  const play = against.kind === 'run' ? runPlay(analysis, against, moves, exact) : passPlay(analysis, against, moves);
  const fills = exact.map((fill) => ({ ...fill, t: tenth(fill.t) }));
  const moments = [...fillMoments(exact), ...play.moments]
    .toSorted(compareBy(({ t }) => t))
    .map((moment) => ({ ...moment, t: tenth(moment.t) }));
  const last = Math.max(AT_LEAST, ...moments.map(({ t }) => t + AFTER));
  return {
    against,
    defence: moves.map((move) => ({ role: move.role, path: play.defence.get(move.role) ?? pathOf(move, against) })),
    offence: offenceOf(analysis, play),
    throwsFrom: against.kind === 'run' ? null : likelySpot(facts),
    fills,
    unfilled: analysis.gaps
      .filter(({ gap, owners }) => owners.length > 0 && !fills.some((fill) => gapsEqual(fill.gap, gap)))
      .map(({ gap, owners }) => ({ gap, owners: owners.map(({ role }) => role) })),
    inDoubt: assignments.filter(({ combined }) => combined.status === 'conflict').map(({ aligned }) => aligned.role.id),
    moments,
    seconds: Math.ceil(last * 2) / 2,
  };
}

/** What is asked for, if this look can have it. */
function answerable({ runs, protections }: Analysis, asked: Against): Against {
  if (asked.kind === 'pass') return asked;
  const answer = asked.kind === 'run' ? runs[asked.index] : protections[asked.index];
  return answer?.kind === 'answered' ? asked : { kind: 'pass' };
}

/** Against a run nobody goes on to the passer. */
function pathOf(move: Move, against: Against): Move['path'] {
  return against.kind === 'run' && move.gapAt !== null ? cutAt(move.path, move.gapAt) : move.path;
}

function offenceOf({ facts }: Analysis, play: PlayTracks): WalkThrough['offence'] {
  return [...facts.players.values()].map(({ id, x, y }) => ({
    player: id,
    path: play.offence.get(id) ?? [{ x, y, t: 0 }],
  }));
}

/** When a man is in which of the gaps that are his. */
function fillsOf({ gaps }: Analysis, man: Assignment, move: Move | undefined): readonly GapFill[] {
  const job = errandOf(man);
  if (move === undefined || (job?.kind !== 'rush' && job?.kind !== 'contain' && job?.kind !== 'fit')) return [];
  const { role } = move;
  const led: readonly Gap[] = job.manner === 'two-gap' ? job.gaps : job.gaps.slice(0, 1);
  return led
    .filter((gap) =>
      gaps.some((owned) => gapsEqual(owned.gap, gap) && owned.owners.some((owner) => owner.role === role)),
    )
    .map((gap) => ({ role, gap, t: move.gapAt ?? endOf(move.path) }));
}

/** One moment for a man, whether he is then in one gap or plays two. */
function fillMoments(fills: readonly GapFill[]): readonly Moment[] {
  const roles = [...new Set(fills.map(({ role }) => role))];
  return gather(roles, (role): readonly Moment[] => {
    const his = fills.filter((fill) => fill.role === role);
    const [first] = his;
    return first === undefined ? [] : [{ kind: 'in-gap', t: first.t, role, gaps: his.map(({ gap }) => gap) }];
  });
}
