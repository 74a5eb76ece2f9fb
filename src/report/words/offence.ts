import { compareBy } from '../../base/index.ts';
import type { OffencePlayer, PlayerId } from '../../engine/index.ts';
import { KIND_WORDS } from './names.ts';

/** A man of the offence in words. */
export interface PlayerWords {
  /** His letter, told apart from a mate with the same one: "Z", "G left". */
  readonly short: string;
  /** How a coach says it: "the tight end Y". */
  readonly spoken: string;
}

/** Words for every man of a look. Sides are the defence's; a man without a letter is told by what he is. */
export function playerWords(players: readonly OffencePlayer[]): ReadonlyMap<PlayerId, PlayerWords> {
  return new Map(players.map((player) => [player.id, wordsFor(player, players)]));
}

function wordsFor(player: OffencePlayer, players: readonly OffencePlayer[]): PlayerWords {
  const kind = KIND_WORDS[player.kind];
  const mates = players.filter((other) => other.letter === player.letter);
  const apart = mates.length === 1 ? '' : ` ${whichOf(player, mates)}`;
  const alone = players.filter((other) => other.kind === player.kind).length === 1;
  const one = player.kind === 'snapper' || player.kind === 'passer';
  return {
    short: player.letter === '' ? `${kind}${apart}` : `${player.letter}${apart}`,
    spoken:
      player.letter === '' || (alone && one)
        ? `the ${kind}${alone ? '' : apart}`
        : `the ${kind} ${player.letter}${apart}`,
  };
}

/** Which of several men with one letter: by side, and on one side counted from the ball outward. */
function whichOf(player: OffencePlayer, mates: readonly OffencePlayer[]): string {
  const side = sideOf(player);
  const near = mates
    .filter((other) => sideOf(other) === side)
    .sort(
      compareBy(
        (other) => Math.abs(other.x),
        (other) => -other.y,
        (other) => other.id,
      ),
    );
  if (near.length === 1) return side;
  return `${side}, number ${String(near.indexOf(player) + 1)} from the ball`;
}

function sideOf(player: OffencePlayer): string {
  return player.x < 0 ? 'left' : player.x > 0 ? 'right' : 'middle';
}
