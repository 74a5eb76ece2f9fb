/** Keys and presses for the men on the field; they work on the field and in its list of players, and are no actions of the whole page. */
export const BOARD_KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'Arrow keys', does: 'Move whoever is picked ¼ yard' },
  { keys: 'Shift + arrow keys', does: 'Move them 1 yard' },
  { keys: 'Page Up, Page Down', does: 'Go to the man before, to the man after' },
  { keys: 'Home, End', does: 'Go to the first man, to the last' },
  { keys: 'Shift + Page Up, Page Down', does: 'Pick that man too' },
  { keys: 'Shift or Ctrl + click', does: 'Pick another man too, or let him go' },
  { keys: 'Drag from the grass', does: 'Pick everybody in the rectangle' },
  { keys: 'Ctrl+A', does: 'Pick the whole team' },
  { keys: 'Ctrl+C, Ctrl+V', does: 'Copy the spots of those picked, put them down in another look' },
  { keys: 'Delete', does: 'Give the defenders who are picked back to their rules' },
  { keys: 'Alt while dragging', does: 'Stop at no technique, depth or landmark' },
  { keys: 'Wheel, two fingers', does: 'Look closer, look from farther' },
  { keys: 'Space + drag, middle button', does: 'Shove the field' },
  { keys: '0', does: 'Fit the field' },
  { keys: 'Escape', does: 'Give up a drag' },
];
