import {
  asGroupId,
  asRoleId,
  type Direction,
  type Role,
  type RoleId,
  type RoleSide,
  type Room,
  type SideStep,
} from '../engine/index.ts';
import { always, toward, withRole } from './words.ts';

/** Fronts to start from: three, four or five men on the line. */
export const START_FRONTS = ['odd', 'even', 'bear'] as const;
export type StartFront = (typeof START_FRONTS)[number];

/** How backers and safeties choose their side. */
export const START_SIDES = ['strength', 'field', 'left-right'] as const;
export type StartSides = (typeof START_SIDES)[number];

/** The two sides as their men are named: the first goes to the strength, to the field, or right. */
const SIDE_NAMES: Readonly<Record<StartSides, readonly [string, string]>> = {
  strength: ['Strong', 'Weak'],
  field: ['Field', 'Boundary'],
  'left-right': ['Right', 'Left'],
};

/** How the man who leads chooses; the last step always decides. */
const LEADS: Readonly<Record<StartSides, readonly SideStep[]>> = {
  strength: [toward('tight-end'), toward('receivers'), toward('field'), always('right')],
  field: [toward('field'), toward('tight-end'), toward('receivers'), always('right')],
  'left-right': [always('right')],
};

/** The usual letters of pairs, by how they choose (common practice, no source); a coach writes his own over them. */
const LETTERS: Readonly<Record<StartSides, Readonly<Record<'edge' | 'inside' | 'safety', readonly [string, string]>>>> =
  {
    strength: { edge: ['S', 'J'], inside: ['M', 'W'], safety: ['SS', 'FS'] },
    field: { edge: ['F', 'B'], inside: ['M', 'W'], safety: ['FS', 'BS'] },
    'left-right': { edge: ['RO', 'LO'], inside: ['RI', 'LI'], safety: ['RS', 'LS'] },
  };

const bySteps = (...steps: SideStep[]): RoleSide => ({ kind: 'steps', steps });

/** The eleven roles of a front, a strong one before its weak mate, with the usual letters. */
export function startRoles(front: StartFront, sides: StartSides): readonly Role[] {
  const lead: RoleId = asRoleId(front === 'even' ? 'fifth-back' : 'strong-edge');
  const [first, second] = SIDE_NAMES[sides];
  const letters = LETTERS[sides];
  const make = (id: string, letter: string, name: string, room: Room, group: string, side: RoleSide): Role => ({
    id: asRoleId(id),
    letter,
    name,
    room,
    group: asGroupId(group),
    side,
  });
  const withLead = (toward: Direction): RoleSide => bySteps(withRole(lead, toward));
  const leads = bySteps(...LEADS[sides]);
  const leftRight = (what: string, word: string, room: Room, group: string, short: string): readonly Role[] => [
    make(`left-${what}`, `L${short}`, `Left ${word}`, room, group, bySteps(always('left'))),
    make(`right-${what}`, `R${short}`, `Right ${word}`, room, group, bySteps(always('right'))),
  ];
  const pair = (what: string, word: string, room: Room, group: string, [one, other]: readonly [string, string]) => [
    make(`strong-${what}`, one, `${first} ${word}`, room, group, withLead('to')),
    make(`weak-${what}`, other, `${second} ${word}`, room, group, withLead('away')),
  ];
  const line =
    front === 'even'
      ? [
          ...pair('end', 'end', 'line', 'ends', initials(sides, 'E')),
          ...pair('tackle', 'tackle', 'line', 'tackles', initials(sides, 'T')),
        ]
      : [
          make('nose', 'N', 'Nose', 'line', 'noses', { kind: 'middle' }),
          ...leftRight('end', 'end', 'line', 'ends', 'E'),
        ];
  const edges =
    front === 'even'
      ? [make('fifth-back', letters.edge[0], `${first} outside backer`, 'linebackers', 'outside-backers', leads)]
      : [
          make('strong-edge', letters.edge[0], `${first} outside backer`, 'linebackers', 'outside-backers', leads),
          make(
            'weak-edge',
            letters.edge[1],
            `${second} outside backer`,
            'linebackers',
            'outside-backers',
            withLead('away'),
          ),
        ];
  return [
    ...line,
    ...edges,
    ...pair('inside', 'inside backer', 'linebackers', 'inside-backers', letters.inside),
    ...pair('safety', 'safety', 'secondary', 'safeties', letters.safety).map((role, at) =>
      // The safety away from the strength is the free one, by his name too.
      at === 0
        ? role
        : { ...role, id: asRoleId('free-safety'), name: sides === 'strength' ? 'Free safety' : role.name },
    ),
    ...leftRight('corner', 'corner', 'secondary', 'corners', 'C'),
  ];
}

/** "SE" and "WE" for the ends of a staff that goes by the strength. */
function initials(sides: StartSides, last: string): readonly [string, string] {
  const [first, second] = SIDE_NAMES[sides];
  return [`${first.charAt(0)}${last}`, `${second.charAt(0)}${last}`];
}
