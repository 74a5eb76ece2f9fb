import { readDevice, writeDevice } from '../parts/device.ts';
import { readChoice, resolveTheme, type ThemeChoice, type ThemeName } from './choice.ts';

/** What the themes need of the device. */
export interface ThemeDevice {
  /** Whether it is set to dark. */
  readonly isDark: () => boolean;
  readonly onDark: (listener: () => void) => void;
  /** What was kept here; null for nothing, or where nothing can be kept. */
  readonly read: () => string | null;
  /** Keeps a text if it can. */
  readonly write: (text: string) => void;
  /** Shows the page in that theme. */
  readonly show: (name: ThemeName) => void;
}

/** The theme of the page: chosen once, kept on this device, followed by everything that paints. */
export interface Themes {
  readonly choice: () => ThemeChoice;
  readonly name: () => ThemeName;
  readonly choose: (choice: ThemeChoice) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

/** The themes on a device; the page is shown in the right one from here on. */
export function createThemes(device: ThemeDevice): Themes {
  let choice = readChoice(device.read());
  let name = resolveTheme(choice, device.isDark());
  const listeners = new Set<() => void>();
  const settle = (): void => {
    name = resolveTheme(choice, device.isDark());
    device.show(name);
    for (const listener of listeners) listener();
  };
  device.show(name);
  device.onDark(settle);
  return {
    choice: () => choice,
    name: () => name,
    choose: (next) => {
      choice = next;
      device.write(next);
      settle();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Where the choice is kept. */
const KEPT_AS = 'theme';

/** This browser. Its storage may be shut off or full: the choice then lasts as long as the page. */
export function browserDevice(): ThemeDevice {
  const dark = window.matchMedia('(prefers-color-scheme: dark)');
  return {
    isDark: () => dark.matches,
    onDark: (listener) => dark.addEventListener('change', listener),
    read: () => readDevice(KEPT_AS),
    write: (text) => writeDevice(KEPT_AS, text),
    show: (name) => {
      document.documentElement.dataset['theme'] = name;
      const bar = getComputedStyle(document.documentElement).getPropertyValue('--panel').trim();
      document.querySelector('meta[name="theme-color"]')?.setAttribute('content', bar);
    },
  };
}
