import { ok, refused, type Result } from '../base/index.ts';
import type { Playbook } from '../document/index.ts';
import { fieldAt, type Point } from '../engine/index.ts';
import { moveDefender } from './commands/defence.ts';
import { moveOffence } from './commands/offence.ts';
import { keptPoint } from './commands/points.ts';
import type { CommandProblem } from './problems.ts';
import { setupOf } from './question.ts';
import type { AppState, Board, Man, Preview, Standing } from './types.ts';

/** Where the ball lies between the end lines does not matter; nobody is drawn farther off the ball than this, in yards. */
const DEEPEST = 40;

/** Stands several of the 22 somewhere, as one change; refused when one of them is. */
export function moveMen(
  playbook: Playbook,
  board: Board,
  moves: readonly Standing[],
): Result<Playbook, CommandProblem> {
  return moves.reduce<Result<Playbook, CommandProblem>>(
    (done, { man, at }) => (done.ok ? moveMan(done.value, board, man, at) : done),
    ok(playbook),
  );
}

/** Stands one of the 22 somewhere in the look that is on the board; a defender by hand, for this look only. */
export function moveMan(playbook: Playbook, board: Board, man: Man, at: Point): Result<Playbook, CommandProblem> {
  const { look, spot } = board;
  if (look === null) return refused({ kind: 'not-there', what: 'look' });
  const kept = onHisSide(playbook, spot, man, at);
  if (man.kind === 'offence') return moveOffence(playbook, { look, player: man.player, at: kept });
  // The call may be checked out of here, into one with another front: he is moved in the one he stands in.
  const setup = setupOf(playbook, board, look);
  if (!setup.ok) return refused({ kind: 'not-there', what: 'front' });
  return moveDefender(playbook, { front: setup.value.front.id, look, role: man.role, at: kept });
}

/** The men who are being dragged, each where he would stand if he were let go now; null: nobody is dragged. */
export function heldMen({ playbook, board, preview }: AppState): Preview | null {
  return preview?.map(({ man, at }) => ({ man, at: keptPoint(onHisSide(playbook, board.spot, man, at)) })) ?? null;
}

/** The nearest point between the sidelines and on his side of the ball. */
function onHisSide(playbook: Playbook, spot: Board['spot'], man: Man, at: Point): Point {
  const { leftSideline, rightSideline } = fieldAt(playbook.team.level, spot);
  const x = Math.min(Math.max(at.x, leftSideline), rightSideline);
  const depth = Math.min(Math.max(man.kind === 'defender' ? at.y : -at.y, 0), DEEPEST);
  return { x, y: man.kind === 'defender' ? depth : -depth };
}
