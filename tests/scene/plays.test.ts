import { describe, expect, it } from 'vitest';
import {
  fact,
  protect,
  runConcept,
  type Analysis,
  type KnownProtection,
  type KnownRun,
  type PlayerId,
  type ProtectionAnswer,
  type RoleId,
  type RunAnswer,
} from '../../src/engine/index.ts';
import { LEGEND, legendOf, type PathShape, type Scene } from '../../src/scene/index.ts';
import { draw, labels, paths, rings, roleAt } from './drawn.ts';
import { board, ELEVEN, gap, rush } from './board.ts';

/** A run as the engine pictures it, with the men who fit what opens told by hand. */
function withRun(known: KnownRun, fitters: readonly (RoleId | null)[]): Analysis {
  const analysis = board(ELEVEN, { look: 'line te:Y@4 wr:X@-17 wr:Z@14,-1.5 qb:Q@0,-5 rb:F@-1.5,-5 rb:B@1.5,-5' });
  const picture = runConcept(analysis.facts, known.concept, known.side);
  if (!picture.ok) throw new Error(picture.problem.template);
  const floating = picture.value.floating.filter((each) => each.kind === 'puller' || each.kind === 'lead');
  const run: RunAnswer = {
    kind: 'answered',
    known,
    picture: picture.value,
    atAim: [],
    atCutback: [],
    unblocked: null,
    read: null,
    floating: floating.map((each, index) => ({ floating: each, by: fitters[index] ?? null })),
    spare: 0,
    option: null,
  };
  const lost: RunAnswer = { kind: 'not-here', known, because: fact('there is nobody to carry it') };
  return { ...analysis, runs: [lost, run] };
}

describe('a run of the look', () => {
  const power: KnownRun = { concept: 'power', side: 'right', passOption: false };

  it('is drawn only when chosen; one the look cannot have draws nothing', () => {
    const analysis = withRun(power, [roleAt('W'), null]);
    for (const run of [null, 0, 7]) expect(paths(draw(analysis, { run }), 'run/')).toEqual([]);
    expect(paths(draw(analysis, { run: 1 }), 'run/').length).toBeGreaterThan(0);
  });

  it('has the carrier to where it hits, and a slot of its own for every gap that opens, with its fitter', () => {
    const scene = draw(withRun(power, [roleAt('W'), null]), { run: 1 });
    const [carrier] = paths(scene, 'run/carrier/');
    const aim = scene.shapes.find((shape) => shape.key === 'gap/C right');
    const xs = aim?.kind === 'polygon' ? aim.points.map((point) => point.x) : [];
    expect(carrier?.points.at(-1)?.x).toBeCloseTo(xs.reduce((sum, x) => sum + x, 0) / xs.length, 6);
    const slots = rings(scene, 'run/opens/');
    expect(slots.map((slot) => slot.stroke)).toEqual(['solid', 'dashed']);
    expect(
      labels(scene, '/owner')
        .filter((label) => label.key.startsWith('run/'))
        .map((label) => label.text),
    ).toEqual(['W']);
  });

  it('is thin and grey, so that nobody takes it for a job', () => {
    for (const line of paths(draw(withRun(power, []), { run: 1 }), 'run/')) {
      if (line.key.endsWith('/leader')) continue;
      expect(line.ink).toBe('offence');
      expect(line.width).toBeLessThan(0.08);
    }
  });

  it('an option: who may keep it and whom it may be pitched to are dotted', () => {
    const veer = draw(withRun({ concept: 'inside-veer', side: 'right', passOption: false }, []), { run: 1 });
    expect(paths(veer, 'run/carrier/').map((line) => line.stroke)).toEqual(['solid']);
    expect([...paths(veer, 'run/keeper/'), ...paths(veer, 'run/pitch/')].map((line) => line.stroke)).toEqual([
      'dotted',
      'dotted',
    ]);
    const speed = draw(withRun({ concept: 'speed-option', side: 'right', passOption: false }, []), { run: 1 });
    expect(paths(speed, 'run/carrier/').map((line) => line.key)).toEqual(['run/carrier/Q']);
    expect(paths(speed, 'run/pitch/')).toHaveLength(1);
  });

  it.each(['power', 'counter', 'toss', 'iso'] as const)(
    'the slots of %s cover nobody and not each other',
    (concept) => {
      const scene = draw(
        withRun(
          { concept, side: 'right', passOption: false },
          ELEVEN.map((man) => roleAt(man.letter)),
        ),
        {
          run: 1,
        },
      );
      const slots = rings(scene, 'run/opens/');
      const circles = rings(scene, 'offence/').filter((ring) => ring.layer === 'offence');
      slots.forEach((slot, index) => {
        for (const circle of circles) {
          expect(Math.hypot(circle.at.x - slot.at.x, circle.at.y - slot.at.y)).toBeGreaterThan(slot.ry + circle.ry);
        }
        for (const other of slots.slice(index + 1)) {
          expect(
            Math.abs(other.at.x - slot.at.x) >= 2 * slot.rx || Math.abs(other.at.y - slot.at.y) >= 2 * slot.ry,
          ).toBe(true);
        }
      });
    },
  );
});

/** Five linemen against six rushers by the engine's own rule: one of them is nobody's. */
function withProtection(): Analysis {
  const analysis = board([
    { letter: 'LE', room: 'line', x: -3.2, y: 1, first: { ...rush([gap('lC')]), kind: 'contain' } },
    { letter: 'N', room: 'line', x: 0.4, y: 1, first: rush([gap('rA')]) },
    { letter: 'RE', room: 'line', x: 3.4, y: 1, first: rush([gap('rB')]) },
    { letter: 'S', room: 'linebackers', x: 5.4, y: 1, first: { ...rush([gap('rC')]), kind: 'contain' } },
    { letter: 'M', room: 'linebackers', x: 1.5, y: 4.5, first: rush([gap('rA')]) },
    { letter: 'W', room: 'linebackers', x: -1.5, y: 4.5, first: rush([gap('lA')]) },
  ]);
  const men = analysis.assignments.map(({ aligned, run }) => ({
    role: aligned.role.id,
    x: aligned.x,
    y: aligned.y,
    endGap: run.gaps[0] ?? gap('rA'),
  }));
  const known: KnownProtection = { protection: 'man-five', slideSide: 'left' };
  const result = protect({
    facts: analysis.facts,
    scheme: { scheme: 'man', slideSide: 'left', back: 'releases', tightEnds: 'release' },
    defenders: men,
    rushers: men.map(({ role, x, y, endGap }) => ({ role, from: { x, y }, endGap, order: null })),
  });
  if (!result.ok) throw new Error(result.problem.template);
  const protection: ProtectionAnswer = { kind: 'answered', known, picture: result.value };
  return { ...analysis, protections: [protection] };
}

describe('a protection of the look', () => {
  const analysis = withProtection();
  const [protection] = analysis.protections;
  const picture = protection?.kind === 'answered' ? protection.picture : null;

  it('has a short bar from every blocker to the way of his rusher, and only when chosen', () => {
    expect(paths(draw(analysis), 'block/')).toEqual([]);
    const bars = paths(draw(analysis, { protection: 0 }), 'block/');
    expect(bars.map((bar) => bar.key).toSorted()).toEqual(
      (picture?.blocks ?? []).map(({ blocker, rusher }) => `block/${blocker}/${rusher}`).toSorted(),
    );
    expect(bars.length).toBeGreaterThan(2);
    for (const bar of bars) {
      const [from, to] = bar.points;
      const length = Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0));
      expect(length).toBeGreaterThan(0.2);
      expect(length).toBeLessThan(3);
      expect(bar.tip).toBe('tee');
      expect(from).toSatisfy(isAtRimOf(analysis, bar));
    }
  });

  it('marks whoever comes free with a word', () => {
    const free = (picture?.unblocked ?? []).map((each) => `man/${each.rusher}/free`);
    expect(free.length).toBeGreaterThan(0);
    const said = labels(draw(analysis, { protection: 0 }), '/free');
    expect(said.map((label) => label.key)).toEqual(free);
    expect(said.every((label) => label.text === 'free')).toBe(true);
    expect(labels(draw(analysis), '/free')).toEqual([]);
  });
});

const isAtRimOf =
  (analysis: Analysis, bar: PathShape) =>
  (from: unknown): boolean => {
    const player: PlayerId | null = bar.target?.kind === 'offence' ? bar.target.player : null;
    const man = player === null ? undefined : analysis.facts.players.get(player);
    const [start] = bar.points;
    if (man === undefined || start === undefined || from !== start) return false;
    return Math.abs(Math.hypot(start.x - man.x, start.y - man.y) - 0.47) < 1e-6;
  };

describe('the key of one picture', () => {
  const words = (scene: Scene): readonly string[] => legendOf(scene).map((entry) => entry.text);

  it('explains what is in it, and nothing else', () => {
    expect(words(draw(board(ELEVEN)))).toEqual([
      'rush',
      'contain',
      'run fit',
      'man',
      'zone drop',
      'second pressure',
      'by 1st or 2nd',
      'told two jobs',
      'open gap',
      'if he comes',
      'force',
    ]);
    expect(words(draw(withProtection(), { protection: 0 }))).toContain('block, by rule');
    expect(words(draw(withRun({ concept: 'power', side: 'right', passOption: false }, []), { run: 1 }))).toEqual(
      expect.arrayContaining(['the run, by rule', 'gap that opens']),
    );
  });

  it('is part of the whole key', () => {
    expect(new Set(LEGEND.map((entry) => entry.text)).size).toBe(LEGEND.length);
    for (const text of words(draw(board(ELEVEN)))) expect(LEGEND.map((entry) => entry.text)).toContain(text);
  });
});
