import { describe, expect, it } from 'vitest';
import { readChoice, resolveTheme, type ThemeChoice, type ThemeName } from '../../src/app/theme/choice.ts';
import { createThemes, type ThemeDevice } from '../../src/app/theme/themes.ts';

describe('which theme is shown', () => {
  it.each<readonly [kept: string | null, choice: ThemeChoice]>([
    [null, 'device'],
    ['', 'device'],
    ['dark', 'dark'],
    ['projector', 'projector'],
    ['sepia', 'device'],
  ])('kept as %j: %s', (kept, choice) => expect(readChoice(kept)).toBe(choice));

  it.each<readonly [choice: ThemeChoice, dark: boolean, name: ThemeName]>([
    ['device', false, 'light'],
    ['device', true, 'dark'],
    ['light', true, 'light'],
    ['dark', false, 'dark'],
    ['projector', true, 'projector'],
  ])('%s on a device that is dark (%s): %s', (choice, dark, name) => expect(resolveTheme(choice, dark)).toBe(name));
});

describe('the themes on a device', () => {
  const deviceOf = (kept: string | null) => {
    const shown: ThemeName[] = [];
    const seen = { kept, dark: false, turn: (): void => undefined };
    const device: ThemeDevice = {
      isDark: () => seen.dark,
      onDark: (listener) => {
        seen.turn = listener;
      },
      read: () => seen.kept,
      write: (text) => {
        seen.kept = text;
      },
      show: (name) => shown.push(name),
    };
    return { device, seen, shown };
  };

  it('shows what was kept, and keeps what is chosen', () => {
    const { device, seen, shown } = deviceOf('projector');
    const themes = createThemes(device);
    themes.choose('dark');
    expect(shown).toEqual(['projector', 'dark']);
    expect(seen.kept).toBe('dark');
  });

  it('follows the device as long as nothing else is chosen', () => {
    const { device, seen, shown } = deviceOf(null);
    const themes = createThemes(device);
    let told = 0;
    themes.subscribe(() => {
      told += 1;
    });
    seen.dark = true;
    seen.turn();
    expect(themes.name()).toBe('dark');
    themes.choose('light');
    seen.turn();
    expect(shown).toEqual(['light', 'dark', 'light', 'light']);
    expect(told).toBe(3);
  });
});
