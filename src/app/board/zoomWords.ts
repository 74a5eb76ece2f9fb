import type { Zoom } from '../../store/index.ts';

/** How much of the field is shown, as the buttons say it. */
export const ZOOM_WORDS: Readonly<Record<Zoom, string>> = {
  players: 'Everybody',
  box: 'The box',
  field: 'Whole field',
};
