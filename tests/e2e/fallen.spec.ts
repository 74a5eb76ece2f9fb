import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';

// Without the fixture that forbids complaints: this page is broken on purpose, and React says so.
test('when the screen falls over, the playbook can still be saved to a file', async ({ page }) => {
  await page.addInitScript(() => {
    window.ResizeObserver = class {
      constructor() {
        throw new Error('broken on purpose');
      }
      observe(): void {}
      unobserve(): void {}
      disconnect(): void {}
    };
  });
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'Gapwright has stopped' })).toBeVisible();
  await expect(page.getByText('broken on purpose')).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the playbook to a file' }).click();
  const text = readFileSync(await (await download).path(), 'utf8');
  expect(text).toContain('"format": "gapwright-playbook"');
  expect(text).toContain('Alderfen Herons');
});
