import { useMemo } from 'react';
import { PLACES, type Call, type Look } from '../../engine/index.ts';
import { looksShown, standInCall, ZOOMS, type AppStore, type View } from '../../store/index.ts';
import { ZOOM_WORDS } from '../board/zoomWords.ts';
import type { Files } from '../files/useFiles.ts';
import { SCREENS, type Screen } from '../header/screens.ts';
import { capital } from '../parts/capital.ts';
import { useApp, useSession, useTravel } from '../session/session.ts';
import { BALL_WORDS } from '../session/words.ts';
import { THEME_CHOICES, THEME_WORDS } from '../theme/choice.ts';
import { useThemeChoice } from '../theme/useTheme.ts';
import type { Action } from './actions.ts';
import { shownName } from '../parts/shownName.ts';

/** What the page itself can do. */
export interface PageDoors {
  readonly files: Files;
  readonly screen: Screen;
  readonly onScreen: (screen: Screen) => void;
  readonly onPrint: () => void;
  readonly onPalette: () => void;
  readonly onKeys: () => void;
  readonly onGuide: () => void;
}

/** Everything that can be done from anywhere, in one list. */
export function useActions(doors: PageDoors): readonly Action[] {
  const { store } = useSession();
  const { undo, redo } = useTravel();
  const playbook = useApp((state) => state.playbook);
  // One by one: what is lit or picked on the field changes far more often, and makes no other list.
  const turned = useApp((state) => state.view.turned);
  const answers = useApp((state) => state.view.answers);
  const snapping = useApp((state) => state.view.snapping);
  const zoom = useApp((state) => state.view.zoom);
  const opponent = useApp((state) => state.view.opponent);
  const readOnly = useApp((state) => state.readOnly);
  const theme = useThemeChoice();
  const undoable = useApp(() => store.steps().undo > 0);
  const redoable = useApp(() => store.steps().redo > 0);
  return useMemo(
    () => [
      ...ofPlaybook(doors, { undo, redo, undoable: undoable && !readOnly, redoable: redoable && !readOnly }),
      ...ofScreens(doors),
      ...ofView(store, { turned, answers, snapping, zoom }),
      ...ofThemes(theme),
      ...ofLooks(store, looksShown({ playbook, view: { opponent } }), doors),
      ...ofCalls(store, playbook.calls, doors),
    ],
    [
      store,
      doors,
      undo,
      redo,
      playbook,
      turned,
      answers,
      snapping,
      zoom,
      opponent,
      theme,
      readOnly,
      undoable,
      redoable,
    ],
  );
}

interface Travel {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly undoable: boolean;
  readonly redoable: boolean;
}

function ofPlaybook(doors: PageDoors, { undo, redo, undoable, redoable }: Travel): readonly Action[] {
  const { files, onPrint, onPalette, onKeys, onGuide } = doors;
  return [
    { ...USUAL, id: 'undo', title: 'Undo', keys: ['$mod+z'], disabled: !undoable, run: undo },
    { ...USUAL, id: 'redo', title: 'Redo', keys: ['$mod+Shift+z', '$mod+y'], disabled: !redoable, run: redo },
    { ...USUAL, id: 'save', title: 'Save the playbook to a file', keys: ['$mod+s'], run: files.save },
    { ...USUAL, id: 'start', title: 'Start my own playbook', run: files.start },
    { ...USUAL, id: 'print', title: 'Print sheets for a room', keys: ['$mod+p'], run: onPrint },
    { ...USUAL, id: 'palette', group: 'Help', title: 'Find anything to do', keys: ['$mod+k'], run: onPalette },
    { ...USUAL, id: 'keys', group: 'Help', title: 'All keys', keys: ['$mod+/'], run: onKeys },
    { ...USUAL, id: 'guide', group: 'Help', title: 'Show the first steps', run: onGuide },
  ];
}

const USUAL = { group: 'Playbook', keys: [], disabled: false } as const;

function ofScreens({ screen, onScreen }: PageDoors): readonly Action[] {
  return SCREENS.map(({ id, name }, index) => ({
    ...USUAL,
    id: `screen ${id}`,
    group: 'Go to',
    title: name,
    keys: [`Alt+Digit${index + 1}`],
    disabled: id === screen,
    run: () => onScreen(id),
  }));
}

const ON_BOARD = { ...USUAL, group: 'Board' } as const;

function ofView(store: AppStore, view: Pick<View, 'turned' | 'answers' | 'snapping' | 'zoom'>): readonly Action[] {
  return [
    {
      ...ON_BOARD,
      id: 'turn',
      title: view.turned ? 'Turn the board: defence at the bottom' : 'Turn the board: offence at the bottom',
      run: () => store.setView({ turned: !view.turned }),
    },
    {
      ...ON_BOARD,
      id: 'answers',
      title: view.answers ? 'Hide who has whom' : 'Show who has whom',
      run: () => store.setView({ answers: !view.answers }),
    },
    {
      ...ON_BOARD,
      id: 'snap',
      title: view.snapping ? 'Drag men freely' : 'Let dragged men stop at techniques, depths and landmarks',
      run: () => store.setView({ snapping: !view.snapping }),
    },
    ...ZOOMS.map((zoom) => ({
      ...ON_BOARD,
      id: `zoom ${zoom}`,
      title: `Show: ${ZOOM_WORDS[zoom]}`,
      disabled: view.zoom === zoom,
      run: () => store.setView({ zoom }),
    })),
    ...PLACES.map((spot) => ({
      ...ON_BOARD,
      id: `spot ${spot}`,
      title: capital(BALL_WORDS[spot]),
      run: () => store.setBoard({ spot }),
    })),
  ];
}

function ofThemes({ choice, choose }: ReturnType<typeof useThemeChoice>): readonly Action[] {
  return THEME_CHOICES.map((each) => ({
    ...ON_BOARD,
    id: `theme ${each}`,
    title: `Light or dark: ${THEME_WORDS[each]}`,
    disabled: each === choice,
    run: () => choose(each),
  }));
}

function ofLooks(store: AppStore, looks: readonly Look[], { screen, onScreen }: PageDoors): readonly Action[] {
  return looks.map(({ id, name }) => ({
    ...USUAL,
    id: `look ${id}`,
    group: 'Look',
    title: shownName(name),
    run: () => {
      store.setBoard({ look: id });
      if (screen === 'menu') onScreen('board');
    },
  }));
}

function ofCalls(store: AppStore, calls: readonly Call[], { onScreen }: PageDoors): readonly Action[] {
  return calls.map((call) => ({
    ...USUAL,
    id: `call ${call.id}`,
    group: 'Call',
    title: shownName(call.name),
    run: () => {
      store.setBoard(standInCall(store.get().board, call));
      onScreen('board');
    },
  }));
}
