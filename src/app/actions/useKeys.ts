import { useEffect } from 'react';
import { tinykeys } from 'tinykeys';
import { isTyping } from '../parts/isTyping.ts';
import type { Action } from './actions.ts';

/**
 * Lets the keys of the actions act, wherever the focus is; not while a dialog is open, which has keys of its own. Inside a
 * text that is being typed, undo and redo stay the browser's.
 */
export function useKeys(actions: readonly Action[]): void {
  useEffect(() => {
    const bound = actions.flatMap((action) => action.keys.map((chord) => [chord, pressed(action)] as const));
    return tinykeys(window, Object.fromEntries(bound));
  }, [actions]);
}

function pressed(action: Action): (event: KeyboardEvent) => void {
  return (event) => {
    if (document.querySelector('dialog[open]') !== null) return;
    if (isTyping(event.target) && TYPING.has(action.id)) return;
    // Also when it makes no sense now: Ctrl+S must not open the browser's own dialog instead.
    event.preventDefault();
    if (!action.disabled) action.run();
  };
}

/** Actions a text field has of its own. */
const TYPING: ReadonlySet<string> = new Set(['undo', 'redo']);
