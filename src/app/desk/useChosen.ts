import type { AppState, Chosen, Entry, Section } from '../../store/index.ts';
import { useApp, useSession } from '../session/session.ts';

/**
 * The entry a section's editor is open on: what is on the board where the board has one, else the one chosen last, else the
 * first. Choosing puts it on the board, so that what is edited is what is seen.
 */
export function useChosen(section: Section): {
  readonly entry: Entry | null;
  readonly choose: (entry: Entry) => void;
} {
  const { store } = useSession();
  const playbook = useApp((state) => state.playbook);
  const board = useApp((state) => state.board);
  const chosen = useApp((state) => state.view.chosen);
  return {
    entry: chosenEntry({ playbook, board, chosen }, section),
    choose: (entry) => {
      const now = store.get();
      store.setView({ chosen: withChosen(now.view.chosen, entry) });
      store.setBoard(onBoard(now, entry));
    },
  };
}

interface Places extends Pick<AppState, 'playbook' | 'board'> {
  readonly chosen: Chosen;
}

function chosenEntry({ playbook, board, chosen }: Places, section: Section): Entry | null {
  switch (section) {
    case 'pressures': {
      const id = present(playbook.pressures, [chosen.pressures, board.first]);
      return id === null ? null : { section, id };
    }
    case 'looks':
      return board.look === null ? null : { section, id: board.look };
    case 'fronts':
      return board.front === null ? null : { section, id: board.front };
    case 'coverages': {
      const ofFirst = playbook.pressures.find(({ id }) => id === board.first)?.coverage ?? null;
      const id = present(playbook.coverages, [chosen.coverages, board.coverage, ofFirst]);
      return id === null ? null : { section, id };
    }
    case 'roles': {
      const id = present(playbook.roles, [chosen.roles]);
      return id === null ? null : { section, id };
    }
  }
}

function withChosen(chosen: Chosen, entry: Entry): Chosen {
  switch (entry.section) {
    case 'pressures':
      return { ...chosen, pressures: entry.id };
    case 'coverages':
      return { ...chosen, coverages: entry.id };
    case 'roles':
      return { ...chosen, roles: entry.id };
    case 'looks':
    case 'fronts':
      return chosen;
  }
}

/** What the board becomes so that the entry is seen on it; a call it is already part of stays as it is. */
function onBoard({ board, playbook }: AppState, entry: Entry): Partial<AppState['board']> {
  switch (entry.section) {
    case 'pressures':
      return board.first === entry.id || board.second === entry.id
        ? {}
        : { first: entry.id, second: null, coverage: null, rushers: null, call: null };
    case 'looks':
      return { look: entry.id };
    case 'fronts':
      return { front: entry.id };
    case 'coverages': {
      const ofFirst = playbook.pressures.find(({ id }) => id === board.first)?.coverage;
      return { coverage: ofFirst === entry.id ? null : entry.id };
    }
    case 'roles':
      return {};
  }
}

/** The first of the ids that is in the list; else the first of the list. */
function present<Id extends string>(list: readonly { readonly id: Id }[], ids: readonly (Id | null)[]): Id | null {
  const found = ids.find((id) => list.some((each) => each.id === id));
  return found ?? list[0]?.id ?? null;
}
