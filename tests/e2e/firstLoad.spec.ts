import { gzipSync } from 'node:zlib';
import { expect, openApp, test } from './coach.ts';

/** What the page may load of script before the board can be used, in bytes of gzip. */
const BUDGET = 300_000;

test('the board can be used after less than 300 KB of script, and what only printing needs is not in it', async ({
  page,
}) => {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') scripts.set(response.url(), response.body());
  });
  await openApp(page);
  const texts = await Promise.all(scripts.values());
  const sizes = texts.map((text) => gzipSync(text, { level: 9 }).length);
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  expect(scripts.size).toBeGreaterThan(0);
  expect(whole).toBeLessThan(BUDGET);
  expect(texts.some((text) => text.includes('%PDF-'))).toBe(false);
});
