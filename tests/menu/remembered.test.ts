/**
 * In a menu thousands of cases share looks, fronts, pressures and men, and the engine remembers what it has worked out about
 * them. The oracle is the engine on a copy of the case: nothing is known about a copy.
 */
import { describe, expect, it } from 'vitest';
import { grow, seeded } from '../../scripts/demo/grow/index.ts';
import { toSetup, type Playbook } from '../../src/document/index.ts';
import { analyse, briefOf, inBrief, PLACES, TURNS, wholeOf, type Setup } from '../../src/engine/index.ts';
import {
  createMenuJudge,
  gridOf,
  pairCall,
  pressuresOf,
  sizeOfGrid,
  summarise,
  type MenuCase,
} from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

function setupOf(playbook: Playbook, { call, look, spot }: MenuCase): Setup {
  const setup = toSetup(playbook, { call, look: look.id, spot });
  if (!setup.ok) throw new Error(setup.problem.path);
  return setup.value;
}

/** The cases in which the judge and the engine on a copy differ, and how many were compared. */
function differences(playbook: Playbook, casesOf: (opened: Playbook) => Iterable<MenuCase>) {
  const judge = createMenuJudge();
  const opened = judge.open(playbook);
  const differ: unknown[] = [];
  const verdicts = new Set<string>();
  let compared = 0;
  for (const each of casesOf(opened)) {
    const told = judge.summaries[judge.judge(each)];
    const setup = setupOf(opened, each);
    const whole = analyse(structuredClone(setup));
    if (JSON.stringify(wholeOf(briefOf(setup))) !== JSON.stringify(wholeOf(inBrief(whole))))
      differ.push(['in brief', each.call.name, each.look.name, each.spot]);
    if (JSON.stringify(told) !== JSON.stringify(summarise(inBrief(whole))))
      differ.push([each.call.name, each.look.name, each.spot]);
    if (told?.verdict !== whole.verdict) differ.push([told?.verdict, whole.verdict]);
    verdicts.add(whole.verdict);
    compared += 1;
  }
  return { differ, compared, verdicts };
}

function* wholeGrid(playbook: Playbook): Iterable<MenuCase> {
  const grid = gridOf(playbook, { kind: 'calls' });
  for (let index = 0; index < sizeOfGrid(grid); index += 1) {
    const each = grid.caseAt(index);
    if (each !== null) yield each;
  }
}

/** Random pairs in random looks: in an order in which nothing is near what it shares. */
function* someOf(playbook: Playbook, count: number): Iterable<MenuCase> {
  const chance = seeded(17);
  for (let at = 0; at < count; at += 1) {
    const front = chance.pick(playbook.fronts);
    const [first, second] = [chance.pick(pressuresOf(playbook, front.id)), chance.pick(playbook.pressures)];
    if (first === second) continue;
    const call = pairCall(front.id, first, second, chance.pick(TURNS));
    yield { call, look: chance.pick(playbook.looks), spot: chance.pick(PLACES) };
  }
}

describe('verdict and summary in a menu', () => {
  it('are those of the full analysis in every cell of the demo', () => {
    const { differ, compared, verdicts } = differences(demo(), wholeGrid);
    expect(differ).toEqual([]);
    expect(compared).toBe(demo().calls.length * demo().looks.length * PLACES.length);
    expect(verdicts.size).toBeGreaterThanOrEqual(3);
  }, 120_000);

  it('are those of the full analysis in 1,500 cells of the grown playbook', () => {
    const grown = grow(demo(), { pressures: 40, looks: 24, calls: 60 }, 7);
    const { differ, compared, verdicts } = differences(grown, (opened) => someOf(opened, 1_500));
    expect(differ).toEqual([]);
    expect(compared).toBeGreaterThan(1_400);
    expect(verdicts.size).toBe(5);
  }, 120_000);

  it('and so is everything else an analysis says', () => {
    const playbook = demo();
    for (const each of someOf(playbook, 150)) {
      const setup = setupOf(playbook, each);
      expect(analyse(setup)).toEqual(analyse(structuredClone(setup)));
    }
  }, 120_000);
});
