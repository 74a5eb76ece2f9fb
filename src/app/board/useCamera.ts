import { useEffect, useState } from 'react';
import type { Camera } from '../../editor/index.ts';
import { isTyping } from '../parts/isTyping.ts';

/** The camera, which lets go when another part of the field is asked for, or with the key 0. */
export function useCamera(zoom: string): readonly [Camera, (camera: Camera) => void] {
  const [held, setHeld] = useState<{ readonly zoom: string; readonly camera: Camera }>({ zoom, camera: null });
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.key !== '0' || event.ctrlKey || event.metaKey || event.altKey) return;
      // In a list a digit looks for an entry.
      if (isTyping(event.target) || event.target instanceof HTMLSelectElement) return;
      setHeld((now) => ({ ...now, camera: null }));
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
  return [held.zoom === zoom ? held.camera : null, (camera) => setHeld({ zoom, camera })];
}
