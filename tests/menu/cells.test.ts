/** What a cell shows, what a filter lets through, how rows and partners are put in order. */
import { describe, expect, it } from 'vitest';
import { asLookId, type Place, type Severity, type Turn, type Verdict } from '../../src/engine/index.ts';
import {
  cellReader,
  gridOf,
  letsLayer,
  NO_FILTER,
  rankPartners,
  rate,
  rowsInOrder,
  unanswered,
  type MenuFilter,
  type Partner,
  type Summary,
} from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

function summary(verdict: Verdict, found: readonly (readonly [string, Severity, number])[] = [], doubts = 0): Summary {
  return { verdict, found: found.map(([rule, severity, count]) => ({ rule, severity, count })), doubts };
}

const CLEAN = summary('clean');
const OPEN = summary('stop', [
  ['gap.open', 'stop', 2],
  ['rush.count', 'check', 1],
]);
const TOLD = summary('stop', [['line.two-jobs', 'stop', 1]]);
const DOUBT = summary('check', [['gap.doubled', 'note', 1]], 1);
const OUT = summary('left-out', [['gap.open', 'stop', 1]]);

describe('an answer through a filter', () => {
  it.each<readonly [what: string, answer: Summary, filter: Partial<MenuFilter>, verdict: Verdict, count: number]>([
    ['all of it: the gravest, and how many are so grave', OPEN, {}, 'stop', 2],
    ['one check: only what it says', OPEN, { rule: 'rush.count' }, 'check', 1],
    ['a check that is silent: clean', OPEN, { rule: 'line.two-jobs' }, 'clean', 0],
    ['what cannot be told is a check', DOUBT, {}, 'check', 1],
    ['it is no finding of one check', DOUBT, { rule: 'gap.doubled' }, 'note', 1],
    ['stops only: a doubt is not seen', DOUBT, { severity: 'stop' }, 'clean', 0],
    ['stops and checks: it is', DOUBT, { severity: 'check' }, 'check', 1],
    ['a call that is not run is never judged', OUT, { rule: 'gap.open' }, 'left-out', 0],
  ])('%s', (_what, answer, filter, verdict, count) => {
    expect(rate(answer, { ...NO_FILTER, ...filter })).toEqual({ verdict, count });
  });

  it.each<readonly [look: string | null, spot: Place, filter: Partial<MenuFilter>, seen: boolean]>([
    [null, 'left', {}, true],
    [null, 'left', { spot: 'middle' }, false],
    ['a', 'left', { personnel: '11' }, true],
    ['b', 'left', { personnel: '11' }, false],
    [null, 'left', { personnel: '12' }, true],
  ])('layer of look %s, ball %s, filter %o: %s', (look, spot, filter, seen) => {
    const shown = demo().looks[0];
    if (shown === undefined) throw new Error('The demo has no looks');
    const layer = { look: look === null ? null : { ...shown, id: asLookId(look) }, spot };
    expect(letsLayer(layer, { ...NO_FILTER, ...filter }, (id) => (id === 'a' ? '11' : '12'))).toBe(seen);
  });
});

describe('cells', () => {
  const playbook = { ...demo(), calls: demo().calls.slice(0, 3), looks: demo().looks.slice(0, 2) };
  const grid = gridOf(playbook, { kind: 'calls' });
  const numbers = unanswered(grid);
  const summaries = [CLEAN, OPEN, TOLD, OUT];
  // Three calls, two looks, three spots.
  numbers.set([0, 0, 0, 0, 2, 0, /**/ 2, 1, 0, 0, 0, 0, /**/ 3, 3, 3, -1, 0, 0]);
  const read = cellReader(grid, [0, 1, 2], { summaries, numbers }, NO_FILTER);

  it.each<readonly [row: number, column: number, verdict: string, cases: number, findings: number, layer: number]>([
    [0, 0, 'clean', 3, 0, 0],
    [0, 1, 'stop', 1, 1, 1],
    // Two spots at stop: it opens where there is more of it.
    [1, 0, 'stop', 2, 2, 1],
    [2, 0, 'left-out', 3, 0, 0],
    [2, 1, 'waiting', 0, 0, 0],
  ])('row %i, column %i: %s', (row, column, verdict, cases, findings, layer) => {
    expect(read(row, column)).toMatchObject({ verdict, cases, findings, layer });
  });

  it('only the layers that are looked at count', () => {
    const middle = cellReader(grid, [1], { summaries, numbers }, NO_FILTER);
    expect(middle(0, 0).verdict).toBe('clean');
    expect(middle(1, 0)).toMatchObject({ verdict: 'stop', cases: 1, findings: 2 });
    expect(middle(2, 1).verdict).toBe('clean');
  });

  it.each([
    ['kept', [0, 1, 2]],
    ['gravest', [1, 0, 2]],
    ['soundest', [2, 0, 1]],
  ] as const)('rows %s', (order, rows) => {
    expect(rowsInOrder(grid, [0, 1], read, order)).toEqual(rows);
  });
});

describe('what goes with a pressure', () => {
  const partner = (second: string, turn: Turn, answers: readonly Summary[]): Partner => ({
    second,
    turn,
    cases: answers.map((answer, index) => ({
      look: asLookId(`look ${String(index)}`),
      spot: 'middle',
      summary: answer,
    })),
  });
  const BOTH = summary('stop', [
    ['gap.open', 'stop', 1],
    ['line.two-jobs', 'stop', 1],
  ]);

  it('fewest looks at stop first, then fewest checks; those alike as they stood', () => {
    const ranked = rankPartners(
      [
        partner('two stops', 'own', [OPEN, TOLD, CLEAN]),
        partner('a doubt', 'own', [DOUBT, CLEAN, CLEAN]),
        partner('sound', 'own', [CLEAN, CLEAN, CLEAN]),
        partner('sound', 'same', [CLEAN, CLEAN, CLEAN]),
        partner('one stop', 'own', [CLEAN, TOLD, CLEAN]),
      ],
      NO_FILTER,
    );
    expect(ranked.map(({ second, turn, fits, looks }) => `${second} ${turn} ${fits}/${looks}`)).toEqual([
      'sound own 3/3',
      'sound same 3/3',
      'a doubt own 3/3',
      'one stop own 2/3',
      'two stops own 1/3',
    ]);
  });

  it('each look at stop is told once, under the check that stops most of them', () => {
    const [ranked] = rankPartners([partner('x', 'own', [BOTH, TOLD, OPEN, TOLD])], NO_FILTER);
    expect(ranked?.misfits).toEqual([
      { rule: 'line.two-jobs', looks: ['look 0', 'look 1', 'look 3'] },
      { rule: 'gap.open', looks: ['look 2'] },
    ]);
  });

  it('a look it is not run against is neither a fit nor a misfit', () => {
    const [ranked] = rankPartners([partner('x', 'own', [OUT, CLEAN])], NO_FILTER);
    expect(ranked).toMatchObject({ looks: 1, fits: 1, misfits: [] });
  });
});
