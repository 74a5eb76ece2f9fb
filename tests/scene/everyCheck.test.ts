/** What every check finds is shown where it is and said in words: each man of either team and each gap of it is ringed. */
import { describe, expect, it } from 'vitest';
import { analyse, standardChecks } from '../../src/engine/index.ts';
import { buildReport, COMMON_WORDS } from '../../src/report/index.ts';
import { buildScene, WHOLE_PICTURE } from '../../src/scene/index.ts';
import { setup } from '../engine/book.ts';
import { ALL_EXAMPLES } from '../engine/checks/examples/index.ts';

describe('on the board and in the report', () => {
  it('every check has examples that fail it', () => {
    const shown = ALL_EXAMPLES.filter(({ found }) => found.length > 0).map(({ check }) => check.id);
    expect(shown.toSorted()).toEqual(standardChecks.map(({ id }) => id).toSorted());
  });

  it.each(ALL_EXAMPLES.map((each) => [each.check.id, each] as const))('%s', (id, { found, check }) => {
    for (const { name: _name, finds: _finds, ...parts } of found) {
      const analysis = analyse(setup(parts));
      const rows = buildReport(analysis, COMMON_WORDS).findings;
      expect(rows.map(({ rule }) => rule)).toContain(id);
      for (const row of rows.filter(({ rule }) => rule === id)) {
        expect([row.title, row.matters]).toEqual([check.title, check.matters]);
        expect(row.text).toMatch(/^\S.*[^{}]$/);
        const { who, players, gaps } = row;
        const { shapes } = buildScene(analysis, { ...WHOLE_PICTURE, lit: { roles: who, players, gaps } });
        const lit = shapes.filter(({ key }) => key.endsWith('/lit')).map(({ key }) => key.split('/')[0]);
        const count = (kind: string): number => lit.filter((each) => each === kind).length;
        expect([count('man'), count('offence')]).toEqual([new Set(who).size, new Set(players).size]);
        const drawn = analysis.gaps.filter(({ gap }) =>
          gaps.some(({ side, letter }) => side === gap.side && letter === gap.letter),
        );
        expect(count('gap')).toBe(drawn.length);
      }
    }
  });
});
