import type { Cut, HasGlyph } from './fonts.ts';
import { plainText } from './plainText.ts';

/** How words look: size in points. */
export interface Face {
  readonly cut: Cut;
  readonly size: number;
  readonly colour: string;
}

/** Height of a line against its size, and of its baseline. */
const LINE = 1.24;
const BASELINE = 0.96;

/** Sets type: measures, breaks and draws words. All measures in points; y grows down the page. */
export interface Pen {
  readonly doc: PDFKit.PDFDocument;
  /** Text as this document's typeface can draw it. */
  readonly clean: (text: string) => string;
  readonly width: (text: string, face: Face) => number;
  /** Breaks clean text into lines of at most that width, inside a word if it must; past `most` lines it ends in "...". */
  readonly lines: (text: string, face: Face, width: number, most?: number) => readonly string[];
  /** Draws one line with its top at y. */
  readonly draw: (line: string, face: Face, x: number, y: number) => void;
}

/** Height of a line of that face. */
export function lineHeight(face: Face): number {
  return face.size * LINE;
}

/** A pen for a document whose fonts are open. */
export function makePen(doc: PDFKit.PDFDocument, hasGlyph: HasGlyph): Pen {
  const width = (text: string, face: Face) => doc.font(face.cut).fontSize(face.size).widthOfString(text);
  return {
    doc,
    width,
    clean: (text) => plainText(text, hasGlyph),
    lines: (text, face, room, most = Infinity) => {
      const broken = breakLines(plainText(text, hasGlyph), (part) => width(part, face), room);
      return broken.length <= most ? broken : shortened(broken.slice(0, most), (part) => width(part, face), room);
    },
    draw: (line, face, x, y) => {
      if (line === '') return;
      doc.font(face.cut).fontSize(face.size).fillColor(face.colour);
      doc.text(line, x, y + face.size * BASELINE, { lineBreak: false, baseline: 'alphabetic' });
    },
  };
}

/** Greedy lines: as many words as fit, a word longer than a line cut where it must be. */
function breakLines(text: string, measure: (part: string) => number, room: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) <= room) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = cutWord(word, measure, room);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  return line === '' ? lines : [...lines, line];
}

/** Pieces of a word that each fit; at least one character a piece, so that it ends. */
function cutWord(word: string, measure: (part: string) => number, room: number): readonly string[] {
  if (measure(word) <= room) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && measure(piece + character) > room) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}

function shortened(lines: readonly string[], measure: (part: string) => number, room: number): readonly string[] {
  let last = Array.from(lines.at(-1) ?? '');
  while (last.length > 0 && measure(`${last.join('')}...`) > room) last = last.slice(0, -1);
  return [...lines.slice(0, -1), `${last.join('')}...`];
}
