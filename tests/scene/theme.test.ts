import { describe, expect, it } from 'vitest';
import { contrast } from '../contrast.ts';
import {
  INKS,
  markColour,
  PAPER_THEME,
  roleOfInk,
  SCREEN_THEMES,
  textColour,
  type Theme,
} from '../../src/scene/index.ts';

describe('the yardstick', () => {
  it('gives 21 : 1 for black on white and 1 : 1 for white on white (WCAG 2.2, contrast ratio)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#ffffff', '#ffffff')).toBe(1);
  });
});

describe.each<Theme>([...Object.values(SCREEN_THEMES), PAPER_THEME])('theme $name', (theme) => {
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

it('only the projector has heavier lines and larger words, and paper is as it is drawn', () => {
  const { light, dark, projector } = SCREEN_THEMES;
  for (const theme of [light, dark, PAPER_THEME]) expect([theme.lineScale, theme.letterScale]).toEqual([1, 1]);
  expect(projector.lineScale).toBeGreaterThan(1.2);
  expect(projector.letterScale).toBeGreaterThan(1);
});
