/** Formations under centre, with two tight ends or with two backs. */
import type { Look } from '../../engine/index.ts';
import { block, DEEP, GUN, LINE, look, OFF, PISTOL, run, TE_LEFT, TE_RIGHT, UNDER, WING_RIGHT } from './men.ts';

export const heavy: readonly Look[] = [
  look(
    'under-11',
    '11 under centre, tight end left',
    { Q: [0, UNDER], B: [0, DEEP], Y: TE_LEFT, X: [13.5, LINE], H: [7, OFF], Z: [-12.5, OFF] },
    {
      runs: [run('outside-zone', 'left'), run('toss', 'left'), run('duo', 'left'), run('counter-with-back', 'right')],
      protections: [block('half-slide-six', 'right'), block('half-slide-end', 'right')],
    },
  ),
  look(
    'ace-12',
    '12 pistol, tight end each side',
    { Q: [0, PISTOL], B: [0, DEEP], Y: TE_RIGHT, U: TE_LEFT, X: [-12.5, OFF], Z: [12.5, OFF] },
    {
      runs: [
        run('inside-zone', 'right'),
        run('outside-zone', 'left'),
        run('split-zone', 'right'),
        run('duo', 'left'),
        run('power', 'right'),
      ],
      protections: [block('half-slide-end', 'right'), block('full-slide-six', 'left')],
    },
  ),
  look(
    'wing-12',
    '12 wing right, receivers left',
    { Q: [0, UNDER], B: [0, DEEP], Y: TE_RIGHT, U: WING_RIGHT, X: [-14, LINE], Z: [-8, OFF] },
    {
      runs: [
        run('power', 'right'),
        run('toss', 'right'),
        run('counter-with-back', 'left'),
        run('duo', 'right'),
        run('trap', 'left'),
      ],
      protections: [block('half-slide-end', 'left'), block('man-end', 'right')],
    },
  ),
  look(
    'heavy-13',
    '13 wing right, tight end each side',
    { Q: [0, UNDER], B: [0, DEEP], Y: TE_RIGHT, U: TE_LEFT, W: WING_RIGHT, Z: [-12, OFF] },
    {
      runs: [run('power', 'right'), run('duo', 'right'), run('toss', 'right'), run('counter-with-back', 'left')],
      protections: [block('half-slide-end', 'left')],
    },
  ),
  look(
    'split-20',
    '20 two backs in the gun, slot left',
    { Q: [0, GUN], B: [1.5, GUN], F: [-1.5, GUN], X: [-14, LINE], H: [-7.5, OFF], Z: [13.5, LINE] },
    {
      runs: [run('inside-veer', 'right'), run('split-zone', 'left'), run('iso', 'right'), run('zone-read', 'left')],
      protections: [block('half-slide-backs', 'left'), block('half-slide-six', 'left')],
    },
  ),
  look(
    'i-21',
    '21 I, tight end right',
    { Q: [0, UNDER], B: [0, DEEP], F: [0, -4.5], Y: TE_RIGHT, X: [-13, LINE], Z: [12.5, OFF] },
    {
      runs: [
        run('iso', 'right'),
        run('power', 'right'),
        run('toss', 'left'),
        run('trap', 'left'),
        run('counter-with-back', 'left'),
      ],
      protections: [block('half-slide-backs', 'right'), block('half-slide-end', 'left'), block('max', 'left')],
    },
  ),
  look(
    'offset-21',
    '21 offset I, tight end and fullback left',
    { Q: [0, UNDER], B: [0, DEEP], F: [-1.5, -4.5], Y: TE_LEFT, X: [13, LINE], Z: [-12.5, OFF] },
    {
      runs: [run('power', 'left'), run('iso', 'left'), run('outside-zone', 'left'), run('counter-with-back', 'right')],
      protections: [block('man-backs', 'left'), block('half-slide-end', 'right')],
    },
  ),
  look(
    'i-22',
    '22 I, tight end each side, receiver right',
    { Q: [0, UNDER], B: [0, DEEP], F: [0, -4.5], Y: TE_RIGHT, U: TE_LEFT, Z: [12.5, OFF] },
    {
      runs: [
        run('iso', 'right'),
        run('power', 'right'),
        run('power', 'left'),
        run('duo', 'right'),
        run('toss', 'left'),
      ],
      protections: [block('max', 'left'), block('half-slide-end', 'left')],
    },
  ),
];
