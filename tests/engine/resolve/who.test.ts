import { describe, expect, it } from 'vitest';
import { standAt } from '../../../src/engine/align/align.ts';
import { findWho } from '../../../src/engine/resolve/who.ts';
import { asGroupId, asRoleId, fact, type Aligned, type RoleId, type Side } from '../../../src/engine/index.ts';
import { factsOf, LOOKS, ROLES, say, who } from '../book.ts';

/** Men by hand: `LE@-3 RE@3`, y after a comma. */
function standing(text: string): ReadonlyMap<RoleId, Aligned> {
  const facts = factsOf(LOOKS['10 doubles']);
  return new Map(
    text.split(' ').map((token) => {
      const [id = '', at = ''] = token.split('@');
      const [x = '', y = '1'] = at.split(',');
      const role = ROLES.find((each) => each.id === id);
      if (role === undefined) throw new Error(`No ${id}`);
      const man = standAt(role, { x: Number(x), y: Number(y) }, 'hand', facts, fact('as drawn'));
      return [role.id, man] as const;
    }),
  );
}

const ROWS: readonly (readonly [name: string, men: string, who: string, callSide: Side, found: string])[] = [
  ['by role', 'LE@-3 RE@3 N@0', '@N', 'left', 'N'],
  ['the end on the call side', 'LE@-3 RE@3', 'end-call', 'right', 'RE'],
  ['the end away', 'LE@-3 RE@3', 'end-away', 'right', 'LE'],
  ['called the other way', 'LE@-3 RE@3', 'end-call', 'left', 'LE'],
  ['by where he stands, not by his name', 'LE@3 RE@-3', 'end-call', 'right', 'LE'],
  ['both on one side: the outer one is on the call side', 'LE@1 RE@3', 'end-call', 'right', 'RE'],
  ['both on one side: the inner one is away', 'LE@1 RE@3', 'end-away', 'right', 'LE'],
  ['one man of the group is meant on the call side', 'N@0', 'nose-call', 'left', 'N'],
  ['and away', 'N@0', 'nose-away', 'left', 'N'],
  ['and wherever he stands', 'LE@-3', 'end-call', 'right', 'LE'],
  ['one behind the other: the nearer to the ball is on the call side', 'SS@0,8 FS@0,12', 'safety-call', 'right', 'SS'],
  ['one behind the other: the deeper is away', 'SS@0,8 FS@0,12', 'safety-away', 'right', 'FS'],
  ['one behind the other, called left', 'SS@0,8 FS@0,12', 'safety-call', 'left', 'SS'],
  ['on one spot: by name', 'SS@0,8 FS@0,8', 'safety-call', 'left', 'FS'],
  ['on one spot: the other one is away', 'SS@0,8 FS@0,8', 'safety-away', 'left', 'SS'],
  ['not in this front, by role', 'LE@-3', '@N', 'left', '@N is not in this front'],
  ['not in this front, by group', 'LE@-3', 'outside-away', 'left', 'outside-away is not in this front'],
];

describe('the man a rule speaks to', () => {
  it.each(ROWS)('%s', (_name, men, name, callSide, expected) => {
    const found = findWho(who(name), callSide, standing(men));
    expect(found.ok ? found.value : say(found.problem)).toBe(expected);
  });

  it('a group told on both sides is told to two men', () => {
    const three = standing('S@5 J@-5 M@2');
    const group = asGroupId('outside');
    const call = findWho({ kind: 'group', group, side: 'call' }, 'left', three);
    const away = findWho({ kind: 'group', group, side: 'away' }, 'left', three);
    expect([call, away]).toEqual([
      { ok: true, value: asRoleId('J') },
      { ok: true, value: asRoleId('S') },
    ]);
  });
});
