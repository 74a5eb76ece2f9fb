import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import {
  analyse,
  asCallId,
  mirrorPlace,
  mirrorSetup,
  mirrorSide,
  PLACES,
  readLook,
  SIDES,
  TURNS,
  type Analysis,
  type Front,
  type Look,
  type OffencePlayer,
  type Place,
  type Pressure,
  type Setup,
  type Side,
  type Turn,
} from '../../src/engine/index.ts';
import { compareBy } from '../../src/base/index.ts';
import { openDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import { frozen, read } from './book.ts';
import { digest } from './digest.ts';

/** The invented team's playbook, frozen: no question asked of the engine below may change it. */
const openBook = (): Playbook =>
  frozen(read(openDocument(readFileSync(new URL('../../demo-data/playbook.json', import.meta.url), 'utf8'))));
const book = openBook();

interface Case {
  readonly front: Front;
  readonly look: Look;
  readonly spot: Place;
  readonly first: Pressure;
  readonly second: Pressure | null;
  readonly turn: Turn;
}

function ask({ front, look, spot, first, second, turn }: Case, from = book): Setup {
  const call = {
    id: asCallId('asked'),
    name: 'asked',
    combination: { kind: 'together' },
    rushers: null,
    waivers: [],
    front: front.id,
    first: first.id,
    second: second?.id ?? null,
    turn,
    coverage: null,
  } as const;
  return frozen(read(toSetup(from, { call, look: look.id, spot })));
}

const name = ({ front, look, spot, first, second, turn }: Case): string =>
  `${front.id}: ${first.id}${second === null ? '' : ` + ${second.id} ${turn}`} @${spot} vs ${look.id}`;

/** Every front, look and spot with every pressure alone and every ordered pair; the turns take their turn. */
function* everyCase(fronts: readonly Front[], spots: readonly Place[]): Generator<Case> {
  let count = 0;
  for (const front of fronts) {
    for (const look of book.looks) {
      for (const spot of spots) {
        for (const first of book.pressures) {
          for (const other of book.pressures) {
            count += 1;
            const second = other === first ? null : other;
            yield { front, look, spot, first, second, turn: TURNS[count % TURNS.length] ?? 'own' };
          }
        }
      }
    }
  }
}

/** Milliseconds: thousands of questions in each test, perhaps on a slow machine. */
vi.setConfig({ testTimeout: 300_000 });

/** A smaller set that still has every look, pressure, turn and spot many times. */
const SAMPLE = [...everyCase(book.fronts.slice(0, 1), PLACES)].filter((_, index) => index % 23 === 0);

describe('mirror: everything flipped left to right gives the flipped answer', () => {
  it('flipping twice gives the first setup back', () => {
    for (const one of SAMPLE) {
      const setup = ask(one);
      expect(mirrorSetup(mirrorSetup(setup)), name(one)).toEqual(setup);
    }
    expect(PLACES.map((place) => mirrorPlace(mirrorPlace(place)))).toEqual(PLACES);
    expect(SIDES.map(mirrorSide)).toEqual(['right', 'left']);
  });

  const unlike = (one: Case): boolean => {
    const setup = ask(one);
    return digest(analyse(mirrorSetup(setup)), true) !== digest(analyse(setup), false);
  };

  it.each(book.fronts.slice(0, 2))('$name: every look, spot and ordered pair of pressures', (front) => {
    const cases = [...everyCase([front], PLACES)];
    expect(cases).toHaveLength(book.looks.length * PLACES.length * book.pressures.length ** 2);
    expect(cases.filter(unlike).map(name)).toEqual([]);
  });

  it('the other fronts: every seventh', () => {
    const cases = [...everyCase(book.fronts.slice(2), PLACES)].filter((_, index) => index % 7 === 0);
    expect(cases.length).toBeGreaterThan(1000);
    expect(cases.filter(unlike).map(name)).toEqual([]);
  });
});

/** Another order that is neither the old one nor its reverse, the same on every run. */
const shuffled = <Item>(items: readonly Item[]): readonly Item[] => [
  ...items.filter((_, index) => index % 3 === 1),
  ...items.filter((_, index) => index % 3 === 0).reverse(),
  ...items.filter((_, index) => index % 3 === 2),
];

/** The playbook with every list whose order carries no meaning written in another order. */
const reordered: Playbook = frozen({
  ...book,
  roles: shuffled(book.roles),
  fronts: shuffled(book.fronts.map((front) => ({ ...front, roles: shuffled(front.roles) }))),
  coverages: shuffled(book.coverages.map((shell) => ({ ...shell, tells: shuffled(shell.tells) }))),
  looks: shuffled(book.looks.map((look) => ({ ...look, players: shuffled(look.players) }))),
  pressures: shuffled(book.pressures.map((pressure) => ({ ...pressure, tells: shuffled(pressure.tells) }))),
});

/** What was worked out, without the setup it was worked out from. */
const worked = ({ setup: _setup, ...rest }: Analysis): Omit<Analysis, 'setup'> => rest;

describe('what must not matter', () => {
  it('the order of players, roles and tellings in the document', () => {
    for (const one of SAMPLE) {
      const usual = worked(analyse(ask(one)));
      const other = worked(analyse(ask(one, reordered)));
      expect(other.assignments, name(one)).toEqual(usual.assignments);
      expect(other.gaps, name(one)).toEqual(usual.gaps);
      expect(other.findings, name(one)).toEqual(usual.findings);
      expect(other.verdict, name(one)).toBe(usual.verdict);
      expect(other.facts, name(one)).toEqual(usual.facts);
    }
  });

  it('when it is asked: the same input gives the same bytes, from a file read again as well', () => {
    const again = openBook();
    for (const one of SAMPLE) {
      const bytes = JSON.stringify(analyse(ask(one)));
      expect(JSON.stringify(analyse(ask(one))), name(one)).toBe(bytes);
      expect(JSON.stringify(analyse(ask(one, again))), name(one)).toBe(bytes);
    }
  });

  it('looking: no question changes the playbook', () => {
    const before = JSON.stringify(book);
    for (const one of SAMPLE) analyse(ask(one));
    expect(JSON.stringify(book)).toBe(before);
    expect(Object.isFrozen(book.looks[0]?.players[0])).toBe(true);
  });
});

/** The letters of a side's gaps, from the ball outward. */
const letters = (look: Look, side: Side): string =>
  readLook(look, 'college', 'middle')
    .gaps.filter(({ gap }) => gap.side === side)
    .map(({ gap }) => gap.letter)
    .sort()
    .join('');

/** Every look and side with nobody outside the tackle, and that look with a receiver brought in as a tight end there. */
const OPEN_SIDES = book.looks.flatMap((look) =>
  SIDES.flatMap((side) => {
    const { surface } = readLook(look, 'college', 'middle');
    const last = surface[side][surface[side].length - 1];
    // The one who stands nearest to the place, so that he is not there as a wing as well.
    const [receiver] = look.players
      .filter(({ kind }) => kind === 'receiver')
      .sort(compareBy(({ x }) => Math.abs(x - (last?.x ?? 0))));
    if (last?.index !== 2 || receiver === undefined) return [];
    const end = {
      ...receiver,
      kind: 'tight-end',
      x: last.x + (side === 'right' ? 4 / 3 : -4 / 3),
      y: -0.6,
    } satisfies OffencePlayer;
    const closed = { ...look, players: look.players.map((player) => (player === receiver ? end : player)) };
    return [{ name: `${look.id} ${side}`, look, side, closed }];
  }),
);

/*
 * "The number of players to a side" makes the letters, D beside a tight end: "Gaps of understanding", Washington Post,
 * 8 Oct 2020.
 */
describe('a tight end brought in on an open side adds exactly one gap there', () => {
  it('there are many such sides', () => {
    expect(OPEN_SIDES.length).toBeGreaterThan(20);
  });

  it.each(OPEN_SIDES)('$name', ({ look, side, closed }) => {
    expect(letters(look, side)).toBe('ABC');
    expect(letters(closed, side)).toBe('ABCD');
    expect(letters(closed, mirrorSide(side))).toBe(letters(look, mirrorSide(side)));
  });
});

/** Everything about where men stand that has an edge: techniques, sides, box, surface, numbers. */
function edges({ assignments, facts }: Analysis): string {
  const men = assignments.map(({ aligned: { role, technique, place, inBox } }) => [role.id, technique, place, inBox]);
  const { surface, receivers, backs, onLine, faults } = facts;
  const bodies = SIDES.map((side) => surface[side].map(({ player, how }) => `${player} ${how}`));
  return JSON.stringify([men, bodies, receivers, backs, onLine, faults.length]);
}

const told = ({ verdict, findings }: Analysis): string => `${verdict} ${findings.map(({ rule }) => rule).join()}`;

/** The setup with every man of the front where the analysis found him, by hand, one of them a little off. */
function nudged(setup: Setup, { assignments }: Analysis, man: number, dx: number, dy: number): Setup {
  const byHand = assignments.map(({ aligned: { role, x, y } }, index) => ({
    look: setup.look.id,
    role: role.id,
    x: index === man ? x + dx : x,
    y: index === man ? y + dy : y,
  }));
  return frozen({ ...setup, front: { ...setup.front, byHand } });
}

const NUDGES: readonly (readonly [dx: number, dy: number])[] = [
  [0.009, 0],
  [-0.009, 0],
  [0, 0.009],
  [0.006, -0.006],
];

describe('a man who stands less than a hundredth of a yard elsewhere', () => {
  const cases = SAMPLE.filter((_, index) => index % 9 === 0);

  it('changes no verdict of a defender, unless he crosses an edge', () => {
    let compared = 0;
    cases.forEach((one, at) => {
      const setup = ask(one);
      const usual = analyse(setup);
      const [dx, dy] = NUDGES[at % NUDGES.length] ?? [0, 0];
      const still = analyse(nudged(setup, usual, -1, 0, 0));
      expect(told(still), name(one)).toBe(told(usual));
      usual.assignments.forEach((_, man) => {
        const moved = analyse(nudged(setup, usual, man, dx, dy));
        if (edges(moved) !== edges(usual)) return;
        compared += 1;
        expect(told(moved), `${name(one)} man ${man}`).toBe(told(usual));
      });
    });
    expect(compared).toBeGreaterThan(0.9 * cases.length * 11);
  });

  it('changes no verdict of the offence, unless he crosses an edge', () => {
    let compared = 0;
    cases.forEach((one, at) => {
      const setup = ask(one);
      const usual = analyse(setup);
      const [dx, dy] = NUDGES[at % NUDGES.length] ?? [0, 0];
      setup.look.players.forEach((_, man) => {
        const players = setup.look.players.map((player, index) =>
          index === man ? { ...player, x: player.x + dx, y: player.y + dy } : player,
        );
        const moved = analyse(frozen({ ...setup, look: { ...setup.look, players } }));
        if (edges(moved) !== edges(usual)) return;
        compared += 1;
        expect(told(moved), `${name(one)} player ${man}`).toBe(told(usual));
      });
    });
    expect(compared).toBeGreaterThan(0.8 * cases.length * 11);
  });
});
