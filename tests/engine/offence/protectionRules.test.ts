import { describe, expect, it } from 'vitest';
import { asRoleId } from '../../../src/engine/index.ts';
import { protect, PROTECTIONS, type ProtectionPicture } from '../../../src/engine/offence/index.ts';
import { factsOf, LOOKS, say, sayAll } from '../book.ts';
import {
  badBlocks,
  FIVE_LINEMEN,
  FIVE_UP,
  meet,
  ODD_FRONT,
  passedOn,
  row,
  rush,
  scheme,
  theirs,
  TIGHT_END_EACH_SIDE,
  TIGHT_END_RIGHT,
} from './rushes.ts';

/* Left and right are the OFFENCE's in the tables of this file, as in the rows; `rushes.ts` turns them. */

const slideL = scheme('half-slide', 'L', 'stays');
const slideR = scheme('half-slide', 'R', 'stays');
const odd = (called: typeof slideL, ...paths: readonly string[]): ProtectionPicture =>
  meet(FIVE_LINEMEN, called, ODD_FRONT, rush(ODD_FRONT, ...paths));

const EDGE = ['LE L-C', 'Nose L-A', 'RE R-A', 'RILB R-B', 'ROLB R-C'] as const;
const CROSS = ['LE L-C', 'Nose L-B', 'RILB L-A', 'LILB R-A', 'RE R-C'] as const;
const TWO_OFF_EDGE = ['LOLB L-C', 'LE L-B', 'Nose L-A', 'RE R-B', 'ROLB R-C', 'RILB R-C'] as const;

/*
 * Status: derived by hand from the rules of "Understanding 1/2 Slide Protection", Blitzology, 2010, and "Pass Protection 101",
 * Dawgs By Nature, 2011 (seven and eight men). An edge man on a tight end's side rushes outside the tight end.
 */
describe('seven and eight men', () => {
  const seven = scheme('half-slide', 'L', 'stays', 'stay');
  const rows = [
    {
      title: 'the edge fire zone at a tight end who stays: nobody free, two wasted',
      look: TIGHT_END_RIGHT,
      paths: ['LE L-C', 'Nose L-A', 'RE R-A', 'RILB R-B', 'ROLB R-D'],
      expected: ['LT:LE C:Nose RT:RE TE:ROLB RB:RILB', '', 'LG RG'],
    },
    {
      title: 'two off the edge at a tight end who stays: nobody free',
      look: TIGHT_END_RIGHT,
      paths: ['LOLB L-C', 'LE L-B', 'Nose L-A', 'RE R-B', 'ROLB R-D', 'RILB R-D'],
      expected: ['LT:LOLB LG:LE C:Nose RT:RE TE:ROLB RB:RILB', '', 'RG'],
    },
    {
      title: 'and the other inside backer through the left A: he is free',
      look: TIGHT_END_RIGHT,
      paths: ['LOLB L-C', 'LE L-B', 'Nose L-A', 'LILB L-A', 'RE R-B', 'ROLB R-D', 'RILB R-D'],
      expected: ['LT:LOLB LG:LE C:Nose RT:RE TE:ROLB RB:RILB', 'LILB', 'RG'],
    },
    {
      title: 'eight men against seven, one in a gap: nobody free',
      look: TIGHT_END_EACH_SIDE,
      paths: ['LOLB L-D', 'LE L-C', 'LILB L-B', 'Nose L-A', 'RILB R-A', 'RE R-C', 'ROLB R-D'],
      expected: ['LTE:LOLB LT:LE LG:LILB C:Nose RG:RILB RT:RE TE:ROLB', '', ''],
    },
    {
      title: 'eight men, two through one gap: the second is free',
      look: TIGHT_END_EACH_SIDE,
      paths: ['LOLB L-D', 'LE L-C', 'LILB L-A', 'Nose L-A', 'RILB R-A', 'RE R-C', 'ROLB R-D'],
      expected: ['LTE:LOLB LT:LE C:Nose RG:RILB RT:RE TE:ROLB', 'LILB', 'LG'],
    },
  ] as const;

  it.each(rows)('$title', ({ look, paths, expected }) => {
    expect(row(meet(look, seven, ODD_FRONT, rush(ODD_FRONT, ...paths)))).toEqual(expected);
  });
});

/*
 * "Understanding 1/2 Slide Protection", Blitzology, 2010: the passer is hot if both the inside and the outside backer come on
 * the man side, or more than the four on the slide side. "Pass Protection 101", Dawgs By Nature, 2011: man, the second backer.
 * "Breaking Half Slide Protection", Blitzology, 2019: covered up, the sixth man away from the back.
 */
describe('throwing hot', () => {
  const hot = (picture: ProtectionPicture): string => (picture.hot === null ? 'no' : theirs(picture.hot.side));
  const rows = [
    ['both backers of the man side', odd(slideL, ...EDGE), 'R'],
    ['the inside backer of the man side alone', odd(slideL, 'LE L-C', 'Nose L-A', 'RE R-C', 'RILB R-B'), 'no'],
    ['the outside backer of the man side alone', odd(slideL, 'LE L-B', 'Nose L-A', 'RE R-B', 'ROLB R-C'), 'no'],
    ['the same rush at the slide', odd(slideR, ...EDGE), 'no'],
    ['five at the four of the slide', odd(slideR, 'LE L-C', ...TWO_OFF_EDGE.slice(2), 'LILB R-A'), 'R'],
    ['the second backer against big on big', odd(scheme('man', 'R', 'stays'), ...CROSS), 'L'],
  ] as const;

  it.each(rows)('%s', (_, picture, side) => {
    expect(hot(picture)).toBe(side);
  });

  it('covered up: one more man is hot on the side away from the back, and had on his side', () => {
    const straight = ['LE L-C', 'LDT L-B', 'Nose R-A', 'RDT R-B', 'RE R-C'];
    const away = meet(FIVE_LINEMEN, slideL, FIVE_UP, rush(FIVE_UP, ...straight, 'LILB L-A'));
    const toBack = meet(FIVE_LINEMEN, slideL, FIVE_UP, rush(FIVE_UP, ...straight, 'RILB R-A'));
    expect([hot(away), away.unblocked.map((each) => each.rusher)]).toEqual(['L', ['LILB']]);
    expect([hot(toBack), row(toBack)[0]]).toEqual(['no', 'LT:LE LG:LDT C:Nose RG:RDT RT:RE RB:RILB']);
  });

  it('says why, with the count of the side', () => {
    const { hot: found } = odd(slideL, ...EDGE);
    expect(found === null ? [] : sayAll(found.why)).toEqual([
      'throw hot to the left: ROLB comes free there',
      '3 come on the left, which has 2 blockers',
      'nobody has ROLB, who comes to C-left',
      'B takes RILB, who comes to B-left',
      'B reads the left from the inside out',
    ]);
  });
});

describe('passing men on', () => {
  // The documented case: six blockers, five rushers, one free through the back's side ("It Really Isn't That Simple",
  // Blitzology, 2020); the tackle gives the man who stuck inside to the sliding guard (derived from the same rules).
  it('the edge fire zone at the man side is blocked if the tackle hands his man to the guard', () => {
    const picture = odd(slideL, ...EDGE);
    expect(picture.blocks.length + picture.idle.length).toBe(6);
    expect(picture.unblocked.map((each) => each.rusher)).toEqual(['ROLB']);
    expect(passedOn(picture)).toEqual(['RT takes ROLB, RE to RG']);
  });

  it('an idle lineman takes a man who comes beside him, and nobody is used twice', () => {
    const free = scheme('half-slide', 'L', 'releases');
    expect(passedOn(odd(free, ...EDGE))).toEqual(['RG takes RILB']);
    expect(passedOn(odd(free, 'LOLB L-C', 'Nose L-A', 'RILB R-A', 'ROLB R-C'))).toEqual(['RT takes ROLB']);
  });

  it('has nothing to offer where the free man comes far from everybody idle', () => {
    expect(passedOn(odd(scheme('man', 'R', 'stays'), ...CROSS))).toEqual([]);
  });
});

/*
 * "What GT Does - Pass Blocking", GTSwarm: a back on an end is a mismatch. "Creating the Illusion of Pressure", Blitzology,
 * 2011: the best blockers blocking no one and the worst one picking up the blitzer.
 */
describe('bad blocks', () => {
  const rows = [
    ['full slide away from the end', odd(scheme('full-slide', 'R', 'stays'), ...EDGE), ['RB LE back-on-line-man']],
    ['half slide against the cross', odd(slideR, ...CROSS), ['RB Nose back-on-line-man']],
    ['the simulated rush', odd(slideL, 'LOLB L-C', 'Nose L-A', 'RILB R-A', 'ROLB R-C'), ['RB ROLB back-on-line-man']],
    ['a back on a backer from depth', odd(slideL, ...EDGE), []],
    ['a tackle whose man goes two gaps beyond his own', odd(slideL, 'RE L-A'), ['RT RE far-redirect']],
    ['a tackle whose man goes one gap beyond his own', odd(slideL, 'RE R-A'), []],
  ] as const;

  it.each(rows)('%s', (_, picture, bad) => {
    expect(badBlocks(picture)).toEqual(bad);
  });
});

describe('where the rows leave the rule open', () => {
  it('two in one gap: the blocker takes the one told to go first, else the nearest', () => {
    const edge = (...paths: readonly string[]): string => row(odd(slideR, ...paths))[0];
    expect(edge('ROLB R-C', 'RILB R-C')).toBe('RT:ROLB');
    expect(edge('ROLB R-C second', 'RILB R-C first')).toBe('RT:RILB');
  });

  // "Pass Protection 101", Dawgs By Nature, 2011: five linemen on four down men and the middle backer, a back for each side.
  it('man against four down: the lineman left over takes the middle backer, each back his side', () => {
    const even = [
      ['LE', 3, 0.8],
      ['LT', 2, 0.8],
      ['RT', -1, 0.8],
      ['RE', -3, 0.8],
      ['M', 0.3, 4.5],
      ['S', 3.5, 4.5],
      ['W', -3.5, 4.5],
    ] as const;
    const front = even.map(([role, x, y]) => ({ role: asRoleId(role), x, y }));
    const rushers = rush(front, 'LE L-C', 'LT L-B', 'RT R-A', 'RE R-C', 'M L-A', 'S L-C', 'W R-C');
    const look = 'line wr:X@-18 wr:H@-9,-1.5 wr:Z@18 qb:Q@0,-5 rb:B@-1.5,-5 rb:F@1.5,-5';
    const picture = meet(look, scheme('man', 'L', 'both-stay'), front, rushers);
    expect(picture.blocks.map((block) => `${block.blocker}:${block.rusher}`).sort()).toEqual(
      ['B:W', 'C:M', 'F:S', 'G1:RT', 'G2:LT', 'T1:RE', 'T2:LE'].sort(),
    );
  });

  // "Pass Protection Schemes", Iowa Wesleyan staff: edge man on the line, guard and tackle fan out; off it, the guard works inside.
  it('man with the edge men off the line: tackles on the ends, guards on the inside backers, the back on the edges', () => {
    const soft = ODD_FRONT.map((man) => (man.role.endsWith('OLB') ? { ...man, y: 4 } : man));
    const rushers = rush(soft, 'LE L-C', 'Nose L-A', 'RE R-B', 'LILB L-B', 'RILB R-A', 'ROLB R-C');
    expect(row(meet(FIVE_LINEMEN, scheme('man', 'R', 'stays'), soft, rushers))).toEqual([
      'LT:LE LG:LILB C:Nose RG:RILB RT:RE RB:ROLB',
      '',
      '',
    ]);
  });
});

describe('a protection the look cannot call', () => {
  const EMPTY = 'line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@18,-1.5 wr:S@9,-1.5 qb:Q@0,-5';
  const refusal = (look: string, id: (typeof PROTECTIONS)[number]['id']): string => {
    const found = PROTECTIONS.find((each) => each.id === id);
    if (found === undefined) throw new Error(`No protection ${id}`);
    const result = protect({
      facts: factsOf(look),
      scheme: { ...found, slideSide: 'left' },
      defenders: ODD_FRONT,
      rushers: [],
    });
    return result.ok ? 'can be called' : say(result.problem);
  };

  it.each([
    [EMPTY, 'half-slide-six', 'there is no back who could stay in'],
    [EMPTY, 'half-slide-five', 'can be called'],
    [LOOKS['10 doubles'], 'man-end', 'no tight end is attached who could stay in'],
    [LOOKS['11 tight end'], 'max', 'only one back could stay in'],
    [LOOKS['21 pro I'], 'max', 'can be called'],
  ] as const)('%s: %s', (look, id, expected) => {
    expect(refusal(look, id)).toBe(expected);
  });

  it('breaks off when a rusher is nobody of the defence', () => {
    expect(() => meet(FIVE_LINEMEN, slideL, ODD_FRONT.slice(1), rush(ODD_FRONT, 'Nose L-A'))).toThrow(
      'Rusher Nose is not among the defenders',
    );
  });
});
