import type { Area } from './page.ts';
import type { Pen } from './pen.ts';

/** An element of the document's structure. */
export type Structure = ReturnType<PDFKit.PDFDocument['struct']>;

/** Where the next thing goes on a sheet, and the way to the next page. */
export interface Flow {
  readonly pen: Pen;
  readonly area: Area;
  /** The sheet's part of the document's structure, for readers that speak. */
  readonly section: Structure;
  /** The y of the next free line, in points. */
  y: number;
  /** Makes room for that many points: turns the page if they are not left. Says whether it turned. */
  readonly need: (height: number) => boolean;
}

/** A part of a sheet: how high it is when it need not turn the page, in points, and how to draw it. */
export interface Block {
  readonly height: number;
  readonly draw: () => void;
}

/** Draws something as one element of the structure: "P", "H2", "TD", with words for what is a picture. */
export function tagged(flow: Flow, parent: Structure, tag: string, draw: () => void, alt?: string): void {
  const element = flow.pen.doc.struct(tag, alt === undefined ? {} : { alt }, draw);
  parent.add(element);
}

/** An element that holds others; end it when they are all in. */
export function group(flow: Flow, parent: Structure, tag: string): Structure {
  const element = flow.pen.doc.struct(tag);
  parent.add(element);
  return element;
}

/** Draws something that is not part of the text: rules, heads and feet. */
export function artifact(pen: Pen, draw: () => void): void {
  pen.doc.markContent('Artifact', { type: 'Pagination' });
  draw();
  pen.doc.endMarkedContent();
}
