/**
 * Files nobody would draw: parts of the sample put where other parts of their kind stood, and offences anywhere on the
 * field. Each is refused with a place, or the engine works it through: what opens never breaks a promise further in.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkPlaybook, openDocument, saveDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import { analyse, OFFENCE_KINDS, PLACES, RULE_LEVELS, type Place } from '../../src/engine/index.ts';
import { places, withAt } from './json.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';

const SAMPLE = sampleJson();
const PLACES_OF_SAMPLE = places(SAMPLE).filter(({ path }) => path.length > 1);

/** Every call against every look: the point is that it ends, and always in a verdict. */
function workThrough(playbook: Playbook, spot: Place): void {
  for (const call of playbook.calls) {
    for (const look of playbook.looks) {
      const setup = toSetup(playbook, { call, look: look.id, spot });
      if (!setup.ok) throw new Error(`${call.id} is not whole`);
      expect(analyse(setup.value).assignments).toHaveLength(11);
    }
  }
}

it('parts in the place of others of their kind are refused with a place, or worked through', () => {
  const swap = fc.tuple(fc.nat(PLACES_OF_SAMPLE.length - 1), fc.nat());
  let opened = 0;
  let refused = 0;
  fc.assert(
    fc.property(fc.array(swap, { minLength: 1, maxLength: 4 }), fc.constantFrom(...PLACES), (swaps, spot) => {
      const bred = swaps.reduce<Json>((json, [at, other]) => {
        const here = PLACES_OF_SAMPLE[at]?.path ?? [];
        const kin = places(json).filter(({ path }) => path.at(-1) === here.at(-1) && path.length > 1);
        const value = kin[other % Math.max(1, kin.length)]?.value;
        // An earlier swap may have taken the place away.
        const isThere = places(json).some(({ path }) => path.join('.') === here.join('.'));
        return isThere && value !== undefined ? withAt(json, here, value) : json;
      }, SAMPLE);
      const checked = checkPlaybook(bred);
      if (checked.ok) {
        opened += 1;
        workThrough(checked.value, spot);
        expect(openDocument(saveDocument(checked.value))).toEqual(checked);
      } else {
        refused += 1;
        for (const { path } of checked.problem) expect(path).toMatch(/^[a-zA-Z]+[[.]/);
      }
    }),
    { numRuns: 250, seed: 20_261_125 },
  );
  // The test looks at both kinds of file.
  expect(Math.min(opened, refused)).toBeGreaterThan(40);
}, 60_000);

it('an offence anywhere on the field is worked through', () => {
  const yards = fc.oneof(
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.integer({ min: -6, max: 6 }),
    fc.constantFrom(-0.4, -0.6, -1.8),
  );
  const others = OFFENCE_KINDS.filter((kind) => kind !== 'snapper');
  const player = fc.record({ kind: fc.constantFrom(...others), x: yards, y: yards });
  const players = fc.array(player, { minLength: 11, maxLength: 11 });
  const level = fc.constantFrom(...RULE_LEVELS);
  fc.assert(
    fc.property(players, fc.nat(10), fc.constantFrom(...PLACES), level, (eleven, snapper, spot, code) => {
      const drawn = eleven.map((each, index): Json => {
        const kind = index === snapper ? 'snapper' : each.kind;
        return { ...each, id: `P${index}`, letter: 'P', kind };
      });
      const json = withAt(withAt(SAMPLE, ['looks', 0, 'players'], drawn), ['team', 'level'], code);
      const checked = checkPlaybook(json);
      if (!checked.ok) throw new Error(JSON.stringify(checked.problem));
      workThrough(checked.value, spot);
    }),
    { numRuns: 150 },
  );
}, 60_000);
