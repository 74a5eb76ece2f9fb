import { describe, expect, it } from 'vitest';
import {
  INKS,
  LIGHT_THEME,
  markColour,
  PAPER_THEME,
  roleOfInk,
  textColour,
  type Theme,
} from '../../src/scene/index.ts';

/** Relative luminance of "#rrggbb". Source: WCAG 2.2, definition of relative luminance. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Source: WCAG 2.2, definition of contrast ratio. */
function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].toSorted((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

describe('the yardstick', () => {
  it('gives 21 : 1 for black on white and 1 : 1 for white on white (WCAG 2.2, contrast ratio)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#ffffff', '#ffffff')).toBe(1);
  });
});

describe.each<Theme>([LIGHT_THEME, PAPER_THEME])('theme $name', (theme) => {
  const { ground } = theme.colours;
  const marks = INKS.filter((ink) => roleOfInk(ink) === 'mark');
  const texts = INKS.filter((ink) => roleOfInk(ink) === 'text');

  it.each(marks)('%s stands out from the ground, drawn light as well (WCAG 2.2, 1.4.11: 3 : 1)', (ink) => {
    expect(contrast(markColour(theme, ink, false), ground)).toBeGreaterThanOrEqual(3);
    expect(contrast(markColour(theme, ink, true), ground)).toBeGreaterThanOrEqual(3);
  });

  it.each(texts)('words in %s can be read, drawn light as well (WCAG 2.2, 1.4.3: 4.5 : 1)', (ink) => {
    expect(contrast(textColour(theme, ink, false), ground)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(textColour(theme, ink, true), ground)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['stop', 'check'] as const)('the sign on a %s shape can be read', (ink) => {
    expect(contrast(textColour(theme, 'ground', false), markColour(theme, ink, false))).toBeGreaterThanOrEqual(4.5);
  });

  it('light is lighter than heavy, and the lines of the field are fainter than any mark', () => {
    const heavy = contrast(markColour(theme, 'defence', false), ground);
    const light = contrast(markColour(theme, 'defence', true), ground);
    const line = contrast(theme.colours['yard-line'], ground);
    expect(heavy).toBeGreaterThan(light * 1.5);
    expect(light).toBeGreaterThan(line);
  });
});

it('paper uses black, white and greys only', () => {
  const colours = [...Object.values(PAPER_THEME.colours), PAPER_THEME.faintMark, PAPER_THEME.faintText];
  for (const colour of colours) expect(colour).toMatch(/^#([0-9a-f]{2})\1\1$/);
});
