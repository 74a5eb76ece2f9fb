/** What the demo playbook must contain, and that the file is what its tables make. Everything in it is invented. */
import { describe, expect, it } from 'vitest';
import { playbookText } from '../../scripts/demo/playbook.ts';
import { analyse, PLACES, type Call } from '../../src/engine/index.ts';
import { callOf, everywhere, fileText, playbook, setupOf, sign } from './grid.ts';

describe('the file', () => {
  it('is what scripts/demo makes (else run npx tsx scripts/demo/build.ts)', () => {
    expect(fileText).toBe(playbookText());
  });

  it('names nothing twice', () => {
    for (const part of [playbook.calls, playbook.pressures, playbook.looks, playbook.fronts, playbook.coverages]) {
      expect(new Set(part.map(({ name }) => name)).size).toBe(part.length);
    }
  });
});

describe('the team', () => {
  it('has a high school playbook with unique letters', () => {
    expect(playbook.team.level).toBe('high-school');
    expect(new Set(playbook.roles.map(({ letter }) => letter)).size).toBe(playbook.roles.length);
  });

  it('has the parts a demo needs', () => {
    expect(playbook.fronts.length).toBeGreaterThanOrEqual(7);
    expect(playbook.coverages.length).toBeGreaterThanOrEqual(8);
    expect(playbook.pressures.length).toBeGreaterThanOrEqual(12);
    const pairs = playbook.calls.filter(({ second }) => second !== null);
    expect(pairs.filter(({ combination }) => combination.kind === 'together').length).toBeGreaterThanOrEqual(8);
    expect(pairs.filter(({ combination }) => combination.kind === 'either-or').length).toBeGreaterThanOrEqual(1);
    expect(playbook.opponents).toHaveLength(2);
    expect(new Set(playbook.sheets.map(({ room }) => room))).toEqual(
      new Set(['all', 'line', 'linebackers', 'secondary']),
    );
  });

  it('shows every front, shell, pressure and look somewhere', () => {
    const used = (pick: (call: Call) => readonly (string | null)[]) => new Set(playbook.calls.flatMap(pick));
    const shellOf = (id: string | null) => playbook.pressures.find((each) => each.id === id)?.coverage ?? null;
    const shells = used(({ first, coverage }) => [coverage ?? shellOf(first)]);
    expect(shells).toEqual(new Set(playbook.coverages.map(({ id }) => id)));
    expect(used(({ front }) => [front])).toEqual(new Set(playbook.fronts.map(({ id }) => id)));
    const sent = used(({ first, second }) => (second === null ? [first] : [first, second]));
    expect(sent).toEqual(new Set(playbook.pressures.map(({ id }) => id)));
    expect(new Set(playbook.opponents.flatMap(({ looks }) => looks))).toEqual(
      new Set(playbook.looks.map(({ id }) => id)),
    );
  });

  it('says of every pressure how many come, and has every pressure in a call of its own', () => {
    for (const { id, rushers } of playbook.pressures) {
      expect(rushers).not.toBeNull();
      expect([id, playbook.calls.some(({ first, second }) => first === id && second === null)]).toEqual([id, true]);
    }
  });
});

describe('the shells', () => {
  it('have the zones they are named for, and change with the receivers', () => {
    const deep = ['middle', 'third', 'half', 'quarter'];
    const counted = playbook.coverages.map(({ id, needs }) => {
      const always = needs.filter(({ when }) => when.length === 0);
      return [id, always.filter(({ zone }) => deep.includes(zone)).length, always.length];
    });
    // Deep zones no look does without, and all such zones. What depends on the look is not counted.
    expect(counted).toEqual([
      ['three-deep-roll', 3, 6],
      ['three-deep-hook', 3, 6],
      ['three-deep-over', 3, 6],
      ['three-deep-four-under', 3, 6],
      ['three-deep-fifth-back', 3, 6],
      ['three-deep-hot', 2, 2],
      ['two-deep-three-under', 2, 5],
      ['two-deep-five-under', 2, 7],
      ['four-deep', 4, 5],
      ['four-deep-two-under', 4, 6],
      ['man-free', 1, 1],
      ['man-nobody-free', 0, 0],
    ]);
    const byLook = playbook.coverages.filter(({ tells }) => tells.some(({ cases }) => cases.length > 1));
    expect(byLook).toHaveLength(playbook.coverages.length);
  });
});

describe('one of two', () => {
  const calls = playbook.calls.filter(({ combination }) => combination.kind === 'either-or');

  it.each(calls.map((call) => [call.name, call] as const))(
    '%s: both halves are run somewhere, and both are taught apart',
    (_, call) => {
      const ran = new Set(everywhere(call).map(({ choice }) => choice?.ran));
      expect(ran).toEqual(new Set(['first', 'second']));
      for (const half of [call.first, call.second]) {
        const alone = playbook.calls.filter(({ first, second }) => first === half && second === null);
        expect(alone).not.toHaveLength(0);
      }
      expect(everywhere(call).every(({ choice }) => (choice?.mustHear.length ?? 0) > 0)).toBe(true);
    },
  );
});

describe('check-outs', () => {
  it('are there for three calls at least', () => {
    expect(playbook.checkOuts.length).toBeGreaterThanOrEqual(3);
  });

  it.each(playbook.checkOuts.map((table) => [table.call, table] as const))('%s: some look asks for it', (id, table) => {
    const all = everywhere(callOf(id)).filter(({ setup }) => setup.checkOut !== null);
    expect(all.length).toBeGreaterThan(0);
    for (const { setup } of all) expect(table.rows).toContainEqual(setup.checkOut);
    for (const { action } of table.rows) {
      // A call is checked to at the line: nobody can come in for another front.
      if (action.kind === 'check-to') expect(callOf(action.call).front).toBe(callOf(id).front);
    }
  });

  it('Culvert Weir is run against empty as something else, Culvert alone is not run', () => {
    const against = (id: string) =>
      everywhere(callOf(id))
        .filter(({ setup }) => setup.look.id === 'empty-00')
        .map(sign);
    expect(against('culvert-weir')).toEqual(['.', '.', '.']);
    expect(against('culvert')).toEqual(['-', '-', '-']);
  });
});

describe('the staff', () => {
  it('has a dictionary of ten words, one of which has got two meanings', () => {
    const words = playbook.dictionary.map(({ word }) => word);
    expect(new Set(words).size).toBeGreaterThanOrEqual(10);
    const twice = words.filter((word, index) => words.indexOf(word) !== index);
    expect(twice).toEqual(['Rill']);
    const tagged = playbook.pressures.filter(({ tags }) => tags.includes('rill'));
    expect(tagged.map(({ name }) => name)).toEqual(['Leat']);
  });

  it('lives with one finding, for a reason', () => {
    const waivers = playbook.calls.flatMap((call) => call.waivers.map((waiver) => ({ call, waiver })));
    expect(waivers).toHaveLength(1);
    for (const { call, waiver } of waivers) {
      for (const spot of PLACES) {
        const { findings, verdict } = analyse(setupOf(call, waiver.look, spot));
        const waived = findings.filter(({ waived: reason }) => reason !== null);
        expect(waived.map(({ rule, waived: reason }) => [rule, reason])).toEqual([[waiver.rule, waiver.reason]]);
        expect(verdict).toBe('clean');
      }
    }
  });
});

describe('the base fronts', () => {
  // Gaps to own are blockers plus one ("Check Defense", Football Is Life blog, 5 May 2020).
  it.each(playbook.fronts.map((front) => [front.name, front] as const))(
    '%s owns every gap of every look',
    (_, front) => {
      for (const look of playbook.looks) {
        const setup = setupOf({ ...callOf('osier'), front: front.id }, look.id, 'middle');
        // Nobody is sent anywhere and no shell speaks: only the front's own gaps count.
        const {
          gaps,
          findings,
          facts: seen,
        } = analyse({
          ...setup,
          first: { ...setup.first, tells: [] },
          coverage: { ...setup.coverage, tells: [], needs: [] },
        });
        expect(gaps).toHaveLength(seen.surface.left.length + seen.surface.right.length);
        expect([look.id, gaps.filter(({ owners }) => owners.length === 0)]).toEqual([look.id, []]);
        const stands = findings.filter(({ rule }) => /^(gap|align|line|rule|look)\./.test(rule));
        expect([look.id, stands]).toEqual([look.id, []]);
      }
    },
  );

  // Counted where they stand: a man within a yard and a half of the ball is on the line (common practice, no source).
  it.each([
    ['odd', 3],
    ['even', 4],
    ['bear', 5],
  ])('%s has %i men on the line against two receivers a side', (id, men) => {
    const front = playbook.fronts.find((each) => each.id === id);
    const look = playbook.looks.find((each) => each.id === 'doubles-10');
    if (front === undefined || look === undefined) throw new Error('The demo lacks a front or a look');
    const { assignments } = analyse(setupOf({ ...callOf('weir'), front: front.id }, look.id, 'middle'));
    expect(assignments.filter(({ aligned }) => aligned.y <= 1.5)).toHaveLength(men);
  });

  it('have three safeties in one front and six backs in another', () => {
    const backs = (id: string) =>
      playbook.fronts
        .find((front) => front.id === id)
        ?.roles.filter(({ role }) => playbook.roles.find((each) => each.id === role)?.room === 'secondary')
        .map(({ role }) => role)
        .sort();
    expect(backs('odd-three-safeties')).toEqual([
      'free-safety',
      'left-corner',
      'middle-safety',
      'right-corner',
      'strong-safety',
    ]);
    expect(backs('odd-sixth-back')).toHaveLength(6);
  });
});
