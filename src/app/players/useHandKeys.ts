import { useEffect, useLayoutEffect, useRef } from 'react';
import { useSession } from '../session/session.ts';
import type { Hand } from './useHand.ts';

/**
 * Keys for the men who are picked, while no field of text and no list has the focus: arrows move them, Delete gives them
 * back to their rules, Ctrl+A picks their team, Ctrl+C and Ctrl+V carry spots to another look.
 */
export function useHandKeys(hand: Hand): void {
  const { store } = useSession();
  const now = useRef(hand);
  const presses = useRef(0);
  useLayoutEffect(() => {
    now.current = hand;
  });
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const place = placeOf(event.target);
      if (place === 'elsewhere' || !document.contains(document.querySelector('.field-stage'))) return;
      if (act(now.current, event, place === 'field', presses)) event.preventDefault();
    };
    const letGo = (event: KeyboardEvent): void => {
      if (event.key.startsWith('Arrow') && placeOf(event.target) === 'field') store.endGesture();
    };
    window.addEventListener('keydown', press);
    window.addEventListener('keyup', letGo);
    return () => {
      window.removeEventListener('keydown', press);
      window.removeEventListener('keyup', letGo);
    };
  }, [store]);
}

function act(hand: Hand, event: KeyboardEvent, onField: boolean, presses: { current: number }): boolean {
  if ((event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey) {
    switch (event.key.toLowerCase()) {
      case 'a':
        hand.pick(hand.picked[0]?.man.kind ?? 'defender');
        return true;
      case 'c':
        // Words that are marked on the page are what he means to copy.
        if (hand.picked.length === 0 || String(window.getSelection()) !== '') return false;
        hand.copy();
        return true;
      case 'v':
        hand.paste();
        return true;
    }
    return false;
  }
  if (event.ctrlKey || event.metaKey || event.altKey) return false;
  if (event.key === 'Delete' && hand.picked.length > 0) {
    hand.backToRule();
    return true;
  }
  if (!onField) return false;
  if (!event.repeat) presses.current += 1;
  return hand.nudge(event.key, event.shiftKey, `arrow ${presses.current}`);
}

/** Whether nothing has the focus, or one of the men, or something that has its own use for these keys. */
function placeOf(target: EventTarget | null): 'field' | 'players' | 'elsewhere' {
  if (target === document.body) return 'field';
  return target instanceof Element && target.closest('.player-list') !== null ? 'players' : 'elsewhere';
}
