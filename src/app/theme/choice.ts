/** What the coach may choose: a theme, or whatever his device is set to. */
export const THEME_CHOICES = ['device', 'light', 'dark', 'projector'] as const;
export type ThemeChoice = (typeof THEME_CHOICES)[number];

/** A theme of the screen. */
export type ThemeName = Exclude<ThemeChoice, 'device'>;

/** A kept text as a choice; anything that is none is what the device says. */
export function readChoice(text: string | null): ThemeChoice {
  return THEME_CHOICES.find((choice) => choice === text) ?? 'device';
}

/** The theme to show, on a device that is set to dark or is not. */
export function resolveTheme(choice: ThemeChoice, deviceIsDark: boolean): ThemeName {
  if (choice !== 'device') return choice;
  return deviceIsDark ? 'dark' : 'light';
}

/** The choices in words. */
export const THEME_WORDS: Readonly<Record<ThemeChoice, string>> = {
  device: 'As the device',
  light: 'Light',
  dark: 'Dark',
  projector: 'Projector',
};
