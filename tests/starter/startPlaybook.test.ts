import { describe, expect, it } from 'vitest';
import { checkPlaybook, openDocument, saveDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import { analyse, asRoleId, PLACES, RULE_LEVELS, type Call, type Severity } from '../../src/engine/index.ts';
import { START_FRONTS, START_SIDES, startPlaybook, startRoles, type StartAnswers } from '../../src/starter/index.ts';

const answers: StartAnswers = {
  team: 'Alderfen Herons',
  level: 'high-school',
  front: 'odd',
  sides: 'strength',
  letters: new Map(),
};

function started(more: Partial<StartAnswers>): Playbook {
  const made = startPlaybook({ ...answers, ...more });
  if (!made.ok) throw new Error(JSON.stringify(made.problem));
  return made.value;
}

/** What is found of that gravity in a call, against every look at every spot. */
function found(playbook: Playbook, call: Call, gravity: readonly Severity[]): readonly string[] {
  return playbook.looks.flatMap(({ id, name }) =>
    PLACES.flatMap((spot) => {
      const setup = toSetup(playbook, { call, look: id, spot });
      if (!setup.ok) throw new Error(setup.problem.path);
      return analyse(setup.value)
        .findings.filter(({ severity }) => gravity.includes(severity))
        .map(({ rule }) => `${name}, ball ${spot}: ${rule}`);
    }),
  );
}

const KINDS = START_FRONTS.flatMap((front) => START_SIDES.map((sides) => [front, sides] as const));

describe.each(KINDS)('a playbook of one’s own: %s front, backers and safeties by %s', (front, sides) => {
  const playbook = started({ front, sides });

  it('is a playbook: it is sound, saved and opened again', () => {
    expect(checkPlaybook(playbook).ok).toBe(true);
    expect(openDocument(saveDocument(playbook))).toStrictEqual({ ok: true, value: playbook });
  });

  it('has eleven roles with one letter each, one front, a dozen looks, and a combined call', () => {
    expect(playbook.roles).toHaveLength(11);
    expect(new Set(playbook.roles.map(({ letter }) => letter)).size).toBe(11);
    expect(playbook.fronts).toHaveLength(1);
    expect(playbook.looks).toHaveLength(12);
    expect(playbook.coverages.length).toBeGreaterThanOrEqual(3);
    expect(playbook.calls.filter(({ second }) => second !== null)).toHaveLength(1);
  });

  it.each(playbook.calls.map((call) => [call.name, call] as const))(
    'finds no stop in %s in any standard look at any spot',
    (_name, call) => {
      expect(found(playbook, call, ['stop'])).toStrictEqual([]);
    },
  );

  it('finds nothing to decide either in the plain call of the base front', () => {
    const [base] = playbook.calls;
    if (base === undefined) throw new Error('There is no call');
    expect(found(playbook, base, ['stop', 'check'])).toStrictEqual([]);
  });
});

it.each(RULE_LEVELS)('keeps the level: %s', (level) => {
  expect(started({ level }).team).toStrictEqual({ name: 'Alderfen Herons', level, season: '' });
});

it('has the letters the coach writes', () => {
  const { roles } = started({ letters: new Map([[asRoleId('nose'), ' T ']]) });
  expect(roles.find(({ id }) => id === 'nose')?.letter).toBe('T');
  expect(roles.find(({ id }) => id === 'left-end')?.letter).toBe('LE');
});

it.each<[string, Partial<StartAnswers>, unknown]>([
  ['no name', { team: '  ' }, { kind: 'team-empty' }],
  ['a man without a letter', { letters: new Map([[asRoleId('nose'), '']]) }, { kind: 'letter-length', whose: 'Nose' }],
  ['three letters', { letters: new Map([[asRoleId('nose'), 'NOS']]) }, { kind: 'letter-length', whose: 'Nose' }],
])('is refused with %s', (_words, more, problem) => {
  expect(startPlaybook({ ...answers, ...more })).toStrictEqual({ ok: false, problem });
});

it('names the men by how they choose their side', () => {
  const names = (sides: StartAnswers['sides']) => startRoles('odd', sides).map(({ name }) => name);
  expect(names('strength')).toContain('Strong outside backer');
  expect(names('field')).toContain('Boundary safety');
  expect(names('left-right')).toContain('Left inside backer');
});
