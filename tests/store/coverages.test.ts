import { describe, expect, it } from 'vitest';
import { checkPlaybook } from '../../src/document/index.ts';
import { asCoverageId, asGroupId, asRoleId, type Coverage } from '../../src/engine/index.ts';
import { newCoverage, setCoverageTells, setNeeds } from '../../src/store/index.ts';
import { demo, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const MAN_FREE = asCoverageId('man-free');
const callSafety = { kind: 'group', group: asGroupId('safeties'), side: 'call' } as const;

describe('a new coverage', () => {
  it('needs nothing and tells nobody yet', () => {
    const after = valueOf(newCoverage(playbook, { name: ' Two deep ' }));
    expect(firstOf(after.coverages.slice(-1))).toMatchObject({ name: 'Two deep', needs: [], tells: [] });
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it.each([
    ['without a name', '', 'name-empty'],
    ['with the name of another', 'Man, call safety free in the middle', 'name-taken'],
  ])('is refused %s', (_words, name, kind) => {
    expect(newCoverage(playbook, { name })).toMatchObject({ ok: false, problem: { kind } });
  });
});

describe('what a coverage says', () => {
  const needs: Coverage['needs'] = [
    { when: [], zone: 'middle', side: 'middle', takers: [callSafety, { kind: 'role', role: asRoleId('nose') }] },
  ];
  const tells: Coverage['tells'] = [
    {
      who: callSafety,
      cases: [{ when: [], job: { kind: 'spy', run: { fits: [], firm: false, support: 'force' } } }],
    },
  ];

  it('is put: the zones, the tellings, nothing else', () => {
    const after = valueOf(
      setNeeds(valueOf(setCoverageTells(playbook, { coverage: MAN_FREE, tells })), { coverage: MAN_FREE, needs }),
    );
    expect(after.coverages.find(({ id }) => id === MAN_FREE)).toMatchObject({ needs, tells });
    expect(after.coverages.filter(({ id }) => id !== MAN_FREE).every((each) => playbook.coverages.includes(each))).toBe(
      true,
    );
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('is refused when a man may take one zone twice', () => {
    const twice: Coverage['needs'] = [{ when: [], zone: 'flat', side: 'call', takers: [callSafety, callSafety] }];
    expect(setNeeds(playbook, { coverage: MAN_FREE, needs: twice })).toStrictEqual({
      ok: false,
      problem: { kind: 'twice' },
    });
  });

  it('is refused when there is no such coverage', () => {
    const nowhere = { coverage: asCoverageId('none') };
    const problem = { kind: 'not-there', what: 'coverage' };
    expect(setNeeds(playbook, { ...nowhere, needs })).toStrictEqual({ ok: false, problem });
    expect(setCoverageTells(playbook, { ...nowhere, tells })).toStrictEqual({ ok: false, problem });
  });
});
