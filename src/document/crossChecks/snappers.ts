import type { Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

/** One snapper in every look, for gaps are counted from him. That there are eleven players is the schema's business. */
export function snappers(playbook: Playbook): readonly Problem[] {
  return playbook.looks.flatMap(({ players }, look) => {
    const number = players.filter(({ kind }) => kind === 'snapper').length;
    if (number === 1) return [];
    return [{ path: ['looks', look, 'players'], found: `${number} snappers`, expected: 'exactly one snapper' }];
  });
}
