/**
 * A small whole playbook of a made-up team, as plain JSON: every kind of step, spot, job, test, check-out and combination
 * the format knows occurs in it at least once. Fresh on every call, so a test may spoil its copy.
 */
import { openDocument, type Playbook } from '../../src/document/index.ts';
import {
  bodiesThree,
  calls,
  checkOuts,
  coverages,
  edgeGap,
  fixed,
  letterGap,
  pressures,
  toStrength,
  type Json,
} from './sampleMenu.ts';

export type { Json } from './sampleMenu.ts';

const bySide = (...steps: Json[]): Json => ({ kind: 'steps', steps });

function role(id: string, letter: string, name: string, room: string, group: string, side: Json): Json {
  return { id, letter, name, room, group, side };
}

function roles(): Json[] {
  return [
    role('LE', 'E', 'Left end', 'line', 'ends', bySide(fixed('left'))),
    role('N', 'N', 'Nose', 'line', 'nose', { kind: 'middle' }),
    role('RE', 'E', 'Right end', 'line', 'ends', bySide(fixed('right'))),
    role('O', 'O', 'Strong outside', 'linebackers', 'outside', bySide(toStrength('tight-end', 'to'), fixed('right'))),
    role('W', 'W', 'Weak outside', 'linebackers', 'outside', bySide({ kind: 'role', role: 'O', toward: 'away' })),
    role('LI', 'I', 'Left inside', 'linebackers', 'inside', bySide(fixed('left'))),
    role('RI', 'I', 'Right inside', 'linebackers', 'inside', bySide(fixed('right'))),
    role('LC', 'C', 'Left corner', 'secondary', 'corners', bySide(fixed('left'))),
    role('RC', 'C', 'Right corner', 'secondary', 'corners', bySide(fixed('right'))),
    role('SS', 'SS', 'Strong safety', 'secondary', 'safeties', bySide({ kind: 'role', role: 'O', toward: 'to' })),
    role('FS', 'FS', 'Free safety', 'secondary', 'safeties', bySide({ kind: 'role', role: 'O', toward: 'away' })),
  ];
}

const technique = (on: string, leverage: string, depth: number): Json => ({ kind: 'technique', on, leverage, depth });

function frontRole(id: string, rules: Json[], gaps: Json[], pass: string, style = 'one-gap'): Json {
  return { role: id, rules, base: { gaps, style, pass } };
}

const always = (spot: Json): Json => ({ when: [], spot });

function fronts(): Json[] {
  const corner = [
    always({ kind: 'receiver', number: 1, leverage: 'inside', depth: 7 }),
    always({ kind: 'edge', offset: 4, depth: 6 }),
  ];
  const safety = [always({ kind: 'ball', offset: 5, depth: 11 })];
  return [
    {
      id: 'odd',
      name: 'Odd',
      roles: [
        frontRole('LE', [always(technique('tackle', 'head', 1))], [letterGap('B', 'mine')], 'contain'),
        frontRole(
          'N',
          [always(technique('snapper', 'head', 1))],
          [letterGap('A', 'left'), letterGap('A', 'right')],
          'rush',
          'two-gap',
        ),
        frontRole('RE', [always(technique('tackle', 'head', 1))], [letterGap('B', 'mine')], 'rush'),
        frontRole(
          'O',
          [
            { when: [bodiesThree], spot: technique('last', 'outside', 1) },
            always({ kind: 'apex', number: 2, depth: 4 }),
            always({ kind: 'edge', offset: 1.5, depth: 1 }),
          ],
          [edgeGap('mine'), { kind: 'outside', side: 'mine', body: 'tackle' }],
          'rush',
        ),
        frontRole('W', [always({ kind: 'edge', offset: 1.5, depth: 1 })], [edgeGap('mine')], 'none'),
        frontRole(
          'LI',
          [always(technique('guard', 'outside', 4.5))],
          [letterGap('A', 'mine'), letterGap('C', 'mine')],
          'none',
        ),
        frontRole(
          'RI',
          [always(technique('guard', 'outside', 4.5))],
          [letterGap('A', 'mine'), letterGap('C', 'mine')],
          'none',
        ),
        frontRole('LC', corner, [], 'none'),
        frontRole('RC', corner, [], 'none'),
        frontRole('SS', safety, [edgeGap('mine')], 'none'),
        frontRole('FS', safety, [], 'none'),
      ],
      byHand: [{ look: 'spread', role: 'SS', x: 6.5, y: 9 }],
    },
  ];
}

function player(id: string, letter: string, kind: string, x: number, y: number): Json {
  return { id, letter, kind, x, y };
}

function line(): Json[] {
  return [
    player('T1', 'T', 'lineman', -2.6, -0.6),
    player('G1', 'G', 'lineman', -1.3, -0.6),
    player('C', 'C', 'snapper', 0, -0.4),
    player('G2', 'G', 'lineman', 1.3, -0.6),
    player('T2', 'T', 'lineman', 2.6, -0.6),
  ];
}

function run(concept: string, side: string, passOption = false): Json {
  return { concept, side, passOption };
}

function looks(): Json[] {
  return [
    {
      id: 'tight',
      name: 'Tight right',
      players: [
        ...line(),
        player('Y', 'Y', 'tight-end', 3.9, -0.6),
        player('X', 'X', 'receiver', -15, -0.6),
        player('Z', 'Z', 'receiver', 13, -1.8),
        player('F', 'F', 'back', 0, -4),
        player('B', 'B', 'back', 0, -6.5),
        player('Q', 'Q', 'passer', 0, -1.6),
      ],
      motion: null,
      runs: [run('power', 'right'), run('inside-zone', 'left', true)],
      protections: [{ protection: 'half-slide-end', slideSide: 'right' }],
    },
    {
      id: 'spread',
      name: 'Spread',
      players: [
        ...line(),
        player('X', 'X', 'receiver', -16, -0.6),
        player('H', 'H', 'receiver', -9, -1.8),
        player('Y', 'Y', 'receiver', 9, -1.8),
        player('Z', 'Z', 'receiver', 16, -0.6),
        player('B', 'B', 'back', 1.5, -5),
        player('Q', 'Q', 'passer', 0, -5),
      ],
      motion: { player: 'H', to: { x: -7, y: -2 } },
      runs: [run('zone-read', 'left')],
      protections: [
        { protection: 'full-slide-six', slideSide: 'left' },
        { protection: 'half-slide-six', slideSide: 'right' },
      ],
    },
  ];
}

/** The whole file as JSON. */
export function sampleJson(): { [key: string]: Json } {
  return {
    format: 'gapwright-playbook',
    version: 3,
    team: { name: 'Millbrook Herons', level: 'high-school', season: '2026' },
    roles: roles(),
    fronts: fronts(),
    coverages: coverages(),
    looks: looks(),
    pressures: pressures(),
    calls: calls(),
    opponents: [{ id: 'otters', name: 'Larch Falls Otters', looks: ['tight', 'spread'] }],
    sheets: [{ id: 'line', name: 'For the line', room: 'line', paper: 'a4' }],
    checkOuts: checkOuts(),
    dictionary: [
      { word: 'anvil', meaning: 'the outside man comes and boxes' },
      { word: 'hinge', meaning: 'the man who keeps the passer inside' },
    ],
    words: { techniques: [{ on: 'tackle', leverage: 'head', label: '4' }] },
  };
}

/** The same playbook, opened. */
export function samplePlaybook(): Playbook {
  const opened = openDocument(JSON.stringify(sampleJson()));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  return opened.value;
}
