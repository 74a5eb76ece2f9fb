/** Whether what has the focus takes letters: keys belong to it then. */
export function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  return target instanceof HTMLInputElement && !['radio', 'checkbox', 'button', 'file', 'range'].includes(target.type);
}
