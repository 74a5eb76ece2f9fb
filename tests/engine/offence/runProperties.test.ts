import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asRoleId, mirrorSide, SIDES, type LookFacts, type Side } from '../../../src/engine/index.ts';
import {
  optionDuties,
  READ_REACTIONS,
  readMan,
  RUN_CONCEPTS,
  runConcept,
  type ManRule,
  type OptionMan,
  type RunConcept,
  type RunPicture,
} from '../../../src/engine/offence/index.ts';
import { frozen, say } from '../book.ts';
import { ALL_LOOKS, bothWays, flipGap, flipX } from './mirrored.ts';

const flipRule = (rule: ManRule | null): ManRule | null =>
  rule === null ? null : { ...rule, side: mirrorSide(rule.side) };

/** A picture flipped left to right, its reasons left out: they are told in absolute sides. */
function flipPicture(picture: RunPicture): Omit<RunPicture, 'because'> {
  const { because: _, ...rest } = picture;
  return {
    ...rest,
    side: mirrorSide(rest.side),
    aim: flipGap(rest.aim),
    aims: rest.aims.map(flipGap),
    bounce: rest.bounce === null ? null : flipGap(rest.bounce),
    cutback: rest.cutback === null ? null : flipGap(rest.cutback),
    pullers: rest.pullers.map((each) => ({ ...each, from: flipGap(each.from), to: flipGap(each.to) })),
    leads: rest.leads.map((each) => ({ ...each, to: flipGap(each.to) })),
    keeper: rest.keeper === null ? null : { ...rest.keeper, where: flipGap(rest.keeper.where) },
    pitch: rest.pitch === null ? null : { ...rest.pitch, where: flipGap(rest.pitch.where) },
    read: flipRule(rest.read),
    pitchRead: flipRule(rest.pitchRead),
    option: rest.option === null ? null : { ...rest.option, give: rest.option.give.map(flipGap) },
    leftUnblocked:
      rest.leftUnblocked === null ? null : { ...rest.leftUnblocked, man: flipRule(rest.leftUnblocked.man) },
    gapChange: { left: rest.gapChange.right, right: rest.gapChange.left },
    floating: rest.floating.map((each) => ({
      ...flipX(each),
      side: mirrorSide(each.side),
      near: flipGap(each.near),
    })),
  };
}

function told(facts: LookFacts, concept: RunConcept, side: Side): unknown {
  const result = runConcept(frozen(facts), concept, side);
  if (!result.ok) return result.problem.template;
  const { because: _, ...rest } = result.value;
  return rest;
}

function toldFlipped(facts: LookFacts, concept: RunConcept, side: Side): unknown {
  const result = runConcept(facts, concept, side);
  return result.ok ? flipPicture(result.value) : result.problem.template;
}

/** Defenders on a coarse grid, so that ties are common, each with a gap or two of his own. */
const defenceOf = (facts: LookFacts): fc.Arbitrary<readonly OptionMan[]> =>
  fc
    .uniqueArray(
      fc.record({
        x: fc.integer({ min: -9, max: 9 }),
        y: fc.constantFrom(0.8, 1, 4.5, 7, 11),
        gaps: fc.subarray(
          facts.gaps.map((each) => each.gap),
          { maxLength: 2 },
        ),
      }),
      { maxLength: 11, selector: ({ x, y }) => `${x} ${y}` },
    )
    .map((men) => men.map((man, index) => ({ ...man, x: (man.x * 2) / 3, role: asRoleId(`D${String(index)}`) })));

const pictures = (facts: LookFacts): readonly RunPicture[] =>
  RUN_CONCEPTS.flatMap((concept) =>
    SIDES.flatMap((side) => {
      const result = runConcept(facts, concept, side);
      return result.ok ? [result.value] : [];
    }),
  );

describe.each(ALL_LOOKS)('runs against %s', (_, drawn) => {
  const { facts, flipped } = bothWays(drawn);

  it.each(RUN_CONCEPTS)('%s, flipped left to right, is the same flipped', (concept) => {
    for (const side of SIDES)
      expect(told(flipped, concept, mirrorSide(side))).toEqual(toldFlipped(facts, concept, side));
  });

  // "Two Gap, One Gap Revisited", Football Is Life blog, 2015: gaps to own are blockers and one more. A passer who may run adds
  // one; so the sum of what floats is every man behind the line who neither carries nor throws, and the passer who may keep.
  it('the gaps are blockers and one more, whoever moves where', () => {
    const behind = facts.backs.length;
    for (const picture of pictures(facts)) {
      const backCarries = facts.backs.some((back) => back.player === picture.carrier);
      const { left, right } = picture.gapChange;
      const expected = behind - (backCarries ? 1 : 0) + (picture.keeper !== null && backCarries ? 1 : 0);
      expect([picture.concept, picture.side, left + right]).toEqual([picture.concept, picture.side, expected]);
    }
  });

  it('names no gap twice among the floating ones, and only gaps and players of the look', () => {
    const gaps = new Set(facts.gaps.map(({ gap }) => `${gap.letter} ${gap.side}`));
    for (const { floating, aims, pullers } of pictures(facts)) {
      expect(new Set(floating.map((each) => each.id)).size).toBe(floating.length);
      expect(floating.every((each) => facts.players.has(each.player))).toBe(true);
      const named = [...floating.map((each) => each.near), ...aims, ...pullers.flatMap((each) => [each.from, each.to])];
      expect(named.filter((gap) => !gaps.has(`${gap.letter} ${gap.side}`))).toEqual([]);
    }
  });

  it('an option, flipped left to right, gives the same men the same duties', () => {
    const options = pictures(facts).filter((each) => each.option !== null);
    fc.assert(
      fc.property(defenceOf(facts), fc.constantFrom(...READ_REACTIONS), (men, reaction) => {
        const images = men.map((man) => ({ ...flipX(man), gaps: man.gaps.map(flipGap) }));
        for (const picture of options) {
          const image: RunPicture = { ...flipPicture(picture), because: picture.because };
          expect(readMan(image, images)).toBe(readMan(picture, men));
          const here = optionDuties(picture, men, reaction);
          const there = optionDuties(image, images, reaction);
          expect(there.ok).toBe(here.ok);
          if (!here.ok || !there.ok) continue;
          const { because: _here, ...duties } = here.value;
          const { because: _there, ...imaged } = there.value;
          expect(imaged).toEqual(duties);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('an option says what is missing, and gives nobody the ball twice but the dive', () => {
    const options = pictures(facts).filter((each) => each.option !== null);
    fc.assert(
      fc.property(defenceOf(facts), fc.constantFrom(...READ_REACTIONS), (men, reaction) => {
        for (const picture of options) {
          const result = optionDuties(picture, men, reaction);
          if (!result.ok) {
            expect([say(result.problem), readMan(picture, men)]).toEqual([
              'nobody stands where the read man should',
              null,
            ]);
            continue;
          }
          const { quarterback, pitch, missing } = result.value;
          expect(pitch.filter((role) => quarterback.includes(role))).toEqual([]);
          expect(missing.includes('quarterback')).toBe(quarterback.length === 0);
          expect(missing.includes('pitch')).toBe(picture.pitch !== null && pitch.length === 0);
        }
      }),
      { numRuns: 40 },
    );
  });
});
