import type { Playbook } from '../document/index.ts';
import type { Call, Combination, Look, LookTest } from '../engine/index.ts';
import type { AppState, Board, CallParts } from './types.ts';

/** The board a playbook opens on: its first call, in its first look, the ball in the middle. */
export function firstBoard(playbook: Playbook): Board {
  const [call] = playbook.calls;
  const empty: Board = {
    look: null,
    spot: 'middle',
    front: null,
    first: null,
    second: null,
    turn: 'own',
    combination: { kind: 'together' },
    coverage: null,
    rushers: null,
    call: null,
  };
  return fitBoard(playbook, call === undefined ? empty : standInCall(empty, call));
}

/** The looks the coach wants to see: one opponent's, or all. */
export function looksShown({
  playbook,
  view,
}: {
  readonly playbook: Playbook;
  readonly view: Pick<AppState['view'], 'opponent'>;
}): readonly Look[] {
  const opponent = playbook.opponents.find(({ id }) => id === view.opponent);
  return opponent === undefined ? playbook.looks : playbook.looks.filter(({ id }) => opponent.looks.includes(id));
}

/** The same board, every part that is not (or no longer) in the playbook replaced by one that is. */
export function fitBoard(playbook: Playbook, board: Board): Board {
  return {
    ...board,
    look: present(playbook.looks, board.look) ?? first(playbook.looks),
    front: present(playbook.fronts, board.front) ?? first(playbook.fronts),
    first: present(playbook.pressures, board.first) ?? first(playbook.pressures),
    second: present(playbook.pressures, board.second),
    coverage: present(playbook.coverages, board.coverage),
    call: present(playbook.calls, board.call),
  };
}

/** The board with that kept call on it; look and spot stay. */
export function standInCall(board: Board, call: Call): Board {
  return { ...board, ...partsOf(call), call: call.id };
}

/** A board that showed a kept call as it was kept goes on showing it as it is kept now; any other board stays. */
export function followCall(board: Board, before: Playbook, after: Playbook): Board {
  const was = before.calls.find(({ id }) => id === board.call);
  const is = after.calls.find(({ id }) => id === board.call);
  return was !== undefined && is !== undefined && sameParts(was, board) ? standInCall(board, is) : board;
}

/** What is called, of a board or of a kept call. */
export function partsOf({ front, first, second, turn, combination, coverage, rushers }: CallParts): CallParts {
  return { front, first, second, turn, combination, coverage, rushers };
}

/** Whether two calls are the same call. How the second is turned and joined says nothing when there is no second. */
export function sameParts(a: CallParts, b: CallParts): boolean {
  return (
    a.front === b.front &&
    a.first === b.first &&
    a.second === b.second &&
    (a.second === null || (a.turn === b.turn && sameCombination(a.combination, b.combination))) &&
    a.coverage === b.coverage &&
    a.rushers === b.rushers
  );
}

/** Whether two pressures are joined alike: both at once, or by the same key. */
export function sameCombination(a: Combination, b: Combination): boolean {
  if (a.kind === 'together' || b.kind === 'together') return a.kind === b.kind;
  return a.key.length === b.key.length && a.key.every((test, index) => testText(test) === testText(b.key[index]));
}

/** A condition as a text that is the same for the same condition, in whatever order its parts were written. */
function testText(test: LookTest | undefined): string {
  return Object.entries(test ?? {})
    .map(([part, value]) => `${part} ${value}`)
    .sort()
    .join(', ');
}

function present<Id extends string>(list: readonly { readonly id: Id }[], id: Id | null): Id | null {
  return id !== null && list.some((entry) => entry.id === id) ? id : null;
}

function first<Id extends string>(list: readonly { readonly id: Id }[]): Id | null {
  return list[0]?.id ?? null;
}
