import { describe, expect, it } from 'vitest';
import { analyse, type Analysis } from '../../src/engine/index.ts';
import { choices, isRight, rightAnswers, type Spotted } from '../../src/quiz/index.ts';
import { gapText, ODD, pressure, setup, tell, THREE_DEEP } from '../engine/book.ts';

const LOOK = 'line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5';

/** Outside backer through B, end out to C with contain, nose to the call; as in the tables of whole calls. */
const analysis: Analysis = analyse(
  setup({
    look: LOOK,
    front: ODD,
    coverage: THREE_DEEP,
    first: pressure('hammer', [
      tell('outside-call', 'path', 'rush B-call inside-hip:end-call spill'),
      tell('end-call', 'path', 'contain C-call loop box'),
      tell('@N', 'path', 'rush A-call slant'),
    ]),
  }),
);

const roleOf = (letter: string) => {
  const found = analysis.assignments.find(({ aligned }) => aligned.role.letter === letter);
  if (found === undefined) throw new Error(`Nobody is lettered ${letter}`);
  return found.aligned.role.id;
};

const text = (spotted: Spotted): string => {
  switch (spotted.kind) {
    case 'gap':
      return gapText(spotted.gap);
    case 'zone':
      return `${spotted.zone}-${spotted.side}`;
    case 'receiver':
      return spotted.player;
    case 'passer':
      return 'passer';
  }
};

describe('what is right for a player', () => {
  it.each([
    ['N', 'run', ['A-right']],
    ['N', 'pass', ['passer']],
    ['S', 'run', ['B-right']],
    ['RE', 'run', ['C-right']],
    ['RE', 'pass', ['passer']],
    ['FS', 'pass', ['middle-middle']],
    ['LC', 'pass', ['third-left']],
  ] as const)('%s against the %s: %j', (letter, asked, expected) => {
    expect(rightAnswers(analysis, roleOf(letter), asked).map(text)).toStrictEqual([...expected]);
  });

  it('is what the analysis gives him, for all eleven and both columns, and nothing else is', () => {
    for (const { aligned, run, combined } of analysis.assignments) {
      const right = rightAnswers(analysis, aligned.role.id, 'run');
      expect(combined.status).not.toBe('conflict');
      for (const choice of choices(analysis, 'run')) {
        const his = choice.kind === 'gap' && run.gaps.some((gap) => gapText(gap) === gapText(choice.gap));
        expect(isRight(right, choice)).toBe(his);
      }
    }
  });

  it('can always be pointed at', () => {
    for (const { aligned } of analysis.assignments) {
      for (const asked of ['run', 'pass'] as const) {
        const offered = choices(analysis, asked).map(text);
        for (const right of rightAnswers(analysis, aligned.role.id, asked)) expect(offered).toContain(text(right));
      }
    }
  });

  it('offers every gap of the look from left to right', () => {
    expect(choices(analysis, 'run').map(text)).toStrictEqual([
      'C-left',
      'B-left',
      'A-left',
      'A-right',
      'B-right',
      'C-right',
      'D-right',
    ]);
  });

  it('asks nobody who is told two things', () => {
    const conflict = analyse(
      setup({
        look: LOOK,
        front: ODD,
        coverage: THREE_DEEP,
        first: pressure('hammer', [tell('@N', 'path', 'rush A-call slant')]),
        second: pressure('anvil', [tell('@N', 'path', 'rush A-away slant')]),
      }),
    );
    expect(rightAnswers(conflict, roleOf('N'), 'run')).toStrictEqual([]);
    expect(rightAnswers(conflict, roleOf('N'), 'pass')).toStrictEqual([]);
  });
});
