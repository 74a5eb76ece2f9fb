import { assertNever } from '../base/index.ts';
import type { Ink } from './shapes.ts';

/**
 * Colours of one medium. Shape and word carry every meaning; colour only helps (WCAG 2.2, 1.4.1). Marks have at least 3 : 1
 * against the ground and text 4.5 : 1 (1.4.11, 1.4.3), drawn light or not; the lines of the field itself are decoration.
 */
export interface Theme {
  readonly name: 'light' | 'paper';
  readonly colours: Readonly<Record<Ink, string>>;
  /** The one colour of everything drawn light, field lines left alone. */
  readonly faintMark: string;
  readonly faintText: string;
}

/** The screen: unbleached paper, ink blue, and four muted hues for the four kinds of path. */
export const LIGHT_THEME: Theme = {
  name: 'light',
  colours: {
    ground: '#f7f5ef',
    'yard-line': '#dcd8cc',
    hash: '#b5b0a1',
    sideline: '#857f70',
    ball: '#6b4a2b',
    offence: '#5a5f69',
    'offence-text': '#3c414a',
    defence: '#16243c',
    'defence-text': '#16243c',
    rush: '#9b2d1c',
    drop: '#17606d',
    man: '#5b3a86',
    fit: '#4a5a1f',
    gap: '#5a5f69',
    'gap-open': '#b3121f',
    'gap-text': '#16243c',
    stop: '#a5101d',
    check: '#855000',
    note: '#2a568a',
    clean: '#28663a',
    muted: '#68655c',
    highlight: '#b86a00',
  },
  faintMark: '#8b8a86',
  faintText: '#6f6d67',
};

/** A school copier: black, white and greys that survive it. */
export const PAPER_THEME: Theme = {
  name: 'paper',
  colours: {
    ground: '#ffffff',
    'yard-line': '#d4d4d4',
    hash: '#b4b4b4',
    sideline: '#808080',
    ball: '#000000',
    offence: '#404040',
    'offence-text': '#404040',
    defence: '#000000',
    'defence-text': '#000000',
    rush: '#000000',
    drop: '#000000',
    man: '#000000',
    fit: '#000000',
    gap: '#404040',
    'gap-open': '#000000',
    'gap-text': '#000000',
    stop: '#000000',
    check: '#000000',
    note: '#000000',
    clean: '#000000',
    muted: '#606060',
    highlight: '#000000',
  },
  faintMark: '#8f8f8f',
  faintText: '#707070',
};

/** The part an ink plays, which decides the contrast it owes. */
export function roleOfInk(ink: Ink): 'ground' | 'field' | 'mark' | 'text' {
  switch (ink) {
    case 'ground':
      return 'ground';
    case 'yard-line':
    case 'hash':
    case 'sideline':
      return 'field';
    case 'offence-text':
    case 'defence-text':
    case 'gap-text':
    case 'muted':
      return 'text';
    case 'ball':
    case 'offence':
    case 'defence':
    case 'rush':
    case 'drop':
    case 'man':
    case 'fit':
    case 'gap':
    case 'gap-open':
    case 'stop':
    case 'check':
    case 'note':
    case 'clean':
    case 'highlight':
      return 'mark';
    default:
      return assertNever(ink);
  }
}

/** The colour of a line or fill. */
export function markColour(theme: Theme, ink: Ink, faint: boolean): string {
  const role = roleOfInk(ink);
  return faint && (role === 'mark' || role === 'text') ? theme.faintMark : theme.colours[ink];
}

/** The colour of words in an ink. `ground` stays: it is the sign's own "!" on its filled shape. */
export function textColour(theme: Theme, ink: Ink, faint: boolean): string {
  return faint && roleOfInk(ink) !== 'ground' ? theme.faintText : theme.colours[ink];
}

/** Lines drawn light are also thinner. */
export function lineWidth(shape: { readonly width: number; readonly faint: boolean }): number {
  return shape.faint ? shape.width * 0.7 : shape.width;
}
