import type { Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

/** The man in motion is one of the look's own eleven; an id of a player means nothing outside his look. */
export function strangersInMotion({ looks }: Playbook): readonly Problem[] {
  return looks.flatMap(({ players, motion }, look): readonly Problem[] => {
    if (motion === null || players.some(({ id }) => id === motion.player)) return [];
    return [{ path: ['looks', look, 'motion', 'player'], found: null, expected: 'the id of a player of this look' }];
  });
}
