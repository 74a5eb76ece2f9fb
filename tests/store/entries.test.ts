import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import { asCoverageId, asFrontId, asLookId, asPressureId, asRoleId } from '../../src/engine/index.ts';
import {
  copyEntry,
  deleteEntry,
  nextEntry,
  renameEntry,
  SECTIONS,
  usesOf,
  type Entry,
  type Section,
} from '../../src/store/index.ts';
import { demo, valueOf } from './demo.ts';

const playbook = demo();

const pressure = (id: string): Entry => ({ section: 'pressures', id: asPressureId(id) });
const look = (id: string): Entry => ({ section: 'looks', id: asLookId(id) });
const front = (id: string): Entry => ({ section: 'fronts', id: asFrontId(id) });
const coverage = (id: string): Entry => ({ section: 'coverages', id: asCoverageId(id) });
const role = (id: string): Entry => ({ section: 'roles', id: asRoleId(id) });

/** One entry of each section of the demo, and one that is not there. */
const ENTRIES: Readonly<Record<Section, Entry>> = {
  pressures: pressure('sluice'),
  looks: look('unbalanced-11'),
  fronts: front('odd'),
  coverages: coverage('man-free'),
  roles: role('nose'),
};
const NOBODY: Readonly<Record<Section, Entry>> = {
  pressures: pressure('nobody'),
  looks: look('nobody'),
  fronts: front('nobody'),
  coverages: coverage('nobody'),
  roles: role('nobody'),
};

const nameIn = (book: Playbook, { section, id }: Entry): string | undefined =>
  book[section].find((each) => each.id === id)?.name;

const used = (entry: Entry): readonly string[] =>
  usesOf(playbook, entry).map(({ by, name, holds }) => `${by} ${name}${holds ? '' : ' (only a mention)'}`);

/** Who uses what in the demo: what the file says, read by hand. */
describe('what uses an entry', () => {
  it.each<[string, Entry, readonly string[]]>([
    [
      'a pressure: the calls it is in',
      pressure('teasel'),
      ['calls Teasel Marl', 'calls Sluice Teasel Across', 'calls Teasel'],
    ],
    ['a front: the calls out of it', front('bear'), ['calls Staithe']],
    ['a look: only mentions', look('empty-00'), ['pressures Culvert (only a mention)']],
    [
      'a role: the front he plays in, and the coverage that tells his group, which is only he',
      role('middle-safety'),
      ['fronts Odd, three safeties', 'coverages Two deep five under, middle safety down'],
    ],
  ])('%s', (_words, entry, uses) => {
    expect(used(entry).filter((use) => !use.startsWith('opponents'))).toStrictEqual(uses);
  });

  it('names a user once, however often it names the entry', () => {
    const uses = usesOf(playbook, coverage('three-deep-roll'));
    expect(new Set(uses.map(({ by, name }) => `${by} ${name}`)).size).toBe(uses.length);
    expect(uses.length).toBeGreaterThan(2);
  });

  it('a role other roles go by is used by them', () => {
    expect(used(role('strong-edge'))).toContain('roles Weak outside backer');
  });

  it('a man who is alone in his group is used by whatever tells the group', () => {
    const tackles = playbook.roles.filter((each) => each.group === 'tackles').map(({ id }) => id);
    expect(tackles).toHaveLength(2);
    const one: Playbook = { ...playbook, roles: playbook.roles.filter(({ id }) => id !== 'weak-tackle') };
    expect(usesOf(one, role('strong-tackle'))).toContainEqual({ by: 'pressures', name: 'Carr', holds: true });
    expect(usesOf(playbook, role('strong-tackle')).filter(({ by }) => by === 'pressures')).toStrictEqual([]);
  });

  it.each(SECTIONS)('nothing uses what is not there: %s', (section) => {
    expect(usesOf(playbook, NOBODY[section])).toStrictEqual([]);
  });
});

describe.each(SECTIONS)('an entry of %s', (section) => {
  const entry = ENTRIES[section];
  const other = playbook[section].find(({ id }) => id !== entry.id);

  it('is renamed, without the blanks around', () => {
    const after = valueOf(renameEntry(playbook, { entry, name: '  Heron  ' }));
    expect(nameIn(after, entry)).toBe('Heron');
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('may be given the name it has', () => {
    expect(renameEntry(playbook, { entry, name: nameIn(playbook, entry) ?? '' }).ok).toBe(true);
  });

  it.each([
    ['without a name', '   ', 'name-empty'],
    ['with the name of another', other?.name ?? '', 'name-taken'],
  ])('is neither renamed nor copied %s', (_words, name, kind) => {
    expect(renameEntry(playbook, { entry, name })).toMatchObject({ ok: false, problem: { kind } });
    expect(copyEntry(playbook, { entry, name })).toMatchObject({ ok: false, problem: { kind } });
  });

  it('is copied behind itself under the next id, the same but for name and id', () => {
    const made = nextEntry(playbook, section);
    const after = valueOf(copyEntry(playbook, { entry, name: 'Heron' }));
    const at = playbook[section].findIndex(({ id }) => id === entry.id);
    const [original, copy] = [after[section][at], after[section][at + 1]];
    expect(copy).toStrictEqual({ ...original, id: made.id, name: 'Heron' });
    expect(playbook[section].some(({ id }) => id === made.id)).toBe(false);
    expect(after[section]).toHaveLength(playbook[section].length + 1);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('a copy is deleted again, and everything is as it was', () => {
    const copy = nextEntry(playbook, section);
    const after = valueOf(copyEntry(playbook, { entry, name: 'Heron' }));
    expect(valueOf(deleteEntry(after, { entry: copy }))).toStrictEqual(playbook);
  });

  it('is refused when it is not there', () => {
    const missing = NOBODY[section];
    for (const result of [
      renameEntry(playbook, { entry: missing, name: 'Heron' }),
      copyEntry(playbook, { entry: missing, name: 'Heron' }),
      deleteEntry(playbook, { entry: missing }),
    ]) {
      expect(result).toMatchObject({ ok: false, problem: { kind: 'not-there' } });
    }
  });
});

describe('deleting', () => {
  it.each<[string, Entry, readonly string[]]>([
    ['a front a call is played out of', front('bear'), ['Staithe']],
    ['a pressure a call is made of', pressure('bittern'), ['Bittern Weir Across', 'Coppice or Bittern', 'Bittern']],
    [
      'a role that plays in a front and is told',
      role('middle-safety'),
      ['Odd, three safeties', 'Two deep five under, middle safety down'],
    ],
  ])('is refused for %s, and says by whom it is held', (_words, entry, by) => {
    expect(deleteEntry(playbook, { entry })).toStrictEqual({ ok: false, problem: { kind: 'in-use', by } });
  });

  it('is refused for a coverage a pressure is played with', () => {
    expect(deleteEntry(playbook, { entry: coverage('three-deep-roll') })).toMatchObject({
      ok: false,
      problem: { kind: 'in-use' },
    });
  });

  it('takes what only mentions a look with it: hands, looks it is not run against, waivers, opponents', () => {
    const entry = look('unbalanced-11');
    const after = valueOf(deleteEntry(playbook, { entry }));
    expect(after.looks).toHaveLength(playbook.looks.length - 1);
    expect(after.fronts.flatMap(({ byHand }) => byHand).filter((hand) => hand.look === entry.id)).toStrictEqual([]);
    expect(usesOf(after, entry)).toStrictEqual([]);
    expect(checkPlaybook(after).ok).toBe(true);
    // Whatever did not mention it is the very same object, so that answers remembered for it stay good.
    const untouched = playbook.pressures.findIndex(({ notAgainst }) => !notAgainst.includes(asLookId(entry.id)));
    expect(after.pressures[untouched]).toBe(playbook.pressures[untouched]);
  });
});
