import { lineHeight, type Face, type Pen } from './pen.ts';
import { drawSign } from './signs.ts';
import type { Paper, PrintInput, Sheet } from './types.ts';

/** Paper sizes in points. Sources: ANSI/ASME Y14.1 (A, 8.5 by 11 in); ISO 216 (A4, 210 by 297 mm). */
export const PAPER_SIZES: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  letter: [612, 792],
  a4: [(210 / 25.4) * 72, (297 / 25.4) * 72],
};

const MARGIN = 31;

/** Type of the sheet. */
export const FACES = {
  call: { cut: 'bold', size: 15, colour: '#000000' },
  title: { cut: 'regular', size: 9.5, colour: '#000000' },
  verdict: { cut: 'bold', size: 10.5, colour: '#000000' },
  heading: { cut: 'bold', size: 9, colour: '#000000' },
  cell: { cut: 'regular', size: 7.5, colour: '#000000' },
  strong: { cut: 'bold', size: 7.5, colour: '#000000' },
  head: { cut: 'bold', size: 7, colour: '#404040' },
  note: { cut: 'regular', size: 8, colour: '#000000' },
  small: { cut: 'regular', size: 7, colour: '#404040' },
  caution: { cut: 'regular', size: 6.4, colour: '#404040' },
} as const satisfies Record<string, Face>;

/** The usual cautions, in our own words; the limits themselves belong to those named in it. */
export const CAUTION =
  'Teach rushers to see what they hit: head up, strike with shoulder and hands, aim at the chest or below; no launching, no ' +
  'hit with the crown of the helmet, off the passer once the ball is gone, and no diving at a lineman’s knees unless your ' +
  'code’s low-block rule allows it. Follow your state association’s or league’s contact and heat rules, your school’s policy ' +
  'and your athletic trainer; a player who may have a head injury comes out and returns only when a medical professional ' +
  'clears him.';

/** The printable part of a page, in points. */
export interface Area {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  /** Where the footer begins. */
  readonly bottom: number;
}

/** What is left for the sheet between the margins, above the footer. */
export function areaOf(pen: Pen, paper: Paper): Area {
  const [width, height] = PAPER_SIZES[paper];
  const inside = width - 2 * MARGIN;
  return { left: MARGIN, width: inside, top: MARGIN, bottom: height - MARGIN - footerHeight(pen, inside) };
}

function cautionLines(pen: Pen, width: number): readonly string[] {
  return pen.lines(CAUTION, FACES.caution, width);
}

function footerHeight(pen: Pen, width: number): number {
  return 5 + cautionLines(pen, width).length * lineHeight(FACES.caution) + 3 + lineHeight(FACES.small);
}

/** The foot of a page: the caution, whose playbook and version it is, and which page of how many. */
export function drawFooter(pen: Pen, area: Area, input: PrintInput, page: number, pages: number): void {
  const right = area.left + area.width;
  pen.doc.moveTo(area.left, area.bottom).lineTo(right, area.bottom).lineWidth(0.5).stroke('#808080');
  let y = area.bottom + 5;
  for (const line of cautionLines(pen, area.width)) {
    pen.draw(line, FACES.caution, area.left, y);
    y += lineHeight(FACES.caution);
  }
  const number = `page ${String(page)} of ${String(pages)}`;
  const numberWidth = pen.width(number, FACES.small);
  const [from = ''] = pen.lines(`${input.book} · ${input.stamp}`, FACES.small, area.width - numberWidth - 12, 1);
  pen.draw(from, FACES.small, area.left, y + 3);
  pen.draw(number, FACES.small, right - numberWidth, y + 3);
}

/**
 * The head of a page, the same on every page of a sheet; names longer than two lines are cut with "...". Gives the y below
 * it, in points.
 */
export function drawHeader(pen: Pen, area: Area, input: PrintInput, sheet: Sheet, continued: boolean): number {
  const verdict = pen.clean(sheet.report.verdictText);
  const room = area.width * 0.42;
  const [word = ''] = pen.lines(verdict, FACES.verdict, room - 18, 1);
  const wordWidth = pen.width(word, FACES.verdict);
  const right = area.left + area.width;
  drawSign(pen, sheet.report.verdict, right - wordWidth - 19, area.top + 1.5, 14);
  pen.draw(word, FACES.verdict, right - wordWidth, area.top + 2.5);
  const [counts = ''] = pen.lines(sheet.report.counts, FACES.small, room, 1);
  const countsWidth = pen.width(counts, FACES.small);
  pen.draw(counts, FACES.small, right - countsWidth, area.top + 3.5 + lineHeight(FACES.verdict));
  let y = area.top;
  for (const line of pen.lines(
    sheet.title.call,
    FACES.call,
    area.width - Math.max(wordWidth + 34, countsWidth + 12),
    2,
  )) {
    pen.draw(line, FACES.call, area.left, y);
    y += lineHeight(FACES.call);
  }
  // The counts stand beside the first line under the call's name.
  titleLines(input, sheet, continued).forEach((text, index) => {
    for (const line of pen.lines(text, FACES.title, area.width - (index === 0 ? countsWidth + 12 : 0), 2)) {
      pen.draw(line, FACES.title, area.left, y);
      y += lineHeight(FACES.title);
    }
  });
  pen.doc
    .moveTo(area.left, y + 3)
    .lineTo(right, y + 3)
    .lineWidth(0.8)
    .stroke('#000000');
  return y + 8;
}

function titleLines(input: PrintInput, { title }: Sheet, continued: boolean): readonly string[] {
  const { front, pressures, coverage, look, personnel, spot, callSide } = title;
  const joined = (parts: readonly string[]) => parts.filter((part) => part.trim() !== '').join(' · ');
  return [
    joined([continued ? 'Continued' : '', front, pressures, coverage]),
    joined([look, personnel === '' ? '' : `personnel ${personnel}`, spot, callSide, input.room?.name ?? '']),
  ];
}
