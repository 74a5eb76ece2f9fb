import { artifact, tagged, type Block, type Flow } from './flow.ts';
import { FACES } from './page.ts';
import { lineHeight, type Face } from './pen.ts';
import { drawSign, type SignName } from './signs.ts';

/** Space between two blocks. */
export const BETWEEN = 6;

/** How far the words beside a sign stand from the edge. */
const INDENT = 13;

/** Empty space. */
export function spaceBlock(flow: Flow, height: number): Block {
  return {
    height,
    draw: () => {
      flow.y += height;
    },
  };
}

/** Words across the sheet, line by line, so that they can go over pages; no words, no block. */
export function paragraphBlock(flow: Flow, text: string, face: Face, indent = 0): Block {
  const lines = flow.pen.lines(text, face, flow.area.width - indent);
  const drawLine = (line: string) => {
    flow.need(lineHeight(face));
    tagged(flow, flow.section, 'P', () => {
      flow.pen.draw(line, face, flow.area.left + indent, flow.y);
    });
    flow.y += lineHeight(face);
  };
  return {
    height: lines.length * lineHeight(face),
    draw: () => lines.forEach(drawLine),
  };
}

/** A sign with what it says beside it in bold, a line or more each, and below that what stands behind it, in small. */
export function signedBlock(flow: Flow, sign: SignName, texts: readonly string[], below: string): Block {
  const parts = [
    ...texts.map((text) => paragraphBlock(flow, text, FACES.strong, INDENT)),
    paragraphBlock(flow, below, FACES.small, INDENT),
    spaceBlock(flow, 2),
  ];
  const height = parts.reduce((sum, part) => sum + part.height, 0);
  return {
    height,
    draw: () => {
      flow.need(Math.min(height, 4 * lineHeight(FACES.strong)));
      artifact(flow.pen, () => {
        drawSign(flow.pen, sign, flow.area.left + 1, flow.y + 0.3, 9);
      });
      for (const part of parts) part.draw();
    },
  };
}

/** A heading, which stays with the beginning of what it heads. */
export function headingBlock(flow: Flow, text: string, heads: Block): Block {
  const height = lineHeight(FACES.heading) + 2;
  return {
    height,
    draw: () => {
      flow.need(height + Math.min(40, heads.height));
      tagged(flow, flow.section, 'H2', () => {
        const [line = ''] = flow.pen.lines(text, FACES.heading, flow.area.width, 1);
        flow.pen.draw(line, FACES.heading, flow.area.left, flow.y);
      });
      flow.y += height;
    },
  };
}

/** Blocks under their heading, with space after them; nothing for no blocks. */
export function titled(flow: Flow, text: string, blocks: readonly Block[]): readonly Block[] {
  const [first] = blocks;
  return first === undefined ? [] : [headingBlock(flow, text, first), ...blocks, spaceBlock(flow, BETWEEN)];
}

/** Texts as sentences, one after another. */
export function asSentences(texts: readonly string[]): string {
  return texts
    .filter((text) => text.trim() !== '')
    .map((text) => (/[.!?]$/.test(text) ? text : `${text}.`))
    .join(' ');
}
