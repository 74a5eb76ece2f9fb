import { useEffect } from 'react';
import { useTravel } from './session/session.ts';

/** Ctrl+Z (Cmd+Z) undoes, with Shift or as Ctrl+Y it does again; inside a text being typed the browser's own undo stays. */
export function useShortcuts(): void {
  const { undo, redo } = useTravel();
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if ((!event.ctrlKey && !event.metaKey) || event.altKey || isTyping(event.target)) return;
      // By the letter, not the place of the key: on other layouts Z lies elsewhere.
      const key = event.key.toLowerCase();
      if (key === 'z') (event.shiftKey ? redo : undo)();
      else if (key === 'y' && !event.shiftKey) redo();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [undo, redo]);
}

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  return target instanceof HTMLInputElement && !['radio', 'checkbox', 'button', 'file'].includes(target.type);
}
