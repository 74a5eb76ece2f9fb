import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import {
  analyse,
  asCallId,
  MEET_WITHIN,
  MEET_WITHIN_SECONDS,
  mirrorPlace,
  mirrorSetup,
  mirrorSide,
  movesOfDraft,
  PLACES,
  positionAt,
  readLook,
  SIDES,
  TURNS,
  type Analysis,
  type Front,
  type Look,
  type Move,
  type OffencePlayer,
  type Place,
  type Pressure,
  type RoleId,
  type Setup,
  type Side,
  type Turn,
  type Who,
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
    tags: [],
    installDay: null,
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

/** Of the cases of one front the spot that is asked: one of three for each look and pair, another one for the next pair. */
function spotInTurn(index: number): Place | undefined {
  const pair = index % book.pressures.length ** 2;
  return PLACES[Math.floor(pair / TURNS.length) % PLACES.length];
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

  it.each(book.fronts.slice(0, 2))('$name: every look and ordered pair of pressures', (front) => {
    // The ball spots take turns, and so do the turns: every look and first pressure meets each spot with each turn.
    const cases = [...everyCase([front], PLACES)].filter(({ spot }, index) => spot === spotInTurn(index));
    expect(cases).toHaveLength(book.looks.length * book.pressures.length ** 2);
    expect(cases.filter(unlike).map(name)).toEqual([]);
  });

  it('the other fronts: every seventeenth', () => {
    const cases = [...everyCase(book.fronts.slice(2), PLACES)].filter((_, index) => index % 17 === 0);
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

/** Tellings in another order. Those for one name are one list, the first case that holds: in it the order is meant. */
function retold<Tell extends { readonly who: Who }>(tells: readonly Tell[]): readonly Tell[] {
  const nameOf = ({ who }: Tell): string => JSON.stringify(who);
  return shuffled([...new Set(tells.map(nameOf))]).flatMap((one) => tells.filter((tell) => nameOf(tell) === one));
}

/** The playbook with every list whose order carries no meaning written in another order. */
const reordered: Playbook = frozen({
  ...book,
  roles: shuffled(book.roles),
  fronts: shuffled(book.fronts.map((front) => ({ ...front, roles: shuffled(front.roles) }))),
  coverages: shuffled(book.coverages.map((shell) => ({ ...shell, tells: retold(shell.tells) }))),
  looks: shuffled(book.looks.map((look) => ({ ...look, players: shuffled(look.players) }))),
  pressures: shuffled(book.pressures.map((pressure) => ({ ...pressure, tells: retold(pressure.tells) }))),
});

/** What was worked out, without the setup it was worked out from. */
const worked = ({ setup: _setup, ...rest }: Analysis): Omit<Analysis, 'setup'> => rest;

describe('what must not matter', () => {
  it('the order of players, roles and tellings in the document', () => {
    for (const one of SAMPLE) {
      const usual = worked(analyse(ask(one)));
      const other = worked(analyse(ask(one, reordered)));
      // Written alike they are alike: only where they are not is it worth the time to say where.
      if (JSON.stringify(other) === JSON.stringify(usual)) continue;
      expect(other.assignments, name(one)).toEqual(usual.assignments);
      expect(other.gaps, name(one)).toEqual(usual.gaps);
      expect(other.zones, name(one)).toEqual(usual.zones);
      expect(other.answers, name(one)).toEqual(usual.answers);
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

/** How near two men come to each other at one time on their ways to the line, in yards. */
function nearest(moves: readonly Move[], [a, b]: readonly RoleId[]): number {
  const traces = [a, b].map((role) => {
    const move = moves.find((each) => each.role === role);
    const end = move?.path.at(-1)?.t ?? 0;
    return Array.from({ length: 21 * Math.ceil(end) }, (_, look) => look / 20).flatMap((t) => {
      const at = move === undefined || t < move.starts || t > end ? null : positionAt(move, t);
      return at === null ? [] : [{ ...at, t }];
    });
  });
  const [one = [], other = []] = traces;
  const ways = one.flatMap((mine) =>
    other
      .filter(({ t }) => Math.abs(t - mine.t) <= MEET_WITHIN_SECONDS + 1e-9)
      .map(({ x, y }) => Math.hypot(x - mine.x, y - mine.y)),
  );
  return Math.min(...ways);
}

/** Whether a man goes another way in the one picture than in the other: round somebody, and not straight. */
function goesRound(pictures: readonly (readonly Move[])[], role: RoleId): boolean {
  const [one, other] = pictures.map((moves) => moves.find((move) => move.role === role));
  if (one === undefined || other === undefined) return false;
  return one.path.some(({ t, x, y }) => {
    const at = positionAt(other, t);
    return Math.hypot(at.x - x, at.y - y) > 0.1;
  });
}

/**
 * The same without the pairs who only just run into each other, or only just do not, in one of the two pictures, and those of
 * whom one goes round a man in the one and past him in the other: what is measured on timed paths has an edge too.
 */
function toldBut(analysis: Analysis, other: Analysis): string {
  const pictures = [analysis, other].map((each) => movesOfDraft(each));
  const onTheEdge = (who: readonly RoleId[]): boolean =>
    pictures.some((moves) => Math.abs(nearest(moves, who) - MEET_WITHIN) < 0.03) ||
    who.some((role) => goesRound(pictures, role));
  const kept = analysis.findings.filter(({ rule, who }) => rule !== 'path.crossing' || !onTheEdge(who));
  const verdict = kept.length === analysis.findings.length ? analysis.verdict : 'of what is left';
  return `${verdict} ${kept.map(({ rule, who }) => `${rule} ${who.join('+')}`).join()}`;
}

function expectAlike(moved: Analysis, usual: Analysis, about: string): void {
  if (told(moved) === told(usual)) return;
  const [one, other] = [toldBut(moved, usual), toldBut(usual, moved)];
  // Where one of the two has a pair on the edge the verdict may hang on it.
  const rules = (text: string): string => text.replace(/^(stop|check|note|clean|of what is left) /, '');
  expect(rules(one), about).toBe(rules(other));
  expect(`${one} ${other}`, about).toContain('of what is left');
}

/**
 * The setup with men of the front where the analysis found them, by hand, one of them a little off. A man whom a pressure moves
 * before the snap is left to it, unless he is that one: a spot set by hand would take its word from him.
 */
function nudged(setup: Setup, { assignments }: Analysis, man: number, dx: number, dy: number): Setup {
  const byHand = assignments.flatMap(({ aligned: { role, x, y, by } }, index) =>
    index !== man && by === 'pressure'
      ? []
      : [
          {
            look: setup.look.id,
            role: role.id,
            x: index === man ? x + dx : x,
            y: index === man ? y + dy : y,
          },
        ],
  );
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
      usual.assignments.forEach(({ aligned }, man) => {
        const there = aligned.by === 'pressure' ? analyse(nudged(setup, usual, man, 0, 0)) : still;
        const moved = analyse(nudged(setup, usual, man, dx, dy));
        if (edges(moved) !== edges(there)) return;
        compared += 1;
        expectAlike(moved, there, `${name(one)} man ${man}`);
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
        expectAlike(moved, usual, `${name(one)} player ${man}`);
      });
    });
    expect(compared).toBeGreaterThan(0.8 * cases.length * 11);
  });
});
