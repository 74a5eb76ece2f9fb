import { readFileSync } from 'node:fs';
import { openDocument } from '../../../src/document/index.ts';
import {
  mirrorPlace,
  mirrorSide,
  readLook,
  type Gap,
  type Look,
  type LookFacts,
  type Place,
} from '../../../src/engine/index.ts';
import { look, LOOKS, read } from '../book.ts';

/** The looks of the demo playbook and of the engine's own tests, by name. */
export const ALL_LOOKS: readonly (readonly [name: string, look: Look])[] = [
  ...read(openDocument(readFileSync(new URL('../../../demo-data/playbook.json', import.meta.url)))).looks.map(
    (each) => [each.id, each] as const,
  ),
  ...Object.entries(LOOKS).map(([name, text]) => [name, look(text)] as const),
];

/** Zero has no mirror: -0 would compare differently. */
export const flipX = <At extends { readonly x: number }>(at: At): At => ({ ...at, x: at.x === 0 ? 0 : -at.x });
export const flipGap = (gap: Gap): Gap => ({ ...gap, side: mirrorSide(gap.side) });

/** A look and its mirror image, both read. */
export function bothWays(
  drawn: Look,
  spot: Place = 'middle',
): { readonly facts: LookFacts; readonly flipped: LookFacts } {
  const image: Look = { ...drawn, players: drawn.players.map(flipX) };
  return {
    facts: readLook(drawn, 'high-school', spot),
    flipped: readLook(image, 'high-school', mirrorPlace(spot)),
  };
}
