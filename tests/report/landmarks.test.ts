import { describe, expect, it } from 'vitest';
import { analyse, defenceLandmarks, fieldAt, offenceLandmarks, type Landmark } from '../../src/engine/index.ts';
import { COMMON_WORDS, landmarkText, makeLexicon } from '../../src/report/index.ts';
import { setupOf, TIGHT } from './fixtures.ts';

const { facts, setup } = analyse(setupOf({ look: TIGHT }));
const lexicon = makeLexicon(setup, COMMON_WORDS);
const marks = fieldAt(setup.level, setup.spot);
const nose = setup.roles.find(({ letter }) => letter === 'N')?.id;
if (nose === undefined) throw new Error('There is no nose');
const lines = defenceLandmarks(facts, marks, [{ mate: { kind: 'defender', role: nose }, at: { x: 0, y: 0.9 } }]);

/** The words of the lines through that spot. */
function words(through: readonly Landmark[], x: number, y: number): string {
  const near = through.filter(({ axis, at }) => Math.abs(at - (axis === 'x' ? x : y)) < 0.01);
  return landmarkText(near, { x, y }, facts, lexicon, COMMON_WORDS);
}

describe('what a coach calls a spot', () => {
  // The numbers: the sources beside the table of techniques; the rest is common practice, no source.
  it.each<[string, number, number]>([
    ['4i left, inside foot of the tackle, 1 yd deep', -7 / 3, 1],
    ['50 right, outside foot of the tackle, 4.5 yd deep', 3, 4.5],
    ['3 right, outside foot of the guard', 5 / 3, 2],
    ['level with N', 30, 0.9],
    ['7 yd deep', 30, 7],
  ])('%s', (text, x, y) => {
    expect(words(lines, x, y)).toBe(text);
  });

  it.each<[Landmark['what'], string]>([
    [{ kind: 'receiver', side: 'left', number: 2, leverage: 'head' }, 'head up on number 2 left'],
    [{ kind: 'receiver', side: 'right', number: 1, leverage: 'inside' }, 'inside number 1 right'],
    [{ kind: 'apex', side: 'left', number: 2 }, 'half way to number 2 left'],
    [{ kind: 'ball' }, 'over the ball'],
    [{ kind: 'hash', side: 'right' }, 'on the right hash'],
    [{ kind: 'numbers', side: 'left' }, 'on the left numbers'],
    [{ kind: 'place', place: 'on-line' }, 'on the line'],
    [{ kind: 'place', place: 'off-line' }, 'off the line'],
    [{ kind: 'place', place: 'gun' }, 'gun depth'],
  ])('%o is said "%s"', (what, text) => {
    expect(landmarkText([{ axis: 'x', at: 0, what }], { x: 0, y: 0 }, facts, lexicon, COMMON_WORDS)).toBe(text);
  });

  it('names the men of the offence as everywhere', () => {
    const [player] = facts.players.values();
    if (player === undefined) throw new Error('Nobody is there');
    const said = offenceLandmarks(player, facts, marks, [
      { mate: { kind: 'offence', player: player.id }, at: { x: 9, y: -3 } },
    ]).map((line) => landmarkText([line], { x: 0, y: 0 }, facts, lexicon, COMMON_WORDS));
    expect(said).toContain(`level with ${lexicon.player(player.id)}`);
    expect(said).toContain(`as wide as ${lexicon.player(player.id)}`);
    expect(said.some((text) => text.startsWith('one split from '))).toBe(true);
  });
});
