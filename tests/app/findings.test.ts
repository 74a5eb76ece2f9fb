import { describe, expect, it } from 'vitest';
import { asGroupId, asPlayerId, asRoleId, type Role, type Room, type Severity } from '../../src/engine/index.ts';
import type { FindingRow } from '../../src/report/index.ts';
import { EVERYTHING, filtered, kindsOf, type FindingFilter } from '../../src/app/report/findingFilter.ts';
import { changesOf, changesText, follow, type Followed } from '../../src/app/report/followed.ts';

const role = (letter: string, room: Room): Role => ({
  id: asRoleId(letter),
  letter,
  name: letter,
  room,
  group: asGroupId('group'),
  side: { kind: 'middle' },
});
const ROLES = [role('N', 'line'), role('M', 'linebackers'), role('FS', 'secondary')];

const row = (key: string, severity: Severity, who: readonly string[], players: readonly string[] = []): FindingRow => ({
  key,
  rule: key,
  title: key,
  severity,
  text: key,
  matters: '',
  why: [],
  decides: false,
  who: who.map(asRoleId),
  players: players.map(asPlayerId),
  gaps: [],
});
const ROWS = [
  row('nose told two jobs', 'stop', ['N']),
  row('Y unmatched', 'stop', [], ['Y']),
  row('N and M meet', 'check', ['N', 'M']),
  row('a gap is open', 'check', []),
  row('no post', 'note', ['FS']),
];

describe('the filter of the findings', () => {
  it.each<readonly [Partial<FindingFilter>, readonly string[], readonly string[]]>([
    [{}, [], ROWS.map(({ key }) => key)],
    [{ hidden: ['note'] }, [], ['nose told two jobs', 'Y unmatched', 'N and M meet', 'a gap is open']],
    [{ hidden: ['stop', 'check', 'note'] }, [], []],
    [{ kind: 'line' }, [], ['nose told two jobs', 'N and M meet']],
    [{ kind: 'linebackers' }, [], ['N and M meet']],
    [{ kind: 'secondary' }, [], ['no post']],
    [{ kind: 'offence' }, [], ['Y unmatched']],
    [{ onlyNew: true }, ['no post', 'N and M meet'], ['N and M meet', 'no post']],
    [{ onlyNew: true }, [], []],
    [{ kind: 'line', hidden: ['stop'] }, [], ['N and M meet']],
  ])('%o', (filter, fresh, expected) => {
    const rows = filtered(ROWS, { ...EVERYTHING, ...filter }, ROLES, new Set(fresh));
    expect(rows.map(({ key }) => key)).toEqual(expected);
  });

  it('a finding may be about several rooms, or about nobody', () => {
    expect(ROWS.map((each) => kindsOf(each, ROLES))).toEqual([
      ['line'],
      ['offence'],
      ['line', 'linebackers'],
      [],
      ['secondary'],
    ]);
  });
});

describe('what the last change did', () => {
  const seen = (...steps: readonly (readonly [place: string, ...keys: string[]])[]): Followed =>
    steps.reduce<Followed | null>((memory, [place, ...keys]) => follow(memory, place, keys), null) ??
    follow(null, '', []);
  const text = (memory: Followed): string => changesText(changesOf(memory, memory.keys, false));

  it.each<readonly [what: string, steps: readonly (readonly [string, ...string[]])[], text: string]>([
    ['nothing is new at first', [['doubles', 'a', 'b']], ''],
    [
      'one came',
      [
        ['doubles', 'a'],
        ['doubles', 'a', 'b'],
      ],
      '1 new since the last change',
    ],
    [
      'one went',
      [
        ['doubles', 'a', 'b'],
        ['doubles', 'a'],
      ],
      '1 gone since the last change',
    ],
    [
      'one for another',
      [
        ['doubles', 'a'],
        ['doubles', 'b'],
      ],
      '1 new, 1 gone since the last change',
    ],
    [
      'another look is no change',
      [
        ['doubles', 'a'],
        ['trips', 'b'],
      ],
      '',
    ],
    [
      'a change that makes no difference keeps it',
      [
        ['doubles', 'a'],
        ['doubles', 'b'],
        ['doubles', 'b'],
      ],
      '1 new, 1 gone since the last change',
    ],
    [
      'only the last change counts',
      [['doubles'], ['doubles', 'a'], ['doubles', 'a', 'b', 'c']],
      '2 new since the last change',
    ],
    [
      'an order is no change',
      [
        ['doubles', 'a', 'b'],
        ['doubles', 'b', 'a'],
      ],
      '',
    ],
  ])('%s', (_what, steps, expected) => expect(text(seen(...steps))).toBe(expected));

  it('while a man is in hand it is the change that is being made', () => {
    const memory = seen(['doubles', 'a'], ['doubles', 'a', 'b']);
    expect(changesText(changesOf(memory, ['b', 'c'], true))).toBe('1 new, 1 gone since the last change');
  });
});
