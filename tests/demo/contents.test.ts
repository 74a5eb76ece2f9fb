/** What the demo playbook must contain, and that the file is what its tables make. Everything in it is invented. */
import { describe, expect, it } from 'vitest';
import { playbookText } from '../../scripts/demo/playbook.ts';
import { analyse, PLACES, readLook, type Call, type Look, type OffencePlayer } from '../../src/engine/index.ts';
import { callOf, fileText, playbook, setupOf } from './grid.ts';

const facts = (look: Look) => readLook(look, playbook.team.level, 'middle');
const passerDepth = (look: Look): number => -(look.players.find(({ kind }) => kind === 'passer')?.y ?? 0);
const some = (holds: (look: Look) => boolean): boolean => playbook.looks.some(holds);

describe('the file', () => {
  it('is what scripts/demo makes (else run npx tsx scripts/demo/build.ts)', () => {
    expect(fileText).toBe(playbookText());
  });

  it('names no call or pressure twice', () => {
    for (const part of [playbook.calls, playbook.pressures, playbook.looks]) {
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
    expect(playbook.fronts.length).toBeGreaterThanOrEqual(2);
    expect(playbook.coverages.length).toBeGreaterThanOrEqual(3);
    expect(playbook.pressures.length).toBeGreaterThanOrEqual(12);
    expect(playbook.calls.filter(({ second }) => second !== null).length).toBeGreaterThanOrEqual(8);
    expect(playbook.opponents).toHaveLength(2);
    expect(new Set(playbook.sheets.map(({ room }) => room))).toEqual(
      new Set(['all', 'line', 'linebackers', 'secondary']),
    );
  });

  it('shows every front, shell, pressure and look somewhere', () => {
    const used = (pick: (call: Call) => readonly (string | null)[]) => new Set(playbook.calls.flatMap(pick));
    const shells = used(({ first, coverage }) => [
      coverage ?? playbook.pressures.find(({ id }) => id === first)?.coverage ?? null,
    ]);
    expect(shells).toEqual(new Set(playbook.coverages.map(({ id }) => id)));
    expect(used(({ front }) => [front])).toEqual(new Set(playbook.fronts.map(({ id }) => id)));
    const sent = used(({ first, second }) => (second === null ? [first] : [first, second]));
    expect(sent).toEqual(new Set(playbook.pressures.map(({ id }) => id)));
    expect(new Set(playbook.opponents.flatMap(({ looks }) => looks))).toEqual(
      new Set(playbook.looks.map(({ id }) => id)),
    );
  });
});

describe('the looks', () => {
  it('are at least 16, of every personnel group wanted, and each name starts with its own', () => {
    expect(playbook.looks.length).toBeGreaterThanOrEqual(16);
    const codes = playbook.looks.map((look) => facts(look).personnel);
    expect(new Set(codes)).toEqual(new Set(['00', '10', '11', '12', '13', '20', '21', '22']));
    playbook.looks.forEach((look, index) => {
      expect(look.name.slice(0, 2)).toBe(codes[index]);
    });
  });

  // No more than four off the line and five linemen: NFHS Rule 7-2-5-a and -b (2019). Seven on the line, as this staff draws
  // it, is the stricter rule of NFL 7-5-1. A man between line and backfield: NFHS 2-25-2. Circles are judged by their middle.
  it.each(playbook.looks.map((look) => [look.name, look] as const))('%s is legal', (_, look) => {
    const depth = (player: OffencePlayer): number => -player.y;
    const onLine = look.players.filter((player) => depth(player) <= 1);
    expect(look.players).toHaveLength(11);
    expect(onLine).toHaveLength(7);
    expect(look.players.filter(({ kind }) => kind === 'lineman' || kind === 'snapper')).toHaveLength(5);
    const between = look.players.filter((player) => depth(player) > 1 && depth(player) < 1.25);
    expect(between).toEqual([]);
    expect(facts(look).faults).toEqual([]);
  });

  // Five men may catch a forward pass besides the passer: both ends of the line and the backs (NCAA 7-3-3; NFHS 7-5-6).
  it.each(playbook.looks.map((look) => [look.name, look] as const))('%s has five who may catch a pass', (_, look) => {
    const { receivers, backs } = facts(look);
    expect(receivers.filter(({ eligible }) => eligible).length + backs.length).toBe(5);
  });

  it('stay on the field at every ball spot', () => {
    for (const look of playbook.looks) {
      for (const spot of PLACES) {
        const { left, right } = readLook(look, playbook.team.level, spot).sidelines;
        for (const { x } of look.players) expect(x > left + 1 && x < right - 1).toBe(true);
      }
    }
  });

  it('have the passer under centre, in the pistol and in the gun', () => {
    expect(some((look) => passerDepth(look) < 2)).toBe(true);
    expect(some((look) => passerDepth(look) > 3 && passerDepth(look) < 4.5)).toBe(true);
    expect(some((look) => passerDepth(look) >= 5)).toBe(true);
  });

  it('have tight ends attached, flexed and on the wing, and a side with three receivers', () => {
    const ends = (look: Look) => look.players.filter(({ kind }) => kind === 'tight-end').map(({ id }) => id);
    const bodies = (look: Look) => [...facts(look).surface.left, ...facts(look).surface.right];
    const attached = (look: Look, how: 'line' | 'wing') =>
      bodies(look).some((body) => body.how === how && ends(look).includes(body.player));
    expect(some((look) => attached(look, 'line'))).toBe(true);
    expect(some((look) => attached(look, 'wing'))).toBe(true);
    expect(some((look) => ends(look).some((end) => bodies(look).every((body) => body.player !== end)))).toBe(true);
    expect(some((look) => facts(look).receivers.some(({ number, attached: close }) => number === 3 && !close))).toBe(
      true,
    );
  });

  it('have a bunch, an empty backfield and an unbalanced line', () => {
    const within = (look: Look): boolean => {
      const wide = facts(look)
        .receivers.filter(({ attached }) => !attached)
        .map(({ player }) => player);
      const xs = look.players.filter(({ id }) => wide.includes(id)).map(({ x }) => x);
      return xs.some((x) => xs.filter((other) => Math.abs(other - x) < 1.5).length === 3);
    };
    expect(some(within)).toBe(true);
    expect(some((look) => facts(look).backs.length === 0)).toBe(true);
    const linemenRight = (look: Look): number =>
      look.players.filter(({ kind, x }) => kind === 'lineman' && x > 0).length;
    expect(some((look) => linemenRight(look) === 3)).toBe(true);
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
          coverage: { ...setup.coverage, tells: [] },
        });
        expect(gaps).toHaveLength(seen.surface.left.length + seen.surface.right.length);
        expect([look.id, gaps.filter(({ owners }) => owners.length === 0)]).toEqual([look.id, []]);
        expect([look.id, findings]).toEqual([look.id, []]);
      }
    },
  );
});
