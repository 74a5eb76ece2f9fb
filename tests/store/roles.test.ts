import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import { asRoleId, type RoleSide, type SideStep } from '../../src/engine/index.ts';
import { newRole, setRoleLetter, setRoleMate, setRoleRoom, setRoleSide } from '../../src/store/index.ts';
import { demo, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const NOSE = asRoleId('nose');
const STRONG = asRoleId('strong-edge');
const WEAK = asRoleId('weak-edge');
const roleOf = (book: Playbook, id = NOSE) => firstOf(book.roles.filter((role) => role.id === id));

describe('a new role', () => {
  it('stands in the middle and is told by himself', () => {
    const after = valueOf(newRole(playbook, { name: ' Rover ', letter: ' R ', room: 'secondary' }));
    const made = firstOf(after.roles.slice(-1));
    expect(made).toMatchObject({ name: 'Rover', letter: 'R', room: 'secondary', side: { kind: 'middle' } });
    expect(playbook.roles.some(({ group }) => group === made.group)).toBe(false);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it.each([
    ['without a name', { name: ' ', letter: 'R' }, 'name-empty'],
    ['with the name of another', { name: 'Nose', letter: 'R' }, 'name-taken'],
    ['without a letter', { name: 'Rover', letter: '' }, 'letter-length'],
    ['with three letters', { name: 'Rover', letter: 'ROV' }, 'letter-length'],
  ])('is refused %s', (_words, args, kind) => {
    expect(newRole(playbook, { ...args, room: 'line' })).toMatchObject({ ok: false, problem: { kind } });
  });
});

describe('a role', () => {
  it.each([
    ['T', 'T'],
    [' NT ', 'NT'],
  ])('has the letter %j on the board as %s', (letter, kept) => {
    expect(roleOf(valueOf(setRoleLetter(playbook, { role: NOSE, letter }))).letter).toBe(kept);
  });

  it.each(['', '  ', 'ABC'])('is refused the letter %j', (letter) => {
    expect(setRoleLetter(playbook, { role: NOSE, letter })).toStrictEqual({
      ok: false,
      problem: { kind: 'letter-length' },
    });
  });

  it('goes into another room', () => {
    expect(roleOf(valueOf(setRoleRoom(playbook, { role: NOSE, room: 'linebackers' }))).room).toBe('linebackers');
  });

  it('joins a mate, and leaves him again', () => {
    const mates = valueOf(setRoleMate(playbook, { role: asRoleId('middle-safety'), mate: WEAK }));
    expect(roleOf(mates, asRoleId('middle-safety')).group).toBe(roleOf(playbook, WEAK).group);
    const alone = valueOf(setRoleMate(mates, { role: asRoleId('middle-safety'), mate: null }));
    const { group } = roleOf(alone, asRoleId('middle-safety'));
    expect(alone.roles.filter((role) => role.group === group)).toHaveLength(1);
    expect(checkPlaybook(alone).ok).toBe(true);
  });

  it('cannot leave a group that is told while he is the last of it', () => {
    const one = valueOf(setRoleMate(playbook, { role: asRoleId('weak-tackle'), mate: null }));
    expect(setRoleMate(one, { role: asRoleId('strong-tackle'), mate: null })).toStrictEqual({
      ok: false,
      problem: { kind: 'group-told', by: ['Carr'] },
    });
  });

  it.each([
    ['letter', setRoleLetter(playbook, { role: asRoleId('x'), letter: 'X' })],
    ['room', setRoleRoom(playbook, { role: asRoleId('x'), room: 'line' })],
    ['mate', setRoleMate(playbook, { role: asRoleId('x'), mate: NOSE })],
    ['mate who is not there', setRoleMate(playbook, { role: NOSE, mate: asRoleId('x') })],
    ['side', setRoleSide(playbook, { role: asRoleId('x'), side: { kind: 'middle' } })],
  ])('is refused when it is not there: %s', (_words, result) => {
    expect(result).toStrictEqual({ ok: false, problem: { kind: 'not-there', what: 'role' } });
  });
});

describe('the side of a role', () => {
  const steps = (...all: SideStep[]): RoleSide => ({ kind: 'steps', steps: all });
  const left: SideStep = { kind: 'fixed', side: 'left' };
  const toField: SideStep = { kind: 'strength', by: 'field', toward: 'to' };
  const with_ = (role: typeof NOSE): SideStep => ({ kind: 'role', role, toward: 'to' });

  it.each<[string, RoleSide]>([
    ['always left', steps(left)],
    ['to the field, else left', steps(toField, left)],
    ['with another man', steps(toField, with_(WEAK))],
    ['in the middle', { kind: 'middle' }],
  ])('is put: %s', (_words, side) => {
    const after = valueOf(setRoleSide(playbook, { role: asRoleId('fifth-back'), side }));
    expect(roleOf(after, asRoleId('fifth-back')).side).toStrictEqual(side);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it.each<[string, typeof NOSE, RoleSide, unknown]>([
    ['a last step that may not decide', NOSE, steps(left, toField), { kind: 'side-undecided', whose: 'Nose' }],
    [
      'the side of a man in the middle',
      WEAK,
      steps(with_(NOSE)),
      { kind: 'side-undecided', whose: 'Weak outside backer' },
    ],
    ['his own side', NOSE, steps(with_(NOSE)), { kind: 'side-circle', whose: 'Nose' }],
    ['a man who goes by him', STRONG, steps(with_(WEAK)), { kind: 'side-circle', whose: 'Strong outside backer' }],
    [
      'the middle, while others go by him',
      STRONG,
      { kind: 'middle' },
      { kind: 'side-undecided', whose: 'Weak outside backer' },
    ],
  ])('is refused: %s', (_words, role, side, problem) => {
    expect(setRoleSide(playbook, { role, side })).toStrictEqual({ ok: false, problem });
  });
});
