import { createContext, useContext, useMemo, useSyncExternalStore } from 'react';
import { SCREEN_THEMES, type Theme } from '../../scene/index.ts';
import type { ThemeChoice } from './choice.ts';
import type { Themes } from './themes.ts';

/** The themes all components share. */
export const ThemesContext = createContext<Themes | null>(null);

/** The theme of every picture on the screen, followed. */
export function useTheme(): Theme {
  const themes = useThemes();
  return SCREEN_THEMES[useSyncExternalStore(themes.subscribe, themes.name)];
}

/** What is chosen, followed, and how to choose another. */
export function useThemeChoice(): { readonly choice: ThemeChoice; readonly choose: (choice: ThemeChoice) => void } {
  const { subscribe, choice: chosen, choose } = useThemes();
  const choice = useSyncExternalStore(subscribe, chosen);
  return useMemo(() => ({ choice, choose }), [choice, choose]);
}

function useThemes(): Themes {
  const themes = useContext(ThemesContext);
  if (themes === null) throw new Error('There are no themes here');
  return themes;
}
