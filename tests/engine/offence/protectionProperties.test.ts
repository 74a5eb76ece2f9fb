import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asRoleId, mirrorSide, SIDES, type LookFacts } from '../../../src/engine/index.ts';
import {
  BACK_JOBS,
  protect,
  PROTECTION_SCHEMES,
  PROTECTIONS,
  TIGHT_END_JOBS,
  type ProtectionInput,
  type ProtectionPicture,
  type ProtectionResult,
} from '../../../src/engine/offence/index.ts';
import { ALL_LOOKS, bothWays, flipGap, flipX } from './mirrored.ts';

/** Defenders on a coarse grid, so that equal distances and men over the ball are common, and up to eight of them rush. */
const rushIn = (facts: LookFacts): fc.Arbitrary<Pick<ProtectionInput, 'defenders' | 'rushers'>> =>
  fc
    .uniqueArray(fc.record({ x: fc.integer({ min: -8, max: 8 }), y: fc.constantFrom(0.8, 1, 4, 5, 11) }), {
      minLength: 1,
      maxLength: 11,
      selector: ({ x, y }) => `${x} ${y}`,
    })
    .chain((spots) => {
      const defenders = spots.map(({ x, y }, index) => ({
        role: asRoleId(`D${String(index)}`),
        x: (x * 2) / 3,
        y,
      }));
      const ends = defenders.map(() =>
        fc.record({
          comes: fc.boolean(),
          gap: fc.constantFrom(...facts.gaps.map((each) => each.gap)),
          order: fc.constantFrom('first' as const, 'second' as const, null),
        }),
      );
      return fc.tuple(...ends).map((paths) => ({
        defenders,
        rushers: defenders.flatMap(({ role, x, y }, index) => {
          const path = paths[index];
          if (path?.comes !== true) return [];
          return [{ role, from: { x, y }, endGap: path.gap, order: path.order }];
        }),
      }));
    });

const schemes = fc.record({
  scheme: fc.constantFrom(...PROTECTION_SCHEMES),
  slideSide: fc.constantFrom(...SIDES),
  back: fc.constantFrom(...BACK_JOBS),
  tightEnds: fc.constantFrom(...TIGHT_END_JOBS),
});

const flip = (input: ProtectionInput, flipped: LookFacts): ProtectionInput => ({
  facts: flipped,
  scheme: { ...input.scheme, slideSide: mirrorSide(input.scheme.slideSide) },
  defenders: input.defenders.map(flipX),
  rushers: input.rushers.map((each) => ({ ...each, from: flipX(each.from), endGap: flipGap(each.endGap) })),
});

/** What a picture says, without its sentences and the order of its lists. */
function gist(result: ProtectionResult): unknown {
  if (!result.ok) return result.problem.template;
  const { blocks, unblocked, idle, passOff, mismatches, hot } = result.value;
  return {
    blocks: blocks.map((each) => `${each.blocker} ${each.rusher} ${each.by}`).sort(),
    unblocked: unblocked.map((each) => each.rusher).sort(),
    idle: idle.map((each) => each.blocker).sort(),
    passOff: passOff.map((each) => `${each.by} ${each.rusher} ${each.hands?.to ?? ''}`).sort(),
    mismatches: mismatches.map((each) => `${each.kind} ${each.blocker}`).sort(),
    hot: hot?.side ?? null,
  };
}

function flippedGist(result: ProtectionResult): unknown {
  const { hot = null } = result.ok ? result.value : {};
  if (!result.ok || hot === null) return gist(result);
  return gist({ ok: true, value: { ...result.value, hot: { ...hot, side: mirrorSide(hot.side) } } });
}

const count = (picture: ProtectionPicture): readonly string[] => [
  ...picture.blocks.map((each) => each.rusher),
  ...picture.unblocked.map((each) => each.rusher),
];

describe.each(ALL_LOOKS)('protections of %s', (_, drawn) => {
  const { facts, flipped } = bothWays(drawn);

  it('flipped left to right, say the same flipped', () => {
    fc.assert(
      fc.property(rushIn(facts), schemes, (rush, scheme) => {
        const input: ProtectionInput = { facts, scheme, ...rush };
        expect(gist(protect(flip(input, flipped)))).toEqual(flippedGist(protect(input)));
      }),
      { numRuns: 60 },
    );
  });

  it('count every rusher once and every blocker once, and are hot exactly when somebody is free', () => {
    fc.assert(
      fc.property(rushIn(facts), schemes, (rush, scheme) => {
        const result = protect({ facts, scheme, ...rush });
        if (!result.ok) return;
        const { blocks, idle, unblocked, hot } = result.value;
        expect([...count(result.value)].sort()).toEqual(rush.rushers.map((each) => each.role).sort());
        const crew = [...blocks, ...idle].map((each) => each.blocker);
        const attached = [...facts.surface.left.slice(1), ...facts.surface.right].filter(
          (body) => !['lineman', 'snapper'].includes(facts.players.get(body.player)?.kind ?? ''),
        );
        const backs = { releases: 0, stays: 1, 'both-stay': 2 }[scheme.back];
        expect(new Set(crew).size).toBe(crew.length);
        expect(crew).toHaveLength(5 + backs + (scheme.tightEnds === 'stay' ? attached.length : 0));
        expect(hot === null).toBe(unblocked.length === 0);
      }),
      { numRuns: 60 },
    );
  });
});

it('names every protection once', () => {
  expect(new Set(PROTECTIONS.map((each) => each.id)).size).toBe(PROTECTIONS.length);
  expect(new Set(PROTECTIONS.map(({ scheme, back, tightEnds }) => `${scheme} ${back} ${tightEnds}`)).size).toBe(
    PROTECTIONS.length,
  );
});
