/** The grown playbook: a file that opens, the same every time, as large as asked for, with both sound and unsound calls in it. */
import { describe, expect, it } from 'vitest';
import { grow, seeded } from '../../scripts/demo/grow/index.ts';
import { openDocument, saveDocument } from '../../src/document/index.ts';
import { PLACES, type Verdict } from '../../src/engine/index.ts';
import { fitsFront, summaryOf } from '../../src/menu/index.ts';
import { playbook } from './grid.ts';

const SIZES = { pressures: 40, looks: 24, calls: 60 };
const grown = grow(playbook, SIZES, 7);

describe('the demo playbook, grown', () => {
  it.each([
    [40, 24, 60],
    [200, 200, 200],
  ])('%i pressures, %i looks, %i calls: a file that opens', (pressures, looks, calls) => {
    const made = grow(playbook, { pressures, looks, calls }, 1);
    expect([made.pressures.length, made.looks.length, made.calls.length]).toEqual([pressures, looks, calls]);
    const opened = openDocument(saveDocument(made));
    expect(opened.ok).toBe(true);
  });

  it('is the same for the same seed, and another for another', () => {
    expect(saveDocument(grow(playbook, SIZES, 7))).toBe(saveDocument(grown));
    expect(saveDocument(grow(playbook, SIZES, 8))).not.toBe(saveDocument(grown));
  });

  it('keeps what the demo has, and tells every other pressure something of its own', () => {
    expect(grown.pressures.slice(0, playbook.pressures.length)).toEqual(playbook.pressures);
    expect(grown.looks.slice(0, playbook.looks.length)).toEqual(playbook.looks);
    const told = grown.pressures.map(({ tells, callSide, coverage }) => JSON.stringify([tells, callSide, coverage]));
    // Chance may make two alike; most are not.
    expect(new Set(told).size).toBeGreaterThan(0.8 * told.length);
  });

  it('is no wall of one verdict: every one of them is there', () => {
    const chance = seeded(3);
    const verdicts = new Set<Verdict>();
    for (let tries = 0; tries < 400; tries += 1) {
      const [call, look] = [chance.pick(grown.calls), chance.pick(grown.looks)];
      verdicts.add(summaryOf(grown, { call, look, spot: chance.pick(PLACES) }).verdict);
    }
    expect([...verdicts].sort()).toEqual(['check', 'clean', 'left-out', 'note', 'stop']);
  });

  it('calls only pairs that are written for the front', () => {
    for (const { front: id, first, second } of grown.calls.slice(playbook.calls.length)) {
      const front = grown.fronts.find((each) => each.id === id);
      const pair = grown.pressures.filter((each) => each.id === first || each.id === second);
      expect(front !== undefined && pair.every((each) => fitsFront(each, front, grown.roles))).toBe(true);
    }
  });
});
