/** What changed for whom: told once for all looks alike, room by room, and nothing of what stays. */
import { describe, expect, it } from 'vitest';
import { toSetup, type Playbook } from '../../src/document/index.ts';
import { analyse, PLACES, type Call } from '../../src/engine/index.ts';
import { buildReport, compareReports, type ComparedLook, type Report } from '../../src/report/index.ts';
import { demo, firstOf } from '../store/demo.ts';

const playbook = demo();
const call = firstOf(playbook.calls);

function reportOf(book: Playbook, of: Call, look: string): Report {
  const shown = book.looks.find(({ id }) => id === look);
  if (shown === undefined) throw new Error(`No look ${look}`);
  const setup = toSetup(book, { call: of, look: shown.id, spot: PLACES[1] });
  if (!setup.ok) throw new Error(setup.problem.path);
  return buildReport(analyse(setup.value), book.words);
}

function compared(after: Playbook, afterCall: Call): readonly ComparedLook[] {
  return playbook.looks.slice(0, 6).map(({ id, name }) => ({
    look: name,
    before: reportOf(playbook, call, id),
    after: reportOf(after, afterCall, id),
  }));
}

/** Another job for the middle man of the line wherever the first pressure tells him one; nobody else is named. */
function silentFirst(): Playbook {
  return {
    ...playbook,
    pressures: playbook.pressures.map((each) => (each.id === call.first ? { ...each, tells: [] } : each)),
  };
}

describe('compareReports', () => {
  it('the same call in the same playbook: nothing', () => {
    expect(compareReports(compared(structuredClone(playbook), call))).toEqual({ rooms: [], verdicts: [], looks: 6 });
  });

  it('every difference between two reports is told, and nothing else', () => {
    const looks = compared(silentFirst(), call);
    const told = compareReports(looks).rooms.flatMap(({ changes }) =>
      changes.flatMap(({ letter, name, what, before, after, looks: where }) =>
        where.map((look) => `${look}: ${letter} ${name} ${what} ${before} > ${after}`),
      ),
    );
    const expected = looks.flatMap(({ look, before, after }) =>
      after.jobs.flatMap((is) => {
        const was = before.jobs.find(({ role }) => role === is.role);
        if (was === undefined) throw new Error('One front has one eleven');
        const line = (what: string, a: string, b: string) =>
          a === b ? [] : [`${look}: ${is.letter} ${is.name} ${what} ${a} > ${b}`];
        return [...line('alignment', was.aligns, is.aligns), ...line('job', was.job, is.job)];
      }),
    );
    expect(expected.length).toBeGreaterThan(0);
    expect(told.toSorted()).toEqual(expected.toSorted());
  });

  it('a change that is the same in several looks is one row, in the room of the man', () => {
    const { rooms } = compareReports(compared(silentFirst(), call));
    const rows = rooms.flatMap(({ changes }) => changes);
    const keys = rows.map(({ letter, name, what, before, after }) => [letter, name, what, before, after].join('|'));
    expect(new Set(keys).size).toBe(keys.length);
    expect(rows.some(({ looks }) => looks.length > 1)).toBe(true);
    for (const { room, changes } of rooms) {
      for (const { name } of changes) {
        const { role } = playbookRole(name);
        expect(room.toLowerCase()).toBe(role.room);
      }
    }
  });

  it('a man who is in one of the two fronts only is told so', () => {
    const other = playbook.calls.find(({ front }) => {
      const men = (id: string) => playbook.fronts.find((each) => each.id === id)?.roles.map(({ role }) => role) ?? [];
      return men(front).some((role) => !men(call.front).includes(role));
    });
    if (other === undefined) throw new Error('The demo has no call out of a front with another man');
    const words = compareReports(compared(playbook, other)).rooms.flatMap(({ changes }) =>
      changes.map(({ before, after }) => `${before} > ${after}`),
    );
    expect(words.some((text) => text.startsWith('not in this front > '))).toBe(true);
    expect(words.some((text) => text.endsWith(' > not in this front'))).toBe(true);
  });

  it('looks whose verdict is another one are listed', () => {
    const looks = compared(silentFirst(), call);
    expect(compareReports(looks).verdicts).toEqual(
      looks
        .filter(({ before, after }) => before.verdict !== after.verdict)
        .map(({ look, before, after }) => ({ look, before: before.verdict, after: after.verdict })),
    );
  });
});

function playbookRole(name: string) {
  const role = playbook.roles.find((each) => each.name === name);
  if (role === undefined) throw new Error(`No role ${name}`);
  return { role };
}
