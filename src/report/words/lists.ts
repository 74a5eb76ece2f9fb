/** "A", "A and B", "A, B and C"; `none` when there is nothing to list. */
export function listed(items: readonly string[], none: string, joint = 'and'): string {
  const last = items[items.length - 1];
  if (last === undefined) return none;
  if (items.length === 1) return last;
  return `${items.slice(0, -1).join(', ')} ${joint} ${last}`;
}

/** The same text with its first letter large, as a sentence starts. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The same text with its first letter small, as a sentence goes on. */
export function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** A number as a coach says it: whole, or with one decimal ("6", "4.5"). */
export function numberText(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
}

/** A distance in yards: "4.5 yd". */
export function yardsText(value: number): string {
  return `${numberText(value)} yd`;
}
