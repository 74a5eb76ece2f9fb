import { execFileSync } from 'node:child_process';

/** A PDF as a second program reads it (poppler's pdftotext, pdffonts and pdfimages). */
export interface ReadPdf {
  readonly text: string;
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
  readonly images: number;
}

/** Reads a PDF file back. */
export function readPdf(path: string): ReadPdf {
  const lines = (tool: string, ...args: readonly string[]): readonly string[] =>
    execFileSync(tool, args, { encoding: 'utf8' })
      .split('\n')
      .filter((line) => line !== '');
  // Both tables start with a heading and a rule.
  const fonts = lines('pdffonts', path).slice(2);
  const images = lines('pdfimages', '-list', path).slice(2);
  return {
    text: execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' }),
    fonts: fonts.map((line) => ({ name: line.split(/\s+/)[0] ?? '', embedded: / yes (yes|no) +(yes|no) /.test(line) })),
    images: images.length,
  };
}
