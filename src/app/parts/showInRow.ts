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

/** Scrolls the list an entry stands in, and only the list, until the entry is in sight. */
export function showInList(entry: HTMLElement, list: HTMLElement | null = entry.parentElement): void {
  if (list === null) return;
  const { top, bottom } = entry.getBoundingClientRect();
  const first = list.getBoundingClientRect().top + list.clientTop;
  const last = first + list.clientHeight;
  if (top < first) list.scrollTop -= first - top;
  if (bottom > last) list.scrollTop += bottom - last;
}
