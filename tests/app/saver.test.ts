import { describe, expect, it } from 'vitest';
import { ok, refused } from '../../src/base/index.ts';
import type { Keeper } from '../../src/app/files/keep.ts';
import { createSaver } from '../../src/app/files/saver.ts';

const noon = new Date(2026, 8, 4, 12, 0);

/** A keeper whose writes end when the test says so. */
function slowKeeper() {
  const writes: { readonly text: string; readonly end: (reason?: string) => Promise<void> }[] = [];
  const keeper = {
    keep: (text: string) =>
      new Promise<Awaited<ReturnType<Keeper['keep']>>>((resolve) => {
        writes.push({
          text,
          end: async (reason) => {
            resolve(reason === undefined ? ok(null) : refused({ reason }));
            await Promise.resolve();
            await Promise.resolve();
            await Promise.resolve();
          },
        });
      }),
  };
  return { keeper, writes, texts: () => writes.map(({ text }) => text) };
}

describe('the saver', () => {
  it('says "saved" only when the write is complete', async () => {
    const { keeper, writes } = slowKeeper();
    const saver = createSaver(keeper, () => noon);
    saver.changed(() => 'one');
    expect(saver.status()).toStrictEqual({ kind: 'saving' });
    await writes[0]?.end();
    expect(saver.status()).toStrictEqual({ kind: 'saved', at: noon });
  });

  it('writes one at a time, and what came meanwhile only once, the last of it', async () => {
    const { keeper, writes, texts } = slowKeeper();
    const saver = createSaver(keeper, () => noon);
    for (const text of ['one', 'two', 'three']) saver.changed(() => text);
    expect(texts()).toStrictEqual(['one']);
    await writes[0]?.end();
    expect(saver.status()).toStrictEqual({ kind: 'saving' });
    expect(texts()).toStrictEqual(['one', 'three']);
    await writes[1]?.end();
    expect(saver.status()).toStrictEqual({ kind: 'saved', at: noon });
  });

  it('says why it failed, and tries again with the next change', async () => {
    const { keeper, writes } = slowKeeper();
    const saver = createSaver(keeper, () => noon);
    saver.changed(() => 'one');
    await writes[0]?.end('the storage is full');
    expect(saver.status()).toStrictEqual({ kind: 'failed', reason: 'the storage is full' });
    saver.changed(() => 'two');
    await writes[1]?.end();
    expect(saver.status()).toStrictEqual({ kind: 'saved', at: noon });
  });

  it('writes nothing while it is off, and the present state as soon as it is on', async () => {
    const { keeper, writes, texts } = slowKeeper();
    const saver = createSaver(keeper, () => noon);
    saver.turnOff('another tab writes');
    saver.changed(() => 'one');
    expect(texts()).toStrictEqual([]);
    expect(saver.status()).toStrictEqual({ kind: 'off', reason: 'another tab writes' });
    saver.turnOn(() => 'two');
    await writes[0]?.end();
    expect(texts()).toStrictEqual(['two']);
    expect(saver.status()).toStrictEqual({ kind: 'saved', at: noon });
  });

  it('does not call a write news that ends after it was switched off', async () => {
    const { keeper, writes } = slowKeeper();
    const saver = createSaver(keeper, () => noon);
    saver.changed(() => 'one');
    saver.turnOff('another tab writes');
    await writes[0]?.end();
    expect(saver.status()).toStrictEqual({ kind: 'off', reason: 'another tab writes' });
  });

  it('tells those who listen, until they stop', () => {
    const { keeper } = slowKeeper();
    const saver = createSaver(keeper, () => noon);
    let told = 0;
    const stop = saver.subscribe(() => (told += 1));
    saver.changed(() => 'one');
    expect(told).toBe(1);
    stop();
    saver.changed(() => 'two');
    expect(told).toBe(1);
  });
});
