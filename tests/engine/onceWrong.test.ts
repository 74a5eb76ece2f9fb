import { describe, expect, it } from 'vitest';
import { analyse, type Analysis, type SideStep, type Tell } from '../../src/engine/index.ts';
import { factsOf, frozen, LOOKS, pressure, setup, tell } from './book.ts';

/* Wrong answers of an earlier engine, kept so that they stay right. */
const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];
const look = LOOKS['11 tight end'];

const run = (first: readonly Tell[], second: readonly Tell[] = []): Analysis =>
  analyse(
    frozen(
      setup({
        look,
        first: pressure('p', first, RIGHT),
        second: second.length === 0 ? null : pressure('q', second, RIGHT),
      }),
    ),
  );
const depthOf = ({ assignments }: Analysis, letter: string): number | undefined =>
  assignments.find(({ aligned }) => aligned.role.letter === letter)?.aligned.y;

describe('once wrong', () => {
  // Called right, the right end is the end of the call side: he hears B and C, and only the first is looked at.
  it('one pressure that tells a lineman two things, by name and by group, is found', () => {
    const { findings } = run([tell('@RE', 'movement', 'rush B-call'), tell('end-call', 'movement', 'contain C-call')]);
    expect(findings.map(({ rule }) => rule)).toContain('line.two-jobs');
  });

  // He stands where the telling that gave way would have him, and rushes from there.
  it('a man stands where the telling that stands puts him, not the one that yields', () => {
    const analysis = run(
      [tell('@M', 'consequence', 'fit B-call', { kind: 'depth', depth: 6 })],
      [tell('@M', 'path', 'rush A-call', { kind: 'depth', depth: 1 })],
    );
    expect(depthOf(analysis, 'M')).toBe(1);
  });

  it('a telling that is not heard moves nobody', () => {
    const analysis = run([
      tell('@M', 'path', 'rush A-call'),
      tell('inside-call', 'path', 'rush B-call', { kind: 'depth', depth: 1 }),
    ]);
    expect(depthOf(analysis, 'M')).toBe(4.5);
  });

  // The split end stands 18 yards from the ball; from the left hash of a high school field the sideline is 17.78 away.
  it('a look drawn over the sideline at this spot is found', () => {
    expect(factsOf(look, 'left').faults).not.toEqual([]);
  });
});
