import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toSetup } from '../../src/document/index.ts';
import { analyse, ROOMS } from '../../src/engine/index.ts';
import { makeQuiz, rightAnswers, type QuizPlan } from '../../src/quiz/index.ts';
import { shuffled } from '../../src/quiz/shuffled.ts';
import { demo } from '../store/demo.ts';

const playbook = demo();
const plan: QuizPlan = {
  room: 'line',
  calls: playbook.calls.slice(0, 4).map(({ id }) => id),
  looks: playbook.looks.slice(0, 6).map(({ id }) => id),
  count: 12,
  seed: 7,
};

describe('a quiz', () => {
  it.each(ROOMS)('asks only men of the %s, each question with an answer', (room) => {
    const questions = makeQuiz(playbook, { ...plan, room });
    expect(questions.length).toBeGreaterThan(4);
    for (const { call, look, spot, role, asked } of questions) {
      expect(playbook.roles.find(({ id }) => id === role)?.room).toBe(room);
      const kept = playbook.calls.find(({ id }) => id === call);
      if (kept === undefined) throw new Error('A call that is not there');
      const setup = toSetup(playbook, { call: kept, look, spot });
      if (!setup.ok) throw new Error('A case that cannot be set up');
      expect(rightAnswers(analyse(setup.value), role, asked).length).toBeGreaterThan(0);
    }
  });

  it('is the same for the same seed, and another for another', () => {
    expect(makeQuiz(playbook, plan)).toStrictEqual(makeQuiz(playbook, plan));
    expect(makeQuiz(playbook, { ...plan, seed: 8 })).not.toStrictEqual(makeQuiz(playbook, plan));
  });

  it('asks no case twice, and no call much more often than another', () => {
    const questions = makeQuiz(playbook, { ...plan, count: 100 });
    expect(new Set(questions.map(({ call, look }) => `${call} ${look}`)).size).toBe(questions.length);
    const often = plan.calls.map((id) => makeQuiz(playbook, plan).filter(({ call }) => call === id).length);
    expect(Math.max(...often) - Math.min(...often)).toBeLessThanOrEqual(2);
  });

  it('is empty when nothing is picked', () => {
    expect(makeQuiz(playbook, { ...plan, calls: [] })).toStrictEqual([]);
    expect(makeQuiz(playbook, { ...plan, looks: [] })).toStrictEqual([]);
    expect(makeQuiz(playbook, { ...plan, count: 0 })).toStrictEqual([]);
  });
});

describe('a shuffled list', () => {
  it('holds the same things, in an order that only the seed decides', () => {
    fc.assert(
      fc.property(fc.array(fc.string()), fc.nat(), (list, seed) => {
        expect([...shuffled(list, seed)].sort()).toStrictEqual([...list].sort());
        expect(shuffled(list, seed)).toStrictEqual(shuffled(list, seed));
      }),
      { seed: 20261126 },
    );
  });

  it('puts every thing in every place about as often', () => {
    const places = Array.from({ length: 4_000 }, (_, seed) => shuffled(['a', 'b', 'c', 'd'], seed).indexOf('a'));
    for (const place of [0, 1, 2, 3]) {
      expect(places.filter((each) => each === place).length).toBeGreaterThan(850);
    }
  });
});
