import { readFileSync } from 'node:fs';
import { expect, openApp, screenOf, test } from './coach.ts';

test.describe.configure({ timeout: 180_000 });
test.use({ serviceWorkers: 'allow' });

test('after the first visit everything works without a network: board, whole menu, editors, quiz and print', async ({
  page,
  context,
}) => {
  await openApp(page);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  // The page itself is kept from the second time on: the first was before anybody could keep it.
  await page.reload();
  await expect(screenOf(page).verdict).toBeVisible();
  await context.setOffline(true);
  await page.reload();
  await expect(screenOf(page).verdict).toBeVisible();

  await page.getByRole('button', { name: 'Whole menu' }).click();
  await expect(page.getByRole('grid')).toBeVisible();
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await expect(page.getByRole('tab', { name: 'Pressures' })).toBeVisible();
  await page.getByRole('button', { name: 'Quiz', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();

  await page.getByRole('button', { name: 'Board', exact: true }).click();
  await page.getByRole('button', { name: 'Print…' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  expect(
    readFileSync(await (await download).path())
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
});
