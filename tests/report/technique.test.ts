import { describe, expect, test } from 'vitest';
import { analyse, type Aligned, type BodyName, type Leverage } from '../../src/engine/index.ts';
import { COMMON_WORDS, makeLexicon, techniqueNumber, type StaffWords } from '../../src/report/index.ts';
import { roleOf, ROLES, setupOf, SPREAD, TIGHT } from './fixtures.ts';

const BODIES: readonly BodyName[] = ['snapper', 'guard', 'tackle', 'end', 'wing'];

function numberOf(on: BodyName, leverage: Leverage, depth = 0.5, staff: StaffWords = COMMON_WORDS): string {
  return techniqueNumber({ index: BODIES.indexOf(on), leverage, ghost: false, last: false, depth }, staff);
}

describe('technique numbers on the line', () => {
  // "Defensive Numbering & Defensive Line", Garnet and Black Attack, 27 Jul 2016, and "Gap (American football)",
  // Wikipedia: even is head up, odd the outside shoulder, "i" the inside shoulder, 7 the inside shoulder of the tight end.
  test.each<[BodyName, Leverage, string]>([
    ['snapper', 'head', '0'],
    ['guard', 'inside-foot', '2i'],
    ['guard', 'head', '2'],
    ['guard', 'outside-foot', '3'],
    ['tackle', 'inside-foot', '4i'],
    ['tackle', 'head', '4'],
    ['tackle', 'outside-foot', '5'],
    ['end', 'inside-foot', '7'],
    ['end', 'head', '6'],
    ['end', 'outside-foot', '9'],
  ])('%s, %s is a %s', (on, leverage, number) => {
    expect(numberOf(on, leverage)).toBe(number);
  });

  // Common practice, no source, but for the 8: P. W. Bryant, "Building a Championship Football Team": outside everybody.
  test.each<[BodyName, Leverage, string]>([
    ['snapper', 'outside-foot', '0 shade'],
    ['snapper', 'inside-foot', '0 shade'],
    ['snapper', 'outside', '1'],
    ['guard', 'inside', '1'],
    ['guard', 'outside', 'wide 3'],
    ['tackle', 'inside', '4i'],
    ['tackle', 'outside', 'wide 5'],
    ['end', 'inside', '7'],
    ['end', 'outside', '8'],
    ['wing', 'outside', '8'],
    ['wing', 'inside-foot', 'inside foot of the wing'],
    ['wing', 'head', 'head up on the wing'],
    ['wing', 'inside', 'a man inside the wing'],
  ])('%s, %s is a %s', (on, leverage, number) => {
    expect(numberOf(on, leverage)).toBe(number);
  });

  test('a body beyond the wing has no number', () => {
    const standing = { index: 5, leverage: 'head', ghost: false, last: true, depth: 0.5 } as const;
    expect(techniqueNumber(standing, COMMON_WORDS)).toBe('head up on the man outside the wing');
  });
});

describe('technique numbers behind the line', () => {
  // J. T. Reed, "Terms of Football": linebackers add a zero (00, 10, 20, 30, 40, 50), same shade, linebacker depth.
  test.each<[BodyName, Leverage, string]>([
    ['snapper', 'head', '00'],
    ['guard', 'inside', '10'],
    ['guard', 'head', '20'],
    ['guard', 'outside-foot', '30'],
    ['tackle', 'head', '40'],
    ['tackle', 'outside-foot', '50'],
    // The same rule carried on to the numbers with letters and words: ours.
    ['guard', 'inside-foot', '20i'],
    ['snapper', 'outside-foot', '00 shade'],
    ['tackle', 'outside', 'wide 50'],
  ])('%s, %s is a %s', (on, leverage, number) => {
    expect(numberOf(on, leverage, 4.5)).toBe(number);
  });

  test('the zero starts at linebacker depth, and a label without a number says the depth', () => {
    expect(numberOf('guard', 'outside-foot', 2.4)).toBe('3');
    expect(numberOf('guard', 'outside-foot', 2.5)).toBe('30');
    expect(numberOf('wing', 'head', 4.5)).toBe('head up on the wing, 4.5 yd');
  });
});

test('a man on a body that is not there is a ghost, but outside everything is outside everything', () => {
  const ghost = { index: 3, ghost: true, last: true, depth: 0.5 };
  expect(techniqueNumber({ ...ghost, leverage: 'inside-foot' }, COMMON_WORDS)).toBe('ghost 7');
  expect(techniqueNumber({ ...ghost, leverage: 'head' }, COMMON_WORDS)).toBe('ghost 6');
  expect(techniqueNumber({ ...ghost, leverage: 'outside-foot' }, COMMON_WORDS)).toBe('ghost 9');
  expect(techniqueNumber({ ...ghost, leverage: 'outside' }, COMMON_WORDS)).toBe('8');
});

describe("a staff's own table", () => {
  // Draft Countdown forum, technique list: 4 is the inside of the tackle, 5 head up on him. Coach Z, "Defensive Line
  // Technique Numbering", coachz.net: 6i for the inside shoulder of the tight end.
  const staff: StaffWords = {
    techniques: [
      { on: 'tackle', leverage: 'inside-foot', label: '4' },
      { on: 'tackle', leverage: 'head', label: '5' },
      { on: 'end', leverage: 'inside-foot', label: '6i' },
      { on: 'last', leverage: 'outside', label: 'edge' },
    ],
  };

  test('goes before the common one, zeros and ghosts included', () => {
    expect(numberOf('tackle', 'inside-foot', 0.5, staff)).toBe('4');
    expect(numberOf('tackle', 'head', 0.5, staff)).toBe('5');
    expect(numberOf('tackle', 'head', 4.5, staff)).toBe('50');
    expect(numberOf('end', 'inside-foot', 0.5, staff)).toBe('6i');
    expect(numberOf('guard', 'head', 0.5, staff)).toBe('2');
    const ghost = { index: 3, leverage: 'inside-foot', ghost: true, last: true, depth: 0.5 } as const;
    expect(techniqueNumber(ghost, staff)).toBe('ghost 6i');
  });

  test('its word for the last man counts on whoever is last, and only there', () => {
    const outside = { index: 2, leverage: 'outside', ghost: false, depth: 0.5 } as const;
    expect(techniqueNumber({ ...outside, last: true }, staff)).toBe('edge');
    expect(techniqueNumber({ ...outside, last: false }, staff)).toBe('wide 5');
    expect(techniqueNumber({ ...outside, last: true, depth: 4 }, staff)).toBe('edge, 4 yd');
    const named: StaffWords = {
      techniques: [...staff.techniques, { on: 'tackle', leverage: 'outside', label: 'loose' }],
    };
    expect(techniqueNumber({ ...outside, last: true }, named)).toBe('loose');
  });
});

describe('where a man stands', () => {
  const facts = analyse(setupOf()).facts;
  const lexicon = makeLexicon(setupOf(), COMMON_WORDS);
  const [nose] = ROLES;
  const at = (x: number, y: number): string => {
    if (nose === undefined) throw new Error('no nose in the fixtures');
    const because = { template: '', data: {}, because: [] };
    const place: Aligned['place'] = x < 0 ? 'left' : 'right';
    return lexicon.aligned({ role: nose, x, y, place, by: 'hand', technique: null, inBox: false, because }, facts);
  };

  test('outside the box he is told by the receiver he stands on, inside being toward the ball', () => {
    expect(at(-17, 7)).toBe('on #1 left, inside, 7 yd');
    expect(at(-19, 1)).toBe('on #1 left, outside, 1 yd');
    expect(at(11, 6.04)).toBe('on #1 right, inside, 6 yd');
    expect(at(13, 6.5)).toBe('on #1 right, outside, 6.5 yd');
    expect(at(4.2, 12)).toBe('on #2 right, head up, 12 yd');
  });

  test('on nobody he is told by depth and distance from the ball', () => {
    expect(at(0.2, 10)).toBe('10 yd deep, over the ball');
    expect(at(-3, 12)).toBe('12 yd deep, 3 yd left of the ball');
    expect(at(8, 10)).toBe('10 yd deep, 8 yd right of the ball');
  });

  test.each([
    ['tight end right', TIGHT, { nose: '0', 'end-l': '4i left', mike: '30 left', jet: '8 right' }],
    ['no tight end', SPREAD, { nose: '0', 'end-r': '4i right', will: '30 right', jet: 'ghost 7 right' }],
  ])('in the box he is told by technique and side: %s', (_name, look, expected) => {
    const analysis = analyse(setupOf({ look }));
    for (const [key, text] of Object.entries(expected)) {
      const man = analysis.assignments.find((each) => each.aligned.role.id === roleOf(key));
      expect(man && lexicon.aligned(man.aligned, analysis.facts)).toBe(text);
    }
  });
});
