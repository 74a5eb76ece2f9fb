import { useEffect, useState } from 'react';

/** How long words must stand still before they are read out, in milliseconds. */
const STILL = 600;

/** The words once they have stopped changing. */
export function useSettled(words: string): string {
  const [settled, setSettled] = useState(words);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(words), STILL);
    return () => clearTimeout(timer);
  }, [words]);
  return settled;
}
