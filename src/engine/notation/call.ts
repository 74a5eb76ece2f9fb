import { ok, refused, type Result } from '../../base/index.ts';
import { asFrontId, asPressureId, type FrontId, type PressureId } from '../types/index.ts';
import { PLACES, TURNS, type Place, type Turn } from '../vocabulary.ts';
import { wordOf, type NotationProblem } from './problem.ts';

/** A call in one line, by the ids of a playbook. */
export interface CallLine {
  readonly front: FrontId;
  readonly first: PressureId;
  readonly second: PressureId | null;
  readonly turn: Turn;
  readonly spot: Place;
}

const LINE = /^(\S+): (\S+)(?: \+ (\S+) (\S+))? @(\S+)$/;

/** Reads `odd: hammer + anvil opposite @left`: front, first pressure, second with its turn, ball spot. */
export function parseCallLine(text: string): Result<CallLine, NotationProblem> {
  const [, front, first, second, turnWord, spotWord] = LINE.exec(text) ?? [];
  if (front === undefined || first === undefined || spotWord === undefined) {
    return refused({ found: text, expected: 'front: first + second turn @spot' });
  }
  const spot = wordOf(PLACES, spotWord);
  if (spot === null) return refused({ found: spotWord, expected: PLACES.join(', ') });
  const turn = turnWord === undefined ? 'own' : wordOf(TURNS, turnWord);
  if (turn === null) return refused({ found: turnWord ?? '', expected: TURNS.join(', ') });
  return ok({
    front: asFrontId(front),
    first: asPressureId(first),
    second: second === undefined ? null : asPressureId(second),
    turn,
    spot,
  });
}

/** The line of a call; `parseCallLine` reads it back. */
export function printCallLine(line: CallLine): string {
  const second = line.second === null ? '' : ` + ${line.second} ${line.turn}`;
  return `${line.front}: ${line.first}${second} @${line.spot}`;
}
