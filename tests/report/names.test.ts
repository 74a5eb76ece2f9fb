import { describe, expect, test } from 'vitest';
import { asPlayerId, asRoleId, type Datum } from '../../src/engine/index.ts';
import { COMMON_WORDS, makeLexicon } from '../../src/report/index.ts';
import { ANVIL, LEFT_CORNER, LEFT_END, NOSE, playerOf, RIGHT_END, setupOf, TIGHT } from './fixtures.ts';

const lexicon = makeLexicon(setupOf(), COMMON_WORDS);

describe('defenders', () => {
  test('a letter of his own says who he is; a shared one needs the name', () => {
    expect(lexicon.letter(LEFT_END)).toBe('E');
    expect(lexicon.roleName(LEFT_END)).toBe('left end');
    expect(lexicon.role(NOSE)).toBe('N');
    expect(lexicon.role(LEFT_END)).toBe('E (left end)');
    expect(lexicon.roles([RIGHT_END, NOSE, LEFT_CORNER])).toBe('E (right end), N and C (left corner)');
    expect(lexicon.roles([])).toBe('nobody');
  });

  test('a role nobody knows is a broken promise', () => {
    expect(() => lexicon.role(asRoleId('somebody'))).toThrow('not in the playbook');
  });
});

describe('the offence', () => {
  test.each([
    ['y', 'Y', 'the tight end Y'],
    ['z', 'Z', 'the receiver Z'],
    ['b', 'B', 'the back B'],
    ['q', 'Q', 'the passer'],
    ['c', 'C', 'the snapper'],
    ['gl', 'G left', 'the lineman G left'],
    ['tr', 'T right', 'the lineman T right'],
  ])('%s is %s, spoken %s', (key, letter, spoken) => {
    expect(lexicon.playerLetter(playerOf(key))).toBe(letter);
    expect(lexicon.player(playerOf(key))).toBe(spoken);
  });

  test('two of a letter on one side are counted from the ball; without a letter the kind is said', () => {
    const players = TIGHT.players.map((player) => {
      if (player.id === playerOf('tl') || player.id === playerOf('gl')) return { ...player, letter: 'L' };
      return player.id === playerOf('y') ? { ...player, letter: '' } : player;
    });
    const words = makeLexicon(setupOf({ look: { ...TIGHT, players } }), COMMON_WORDS);
    expect(words.playerLetter(playerOf('gl'))).toBe('L left, number 1 from the ball');
    expect(words.playerLetter(playerOf('tl'))).toBe('L left, number 2 from the ball');
    expect(words.playerLetter(playerOf('y'))).toBe('tight end');
    expect(words.player(playerOf('y'))).toBe('the tight end');
  });

  test('lists, and a man who is not in the look', () => {
    expect(lexicon.players([playerOf('y'), playerOf('q')])).toBe('the tight end Y and the passer');
    expect(lexicon.players([])).toBe('nobody');
    expect(() => lexicon.player(asPlayerId('nobody'))).toThrow('not in the look');
  });
});

test('two pressures of one name are told apart, and a missing one is a broken promise', () => {
  expect(lexicon.pressure('first')).toBe('Anvil');
  expect(lexicon.pressure('second')).toBe('Tongs');
  const twice = makeLexicon(setupOf({ second: ANVIL }), COMMON_WORDS);
  expect([twice.pressure('first'), twice.pressure('second')]).toEqual(['Anvil (first)', 'Anvil (second)']);
  const alone = makeLexicon(setupOf({ second: null }), COMMON_WORDS);
  expect(alone.pressure('first')).toBe('Anvil');
  expect(() => alone.pressure('second')).toThrow('there is none');
});

test.each<[string, Datum]>([
  ['N', { kind: 'role', role: NOSE }],
  ['A gap left', { kind: 'gap', gap: { side: 'left', letter: 'A' } }],
  ['no gap', { kind: 'gaps', gaps: [] }],
  ['C', { kind: 'letter', letter: 'C' }],
  ['right', { kind: 'side', side: 'right' }],
  ['the receiver X', { kind: 'player', player: playerOf('x') }],
  ['Anvil', { kind: 'pressure', which: 'first' }],
  ['7', { kind: 'number', value: 7 }],
  ['4.5', { kind: 'number', value: 4.5 }],
  ['0.3', { kind: 'number', value: 1 / 3 }],
  ['0', { kind: 'number', value: -0.01 }],
  ['seam', { kind: 'word', word: 'seam' }],
])('a value of a sentence: %s', (text, datum) => {
  expect(lexicon.datum(datum)).toBe(text);
});

test('several gaps are listed in their order', () => {
  const gaps = [
    { side: 'left', letter: 'A' },
    { side: 'right', letter: 'A' },
    { side: 'right', letter: 'B' },
  ] as const;
  expect(lexicon.gaps(gaps)).toBe('A gap left, A gap right and B gap right');
});
