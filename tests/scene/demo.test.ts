import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { openDocument, toSetup } from '../../src/document/index.ts';
import { analyse, type Analysis, type Place } from '../../src/engine/index.ts';
import { buildScene, WHOLE_PICTURE, type EllipseShape, type Scene } from '../../src/scene/index.ts';

/** Every call of the demonstration playbook against every look, the ball moving from spot to spot: what must hold of any. */
describe('every call against every look', () => {
  const drawn: { readonly analysis: Analysis; readonly scene: Scene }[] = [];

  beforeAll(() => {
    const opened = openDocument(readFileSync(new URL('../../demo-data/playbook.json', import.meta.url)));
    if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
    const spots: readonly Place[] = ['left', 'middle', 'right'];
    opened.value.calls.forEach((call, first) => {
      opened.value.looks.forEach((look, second) => {
        const spot = spots[(first + second) % spots.length] ?? 'middle';
        const setup = toSetup(opened.value, { call, look: look.id, spot });
        if (!setup.ok) throw new Error(JSON.stringify(setup.problem));
        const analysis = analyse(setup.value);
        drawn.push({ analysis, scene: buildScene(analysis, WHOLE_PICTURE) });
      });
    });
  }, 60_000);

  it('is drawn', () => {
    expect(drawn.length).toBeGreaterThan(50);
  });

  it('has keys of its own, and numbers everywhere', () => {
    for (const { scene } of drawn) {
      expect(new Set(scene.shapes.map((shape) => shape.key)).size).toBe(scene.shapes.length);
      // JSON writes null for NaN and the infinities.
      expect(JSON.stringify(scene)).not.toMatch(/"(x|y|rx|ry|width|size)":null/);
    }
  });

  it('has all twenty-two, and each gap once', () => {
    for (const { analysis, scene } of drawn) {
      const marks = scene.shapes.filter((shape) => shape.layer === 'mark' && shape.kind === 'label');
      expect(marks).toHaveLength(11);
      expect(scene.shapes.filter((shape) => shape.layer === 'offence' && shape.kind !== 'label')).toHaveLength(11);
      const slots = scene.shapes.filter((shape) => shape.kind === 'polygon' && shape.target?.kind === 'gap');
      expect(slots).toHaveLength(analysis.gaps.length);
    }
  });

  it('shows an empty slot for an open gap, and only for one', () => {
    for (const { analysis, scene } of drawn) {
      const open = analysis.gaps.filter((gap) => gap.owners.length === 0);
      const empty = scene.shapes.filter((shape) => shape.kind === 'polygon' && shape.line === 'gap-open');
      expect(empty).toHaveLength(open.length);
    }
  });

  it('marks every man who is told two jobs, and draws both', () => {
    for (const { analysis, scene } of drawn) {
      const torn = analysis.assignments.filter(({ combined }) => combined.status === 'conflict');
      for (const { aligned } of torn) {
        const { id } = aligned.role;
        expect(scene.shapes.some((shape) => shape.key === `man/${id}/warning`)).toBe(true);
        expect(
          scene.shapes.filter((shape) => shape.key.startsWith(`job/${id}/`) && shape.kind === 'label').length,
        ).toBe(2);
      }
      expect(scene.shapes.filter((shape) => shape.key.endsWith('/warning')).length).toBeGreaterThanOrEqual(torn.length);
    }
  });

  it('keeps its zones apart', () => {
    for (const { scene } of drawn) {
      const rings = scene.shapes.filter(
        (shape): shape is EllipseShape => shape.kind === 'ellipse' && shape.layer === 'zone',
      );
      for (const ring of rings) {
        const near = rings.filter(
          (other) =>
            Math.abs(other.at.x - ring.at.x) < other.rx + ring.rx &&
            Math.abs(other.at.y - ring.at.y) < other.ry + ring.ry,
        );
        expect(near).toEqual([ring]);
      }
    }
  });
});
