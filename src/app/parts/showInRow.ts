/** How much of the next one is shown beside it, in CSS pixels. */
const ROOM_BESIDE = 40;

/** Scrolls the row an element stands in, and only the row, until it is in sight: the page must not move under the field. */
export function showInRow(element: HTMLElement, row: HTMLElement | null = element.parentElement): void {
  if (row === null) return;
  const { left, right } = element.getBoundingClientRect();
  const edge = row.getBoundingClientRect();
  if (left < edge.left) row.scrollLeft -= edge.left - left + ROOM_BESIDE;
  if (right > edge.right) row.scrollLeft += right - edge.right + ROOM_BESIDE;
}
