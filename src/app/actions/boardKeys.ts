/** Keys that work where the focus is, on the field and in its list of players; they are no actions of the whole page. */
export const BOARD_KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Arrow keys', does: 'Move the man who has the focus ¼ yard' },
  { keys: 'Shift + arrow keys', does: 'Move him 1 yard' },
  { keys: 'Page Up, Page Down', does: 'Go to the man before, to the man after' },
  { keys: 'Home, End', does: 'Go to the first man, to the last' },
  { keys: 'Escape', does: 'Give up a drag' },
];
