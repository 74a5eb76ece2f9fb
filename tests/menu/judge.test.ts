/** After any run of edits the remembered answers are those that would be worked out from nothing, and few are worked out. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSetup, type Playbook } from '../../src/document/index.ts';
import { asLookId, PLACES, TURNS, type Pressure } from '../../src/engine/index.ts';
import {
  createMenuJudge,
  createNumbers,
  gridOf,
  keepSame,
  keysOf,
  pressuresOf,
  sizeOfGrid,
  summaryOf,
  type GridKind,
  type MenuCase,
  type MenuJudge,
  type Summary,
} from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

const CALLS: GridKind = { kind: 'calls' };

/** A part of the demo that is small enough to be looked through thousands of times: two calls of pairs, one of one pressure. */
function small(): Playbook {
  const { calls: all, pressures, coverages, fronts, looks, ...rest } = demo();
  const calls = [...all.slice(0, 2), ...all.slice(-1)];
  const used = pressures.filter(
    ({ id }, at) => at < 4 || calls.some(({ first, second }) => id === first || id === second),
  );
  const shells = coverages.filter(({ id }, at) => at < 4 || used.some(({ coverage }) => coverage === id));
  return {
    ...rest,
    calls,
    pressures: used,
    coverages: shells,
    fronts: fronts.filter(({ id }) => calls.some(({ front }) => front === id)),
    looks: looks.slice(0, 2),
    checkOuts: [],
  };
}

function casesOf(playbook: Playbook, kind: GridKind): readonly MenuCase[] {
  const grid = gridOf(playbook, kind);
  return Array.from({ length: sizeOfGrid(grid) }, (_, index) => grid.caseAt(index)).filter((each) => each !== null);
}

/** What the judge says of every case, once it has opened a copy: a worker only ever gets copies. */
function judged(judge: MenuJudge, playbook: Playbook, kind: GridKind): readonly (Summary | undefined)[] {
  const opened = judge.open(structuredClone(playbook));
  const answers = casesOf(opened, kind).map((each) => judge.summaries[judge.judge(each)]);
  judge.settle();
  return answers;
}

/** Everything the engine is told of a case, but for what it has no use for: names, and what concerns other looks. */
function whatCounts(playbook: Playbook, { call, look, spot }: MenuCase): string {
  const setup = toSetup(playbook, { call, look: look.id, spot });
  if (!setup.ok) throw new Error(setup.problem.path);
  const { front, ...rest } = setup.value;
  const hands = front.byHand.filter((hand) => hand.look === look.id);
  return JSON.stringify({ ...rest, front: [front.id, front.roles, hands] });
}

type Edit = (playbook: Playbook) => Playbook;

/** One entry of a list put in the place of itself, changed. */
function changed<Item>(list: readonly Item[], at: number, change: (item: Item) => Item): readonly Item[] {
  return list.map((item, index) => (index === at % list.length ? change(item) : item));
}

/** Edits of every part an answer depends on, and of some it does not. */
const edits: fc.Arbitrary<Edit> = fc.oneof(
  // A man of the offence is moved, by whole yards.
  fc.tuple(fc.nat(1), fc.nat(10), fc.constantFrom(-1, 0, 1)).map(([look, man, by]): Edit => (playbook) => ({
    ...playbook,
    looks: changed(playbook.looks, look, (each) => ({
      ...each,
      players: changed(each.players, man, (player) => ({ ...player, y: Math.min(-1, player.y + by) })),
    })),
  })),
  // A defender is put somewhere by hand, or taken from there.
  fc.tuple(fc.nat(10), fc.nat(1), fc.constantFrom(null, 4, 8)).map(([role, look, y]): Edit => (playbook) => {
    const [man, shown] = [playbook.roles[role], playbook.looks[look]];
    if (man === undefined || shown === undefined) return playbook;
    return {
      ...playbook,
      fronts: playbook.fronts.map((front) => ({
        ...front,
        byHand: [
          ...front.byHand.filter((hand) => hand.role !== man.id || hand.look !== shown.id),
          ...(y === null || !front.roles.some((each) => each.role === man.id)
            ? []
            : [{ role: man.id, look: shown.id, x: 2, y }]),
        ],
      })),
    };
  }),
  // A pressure forgets what it tells somebody, is kept from a look, or is only given another name.
  fc
    .tuple(fc.nat(5), fc.nat(4), fc.constantFrom('untell', 'leave out', 'rename'))
    .map(([at, telling, what]): Edit => (playbook) => ({
      ...playbook,
      pressures: changed(playbook.pressures, at, (pressure): Pressure => {
        if (what === 'rename') return { ...pressure, name: `${pressure.name}.` };
        if (what === 'leave out') return { ...pressure, notAgainst: [asLookId(playbook.looks[0]?.id ?? '')] };
        return { ...pressure, tells: pressure.tells.filter((_, index) => index !== telling) };
      }),
    })),
  // A call is turned, counted, played with another shell, lived with.
  fc
    .tuple(fc.nat(2), fc.constantFrom(...TURNS), fc.constantFrom(null, 4, 5), fc.nat(3))
    .map(([at, turn, rushers, shell]): Edit => (playbook) => ({
      ...playbook,
      calls: changed(playbook.calls, at, (call) => ({
        ...call,
        turn,
        rushers,
        coverage: playbook.coverages[shell]?.id ?? null,
      })),
    })),
  // A shell needs one zone less; a word gets another meaning; the calls stand in another order.
  fc.nat(3).map((at): Edit => (playbook) => ({
    ...playbook,
    coverages: changed(playbook.coverages, at, (shell) => ({ ...shell, needs: shell.needs.slice(1) })),
  })),
  fc.constantFrom<Edit>(
    (playbook) => ({ ...playbook, calls: playbook.calls.toReversed() }),
    (playbook) => ({ ...playbook, looks: playbook.looks.toReversed() }),
    (playbook) => ({
      ...playbook,
      team: { ...playbook.team, level: playbook.team.level === 'college' ? 'high-school' : 'college' },
    }),
    () => small(),
  ),
);

/** Runs of edits from the small playbook on; what is checked after each of them, with the version before and after it. */
function afterEach(runs: number, seed: number, check: (after: Playbook) => void): void {
  fc.assert(
    fc.property(fc.array(edits, { minLength: 10, maxLength: 10 }), (run) => {
      let playbook = small();
      for (const edit of run) {
        playbook = edit(playbook);
        check(playbook);
      }
    }),
    { numRuns: runs, seed },
  );
}

describe('what is remembered', () => {
  const looks = 2;
  const spots = PLACES.length;

  it('cases of one key have one setup, over 3,000 random edits: so an answer that is kept by its key still holds', () => {
    const numberOf = createNumbers();
    const textOf = new Map<string, string>();
    let [last, steps, kept] = [small(), 0, 0];
    afterEach(300, 20_260, (after) => {
      last = keepSame(last, structuredClone(after));
      const keyOf = keysOf(last, numberOf);
      for (const each of casesOf(last, CALLS)) {
        // The spot stands in key and setup alike.
        if (each.spot !== 'middle') continue;
        const key = keyOf(each);
        const text = whatCounts(after, each);
        kept += textOf.has(key) ? 1 : 0;
        if ((textOf.get(key) ?? text) !== text) expect([key, text]).toEqual([key, textOf.get(key)]);
        textOf.set(key, text);
      }
      steps += 1;
    });
    expect(steps).toBeGreaterThanOrEqual(3_000);
    // Most answers could be kept indeed.
    expect(kept).toBeGreaterThan(steps * 3 * looks * 0.5);
  }, 120_000);

  it('equals what is worked out from nothing, after each of 100 random edits', () => {
    const judge = createMenuJudge();
    afterEach(10, 4, (after) => {
      expect(judged(judge, after, CALLS)).toEqual(casesOf(after, CALLS).map((each) => summaryOf(after, each)));
    });
  }, 120_000);

  it.each<readonly [edit: string, change: Edit, worked: number]>([
    ['nothing', (playbook) => playbook, 0],
    [
      'the name of a call',
      (playbook) => ({ ...playbook, calls: changed(playbook.calls, 0, (call) => ({ ...call, name: 'Other' })) }),
      0,
    ],
    ['the order of the calls', (playbook) => ({ ...playbook, calls: playbook.calls.toReversed() }), 0],
    [
      'how one call is turned',
      (playbook) => ({ ...playbook, calls: changed(playbook.calls, 0, (call) => ({ ...call, turn: 'same' })) }),
      looks * spots,
    ],
    [
      'one look',
      (playbook) => ({ ...playbook, looks: changed(playbook.looks, 1, (look) => ({ ...look, name: 'Other' })) }),
      3 * spots,
    ],
    [
      'a pressure that no call has',
      (playbook) => ({
        ...playbook,
        pressures: playbook.pressures.map((each) =>
          playbook.calls.some(({ first, second }) => each.id === first || each.id === second)
            ? each
            : { ...each, tells: [] },
        ),
      }),
      0,
    ],
    [
      'the level of play',
      (playbook) => ({ ...playbook, team: { ...playbook.team, level: 'professional' } }),
      3 * looks * spots,
    ],
  ])('after a change of %s only what depends on it is worked out', (_name, change, worked) => {
    const judge = createMenuJudge();
    const playbook = small();
    judged(judge, playbook, CALLS);
    const before = judge.worked();
    judged(judge, change(playbook), CALLS);
    expect(judge.worked() - before).toBe(worked);
  });

  it('a pair and the kept call of the same two are one case', () => {
    const judge = createMenuJudge();
    const playbook = small();
    const call = playbook.calls.find((each) => each.second !== null && each.coverage === null && each.rushers === null);
    const plain = playbook.calls[0];
    if (plain === undefined) throw new Error('The demo has no calls');
    const like = { ...(call ?? plain), coverage: null, rushers: null, waivers: [] };
    const kept: Playbook = { ...playbook, calls: [like] };
    judged(judge, kept, CALLS);
    const before = judge.worked();
    judged(judge, kept, { kind: 'pairs', front: like.front, turn: like.turn });
    const here = pressuresOf(kept, like.front).length;
    const pairs = here * (here - 1);
    expect(judge.worked() - before).toBe((pairs - 1) * looks * spots);
  });
});
