import type { Path, Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

const PARTS = ['roles', 'fronts', 'coverages', 'looks', 'pressures', 'calls', 'opponents', 'sheets'] as const;

/** Every id once in its part; every player once in his look; one spot by hand, and one word, for one thing. */
export function duplicates(playbook: Playbook): readonly Problem[] {
  return [
    ...PARTS.flatMap((part) =>
      repeated(
        playbook[part].map(({ id }) => id),
        [part],
        'id',
        'an id used only once in this part',
      ),
    ),
    ...playbook.looks.flatMap(({ players }, look) =>
      repeated(
        players.map(({ id }) => id),
        ['looks', look, 'players'],
        'id',
        'an id used only once in this look',
      ),
    ),
    ...playbook.fronts.flatMap(({ roles, byHand }, front) => [
      ...repeated(
        roles.map(({ role }) => role),
        ['fronts', front, 'roles'],
        'role',
        'eleven different roles',
      ),
      ...repeated(
        byHand.map(({ look, role }) => `${look} ${role}`),
        ['fronts', front, 'byHand'],
        'role',
        'one spot by hand for a role in a look',
      ),
    ]),
    ...repeated(
      playbook.words.techniques.map(({ on, leverage }) => `${on} ${leverage}`),
      ['words', 'techniques'],
      'leverage',
      'one word for a body and leverage',
    ),
  ];
}

/** A problem at each entry whose key an earlier entry of the list has. */
function repeated(keys: readonly string[], list: Path, field: string, expected: string): readonly Problem[] {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  keys.forEach((key, index) => {
    if (seen.has(key)) problems.push({ path: [...list, index, field], found: null, expected });
    seen.add(key);
  });
  return problems;
}
