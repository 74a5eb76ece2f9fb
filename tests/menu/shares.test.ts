/** Looks are shared out evenly, and whoever had one keeps it. */
import { describe, expect, it } from 'vitest';
import { asLookId, type Look } from '../../src/engine/index.ts';
import { shareLooks, type LookShares } from '../../src/menu/index.ts';
import { demo, firstOf } from '../store/demo.ts';

const one = firstOf(demo().looks);

/** Looks of these names, one letter each. */
function looks(names: string): readonly Look[] {
  return Array.from(names, (name) => ({ ...one, id: asLookId(name) }));
}

/** Shares as they are written here: the looks of each, in any order. */
function written(shares: LookShares): readonly string[] {
  return shares.map((share) => share.toSorted().join(''));
}

function shared(names: string, count: number, before: readonly string[] = []): readonly string[] {
  return written(
    shareLooks(
      looks(names),
      count,
      before.map((share) => looks(share).map(({ id }) => id)),
    ),
  );
}

describe('looks shared out', () => {
  it.each<readonly [count: number, wanted: readonly string[]]>([
    [1, ['abcdefg']],
    [2, ['aceg', 'bdf']],
    [3, ['adg', 'be', 'cf']],
    [9, ['a', 'b', 'c', 'd', 'e', 'f', 'g', '', '']],
  ])('for the first time among %d: by place, in turn', (count, wanted) => {
    expect(shared('abcdefg', count)).toEqual(wanted);
  });

  it.each<readonly [what: string, names: string, wanted: readonly string[]]>([
    ['nothing changes', 'abcdef', ['ad', 'be', 'cf']],
    ['they change places', 'fedcba', ['ad', 'be', 'cf']],
    ['a new one comes first', 'xabcdef', ['adx', 'be', 'cf']],
    ['one goes', 'bcdef', ['d', 'be', 'cf']],
    ['so many go that somebody would have more than his part', 'bce', ['e', 'b', 'c']],
    ['one has none left, but nobody has more than his part', 'bcef', ['', 'be', 'cf']],
    ['all are others', 'uvwxyz', ['ux', 'vy', 'wz']],
    ['none is left', '', ['', '', '']],
  ])('shared out again, when %s', (_what, names, wanted) => {
    expect(shared(names, 3, ['ad', 'be', 'cf'])).toEqual(wanted);
  });

  it('a look that went and comes back is given to the one who had it', () => {
    const gone = shared('abcde', 2, ['ace', 'bdf']);
    expect(shared('abcdef', 2, gone)).toEqual(['ace', 'bdf']);
  });
});
