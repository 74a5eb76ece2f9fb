import { useEffect, useState } from 'react';

/** How long words must stand still before they are read out, in milliseconds. */
const STILL = 600;

/** The words once they have stopped changing. `held`: they are still in the making, however long they stand. */
export function useSettled(words: string, held = false): string {
  const [settled, setSettled] = useState(words);
  useEffect(() => {
    if (held) return undefined;
    const timer = setTimeout(() => setSettled(words), STILL);
    return () => clearTimeout(timer);
  }, [words, held]);
  return settled;
}
