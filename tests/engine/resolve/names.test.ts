import { describe, expect, it } from 'vitest';
import {
  findGap,
  findGaps,
  findReceiver,
  findSide,
  gapsThatExist,
  type NameContext,
} from '../../../src/engine/resolve/names.ts';
import { parseRuleJob, type GapRef, type ReceiverRef, type Side, type SideRef } from '../../../src/engine/index.ts';
import { factsOf, gapText, LOOKS, read, say } from '../book.ts';

/** Against a tight end on the right, called to the right; the man told stands on the left. */
const context: NameContext = { facts: factsOf(LOOKS['11 tight end']), callSide: 'right', mySide: 'left' };

/** Names are written as the rule notation has them: `A-call`, `edge-mine`, `outside:end-right`, `#2-away`, `back`. */
function gapRef(text: string): GapRef {
  const job = read(parseRuleJob(`rush ${text}`));
  const [gap] = job.kind === 'rush' ? job.gaps : [];
  if (gap === undefined) throw new Error(`${text} is no gap`);
  return gap;
}
function receiverRef(text: string): ReceiverRef {
  const job = read(parseRuleJob(`man ${text}`));
  if (job.kind !== 'man') throw new Error(`${text} is no receiver`);
  return job.receiver;
}

const SIDES: readonly (readonly [ref: SideRef, callSide: Side | null, mySide: Side | null, found: string])[] = [
  ['left', null, null, 'left'],
  ['right', 'left', 'left', 'right'],
  ['call', 'left', 'right', 'left'],
  ['away', 'left', 'left', 'right'],
  ['mine', 'left', 'right', 'right'],
  ['other', 'left', 'right', 'left'],
  ['call', null, 'right', 'there is no call side'],
  ['away', null, 'right', 'there is no call side'],
  ['mine', 'left', null, 'he stands in the middle and has no side of his own'],
  ['other', 'left', null, 'he stands in the middle and has no side of his own'],
];

describe('a side', () => {
  it.each(SIDES)('%s, called to %s, mine is %s: %s', (ref, callSide, mySide, found) => {
    const side = findSide(ref, { ...context, callSide, mySide });
    expect(side.ok ? side.value : say(side.problem)).toBe(found);
  });
});

const GAPS: readonly (readonly [ref: string, found: string])[] = [
  ['A-call', 'A-right'],
  ['A-away', 'A-left'],
  ['B-mine', 'B-left'],
  ['B-other', 'B-right'],
  ['D-right', 'D-right'],
  ['C-left', 'C-left'],
  ['edge-call', 'D-right'],
  ['edge-away', 'C-left'],
  ['edge-mine', 'C-left'],
  ['outside:snapper-call', 'A-right'],
  ['outside:guard-away', 'B-left'],
  ['outside:tackle-call', 'C-right'],
  ['outside:end-call', 'D-right'],
  ['outside:last-call', 'D-right'],
  ['outside:last-away', 'C-left'],
  ['D-away', 'there is no D gap on the left'],
  ['E-call', 'there is no E gap on the right'],
  ['outside:end-away', 'there is no attached tight end on the left'],
  ['outside:wing-call', 'there is no wing on the right'],
];

describe('a gap', () => {
  it.each(GAPS)('%s: %s', (ref, found) => {
    const gap = findGap(gapRef(ref), context);
    expect(gap.ok ? gapText(gap.value) : say(gap.problem)).toBe(found);
  });

  it('a side that is not there is the reason, before the gap', () => {
    const gap = findGap(gapRef('A-mine'), { ...context, mySide: null });
    expect(gap.ok ? gapText(gap.value) : say(gap.problem)).toBe('he stands in the middle and has no side of his own');
  });

  it('of several all are found, or the first reason told', () => {
    const all = (refs: readonly string[]): string => {
      const gaps = findGaps(refs.map(gapRef), context);
      return gaps.ok ? gaps.value.map(gapText).join(' ') : say(gaps.problem);
    };
    expect(all(['A-call', 'A-away'])).toBe('A-right A-left');
    expect(all(['A-call', 'D-away', 'E-call'])).toBe('there is no D gap on the left');
    expect(all([])).toBe('');
    // Beside a tight end the edge is D: two names, one gap.
    expect(all(['edge-call', 'D-call', 'C-call'])).toBe('D-right C-right');
  });

  it('a list of gaps a man may fit keeps those that exist', () => {
    const some = gapsThatExist(['D-away', 'edge-away', 'E-call', 'D-call'].map(gapRef), context);
    expect(some.map(gapText)).toEqual(['C-left', 'D-right']);
    const twice = gapsThatExist(['edge-call', 'D-call', 'C-away', 'edge-away'].map(gapRef), context);
    expect(twice.map(gapText)).toEqual(['D-right', 'C-left']);
  });

  // Whatever a coach drags on the board is drawn, however absurd; the engine answers and does not break.
  it('outside the last of more men than there are letters is the outermost gap', () => {
    const facts = factsOf(
      'sn:C@0 ol:G1@1.333 ol:G2@2.667 ol:T1@4 ol:T2@5.333 te:Y@6.667 te:U@8 te:V@9.333 te:W@10.667 qb:Q@0,-5 rb:B@0,-7',
    );
    const gap = findGap(gapRef('outside:last-call'), { ...context, facts });
    expect(gap.ok ? gapText(gap.value) : say(gap.problem)).toBe('G-right');
  });
});

interface ReceiverRow {
  readonly name: string;
  readonly look: string;
  readonly ref: string;
  readonly callSide: Side | null;
  readonly mySide: Side | null;
  readonly found: string;
}

const TIGHT = LOOKS['11 tight end'];
const SPLIT = LOOKS['20 split backs'];
const RECEIVERS: readonly ReceiverRow[] = [
  { name: 'number one', look: TIGHT, ref: '#1-call', callSide: 'right', mySide: 'left', found: 'Z' },
  { name: 'the tight end', look: TIGHT, ref: '#2-call', callSide: 'right', mySide: 'left', found: 'Y' },
  { name: 'away', look: TIGHT, ref: '#2-away', callSide: 'right', mySide: 'left', found: 'H' },
  { name: 'mine', look: TIGHT, ref: '#1-mine', callSide: 'right', mySide: 'left', found: 'X' },
  {
    name: 'no third',
    look: TIGHT,
    ref: '#3-call',
    callSide: 'right',
    mySide: 'left',
    found: 'there is no receiver number 3 on the right',
  },
  {
    // "Blitz checks": a rule that points at somebody who is not there, A. Hovorka, X&O Labs, 4 Nov 2017.
    name: 'no second away against trips',
    look: LOOKS['10 trips'],
    ref: '#2-away',
    callSide: 'right',
    mySide: 'left',
    found: 'there is no receiver number 2 on the left',
  },
  {
    name: 'nobody covers a covered man: he has no number',
    look: 'line te:Y@4 wr:Z@14 wr:X@-14,-1.5 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    ref: '#2-call',
    callSide: 'right',
    mySide: 'left',
    found: 'there is no receiver number 2 on the right',
  },
  {
    name: 'a side that is not there',
    look: TIGHT,
    ref: '#1-call',
    callSide: null,
    mySide: 'left',
    found: 'there is no call side',
  },
  { name: 'the only back', look: TIGHT, ref: 'back', callSide: 'right', mySide: 'right', found: 'T' },
  { name: 'the back on my side', look: SPLIT, ref: 'back', callSide: 'right', mySide: 'left', found: 'F' },
  { name: 'the back on my side, right', look: SPLIT, ref: 'back', callSide: 'left', mySide: 'right', found: 'T' },
  {
    name: 'nobody’s side and no call: the back on the left',
    look: SPLIT,
    ref: 'back',
    callSide: null,
    mySide: null,
    found: 'F',
  },
  {
    name: 'no back',
    look: 'line wr:X@-14 wr:H@-7,-1.5 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-5',
    ref: 'back',
    callSide: 'right',
    mySide: 'left',
    found: 'there is no back number 1 in the backfield',
  },
  { name: 'the farther of two backs', look: SPLIT, ref: 'back2', callSide: 'right', mySide: 'left', found: 'T' },
  {
    name: 'no second back',
    look: TIGHT,
    ref: 'back2',
    callSide: 'right',
    mySide: 'left',
    found: 'there is no back number 2 in the backfield',
  },
];

describe('a receiver', () => {
  it.each(RECEIVERS)('$name', ({ look, ref, callSide, mySide, found }) => {
    const receiver = findReceiver(receiverRef(ref), { facts: factsOf(look), callSide, mySide });
    expect(receiver.ok ? receiver.value : say(receiver.problem)).toBe(found);
  });
});

/*
 * "The back" of two is the one nearest to the man's own side; a man in the middle takes the one on the call side. Both
 * halves of a row are the same picture, once as it is and once flipped.
 */
const NEAREST: readonly (readonly [
  name: string,
  backs: string,
  flipped: string,
  callSide: Side,
  mySide: Side | null,
])[] = [
  ['both on the left, my side is the right', 'rb:F@-3,-5 rb:T@-1.5,-5', 'rb:F@3,-5 rb:T@1.5,-5', 'right', 'right'],
  ['both on the right, my side is the right', 'rb:F@1.5,-5 rb:T@3,-5', 'rb:F@-1.5,-5 rb:T@-3,-5', 'left', 'right'],
  ['one on each side, I am in the middle', 'rb:F@-1.5,-5 rb:T@1.5,-5', 'rb:F@1.5,-5 rb:T@-1.5,-5', 'right', null],
  ['one behind the ball, one away from me', 'rb:F@-1.5,-5 rb:T@0,-7', 'rb:F@1.5,-5 rb:T@0,-7', 'right', 'right'],
];

describe('the back nearest to a man’s own side', () => {
  const back = (backs: string, callSide: Side, mySide: Side | null): string => {
    const facts = factsOf(`line wr:X@-14 wr:H@-7,-1.5 wr:Z@14 qb:Q@0,-5 ${backs}`);
    const found = findReceiver({ kind: 'back', number: 1 }, { facts, callSide, mySide });
    return found.ok ? found.value : say(found.problem);
  };
  const flip = (side: Side): Side => (side === 'left' ? 'right' : 'left');

  it.each(NEAREST)('%s', (_name, backs, flipped, callSide, mySide) => {
    expect(back(backs, callSide, mySide)).toBe('T');
    expect(back(flipped, flip(callSide), mySide === null ? null : flip(mySide))).toBe('T');
  });
});
