import { describe, expect, it } from 'vitest';
import { advanced, AT_START, stepped, toggled, wentTo, type Playing } from '../../src/app/walk/playing.ts';

const SECONDS = 3;
const at = (t: number, more: Partial<Playing> = {}): Playing => ({ ...AT_START, t, ...more });

describe('the time of a walk-through', () => {
  it.each<readonly [what: string, before: Playing, after: Playing, expected: Partial<Playing>]>([
    ['play starts at the snap', AT_START, toggled(AT_START, SECONDS), { t: 0, running: true }],
    ['play again goes on from where it stopped', at(1.2), toggled(at(1.2), SECONDS), { t: 1.2, running: true }],
    ['at its end it starts again', at(3), toggled(at(3), SECONDS), { t: 0, running: true }],
    [
      'pause stays',
      at(1.2, { running: true }),
      toggled(at(1.2, { running: true }), SECONDS),
      { t: 1.2, running: false },
    ],
    [
      'a jump stops it',
      at(1, { running: true }),
      wentTo(at(1, { running: true }), 2, SECONDS),
      { t: 2, running: false },
    ],
    ['a jump before the start', at(1), wentTo(at(1), -1, SECONDS), { t: 0 }],
    ['a jump past the end', at(1), wentTo(at(1), 9, SECONDS), { t: 3 }],
    ['a step on', at(0.3), stepped(at(0.3), 1, SECONDS), { t: 0.4 }],
    ['a step back', at(0.3), stepped(at(0.3), -1, SECONDS), { t: 0.2 }],
    ['a step on from between two tenths', at(0.337), stepped(at(0.337), 1, SECONDS), { t: 0.4 }],
    ['a step back from between two tenths', at(0.337), stepped(at(0.337), -1, SECONDS), { t: 0.3 }],
    ['no step before the start', at(0), stepped(at(0), -1, SECONDS), { t: 0 }],
    ['no step past the end', at(3), stepped(at(3), 1, SECONDS), { t: 3 }],
  ])('%s', (_what, _before, after, expected) => expect(after).toMatchObject(expected));

  it('ten steps on and ten back are the start again', () => {
    let playing = AT_START;
    for (let step = 0; step < 10; step += 1) playing = stepped(playing, 1, SECONDS);
    expect(playing.t).toBe(1);
    for (let step = 0; step < 10; step += 1) playing = stepped(playing, -1, SECONDS);
    expect(playing.t).toBe(0);
  });
});

describe('playing', () => {
  const running = at(0, { running: true });
  const after = (from: Playing, frames: readonly number[], glides: boolean): Playing =>
    frames.reduce((playing, frame) => advanced(playing, frame, SECONDS, glides), from);

  it.each<readonly [what: string, from: Playing, frames: readonly number[], glides: boolean, t: number, runs: boolean]>(
    [
      ['goes as fast as the clock', running, [0.2, 0.3], true, 0.5, true],
      ['at half speed half as fast', at(0, { running: true, half: true }), [0.2, 0.2], true, 0.2, true],
      ['stops at its end', running, [2, 2], true, 3, false],
      ['does not move while it is stopped', at(1), [0.2], true, 1, false],
      ['where motion is not wanted, nothing for less than half a second', running, [0.2, 0.29], false, 0, true],
      ['then half a second at once', running, [0.2, 0.29, 0.02], false, 0.5, true],
      ['and half a second a second at half speed', at(0, { running: true, half: true }), [0.6, 0.6], false, 0.5, true],
      ['to its end as well', running, [1, 1, 1.2], false, 3, false],
    ],
  )('%s', (_what, from, frames, glides, t, runs) => {
    const playing = after(from, frames, glides);
    expect(playing.t).toBeCloseTo(t, 6);
    expect(playing.running).toBe(runs);
  });
});
