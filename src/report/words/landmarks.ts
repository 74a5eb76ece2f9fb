import { assertNever } from '../../base/index.ts';
import { techniqueAt, type Landmark, type LookFacts, type OffencePlace, type Point } from '../../engine/index.ts';
import type { Lexicon } from './lexicon.ts';
import { yardsText } from './lists.ts';
import type { StaffWords } from './staffWords.ts';
import { bodyLeverage, techniqueText } from './technique.ts';

const PLACE_WORDS: Readonly<Record<OffencePlace, string>> = {
  'on-line': 'on the line',
  'off-line': 'off the line',
  'under-snapper': 'under the snapper',
  pistol: 'pistol depth',
  gun: 'gun depth',
  fullback: 'fullback depth',
  deep: 'deep back',
};

/**
 * What a coach calls the spot where one or two lines cross: "4i left, inside foot of the tackle, 1 yd deep". `at` is the
 * spot itself: the number of a technique depends on its depth. Empty when there is no line.
 */
export function landmarkText(
  lines: readonly Landmark[],
  at: Point,
  facts: LookFacts,
  lexicon: Lexicon,
  staff: StaffWords,
): string {
  return lines.map((line) => lineText(line, at, facts, lexicon, staff)).join(', ');
}

function lineText({ what }: Landmark, at: Point, facts: LookFacts, lexicon: Lexicon, staff: StaffWords): string {
  switch (what.kind) {
    case 'shade': {
      const technique = techniqueAt(at, facts);
      if (technique === null) return 'in line with a shade';
      return `${techniqueText(technique, at.y, facts, staff)}, ${bodyLeverage(technique)}`;
    }
    case 'receiver':
      return what.leverage === 'head'
        ? `head up on number ${what.number} ${what.side}`
        : `${what.leverage} number ${what.number} ${what.side}`;
    case 'apex':
      return `half way to number ${what.number} ${what.side}`;
    case 'ball':
      return 'over the ball';
    case 'hash':
      return `on the ${what.side} hash`;
    case 'numbers':
      return `on the ${what.side} numbers`;
    case 'depth':
      return `${yardsText(what.yards)} deep`;
    case 'place':
      return PLACE_WORDS[what.place];
    case 'split':
      return `one split from ${lexicon.player(what.outside)}`;
    case 'between':
      return `in the middle of ${lexicon.players(what.players)}`;
    case 'as-wide':
      return `as wide as ${lexicon.player(what.as)}`;
    case 'level':
      return `level with ${what.with.kind === 'defender' ? lexicon.role(what.with.role) : lexicon.player(what.with.player)}`;
    default:
      return assertNever(what);
  }
}
