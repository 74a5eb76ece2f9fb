import { ok, refused, type Result } from '../base/index.ts';
import type { Playbook } from '../document/index.ts';
import { analyse, applyEdit, type Analysis, type Edit, type LookId, type Setup } from '../engine/index.ts';
import { moveMen } from './moves.ts';
import { setupOf, type NothingToShow } from './question.ts';
import type { AppState, Board, Standing } from './types.ts';

/**
 * Answers for boards, remembered: an answer is worked out again only when something it depends on is another object than
 * before. What that is, the setup says: everything the engine is told, and nothing else.
 */
export interface Analyst {
  /** The board as it is shown, with the men who are being dragged where the pointer holds them. */
  readonly onBoard: (state: AppState) => Result<Analysis, NothingToShow>;
  /** The board as the suggestion that is tried would make it; null when none is, or it does not reach this look. */
  readonly onTrial: (state: AppState) => Analysis | null;
  /** The call of the board in another look. */
  readonly inLook: (state: AppState, look: LookId) => Result<Analysis, NothingToShow>;
  /** The same, if it is still known; null when it would have to be worked out. */
  readonly known: (state: AppState, look: LookId) => Analysis | null;
}

interface Memory {
  /** All that was looked through to make the setup: when it is the very same, so is the setup. */
  readonly asked: readonly unknown[];
  readonly parts: readonly unknown[];
  readonly analysis: Analysis;
}

/** An analyst that has seen nothing yet. */
export function createAnalyst(): Analyst {
  const memory = new Map<LookId, Memory>();
  const shown = rememberLast(playbookShown);
  const tried = rememberTrial();

  /** What is known of it, or the setup to work it out from. */
  const recall = (state: AppState, look: LookId): Result<Analysis | Setup, NothingToShow> => {
    const playbook = shown(state);
    const asked = askedOf(playbook, state.board, look);
    const known = memory.get(look);
    if (known !== undefined && sameList(known.asked, asked)) return ok(known.analysis);
    const setup = setupOf(playbook, state.board, look);
    if (!setup.ok) return setup;
    if (known === undefined || !sameList(known.parts, partsOf(setup.value))) return setup;
    memory.set(look, { ...known, asked });
    return ok(known.analysis);
  };

  const inLook = (state: AppState, look: LookId): Result<Analysis, NothingToShow> => {
    const found = recall(state, look);
    if (!found.ok) return found;
    if (isAnalysis(found.value)) return ok(found.value);
    const analysis = analyse(found.value);
    memory.set(look, { asked: askedOf(shown(state), state.board, look), parts: partsOf(found.value), analysis });
    return ok(analysis);
  };

  const onBoard = (state: AppState): Result<Analysis, NothingToShow> =>
    state.board.look === null ? refused({ missing: 'look' }) : inLook(state, state.board.look);

  return {
    inLook,
    onBoard,
    onTrial: (state) => {
      const base = state.trial === null ? null : onBoard(state);
      return base?.ok === true && state.trial !== null ? tried(base.value, state.trial) : null;
    },
    known: (state, look) => {
      const found = recall(state, look);
      return found.ok && isAnalysis(found.value) ? found.value : null;
    },
  };
}

/** Where the 22 of an analysis are as the ball is snapped: the eleven of the defence in its order, then the offence. */
export function standings({ assignments, facts }: Analysis): readonly Standing[] {
  return [
    ...assignments.map(({ aligned }): Standing => ({
      man: { kind: 'defender', role: aligned.role.id },
      at: { x: aligned.x, y: aligned.y },
    })),
    ...[...facts.players.values()].map(({ id, x, y }): Standing => ({
      man: { kind: 'offence', player: id },
      at: { x, y },
    })),
  ];
}

/** The playbook with the men who are being dragged already there. */
function playbookShown({ playbook, board, preview }: AppState): Playbook {
  if (preview === null) return playbook;
  const moved = moveMen(playbook, board, preview);
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

/** The outcome of an edit, remembered as long as the same one is asked for. */
function rememberTrial(): (base: Analysis, edit: Edit) => Analysis | null {
  let last: { readonly base: Analysis; readonly edit: Edit; readonly outcome: Analysis | null } | null = null;
  return (base, edit) => {
    if (last?.base !== base || last.edit !== edit) {
      const edited = applyEdit(base.setup, edit);
      last = { base, edit, outcome: edited.ok ? analyse(edited.value) : null };
    }
    return last.outcome;
  };
}

/** Where a setup comes from: whole lists where it may pick any entry, and of the front only what matters in that look. */
function askedOf(playbook: Playbook, board: Board, look: LookId): readonly unknown[] {
  const { team, roles, coverages, pressures, calls, checkOuts, dictionary } = playbook;
  const front = playbook.fronts.find(({ id }) => id === board.front);
  const shown = playbook.looks.find(({ id }) => id === look);
  const hands = front?.byHand.filter((hand) => hand.look === look) ?? [];
  // A call that is checked to may be run out of another front.
  const fronts = checkOuts.length === 0 ? [front?.name, front?.roles, ...hands] : [playbook.fronts];
  return [board, team.level, roles, coverages, pressures, calls, checkOuts, dictionary, shown, ...fronts];
}

/**
 * Everything an answer depends on, by identity: commands keep whatever they do not change. Of the spots set by hand and of
 * what the coach lives with, only this look's count.
 */
function partsOf({ front, waivers, ...rest }: Setup): readonly unknown[] {
  const { id } = rest.look;
  return [
    ...Object.values(rest),
    front.id,
    front.name,
    front.roles,
    ...front.byHand.filter((hand) => hand.look === id),
    ...waivers.filter((waiver) => waiver.look === id),
  ];
}

function isAnalysis(found: Analysis | Setup): found is Analysis {
  return 'setup' in found;
}

function sameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, index) => part === b[index]);
}
