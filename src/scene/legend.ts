import type { Point } from '../engine/index.ts';
import { box, decoration, ellipse, label, path, polygon, regular } from './marks/shape.ts';
import { PENS } from './marks/paths.ts';
import type { Scene, Shape } from './shapes.ts';

/** One line of the key to a picture: a sample to draw, and what it means. */
export interface LegendEntry {
  readonly text: string;
  readonly scene: Scene;
}

const ACROSS: readonly Point[] = [
  { x: -1.2, y: 0 },
  { x: 1.1, y: 0 },
];

/** Every sample is as large as every other, so that a row of them is even. */
const BOUNDS = { left: -1.4, right: 1.4, top: -0.6, bottom: 0.6 } as const;

const entry = (text: string, ...shapes: readonly Shape[]): LegendEntry => ({ text, scene: { shapes, bounds: BOUNDS } });
const sample = (pen: (typeof PENS)[keyof typeof PENS]): Shape =>
  path(decoration('sample', 'job'), { points: ACROSS, ...pen });

/** The key to the picture: every sign a sheet may hold, in words a player understands. */
export const LEGEND: readonly LegendEntry[] = [
  entry('rush', sample(PENS.rush)),
  entry('contain', sample(PENS.contain)),
  entry('run fit', sample(PENS.fit)),
  entry('man', sample(PENS.man)),
  entry(
    'zone drop',
    path(decoration('way', 'job'), {
      points: [
        { x: -1.2, y: 0 },
        { x: -0.1, y: 0 },
      ],
      ink: 'drop',
      width: 0.08,
    }),
    ellipse(decoration('zone', 'zone'), {
      at: { x: 0.6, y: 0 },
      rx: 0.7,
      ry: 0.4,
      fill: null,
      line: 'drop',
      width: 0.08,
    }),
  ),
  entry('second pressure', path(decoration('sample', 'job'), { points: ACROSS, ...PENS.rush, stroke: 'double' })),
  entry(
    'told two jobs',
    polygon(decoration('sign', 'sign'), {
      points: regular({ x: 0, y: 0 }, 0.5, 8),
      fill: 'stop',
      line: null,
      width: 0,
    }),
    label(decoration('text', 'sign'), { x: 0, y: 0 }, '!', { size: 0.7, ink: 'ground', bold: true }),
  ),
  entry(
    'open gap',
    polygon(decoration('slot', 'gap'), {
      points: box({ x: 0, y: 0 }, 0.6, 0.42),
      fill: null,
      line: 'gap-open',
      stroke: 'dashed',
      width: 0.14,
    }),
  ),
  entry(
    'by 1st or 2nd',
    label(decoration('text', 'sign'), { x: 0, y: 0 }, '1 2', { size: 0.8, ink: 'muted', bold: true }),
  ),
  entry('force', label(decoration('text', 'sign'), { x: 0, y: 0 }, 'F', { size: 0.8, ink: 'muted', bold: true })),
];
