import type { About } from '../../report/index.ts';
import type { Lit } from '../../store/index.ts';

/** What to do when a row of the report is pointed at, or left. */
export type OnLight = (lit: Lit | null) => void;

/** Who and what a row lights on the field. */
export function litBy(key: string, { who, players, gaps }: About): Lit {
  return { key, roles: who, players, gaps };
}

/** What lights a row while it is pointed at or has the focus, and lets go of it after. */
export function lightProps(key: string, about: About, onLight: OnLight) {
  const light = (): void => onLight(litBy(key, about));
  const letGo = (): void => onLight(null);
  return { onPointerEnter: light, onPointerLeave: letGo, onFocus: light, onBlur: letGo };
}
