/** The roles of the invented team: an odd front's eleven, and who comes in for the other fronts. */
import { asGroupId, asRoleId, type Role, type RoleSide, type Room, type SideStep } from '../../src/engine/index.ts';
import { always, toward, withRole } from '../../src/starter/index.ts';

const bySteps = (...steps: SideStep[]): RoleSide => ({ kind: 'steps', steps });

/** The strong side as this staff sets it; the last step always decides. */
const STRONG = [toward('tight-end'), toward('receivers'), toward('field'), always('right')];

const role = (id: string, letter: string, name: string, room: Room, group: string, side: RoleSide): Role => ({
  id: asRoleId(id),
  letter,
  name,
  room,
  group: asGroupId(group),
  side,
});

export const roles: readonly Role[] = [
  role('nose', 'N', 'Nose', 'line', 'noses', { kind: 'middle' }),
  role('left-end', 'LE', 'Left end', 'line', 'ends', bySteps(always('left'))),
  role('right-end', 'RE', 'Right end', 'line', 'ends', bySteps(always('right'))),
  role('strong-edge', 'S', 'Strong outside backer', 'linebackers', 'outside-backers', bySteps(...STRONG)),
  role(
    'weak-edge',
    'J',
    'Weak outside backer',
    'linebackers',
    'outside-backers',
    bySteps(withRole('strong-edge', 'away')),
  ),
  role(
    'strong-inside',
    'M',
    'Strong inside backer',
    'linebackers',
    'inside-backers',
    bySteps(withRole('strong-edge', 'to')),
  ),
  role(
    'weak-inside',
    'W',
    'Weak inside backer',
    'linebackers',
    'inside-backers',
    bySteps(withRole('strong-edge', 'away')),
  ),
  role('strong-safety', 'SS', 'Strong safety', 'secondary', 'safeties', bySteps(withRole('strong-edge', 'to'))),
  role('free-safety', 'FS', 'Free safety', 'secondary', 'safeties', bySteps(withRole('strong-edge', 'away'))),
  role('left-corner', 'LC', 'Left corner', 'secondary', 'corners', bySteps(always('left'))),
  role('right-corner', 'RC', 'Right corner', 'secondary', 'corners', bySteps(always('right'))),
  role('fifth-back', 'NB', 'Fifth back', 'secondary', 'outside-backers', bySteps(...STRONG)),
  role('sixth-back', 'DB', 'Sixth back', 'secondary', 'outside-backers', bySteps(withRole('strong-edge', 'away'))),
  role('strong-end', 'SE', 'Strong end, four-man line', 'line', 'ends', bySteps(withRole('strong-edge', 'to'))),
  role('weak-end', 'WE', 'Weak end, four-man line', 'line', 'ends', bySteps(withRole('strong-edge', 'away'))),
  role('strong-tackle', 'ST', 'Strong tackle', 'line', 'tackles', bySteps(withRole('strong-edge', 'to'))),
  role('weak-tackle', 'WT', 'Weak tackle', 'line', 'tackles', bySteps(withRole('strong-edge', 'away'))),
  role('middle-backer', 'MB', 'Middle backer', 'linebackers', 'middle-backers', { kind: 'middle' }),
  role('middle-safety', 'MS', 'Middle safety', 'secondary', 'middle-safeties', { kind: 'middle' }),
];
