import { useCallback, useState } from 'react';

/** Width and height of an element in whole CSS pixels, followed as it changes. */
export function useSize(): {
  readonly size: { readonly width: number; readonly height: number } | null;
  readonly ref: (element: HTMLElement | null) => (() => void) | undefined;
} {
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  const ref = useCallback((element: HTMLElement | null) => {
    if (element === null) return undefined;
    const observer = new ResizeObserver(() => {
      setSize({ width: Math.floor(element.clientWidth), height: Math.floor(element.clientHeight) });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { size, ref };
}
