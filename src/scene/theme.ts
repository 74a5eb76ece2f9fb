import { assertNever } from '../base/index.ts';
import type { Ink } from './shapes.ts';

/**
 * Colours of one medium. Shape and word carry every meaning; colour only helps (WCAG 2.2, 1.4.1). Marks have at least 3 : 1
 * against the ground and text 4.5 : 1 (1.4.11, 1.4.3), drawn light or not; the lines of the field itself are decoration.
 */
export interface Theme {
  readonly name: 'light' | 'dark' | 'projector' | 'paper';
  readonly colours: Readonly<Record<Ink, string>>;
  /** The one colour of everything drawn light, field lines left alone. */
  readonly faintMark: string;
  readonly faintText: string;
  /** How much heavier its lines and how much larger its words are than drawn. */
  readonly lineScale: number;
  readonly letterScale: number;
}

/** The screen by day: unbleached paper, ink blue, and four muted hues for the four kinds of path. */
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
  lineScale: 1,
  letterScale: 1,
};

/** The screen at night or in a dark room: the same hues, light on slate. */
export const DARK_THEME: Theme = {
  name: 'dark',
  colours: {
    ground: '#171b1d',
    'yard-line': '#2b3235',
    hash: '#4c5559',
    sideline: '#7b8588',
    ball: '#c88f5c',
    offence: '#a9b0b8',
    'offence-text': '#d0d5db',
    defence: '#f4f2eb',
    'defence-text': '#f4f2eb',
    rush: '#ff9480',
    drop: '#66c4d4',
    man: '#c7a9f2',
    fit: '#b8cd72',
    gap: '#a9b0b8',
    'gap-open': '#ff868c',
    'gap-text': '#f4f2eb',
    stop: '#ff968e',
    check: '#f0b95a',
    note: '#9dbff5',
    clean: '#84cfa4',
    muted: '#aeb2ac',
    highlight: '#ffb84d',
  },
  faintMark: '#6d7578',
  faintText: '#8b9396',
  lineScale: 1,
  letterScale: 1,
};

/** A projector in a bright room: black and deep hues on white, heavier and larger. */
export const PROJECTOR_THEME: Theme = {
  name: 'projector',
  colours: {
    ground: '#ffffff',
    'yard-line': '#c9c9c9',
    hash: '#8c8c8c',
    sideline: '#5a5a5a',
    ball: '#4a2a0c',
    offence: '#2e2e2e',
    'offence-text': '#000000',
    defence: '#000000',
    'defence-text': '#000000',
    rush: '#8f1200',
    drop: '#004a59',
    man: '#3f1372',
    fit: '#2f3d00',
    gap: '#2e2e2e',
    'gap-open': '#a00010',
    'gap-text': '#000000',
    stop: '#8c0010',
    check: '#5c3600',
    note: '#0b2f73',
    clean: '#00431f',
    muted: '#303030',
    highlight: '#9a4b00',
  },
  faintMark: '#757575',
  faintText: '#5e5e5e',
  lineScale: 1.35,
  letterScale: 1.14,
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
  lineScale: 1,
  letterScale: 1,
};

/** The themes of the screen, by name. */
export const SCREEN_THEMES = { light: LIGHT_THEME, dark: DARK_THEME, projector: PROJECTOR_THEME } as const;

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

/** The width of a line in yards: lines drawn light are also thinner. */
export function lineWidth(theme: Theme, shape: { readonly width: number; readonly faint: boolean }): number {
  return (shape.faint ? shape.width * 0.7 : shape.width) * theme.lineScale;
}

/** The size of words, in yards. */
export function letterSize(theme: Theme, shape: { readonly size: number }): number {
  return shape.size * theme.letterScale;
}
