import { sameParts, type AppState } from '../../store/index.ts';
import type { Screen } from '../header/screens.ts';

/** What of the page a step looks at to see that it is done. */
export interface Seen {
  readonly state: AppState;
  readonly screen: Screen;
  readonly printing: boolean;
}

/** One step of the first minutes: what to try, and how the page knows that it was tried. */
export interface GuideStep {
  readonly title: string;
  readonly text: string;
  /** Whether it was done between the two. */
  readonly isDone: (began: Seen, now: Seen) => boolean;
}

/** Drag, combine, mend, print: what the app is for, in the order a call is made. */
export const GUIDE_STEPS: readonly GuideStep[] = [
  {
    title: 'Move a man',
    text:
      'Drag any man on the field, or pick him under Players and press an arrow key. His technique, the gaps, the report and ' +
      'the looks below follow as soon as he stands still.',
    isDone: (began, now) => changed(began, now) && now.state.change?.label.startsWith('moved') === true,
  },
  {
    title: 'Combine two pressures',
    text:
      'Under The call choose another second pressure, or turn it the other way. The report says for every lineman what the ' +
      'first tells him, what the second tells him, and whether he can do both.',
    isDone: (began, now) => now.state.board.second !== null && !sameParts(began.state.board, now.state.board),
  },
  {
    title: 'Mend what is wrong',
    text:
      'A red octagon stops the call in this look. Press a suggestion under the finding and it is done; Undo takes it back. ' +
      'Mend it… below the field searches over all looks.',
    isDone: (began, now) => changed(began, now) || !sameParts(began.state.board, now.state.board),
  },
  {
    title: 'Print it for a room',
    text: 'Press Print… at the top: one page a look, with the men of the room you pick drawn heavy.',
    isDone: (_began, now) => now.printing,
  },
];

function changed(began: Seen, now: Seen): boolean {
  return began.state.playbook !== now.state.playbook;
}
