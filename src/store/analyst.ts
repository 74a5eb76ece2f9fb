import { refused, type Result } from '../base/index.ts';
import { toSetup, type Playbook } from '../document/index.ts';
import { analyse, asCallId, type Analysis, type Call, type LookId } from '../engine/index.ts';
import { moveMan } from './moves.ts';
import type { AppState, Board, Standing } from './types.ts';

/** Why there is nothing to analyse: the playbook lacks something. */
export interface NothingToShow {
  readonly missing: 'look' | 'front' | 'pressure' | 'coverage';
}

/**
 * Answers for boards, remembered: an answer is worked out again only when something it depends on is another object than
 * before (the call's parts, the look, the men set by hand in it, the ball spot).
 */
export interface Analyst {
  /** The board as it is shown, with the man who is being dragged where the pointer holds him. */
  readonly onBoard: (state: AppState) => Result<Analysis, NothingToShow>;
  /** The call of the board in another look. */
  readonly inLook: (state: AppState, look: LookId) => Result<Analysis, NothingToShow>;
  /** The same, if it is still known; null when it would have to be worked out. */
  readonly known: (state: AppState, look: LookId) => Analysis | null;
}

interface Memory {
  readonly parts: readonly unknown[];
  readonly analysis: Analysis;
}

/** An analyst that has seen nothing yet. */
export function createAnalyst(): Analyst {
  const memory = new Map<LookId, Memory>();
  const shown = rememberLast(playbookShown);

  const recall = (playbook: Playbook, board: Board, look: LookId): Analysis | null => {
    const known = memory.get(look);
    return known !== undefined && sameList(known.parts, partsOf(playbook, board, look)) ? known.analysis : null;
  };

  const inLook = (state: AppState, look: LookId): Result<Analysis, NothingToShow> => {
    const playbook = shown(state);
    const known = recall(playbook, state.board, look);
    if (known !== null) return { ok: true, value: known };
    const call = callOf(state.board);
    if (!call.ok) return call;
    const setup = toSetup(playbook, { call: call.value, look, spot: state.board.spot });
    if (!setup.ok) return refused({ missing: 'coverage' });
    const analysis = analyse(setup.value);
    memory.set(look, { parts: partsOf(playbook, state.board, look), analysis });
    return { ok: true, value: analysis };
  };

  return {
    inLook,
    onBoard: (state) => (state.board.look === null ? refused({ missing: 'look' }) : inLook(state, state.board.look)),
    known: (state, look) => recall(shown(state), state.board, look),
  };
}

/** Where the 22 of an analysis stand: the eleven of the defence in its order, then the offence as drawn. */
export function standings({ assignments, setup }: Analysis): readonly Standing[] {
  return [
    ...assignments.map(({ aligned }): Standing => ({
      man: { kind: 'defender', role: aligned.role.id },
      at: { x: aligned.x, y: aligned.y },
    })),
    ...setup.look.players.map(({ id, x, y }): Standing => ({ man: { kind: 'offence', player: id }, at: { x, y } })),
  ];
}

/** The playbook with the man who is being dragged already there. */
function playbookShown({ playbook, board, preview }: AppState): Playbook {
  if (preview === null) return playbook;
  const moved = moveMan(playbook, board, preview.man, preview.at);
  // What cannot be put there is not shown there either.
  return moved.ok ? moved.value : playbook;
}

/** A function of the parts of the state a preview depends on, that remembers its last answer. */
function rememberLast(work: (state: AppState) => Playbook): (state: AppState) => Playbook {
  let last: { readonly parts: readonly unknown[]; readonly value: Playbook } | null = null;
  return (state) => {
    const parts = [state.playbook, state.preview, state.board.look, state.board.front, state.board.spot];
    if (last !== null && sameList(last.parts, parts)) return last.value;
    last = { parts, value: work(state) };
    return last.value;
  };
}

function callOf({ front, first, second, turn, coverage }: Board): Result<Call, NothingToShow> {
  if (front === null) return refused({ missing: 'front' });
  if (first === null) return refused({ missing: 'pressure' });
  return { ok: true, value: { id: ON_BOARD, name: '', kind: 'together', front, first, second, turn, coverage } };
}

/** What is on the board need not be a kept call; the engine never looks at the id. */
const ON_BOARD = asCallId('on-board');

/** Everything an answer depends on, by identity: commands keep whatever they do not change. */
function partsOf(playbook: Playbook, board: Board, look: LookId): readonly unknown[] {
  const front = playbook.fronts.find(({ id }) => id === board.front);
  const first = playbook.pressures.find(({ id }) => id === board.first);
  return [
    playbook.team.level,
    playbook.roles,
    front?.roles,
    playbook.looks.find(({ id }) => id === look),
    first,
    playbook.pressures.find(({ id }) => id === board.second),
    board.turn,
    playbook.coverages.find(({ id }) => id === (board.coverage ?? first?.coverage)),
    board.spot,
    ...(front?.byHand.filter((hand) => hand.look === look) ?? []),
  ];
}

function sameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, index) => part === b[index]);
}
