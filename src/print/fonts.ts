import type { SheetFonts } from './types.ts';

/** The two cuts of the sheet's typeface. */
export type Cut = 'regular' | 'bold';

/** Whether a typeface can draw a character. */
export type HasGlyph = (codePoint: number) => boolean;

/**
 * Hands the fonts to the document, and says which characters both of them can draw. The library has no public way to ask, so
 * this looks at what it opened; if a later version of it hides that elsewhere, this throws instead of printing holes.
 */
export function openFonts(doc: PDFKit.PDFDocument, fonts: SheetFonts): HasGlyph {
  doc.registerFont('regular', fonts.regular);
  doc.registerFont('bold', fonts.bold);
  const bold = glyphsOf(doc.font('bold'));
  const regular = glyphsOf(doc.font('regular'));
  return (codePoint) => regular(codePoint) && bold(codePoint);
}

function glyphsOf(doc: PDFKit.PDFDocument): HasGlyph {
  const opened: unknown = Reflect.get(doc, '_font');
  const font: unknown = isObject(opened) ? Reflect.get(opened, 'font') : undefined;
  const ask: unknown = isObject(font) ? Reflect.get(font, 'hasGlyphForCodePoint') : undefined;
  if (!isObject(font) || typeof ask !== 'function')
    throw new Error('The PDF library no longer says which glyphs a font has');
  return (codePoint) => Reflect.apply(ask, font, [codePoint]) === true;
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
