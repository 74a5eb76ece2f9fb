/** Formations with one back or none in the gun or the pistol. Runs go by what such a formation is known for. */
import type { Look } from '../../engine/index.ts';
import { block, DEEP, GUN, LINE, look, OFF, PISTOL, run, runOrThrow, TACKLES_RIGHT, TE_LEFT, TE_RIGHT } from './men.ts';

export const spread: readonly Look[] = [
  look(
    'flexed-11',
    '11 doubles, tight end flexed right',
    { Q: [0, GUN], B: [1.5, GUN], Y: [6.5, OFF], X: [-14, LINE], H: [-7.5, OFF], Z: [14, LINE] },
    {
      runs: [
        runOrThrow('outside-zone', 'left'),
        run('inside-zone', 'left'),
        run('jet-sweep', 'right'),
        run('quarterback-draw', 'right'),
      ],
      protections: [block('half-slide-six', 'left'), block('full-slide-six', 'left')],
    },
  ),
  look(
    'tight-11',
    '11 doubles, tight end right',
    { Q: [0, GUN], B: [-1.5, GUN], Y: TE_RIGHT, X: [-14, LINE], H: [-7.5, OFF], Z: [13, OFF] },
    {
      runs: [
        runOrThrow('inside-zone', 'right'),
        run('zone-read', 'right'),
        run('power', 'right'),
        run('counter-with-back', 'left'),
        run('outside-zone', 'right'),
      ],
      protections: [block('half-slide-six', 'right'), block('half-slide-end', 'left')],
    },
  ),
  look(
    'doubles-10',
    '10 doubles, back right',
    { Q: [0, GUN], B: [1.5, GUN], X: [-14, LINE], H: [-7.5, OFF], A: [7.5, OFF], Z: [14, LINE] },
    {
      runs: [
        runOrThrow('inside-zone', 'left'),
        run('zone-read', 'left'),
        run('outside-zone', 'left'),
        run('counter', 'right'),
        run('quarterback-draw', 'right'),
      ],
      protections: [block('half-slide-six', 'left'), block('half-slide-five', 'left'), block('man-six', 'right')],
    },
  ),
  look(
    'trips-10',
    '10 trips left, back right',
    { Q: [0, GUN], B: [1.5, GUN], X: [-14.5, LINE], H: [-10, OFF], A: [-6, OFF], Z: [13, LINE] },
    {
      runs: [
        run('inside-zone', 'left'),
        run('zone-read', 'left'),
        run('quarterback-draw', 'right'),
        run('outside-zone', 'left'),
      ],
      protections: [block('half-slide-six', 'left'), block('half-slide-five', 'left')],
    },
  ),
  look(
    'bunch-10',
    '10 bunch right, back left',
    { Q: [0, GUN], B: [-1.5, GUN], X: [-13, LINE], H: [7.5, -1.6], A: [8.7, LINE], Z: [9.9, -1.6] },
    {
      runs: [run('outside-zone', 'right'), run('toss', 'right'), run('zone-read', 'right'), run('jet-sweep', 'left')],
      protections: [block('half-slide-six', 'right'), block('half-slide-five', 'right')],
    },
  ),
  look(
    'pistol-10',
    '10 pistol doubles',
    { Q: [0, PISTOL], B: [0, DEEP], X: [-14, LINE], H: [-6.5, OFF], A: [6.5, OFF], Z: [14, LINE] },
    {
      runs: [
        run('inside-zone', 'right'),
        run('outside-zone', 'left'),
        run('power-read', 'right'),
        run('midline', 'left'),
      ],
      protections: [block('half-slide-six', 'right'), block('man-six', 'left')],
    },
  ),
  look(
    'jet-10',
    '10 doubles, jet across to the right',
    { Q: [0, GUN], B: [-1.5, GUN], X: [-14, LINE], H: [-7.5, OFF], A: [7.5, OFF], Z: [14, LINE] },
    {
      motion: ['H', 2.2, -2.3],
      runs: [
        run('inside-zone', 'left'),
        run('zone-read', 'left'),
        run('outside-zone', 'right'),
        run('quarterback-draw', 'left'),
      ],
      protections: [block('half-slide-six', 'right')],
    },
  ),
  look(
    'trips-11',
    '11 trips right, tight end in',
    { Q: [0, GUN], B: [-1.5, GUN], Y: TE_RIGHT, X: [-13, LINE], H: [8.5, OFF], Z: [13.5, OFF] },
    {
      runs: [
        runOrThrow('inside-zone', 'right'),
        run('zone-read', 'right'),
        run('power', 'right'),
        run('counter-with-back', 'left'),
      ],
      protections: [block('half-slide-six', 'right'), block('half-slide-end', 'left')],
    },
  ),
  look(
    'trips-open-11',
    '11 trips right, tight end left',
    { Q: [0, GUN], B: [-1.5, GUN], Y: TE_LEFT, X: [14.5, LINE], H: [10, OFF], Z: [6.5, OFF] },
    {
      runs: [
        run('split-zone', 'left'),
        run('zone-read', 'right'),
        run('counter-with-back', 'right'),
        run('power', 'left'),
      ],
      protections: [block('half-slide-six', 'right'), block('half-slide-end', 'right')],
    },
  ),
  look(
    'wing-11',
    '11 wing right',
    { Q: [0, GUN], B: [-1.5, GUN], Y: [4.2, -1.6], X: [-14, LINE], H: [-7.5, OFF], Z: [13.5, LINE] },
    {
      runs: [
        run('split-zone', 'right'),
        run('power', 'right'),
        run('counter-with-back', 'left'),
        run('outside-zone', 'right'),
        run('zone-read', 'right'),
      ],
      protections: [block('half-slide-six', 'right'), block('full-slide-end', 'left')],
    },
  ),
  look(
    'trade-11',
    '11 wing trades to the left',
    { Q: [0, GUN], B: [-1.5, GUN], Y: [4.2, -1.6], X: [-14, LINE], H: [8, OFF], Z: [13.5, LINE] },
    {
      motion: ['Y', -4.2, -1.6],
      runs: [
        run('split-zone', 'left'),
        run('power', 'left'),
        run('counter-with-back', 'right'),
        run('zone-read', 'right'),
      ],
      protections: [block('half-slide-six', 'right'), block('half-slide-end', 'left')],
    },
  ),
  look(
    'unbalanced-11',
    '11 tackles over right',
    { Q: [0, GUN], B: [1.5, GUN], Y: [-2.667, LINE], X: [14, LINE], H: [8.5, OFF], Z: [-12.5, OFF] },
    {
      linemen: TACKLES_RIGHT,
      runs: [run('power', 'right'), run('outside-zone', 'right'), run('toss', 'right'), run('inside-zone', 'left')],
      protections: [block('half-slide-six', 'left'), block('man-six', 'right')],
    },
  ),
  look(
    'empty-00',
    '00 empty, three right',
    { Q: [0, GUN], X: [-14, LINE], H: [-7, OFF], A: [6, OFF], V: [10, OFF], Z: [14.5, LINE] },
    {
      runs: [run('quarterback-draw', 'right'), run('quarterback-draw', 'left'), run('jet-sweep', 'right')],
      protections: [block('half-slide-five', 'right'), block('man-five', 'left')],
    },
  ),
  look(
    'empty-11',
    '11 empty, tight end right, back left',
    { Q: [0, GUN], B: [-7, OFF], Y: TE_RIGHT, X: [-14, LINE], H: [8.5, OFF], Z: [14, OFF] },
    {
      runs: [run('quarterback-draw', 'right'), run('quarterback-draw', 'left'), run('jet-sweep', 'right')],
      protections: [block('half-slide-five', 'left')],
    },
  ),
  look(
    'back-out-11',
    '11 trips right, back goes out to the left',
    { Q: [0, GUN], B: [1.5, GUN], Y: TE_RIGHT, X: [-10, LINE], H: [8.5, OFF], Z: [13.5, OFF] },
    {
      motion: ['B', -14.5, OFF],
      runs: [run('quarterback-draw', 'right'), run('quarterback-draw', 'left'), run('jet-sweep', 'right')],
      protections: [block('half-slide-five', 'left')],
    },
  ),
];
