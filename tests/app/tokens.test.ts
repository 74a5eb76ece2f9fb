import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SCREEN_THEMES } from '../../src/scene/index.ts';
import { contrast } from '../contrast.ts';

const STYLES = new URL('../../src/app/styles/', import.meta.url);
const TOKENS = readFileSync(new URL('tokens.css', STYLES), 'utf8');

type Tokens = ReadonlyMap<string, string>;

/** The colours that a selector of tokens.css sets. */
function coloursOf(selector: string): Tokens {
  const start = TOKENS.indexOf(`\n${selector} {`);
  if (start < 0) throw new Error(`tokens.css has no ${selector}`);
  const block = TOKENS.slice(start, TOKENS.indexOf('\n}', start));
  return new Map(
    [...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', colour = '']) => [name, colour]),
  );
}

const LIGHT = coloursOf(':root');
const THEMES: readonly (readonly [keyof typeof SCREEN_THEMES, Tokens])[] = [
  ['light', LIGHT],
  ['dark', new Map([...LIGHT, ...coloursOf(":root[data-theme='dark']")])],
  ['projector', new Map([...LIGHT, ...coloursOf(":root[data-theme='projector']")])],
];

/** Words and what they stand on. Everything that is disabled is left out, as WCAG leaves it out. */
const WORDS: readonly (readonly [ink: string, ...grounds: string[]])[] = [
  ['ink', 'paper', 'panel', 'sunk', 'accent-soft', 'stop-soft', 'check-soft', 'note-soft', 'clean-soft', 'lit-soft'],
  [
    'ink-soft',
    'paper',
    'panel',
    'sunk',
    'accent-soft',
    'stop-soft',
    'check-soft',
    'note-soft',
    'clean-soft',
    'lit-soft',
  ],
  ['muted', 'paper', 'panel', 'sunk', 'stop-soft', 'check-soft'],
  ['accent', 'paper', 'panel', 'sunk', 'accent-soft', 'stop-soft', 'check-soft', 'lit-soft'],
  ['brand', 'panel'],
  ['brand-ink', 'accent', 'brand'],
  ['stop', 'paper', 'panel', 'sunk', 'stop-soft', 'lit-soft'],
  ['check', 'panel', 'sunk', 'check-soft'],
  ['note', 'panel', 'note-soft'],
  ['clean', 'panel', 'clean-soft'],
];

/** Marks, edges of controls and rings, and what they stand on. */
const MARKS: readonly (readonly [mark: string, ...grounds: string[]])[] = [
  ['line-strong', 'paper', 'panel'],
  ['focus', 'paper', 'panel', 'sunk', 'field', 'accent-soft'],
  ['stop', 'panel', 'stop-soft', 'accent-soft'],
  ['check', 'panel', 'check-soft', 'accent-soft'],
  ['note', 'panel', 'note-soft', 'accent-soft'],
  ['clean', 'panel', 'clean-soft', 'accent-soft'],
  ['muted', 'panel', 'sunk', 'accent-soft'],
  ['lit', 'panel', 'lit-soft'],
  ['on-mark', 'stop', 'check', 'note', 'clean'],
  ['accent', 'panel', 'paper', 'sunk'],
];

const pairs = (table: readonly (readonly [string, ...string[]])[]) =>
  table.flatMap(([ink, ...grounds]) => grounds.map((ground) => [ink, ground] as const));

describe.each(THEMES)('the colours of the page, %s', (name, tokens) => {
  const colour = (token: string): string => {
    const found = tokens.get(token);
    if (found === undefined) throw new Error(`There is no colour ${token}`);
    return found;
  };

  it.each(pairs(WORDS))('words in %s can be read on %s (WCAG 2.2, 1.4.3: 4.5 : 1)', (ink, ground) => {
    expect(contrast(colour(ink), colour(ground))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(pairs(MARKS))('%s is seen on %s (WCAG 2.2, 1.4.11: 3 : 1)', (mark, ground) => {
    expect(contrast(colour(mark), colour(ground))).toBeGreaterThanOrEqual(3);
  });

  it('the ground behind the field is the ground of its picture', () => {
    expect(colour('field')).toBe(SCREEN_THEMES[name].colours.ground);
  });

  it('a printed page is white in any theme', () => expect(colour('page')).toBe('#ffffff'));
});

it('a projector has more contrast than the day: words at least 10 : 1 (ours; a projector takes half of it away)', () => {
  const tokens = new Map(THEMES).get('projector');
  for (const ink of ['ink', 'ink-soft', 'muted'] as const) {
    expect(contrast(tokens?.get(ink) ?? '', tokens?.get('panel') ?? '')).toBeGreaterThanOrEqual(10);
  }
});

it('the dark and the projector theme name no token that the light one does not have', () => {
  for (const selector of [":root[data-theme='dark']", ":root[data-theme='projector']"]) {
    expect([...coloursOf(selector).keys()].filter((token) => !LIGHT.has(token))).toEqual([]);
  }
});

it('no other style sheet has a colour of its own', () => {
  const sheets = readdirSync(STYLES).filter((name) => name.endsWith('.css') && name !== 'tokens.css');
  expect(sheets.length).toBeGreaterThan(3);
  for (const sheet of sheets) {
    const text = readFileSync(new URL(sheet, STYLES), 'utf8').replaceAll(/\/\*[^]*?\*\//g, '');
    expect(text.match(/#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch)a?\(/gi) ?? [], sheet).toEqual([]);
  }
});
