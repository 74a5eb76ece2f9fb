import PDFDocument from 'pdfkit';
import { artifact, tagged, type Flow, type Structure } from './flow.ts';
import { openFonts } from './fonts.ts';
import { areaOf, drawFooter, drawHeader, PAPER_SIZES, type Area } from './page.ts';
import { makePen, type Pen } from './pen.ts';
import { drawSheet } from './sheet.ts';
import type { PrintInput, Sheet } from './types.ts';

/**
 * One PDF of all sheets, each on pages of its own: vector drawings, embedded fonts, a bookmark a sheet, and a structure for
 * readers that speak; no links, forms, pictures or scripts. The same input gives the same bytes on the same runtime.
 * Rejects when a font cannot be read.
 */
export async function printSheets(input: PrintInput): Promise<Uint8Array> {
  const [width, height] = PAPER_SIZES[input.paper];
  const doc = new PDFDocument({
    size: [width, height],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    // No standard font: everything drawn is embedded.
    font: '',
    info: { CreationDate: input.created, Creator: 'Gapwright' },
  });
  const bytes = collect(doc);
  const pen = makePen(doc, openFonts(doc, input.fonts));
  doc.info.Title = metadataText(pen.clean(input.title));
  const area = areaOf(pen, input.paper);
  const root = doc.struct('Document');
  doc.addStructure(root);
  for (const sheet of input.sheets) drawOne(pen, area, input, sheet, root);
  root.end();
  drawFooters(pen, area, input);
  doc.end();
  return bytes;
}

/** The library also writes the title into a piece of XML, as it is: what XML would misread is written in other signs. */
function metadataText(text: string): string {
  return text.replaceAll('&', 'and').replaceAll('<', '(').replaceAll('>', ')');
}

function drawOne(pen: Pen, area: Area, input: PrintInput, sheet: Sheet, root: Structure): void {
  const section = pen.doc.struct('Sect');
  root.add(section);
  const flow: Flow = {
    pen,
    area,
    section,
    y: area.top,
    need: (height) => {
      if (flow.y + height <= area.bottom + 0.01) return false;
      pen.doc.addPage();
      artifact(pen, () => {
        flow.y = drawHeader(pen, area, input, sheet, true);
      });
      return true;
    },
  };
  pen.doc.addPage();
  tagged(flow, section, 'H1', () => {
    flow.y = drawHeader(pen, area, input, sheet, false);
  });
  pen.doc.outline.addItem(pen.clean(`${sheet.title.call}: ${sheet.title.look}`));
  drawSheet(flow, input, sheet);
  section.end();
}

/** Page numbers need to know how many there are, so feet come last. */
function drawFooters(pen: Pen, area: Area, input: PrintInput): void {
  const { start, count } = pen.doc.bufferedPageRange();
  for (let index = 0; index < count; index += 1) {
    pen.doc.switchToPage(start + index);
    artifact(pen, () => {
      drawFooter(pen, area, input, index + 1, count);
    });
  }
}

/** Everything the document writes, in one piece. */
function collect(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.byteLength, 0));
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.byteLength;
      }
      resolve(whole);
    });
  });
}
