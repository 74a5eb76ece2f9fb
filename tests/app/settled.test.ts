import { describe, expect, it } from 'vitest';
import { createSettled, type Later } from '../../src/app/session/settled.ts';
import type { Preview } from '../../src/store/index.ts';
import { demo, demoStore, firstOf } from '../store/demo.ts';

/** A clock that goes on when the test says so. */
function handClock() {
  let time = 0;
  let waiting: { readonly at: number; readonly act: () => void }[] = [];
  const later: Later = (act, after) => {
    const entry = { at: time + after, act };
    waiting.push(entry);
    return () => {
      waiting = waiting.filter((each) => each !== entry);
    };
  };
  const pass = (milliseconds: number): void => {
    time += milliseconds;
    const due = waiting.filter(({ at }) => at <= time);
    waiting = waiting.filter(({ at }) => at > time);
    for (const { act } of due) act();
  };
  return { later, pass };
}

function begin() {
  const store = demoStore();
  const clock = handClock();
  const settled = createSettled(store, clock.later);
  let told = 0;
  settled.subscribe(() => {
    told += 1;
  });
  return { store, clock, settled, told: () => told };
}

const role = firstOf(demo().roles).id;
const held = (x: number): Preview => [{ man: { kind: 'defender', role }, at: { x, y: 1 } }];

describe('the settled state', () => {
  it('stays while a hand moves men, and has them once the hand rests', () => {
    const { store, clock, settled, told } = begin();
    for (const x of [1, 2, 3]) {
      store.setPreview(held(x));
      clock.pass(16);
    }
    expect(settled.get().preview).toBe(null);
    expect(told()).toBe(0);
    clock.pass(150);
    expect(settled.get()).toBe(store.get());
    expect(told()).toBe(1);
    clock.pass(5000);
    expect(told()).toBe(1);
  });

  it('falls behind a hand that never rests by no more than two seconds', () => {
    const { store, clock, settled } = begin();
    for (let frame = 0; frame < 200; frame += 1) {
      store.setPreview(held(frame / 100));
      clock.pass(16);
      const shown = settled.get().preview?.[0]?.at.x ?? 0;
      expect(frame / 100 - shown).toBeLessThanOrEqual(1.26);
    }
  });

  it('has everything else at once, and where the men are with it', () => {
    const { store, settled } = begin();
    store.setPreview(held(1));
    store.setView({ turned: true });
    expect(settled.get()).toBe(store.get());
    store.setPreview(held(2));
    store.setBoard({ spot: 'left' });
    expect(settled.get()).toBe(store.get());
  });

  it('has them back at once when a drag is given up, and nothing comes after', () => {
    const { store, clock, settled, told } = begin();
    store.setPreview(held(1));
    store.setPreview(null);
    expect(settled.get()).toBe(store.get());
    expect(settled.get().preview).toBe(null);
    const then = told();
    clock.pass(5000);
    expect(told()).toBe(then);
  });
});
