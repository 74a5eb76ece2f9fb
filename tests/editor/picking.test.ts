/** Picking a job on the field: the steps as a table, what a place may mean, and what a pointer is on. */
import { describe, expect, it } from 'vitest';
import { pickAt, pickGround } from '../../src/editor/hitPlaces.ts';
import { pickChoices, pickStep, type PickEvent } from '../../src/editor/tools/index.ts';
import { toPixels, type Viewport } from '../../src/editor/viewport.ts';
import { analyse, asPressureId, type Point, type RoleId } from '../../src/engine/index.ts';
import { makeRuleWords } from '../../src/report/index.ts';
import { buildScene, WHOLE_PICTURE } from '../../src/scene/index.ts';
import type { Picking, PickPlace } from '../../src/store/index.ts';
import { LOOKS, pressure, ROLES, setup } from '../engine/book.ts';

const analysis = analyse(setup({ look: LOOKS['11 tight end'], first: pressure('Reed', []) }));
const scene = buildScene(analysis, WHOLE_PICTURE);
const words = makeRuleWords(ROLES, { techniques: [] });
const idOf = (letter: string): RoleId => {
  const role = ROLES.find((each) => each.letter === letter);
  if (role === undefined) throw new Error(`No ${letter}`);
  return role.id;
};
const NOSE = idOf('N');
const alignedOf = (role: RoleId) => {
  const man = analysis.assignments.find(({ aligned }) => aligned.role.id === role);
  if (man === undefined) throw new Error('He is not on the field');
  return man.aligned;
};

const START: Picking = { pressure: asPressureId('reed'), man: null, place: null };
const A_RIGHT: PickPlace = { kind: 'gap', gap: { side: 'right', letter: 'A' } };
const B_LEFT: PickPlace = { kind: 'gap', gap: { side: 'left', letter: 'B' } };

describe('the steps', () => {
  const nose: PickEvent = { kind: 'man', role: NOSE };
  const other: PickEvent = { kind: 'man', role: idOf('FS') };
  const at = (place: PickPlace): PickEvent => ({ kind: 'place', place });
  const back: PickEvent = { kind: 'back' };
  it.each<[string, readonly PickEvent[], Picking | null]>([
    ['a man', [nose], { ...START, man: NOSE }],
    ['a man, then a place', [nose, at(A_RIGHT)], { ...START, man: NOSE, place: A_RIGHT }],
    ['a place before a man says nothing', [at(A_RIGHT)], START],
    [
      'another place takes the place of the first',
      [nose, at(A_RIGHT), at(B_LEFT)],
      { ...START, man: NOSE, place: B_LEFT },
    ],
    ['another man starts with him', [nose, at(A_RIGHT), other], { ...START, man: idOf('FS') }],
    ['back from the place', [nose, at(A_RIGHT), back], { ...START, man: NOSE }],
    ['back from the man', [nose, back], START],
    ['back from the beginning is out', [back], null],
  ])('%s', (_, events, end) => {
    const played = events.reduce<Picking | null>((now, event) => (now === null ? null : pickStep(now, event)), START);
    expect(played).toEqual(end);
  });
});

describe('what a place may mean', () => {
  const said = (role: RoleId, place: PickPlace): readonly string[] => {
    const aligned = alignedOf(role);
    return pickChoices(place, { aligned, facts: analysis.facts, callSide: 'right' }).flatMap(({ jobs }) =>
      jobs.slice(0, 1).map(words.job),
    );
  };
  const passer: PickPlace = { kind: 'passer' };
  it.each<[string, RoleId, PickPlace, readonly string[]]>([
    ['a gap, for a lineman', NOSE, A_RIGHT, ['Slant to the call-side A gap', 'Fit the call-side A gap']],
    [
      'a gap away from the call, for a backer',
      idOf('W'),
      B_LEFT,
      ['Rush the away-side B gap', 'Rush the away-side B gap; contain on a pass', 'Fit the away-side B gap'],
    ],
    ['a zone', idOf('FS'), { kind: 'zone', zone: 'middle', side: 'middle' }, ['Drop to the deep middle']],
    ['a zone of a side', idOf('W'), { kind: 'zone', zone: 'seam', side: 'left' }, ['Drop to the away-side seam']],
    [
      'the passer, for the nose: the gap in front of him, the edge of the call, a spy',
      NOSE,
      passer,
      ['Slant to the away-side A gap', 'Rush the call-side edge gap; contain on a pass', 'Spy the passer'],
    ],
  ])('%s', (_, role, place, jobs) => {
    expect(said(role, place)).toEqual(jobs);
  });

  it('each receiver is a man job, whatever he is', () => {
    for (const { player } of pickGround(analysis, scene, NOSE).receivers) {
      const choices = pickChoices(
        { kind: 'receiver', player },
        { aligned: alignedOf(NOSE), facts: analysis.facts, callSide: 'right' },
      );
      expect(choices.map(({ kind }) => kind)).toEqual(['man']);
    }
  });

  it('where the call side is a tie the names are plain', () => {
    const [rush] = pickChoices(A_RIGHT, { aligned: alignedOf(NOSE), facts: analysis.facts, callSide: null });
    expect(rush?.jobs.map(words.job)).toEqual(['Slant to the A gap right']);
  });
});

describe('what a pointer is on', () => {
  const ground = pickGround(analysis, scene, NOSE);
  const views: readonly (readonly [string, Viewport])[] = [
    ['not turned', { scale: 20, ball: { px: 400, py: 200 }, turned: false }],
    ['turned', { scale: 20, ball: { px: 400, py: 200 }, turned: true }],
  ];
  const of = (point: Point, picking: Picking, viewport: Viewport) =>
    pickAt(ground, picking, toPixels(viewport, point), viewport, 12);
  const named: Picking = { ...START, man: NOSE };

  describe.each(views)('%s', (_, viewport) => {
    it('every defender is found where he stands, before a man is picked and after', () => {
      for (const { role, at } of ground.defenders) {
        expect(of(at, START, viewport)).toEqual({ kind: 'man', role });
        expect(of(at, named, viewport)).toEqual({ kind: 'man', role });
      }
    });

    it('every gap is found in the middle of its slot, and nothing before a man is picked', () => {
      expect(ground.gaps.map(({ gap }) => gap)).toEqual(analysis.gaps.map(({ gap }) => gap));
      for (const { gap, left, right, top } of ground.gaps) {
        const slot = { x: (left + right) / 2, y: top + 0.2 };
        expect(of(slot, named, viewport)).toEqual({ kind: 'place', place: { kind: 'gap', gap } });
      }
    });

    it('every receiver and the passer are found where they stand', () => {
      for (const { player, at } of ground.receivers) {
        expect(of(at, named, viewport)).toEqual({ kind: 'place', place: { kind: 'receiver', player } });
      }
      if (ground.passer === null) throw new Error('Nobody passes');
      expect(of(ground.passer, named, viewport)).toEqual({ kind: 'place', place: { kind: 'passer' } });
      // A finger on a small field covers the back beside him as well.
      const small = { ...viewport, scale: 12 };
      expect(pickAt(ground, named, toPixels(small, ground.passer), small, 22)).toEqual({
        kind: 'place',
        place: { kind: 'passer' },
      });
    });

    it('grass is its nearest zone; near the line and behind it grass is nothing', () => {
      for (const { zone, side, at } of ground.zones) {
        const clear = ground.defenders.every((man) => Math.hypot(man.at.x - at.x, man.at.y - at.y) > 0.7);
        if (clear) expect(of(at, named, viewport)).toEqual({ kind: 'place', place: { kind: 'zone', zone, side } });
      }
      expect(of({ x: 12, y: 0.8 }, named, viewport)).toBeNull();
      expect(of({ x: -12, y: -7 }, named, viewport)).toBeNull();
    });
  });

  it('a finger beside a gap takes the nearest one', () => {
    const viewport: Viewport = { scale: 12, ball: { px: 400, py: 200 }, turned: false };
    const [edge] = ground.gaps;
    if (edge === undefined) throw new Error('No gap');
    const beside = toPixels(viewport, { x: edge.left - 1, y: edge.top });
    expect(pickAt(ground, named, beside, viewport, 22)).toEqual({
      kind: 'place',
      place: { kind: 'gap', gap: edge.gap },
    });
    expect(pickAt(ground, named, beside, viewport, 6)).toBeNull();
  });
});
