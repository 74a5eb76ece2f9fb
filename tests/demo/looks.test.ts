/** The looks of the demo: legal before and after any motion, of every kind wanted, with runs and protections that exist in them. */
import { describe, expect, it } from 'vitest';
import { analyse, formationClasses, PLACES, readLook, type Look, type OffencePlayer } from '../../src/engine/index.ts';
import { callOf, everywhere, playbook, setupOf } from './grid.ts';

/** The look as the ball is snapped. */
function atSnap(look: Look): Look {
  const { motion } = look;
  if (motion === null) return look;
  return { ...look, players: look.players.map((man) => (man.id === motion.player ? { ...man, ...motion.to } : man)) };
}

const facts = (look: Look) => readLook(atSnap(look), playbook.team.level, 'middle');
const passerDepth = (look: Look): number => -(look.players.find(({ kind }) => kind === 'passer')?.y ?? 0);
const some = (holds: (look: Look) => boolean): boolean => playbook.looks.some(holds);
const each = playbook.looks.map((look) => [look.name, look] as const);
/** As they are set, and as the ball is snapped. */
const moments = playbook.looks.flatMap((look) =>
  look.motion === null
    ? [[look.name, look] as const]
    : [[`${look.name}, as set`, look] as const, [`${look.name}, as snapped`, atSnap(look)] as const],
);
const inMotion = playbook.looks.filter(({ motion }) => motion !== null);

describe('the looks', () => {
  it('are at least 16, of every personnel group wanted, and each name starts with its own', () => {
    expect(playbook.looks.length).toBeGreaterThanOrEqual(16);
    const codes = playbook.looks.map((look) => facts(look).personnel);
    expect(new Set(codes)).toEqual(new Set(['00', '10', '11', '12', '13', '20', '21', '22']));
    playbook.looks.forEach((look, index) => {
      expect(look.name.slice(0, 2)).toBe(codes[index]);
    });
  });

  it('begin with an ordinary one', () => {
    const [first] = playbook.looks;
    expect(first?.name).toBe('11 doubles, tight end flexed right');
  });

  // No more than four off the line and five linemen: NFHS Rule 7-2-5-a and -b (2019). Seven on the line, as this staff draws
  // it, is the stricter rule of NFL 7-5-1. A man between line and backfield: NFHS 2-25-2. Circles are judged by their middle.
  it.each(moments)('%s is legal', (_, look) => {
    const depth = (player: OffencePlayer): number => -player.y;
    const onLine = look.players.filter((player) => depth(player) <= 1);
    expect(look.players).toHaveLength(11);
    expect(onLine).toHaveLength(7);
    expect(look.players.filter(({ kind }) => kind === 'lineman' || kind === 'snapper')).toHaveLength(5);
    const between = look.players.filter((player) => depth(player) > 1 && depth(player) < 1.25);
    expect(between).toEqual([]);
    expect(readLook(look, playbook.team.level, 'middle').faults).toEqual([]);
  });

  // Five men may catch a forward pass besides the passer: both ends of the line and the backs (NCAA 7-3-3; NFHS 7-5-6).
  it.each(moments)('%s has five who may catch a pass', (_, look) => {
    const { receivers, backs } = readLook(look, playbook.team.level, 'middle');
    expect(receivers.filter(({ eligible }) => eligible).length + backs.length).toBe(5);
  });

  it('stay on the field at every ball spot', () => {
    for (const [, look] of moments) {
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

  it('have the classes check-outs are made by, but for the ones with four on a side', () => {
    const shown = new Set(
      playbook.looks.flatMap((look) => formationClasses(readLook(look, playbook.team.level, 'middle'))),
    );
    for (const formation of [
      'unbalanced',
      'empty-three-by-two',
      'heavy',
      'two-backs',
      'bunch',
      'trips-nub',
      'trips-tight-end',
      'trips',
      'wing',
      'two-tight-ends',
      'doubles-tight-end',
      'doubles',
    ] as const) {
      expect(shown).toContain(formation);
    }
  });
});

describe('motion', () => {
  it('is in three looks: across, from side to side of the line, and out of the backfield', () => {
    expect(inMotion.length).toBeGreaterThanOrEqual(3);
    const man = (look: Look) => look.players.find(({ id }) => id === look.motion?.player);
    expect(new Set(inMotion.map((look) => man(look)?.kind))).toEqual(new Set(['receiver', 'tight-end', 'back']));
    // One man may be moving at the snap, and he is a back or well behind the line: NFHS 7-2-7 (2019), from memory.
    for (const look of inMotion) expect(-(look.motion?.to.y ?? 0)).toBeGreaterThan(1.25);
  });

  it('turns a call', () => {
    const flips = inMotion.filter((look) =>
      everywhere(callOf('marl')).some(
        ({ setup, motion, first }) =>
          setup.look.id === look.id &&
          motion?.first.kind === 'decided' &&
          first.side.kind === 'decided' &&
          motion.first.side !== first.side.side,
      ),
    );
    expect(flips.map(({ id }) => id)).toEqual(['jet-10', 'trade-11']);
  });

  it('takes the back out of the backfield', () => {
    const emptied = inMotion.filter((look) => facts(look).backs.length === 0);
    expect(emptied.map(({ id }) => id)).toEqual(['back-out-11']);
  });
});

describe('what the offence is known for', () => {
  it.each(each)('%s: three to six runs and one to three protections, each of which the look has', (_, look) => {
    const { runs, protections } = analyse(setupOf(callOf('weir'), look.id, 'middle'));
    expect(runs.length).toBeGreaterThanOrEqual(3);
    expect(runs.length).toBeLessThanOrEqual(6);
    expect(protections.length).toBeGreaterThanOrEqual(1);
    expect(protections.length).toBeLessThanOrEqual(3);
    expect(runs.filter(({ kind }) => kind === 'not-here')).toEqual([]);
    expect(protections.filter(({ kind }) => kind === 'not-here')).toEqual([]);
  });

  it('has a pass with the run in some looks, all of them in the gun', () => {
    const withPass = playbook.looks.filter(({ runs }) => runs.some(({ passOption }) => passOption));
    expect(withPass.length).toBeGreaterThanOrEqual(3);
    for (const look of withPass) expect(passerDepth(look)).toBeGreaterThanOrEqual(5);
  });

  it('has options, pulls, leads and draws among the runs', () => {
    const concepts = new Set(playbook.looks.flatMap(({ runs }) => runs.map(({ concept }) => concept)));
    for (const concept of ['zone-read', 'inside-veer', 'power', 'counter', 'iso', 'quarterback-draw'] as const) {
      expect(concepts).toContain(concept);
    }
  });
});
