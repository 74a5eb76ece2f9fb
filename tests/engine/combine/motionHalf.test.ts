/** A motion may decide which half of an either-or call is run; the choice says so. */
import { describe, expect, it } from 'vitest';
import { analyse, asPlayerId, type Analysis, type Point, type SideStep } from '../../../src/engine/index.ts';
import { frozen, LOOKS, pressure, sayAll, setup, tell } from '../book.ts';

const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];

/** Backer through B against two receivers or fewer to the call, else the one inside him through A. */
function run(to: Point | null): Analysis {
  return analyse(
    frozen(
      setup({
        look: LOOKS['10 doubles'],
        ...(to === null ? {} : { motion: { player: asPlayerId('H'), to } }),
        first: pressure('p', [tell('outside-call', 'path', 'rush B-call')], RIGHT),
        second: pressure('q', [tell('inside-call', 'path', 'rush A-call')], RIGHT),
        turn: 'same',
        combination: {
          kind: 'either-or',
          key: [{ kind: 'receivers', side: 'call', compare: 'at-most', count: 2 }],
        },
      }),
    ),
  );
}

describe('an either-or call and a motion', () => {
  it('no motion: the half the look asks for', () => {
    const { choice, motion } = run(null);
    expect([choice?.ran, motion]).toEqual(['first', null]);
  });

  it('a motion that brings a third receiver runs the other half, and says which it was', () => {
    const { choice, motion } = run({ x: 6, y: -1.5 });
    expect(choice?.ran).toBe('second');
    expect(choice === null ? [] : sayAll(choice.because)).toContain('before the motion it is first');
    expect(motion?.moved).toContain('M');
  });

  it('a motion that changes nothing about the key says nothing', () => {
    const { choice } = run({ x: -6, y: -1.5 });
    expect(choice?.ran).toBe('first');
    expect(choice === null ? [] : sayAll(choice.because)).toEqual(['the key holds, so first is run']);
  });
});
