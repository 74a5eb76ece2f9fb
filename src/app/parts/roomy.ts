/** Whether all columns stand side by side, each scrolling on its own (the same width as in layout.css). */
export function isRoomy(): boolean {
  return window.matchMedia('(min-width: 1280px)').matches;
}

/** Whether the field stays large with everything under it unfolded. */
export function isTall(): boolean {
  return window.matchMedia('(min-height: 1000px)').matches;
}
