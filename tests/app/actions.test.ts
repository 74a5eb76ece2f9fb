import { describe, expect, it } from 'vitest';
import { chordText } from '../../src/app/actions/actions.ts';

describe('a chord as it is written on the keys', () => {
  it.each([
    ['$mod+z', 'Ctrl+Z', '⌘Z'],
    ['$mod+Shift+z', 'Ctrl+Shift+Z', '⌘⇧Z'],
    ['Alt+Digit2', 'Alt+2', '⌥2'],
    ['$mod+/', 'Ctrl+/', '⌘/'],
  ])('%s is %s, on a Mac %s', (chord, others, mac) => {
    expect([chordText(chord, false), chordText(chord, true)]).toStrictEqual([others, mac]);
  });
});
