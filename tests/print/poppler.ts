import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A second program's opinion of our files: poppler reads them back (https://poppler.freedesktop.org). */
function ask(
  tool: 'pdftotext' | 'pdffonts' | 'pdfimages',
  pdf: Uint8Array,
  before: readonly string[],
  after: readonly string[],
): string {
  const folder = mkdtempSync(join(tmpdir(), 'gapwright-pdf-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    return execFileSync(tool, [...before, file, ...after], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The words of each page, as laid out, every run of white space one space. */
export function pagesOf(pdf: Uint8Array): readonly string[] {
  const pages = ask('pdftotext', pdf, ['-layout'], ['-']).split('\f');
  return pages.slice(0, -1).map((page) => page.replace(/\s+/gu, ' ').trim());
}

/** Every font the file uses: its name, and whether it is embedded. */
export function fontsOf(pdf: Uint8Array): readonly { readonly name: string; readonly embedded: boolean }[] {
  const [, rule = '', ...rows] = ask('pdffonts', pdf, [], []).split('\n');
  // Columns are as wide as the rule under their headings.
  const columns = [...rule.matchAll(/-+/g)].map((match) => [match.index, match.index + match[0].length] as const);
  const cell = (row: string, index: number) => row.slice(...(columns[index] ?? [0, 0])).trim();
  return rows.filter((row) => row !== '').map((row) => ({ name: cell(row, 0), embedded: cell(row, 3) === 'yes' }));
}

/** How many pictures the file holds. */
export function picturesOf(pdf: Uint8Array): number {
  return ask('pdfimages', pdf, ['-list'], []).trim().split('\n').length - 2;
}

/** A word of a page and its box, in points from the top left. */
export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Every page's size and words with their boxes. */
export function boxesOf(
  pdf: Uint8Array,
): readonly { readonly width: number; readonly height: number; readonly words: readonly Word[] }[] {
  const html = ask('pdftotext', pdf, ['-bbox'], ['-']);
  return html
    .split('<page ')
    .slice(1)
    .map((page) => {
      const [width = 0, height = 0] = [...page.matchAll(/^width="([\d.]+)" height="([\d.]+)"/g)].flatMap((match) => [
        Number(match[1]),
        Number(match[2]),
      ]);
      const found = page.matchAll(
        /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</g,
      );
      const words = Array.from(found, ([, left, top, right, bottom, text = '']): Word => ({
        text,
        left: Number(left),
        top: Number(top),
        right: Number(right),
        bottom: Number(bottom),
      }));
      return { width, height, words };
    });
}

/** Pairs of words that lie on each other. Boxes of neighbouring lines touch: what counts is the middle of the letters. */
export function overlapsOf(words: readonly Word[]): readonly string[] {
  const middle = ({ top, bottom }: Word) => [top + (bottom - top) / 4, bottom - (bottom - top) / 4] as const;
  return words.flatMap((one, index) => {
    const [top, bottom] = middle(one);
    return words.slice(index + 1).flatMap((other) => {
      const [otherTop, otherBottom] = middle(other);
      const across = one.left < other.right - 0.5 && other.left < one.right - 0.5;
      return across && top < otherBottom && otherTop < bottom ? [`${one.text} / ${other.text}`] : [];
    });
  });
}
