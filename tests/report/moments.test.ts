import { describe, expect, it } from 'vitest';
import { asPlayerId, asRoleId, type Gap, type Moment, type WalkThrough } from '../../src/engine/index.ts';
import { COMMON_WORDS, makeLexicon, secondsText, walkReport } from '../../src/report/index.ts';
import { LOOKS, setup, pressure } from '../engine/book.ts';

const lexicon = makeLexicon(setup({ look: LOOKS['21 pro I'], first: pressure('one', []) }), COMMON_WORDS);
const [N, M] = [asRoleId('N'), asRoleId('M')];
const [T, Q] = [asPlayerId('T'), asPlayerId('Q')];
const A: Gap = { side: 'left', letter: 'A' };
const B: Gap = { side: 'right', letter: 'B' };

const walk = (moments: readonly Moment[], more: Partial<WalkThrough> = {}): WalkThrough => ({
  against: { kind: 'pass' },
  defence: [],
  offence: [],
  throwsFrom: null,
  fills: [],
  unfilled: [],
  inDoubt: [],
  moments,
  seconds: 3,
  ...more,
});

describe('a moment in words', () => {
  it.each<readonly [Moment, string]>([
    [{ kind: 'in-gap', t: 0.9, role: N, gaps: [A] }, 'N is in the A gap left'],
    [{ kind: 'in-gap', t: 0.9, role: N, gaps: [A, B] }, 'N is in the A gap left and B gap right'],
    [{ kind: 'meets', t: 1, blocker: T, rusher: M }, `${lexicon.playerLetter(T)} meets M`],
    [{ kind: 'at-passer', t: 1.7, role: M, free: true, thrown: false }, 'M comes free and is at the passer'],
    [
      { kind: 'at-passer', t: 2.1, role: M, free: true, thrown: true },
      'M comes free and is at the passer, after the ball is gone',
    ],
    [
      { kind: 'at-passer', t: 1.9, role: N, free: false, thrown: false },
      'N would be at the passer if nobody blocked him',
    ],
    [{ kind: 'thrown', t: 1.8, hot: 'left' }, 'the hot throw to the left is gone'],
    [{ kind: 'thrown', t: 2.4, hot: null }, 'the ball is gone, as from a drop of five steps'],
    [{ kind: 'opens', t: 1.1, player: T, near: B }, `${lexicon.playerLetter(T)} opens a gap beside the B gap right`],
    [
      { kind: 'fits-opened', t: 1.5, role: M, player: T, near: B },
      `M is in the gap that ${lexicon.playerLetter(T)} opened`,
    ],
    [
      { kind: 'ball-at', t: 1.3, player: Q, gap: A, there: [] },
      'Q is at the A gap left with the ball: nobody is there yet',
    ],
    [{ kind: 'ball-at', t: 1.3, player: Q, gap: A, there: [N] }, 'Q is at the A gap left with the ball: N is there'],
    [
      { kind: 'ball-at', t: 1.3, player: Q, gap: A, there: [N, M] },
      'Q is at the A gap left with the ball: N and M are there',
    ],
  ])('%o', (moment, text) => {
    const [row] = walkReport(walk([moment]), lexicon).moments;
    expect(row).toMatchObject({ t: moment.t, text, time: secondsText(moment.t) });
  });

  it('lights whom it is about', () => {
    const [row] = walkReport(walk([{ kind: 'in-gap', t: 0.9, role: N, gaps: [A] }]), lexicon).moments;
    expect(row).toMatchObject({ who: [N], gaps: [A], players: [] });
  });
});

describe('what stands below it', () => {
  const notes = (more: Partial<WalkThrough>) => walkReport(walk([], more), lexicon).notes;

  it('begins with the times being estimates, whatever is walked', () => {
    for (const kind of ['run', 'protection'] as const) {
      expect(notes({ against: { kind, index: 0 } })[0]).toContain('estimates');
    }
    expect(notes({})[0]).toContain('estimates');
  });

  it.each<readonly [Partial<WalkThrough>, string]>([
    [{ inDoubt: [N] }, 'N is told two things: he is shown doing what the first pressure says.'],
    [
      { unfilled: [{ gap: A, owners: [M] }] },
      'Nobody comes to the A gap left here: M has it, but does something else.',
    ],
    [
      { unfilled: [{ gap: A, owners: [N, M] }] },
      'Nobody comes to the A gap left here: N and M have it, but do something else.',
    ],
  ])('%o', (more, note) => expect(notes(more)).toContain(note));
});

it('a time is told to a tenth', () => {
  expect([0, 0.94, 2, 2.25].map(secondsText)).toEqual(['0.0 s', '0.9 s', '2.0 s', '2.3 s']);
});
