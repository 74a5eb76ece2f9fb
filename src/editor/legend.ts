import type { Ink, PathShape, Scene, Shape, Stroke, Tip } from '../scene/index.ts';

/** One line of the legend: a little picture, and what it means. */
export interface LegendEntry {
  readonly key: string;
  readonly words: string;
  readonly picture: Scene;
}

/** Half the width and half the height of a little picture, in yards. */
const WIDE = 1.5;
const HIGH = 0.6;

/** What the lines and boxes of the board mean. */
export const LEGEND: readonly LegendEntry[] = [
  entry('rush', 'rush', line({ ink: 'rush', width: 0.15, stroke: 'solid', tip: 'filled-head' })),
  entry('contain', 'contain', line({ ink: 'rush', width: 0.15, stroke: 'solid', tip: 'bar' })),
  entry('fit', 'fits a gap', line({ ink: 'fit', width: 0.13, stroke: 'dotted', tip: 'tee' })),
  entry('drop', 'drop', line({ ink: 'drop', width: 0.08, stroke: 'solid', tip: 'none' }, 0.35), zone()),
  entry('man', 'man', line({ ink: 'man', width: 0.1, stroke: 'dashed', tip: 'open-head' })),
  entry('second', 'the second’s', line({ ink: 'rush', width: 0.15, stroke: 'double', tip: 'filled-head' })),
  entry('owned', 'gap, owner', slot(false)),
  entry('open', 'open gap', slot(true)),
  entry('unsure', 'if he comes', letters('N?')),
  entry('told', 'the first’s', letters('1')),
  entry('both', 'both', letters('1+2')),
  entry('force', 'force', letters('F')),
];

interface Pen {
  readonly ink: Ink;
  readonly width: number;
  readonly stroke: Stroke;
  readonly tip: Tip;
}

function entry(key: string, words: string, ...shapes: readonly Shape[]): LegendEntry {
  return { key, words, picture: { shapes, bounds: { left: -WIDE, right: WIDE, top: -HIGH, bottom: HIGH } } };
}

function common(key: string) {
  return { key, layer: 'job', faint: false, target: null } as const;
}

function line(pen: Pen, end = WIDE - 0.3): PathShape {
  const points = [
    { x: 0.2 - WIDE, y: 0 },
    { x: end, y: 0 },
  ];
  return { ...common('line'), kind: 'path', curved: false, points, ...pen };
}

function zone(): Shape {
  const ring = {
    at: { x: 0.85, y: 0 },
    rx: 0.5,
    ry: 0.35,
    fill: null,
    line: 'drop',
    stroke: 'solid',
    width: 0.08,
  } as const;
  return { ...common('zone'), kind: 'ellipse', ...ring };
}

function slot(open: boolean): Shape {
  const points = [
    { x: -0.5, y: -0.42 },
    { x: 0.5, y: -0.42 },
    { x: 0.5, y: 0.42 },
    { x: -0.5, y: 0.42 },
  ];
  const pen = open
    ? ({ line: 'gap-open', stroke: 'dashed', width: 0.14 } as const)
    : ({ line: 'gap', stroke: 'solid', width: 0.07 } as const);
  return { ...common('slot'), kind: 'polygon', points, fill: 'ground', ...pen };
}

function letters(text: string): Shape {
  const at = { x: 0, y: 0 };
  return { ...common('letters'), kind: 'label', at, text, size: 0.8, bold: true, ink: 'muted', halo: false };
}
