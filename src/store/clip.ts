import { compareBy } from '../base/index.ts';
import type { Look, OffencePlayer, PlayerId, RoleId } from '../engine/index.ts';
import type { ClipSpot, Standing } from './types.ts';

/** The spots of those men in that look, to be put into another. */
export function copySpots(look: Look, men: readonly Standing[]): readonly ClipSpot[] {
  return men.flatMap(({ man, at }): readonly ClipSpot[] => {
    if (man.kind === 'defender') return [{ kind: 'defender', role: man.role, at }];
    const player = look.players.find(({ id }) => id === man.player);
    if (player === undefined) return [];
    return [{ kind: 'offence', letter: player.letter, nth: nthOf(look, man.player, player.letter), at }];
  });
}

/** Where those spots put the men of that look and those roles; a spot for whom nobody is there is left out. */
export function pasteSpots(clip: readonly ClipSpot[], look: Look, roles: readonly RoleId[]): readonly Standing[] {
  return clip.flatMap((spot): readonly Standing[] => {
    const { at } = spot;
    if (spot.kind === 'defender') {
      return roles.includes(spot.role) ? [{ man: { kind: 'defender', role: spot.role }, at }] : [];
    }
    const player = withLetter(look, spot.letter)[spot.nth];
    return player === undefined ? [] : [{ man: { kind: 'offence', player: player.id }, at }];
  });
}

function nthOf(look: Look, player: PlayerId, letter: string): number {
  return withLetter(look, letter).findIndex(({ id }) => id === player);
}

function withLetter({ players }: Look, letter: string): readonly OffencePlayer[] {
  return players
    .filter((each) => each.letter === letter)
    .toSorted(
      compareBy(
        ({ x }) => x,
        ({ y }) => y,
        ({ id }) => id,
      ),
    );
}
