import type { Point } from '../engine/index.ts';
import { box, decoration, ellipse, label, path, polygon, regular } from './marks/shape.ts';
import { PENS } from './marks/paths.ts';
import type { Ink, PathShape, Scene, Shape } from './shapes.ts';

/** One line of the key to a picture: a sample to draw, and what it means. */
export interface LegendEntry {
  readonly text: string;
  readonly scene: Scene;
}

/** An entry, and how to tell that a picture needs it. */
interface Entry extends LegendEntry {
  readonly isIn: (shape: Shape) => boolean;
}

const FROM = -1.2;
const ACROSS: readonly Point[] = [
  { x: FROM, y: 0 },
  { x: 1.1, y: 0 },
];

/** Every sample is as large as every other, so that a row of them is even. */
const BOUNDS = { left: -1.4, right: 1.4, top: -0.6, bottom: 0.6 } as const;

const CENTRE: Point = { x: 0, y: 0 };

function entry(text: string, isIn: Entry['isIn'], ...shapes: readonly Shape[]): Entry {
  return { text, isIn, scene: { shapes, bounds: BOUNDS } };
}

function line(look: Pick<PathShape, 'ink' | 'width'> & Partial<Pick<PathShape, 'stroke' | 'tip'>>): Shape {
  return path(decoration('sample', 'job'), { points: ACROSS, ...look });
}

function letters(text: string, ink: Ink = 'muted', bold = true): Shape {
  return label(decoration('text', 'sign'), CENTRE, text, { size: 0.8, ink, bold });
}

function sign(corners: 3 | 8, ink: 'stop' | 'check', text: string): readonly Shape[] {
  return [
    polygon(decoration('sign', 'sign'), { points: regular(CENTRE, 0.5, corners), fill: ink, line: null, width: 0 }),
    label(decoration('text', 'sign'), CENTRE, text, { size: 0.7, ink: 'ground', bold: true }),
  ];
}

const isJob = (shape: Shape): shape is PathShape => shape.kind === 'path' && shape.key.startsWith('job/');
const hasPen =
  (pen: (typeof PENS)[keyof typeof PENS]): Entry['isIn'] =>
  (shape) =>
    isJob(shape) && shape.ink === pen.ink && shape.tip === pen.tip;
const keyEnds =
  (end: string): Entry['isIn'] =>
  (shape) =>
    shape.key.endsWith(end);
const keyStarts =
  (start: string): Entry['isIn'] =>
  (shape) =>
    shape.key.startsWith(start);
/** Whether a defender's letter in a slot has the "?" of a man who may not come. */
const isUnsure: Entry['isIn'] = (shape) =>
  shape.kind === 'label' && shape.key.includes('/owner/') && shape.text.endsWith('?');

const openGap = { fill: null, line: 'gap-open', stroke: 'dashed', width: 0.14 } as const;

const ENTRIES: readonly Entry[] = [
  entry('rush', hasPen(PENS.rush), line(PENS.rush)),
  entry('contain', hasPen(PENS.contain), line(PENS.contain)),
  entry('run fit', hasPen(PENS.fit), line(PENS.fit)),
  entry('man', hasPen(PENS.man), line(PENS.man)),
  entry(
    'zone drop',
    (shape) => shape.kind === 'ellipse' && shape.layer === 'zone',
    path(decoration('way', 'job'), {
      points: [
        { x: FROM, y: 0 },
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
  entry(
    'second pressure',
    (shape) => isJob(shape) && shape.stroke === 'double',
    line({ ...PENS.rush, stroke: 'double' }),
  ),
  entry('by 1st or 2nd', (shape) => keyEnds('/told')(shape) || keyEnds('/which')(shape), letters('1 2')),
  entry('told two jobs', keyEnds('/warning/conflict'), ...sign(8, 'stop', '!')),
  entry('taught two ways', keyEnds('/warning/two-manners'), ...sign(3, 'check', '!')),
  entry('rule points at nobody', keyEnds('/warning/unresolved'), ...sign(8, 'stop', '?')),
  entry(
    'open gap',
    (shape) => shape.kind === 'polygon' && shape.line === 'gap-open',
    polygon(decoration('slot', 'gap'), { points: box(CENTRE, 0.6, 0.42), ...openGap }),
  ),
  entry('if he comes', isUnsure, letters('N?', 'gap-text')),
  entry('force', keyEnds('/force'), letters('F')),
  entry(
    'nobody has him',
    keyEnds('/open'),
    ellipse(decoration('ring', 'gap'), { at: CENTRE, rx: 0.5, ry: 0.5, ...openGap }),
  ),
  entry('S has him', keyEnds('/answer'), letters('(S)', 'muted', false)),
  entry('motion', keyStarts('motion/'), line({ ink: 'offence', width: 0.08, stroke: 'dash-dot' })),
  entry(
    'the run, by rule',
    (shape) => shape.kind === 'path' && shape.key.startsWith('run/') && shape.stroke === 'solid',
    line({ ink: 'offence', width: 0.07, tip: 'open-head' }),
  ),
  entry(
    'may keep or pitch',
    (shape) => shape.kind === 'path' && shape.key.startsWith('run/') && shape.stroke === 'dotted',
    line({ ink: 'offence', width: 0.07, stroke: 'dotted', tip: 'open-head' }),
  ),
  entry(
    'gap that opens',
    keyStarts('run/opens/'),
    ellipse(decoration('pill', 'gap'), { at: CENTRE, rx: 0.62, ry: 0.42, fill: null, line: 'gap', width: 0.07 }),
  ),
  entry('block, by rule', keyStarts('block/'), line({ ink: 'offence', width: 0.12, tip: 'tee' })),
];

/** The key to every sign a picture may hold, in words a player understands. */
export const LEGEND: readonly LegendEntry[] = ENTRIES.map(({ text, scene }) => ({ text, scene }));

/** The key to one picture: the signs it does hold. */
export function legendOf({ shapes }: Scene): readonly LegendEntry[] {
  return ENTRIES.filter(({ isIn }) => shapes.some(isIn)).map(({ text, scene }) => ({ text, scene }));
}
