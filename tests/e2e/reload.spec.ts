import { expect, openApp, screenOf, spotOf, test, watch } from './coach.ts';

// A whole way through the app, on whatever machine this is.
test.describe.configure({ timeout: 120_000 });

test('a change survives a reload', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.man('Defence, FS').focus();
  const before = await spotOf(page);
  await page.keyboard.press('Shift+ArrowDown');
  await expect(screen.saved).toContainText(/^Saved on this device \d\d:\d\d$/);
  await page.reload();
  await screen.man('Defence, FS').focus();
  expect(await spotOf(page)).toEqual({ ...before, depth: before.depth + 1 });
});

test('a second tab only reads, and goes on when the first is closed', async ({ page, context, baseURL }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Rename the playbook' }).click();
  await page.getByLabel('Name of the team').fill('Sedge Warblers');
  await page.keyboard.press('Enter');
  await expect(screenOf(page).saved).toContainText('Saved on this device');

  const second = await context.newPage();
  const complaints = watch(second, baseURL ?? '');
  await openApp(second);
  const screen = screenOf(second);
  await expect(second.getByText('Open in another tab.')).toBeVisible();
  await expect(second.locator('.team-name')).toHaveText('Sedge Warblers');
  await expect(screen.saved).toContainText('Not kept on this device');
  await screen.man('Defence, FS').focus();
  const before = await spotOf(second);
  await second.keyboard.press('ArrowDown');
  await expect(screen.notice).toContainText('open in another tab');
  expect(await spotOf(second)).toEqual(before);

  await page.getByRole('button', { name: 'Rename the playbook' }).click();
  await page.getByLabel('Name of the team').fill('Reed Cutters');
  await page.keyboard.press('Enter');
  await expect(screenOf(page).saved).toContainText('Saved on this device');
  await page.close();
  await expect(second.getByText('Open in another tab.')).toHaveCount(0);
  await expect(second.locator('.team-name')).toHaveText('Reed Cutters');
  await expect(screen.saved).toContainText('Saved on this device');
  await screen.man('Defence, FS').focus();
  await second.keyboard.press('ArrowDown');
  expect((await spotOf(second)).depth).toBe(before.depth + 0.25);
  expect(complaints).toEqual([]);
});

test('without storage the app still opens, and says that nothing is kept', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no storage here', 'SecurityError');
    };
  });
  await openApp(page);
  await expect(screenOf(page).saved).toContainText('Not kept on this device: this browser does not let pages keep');
  await expect(screenOf(page).verdict).toBeVisible();
});

test('what is kept but cannot be opened is shown, left untouched, and can be saved', async ({ page }) => {
  const damaged = '{"format":"gapwright-playbook","version":1}';
  await openApp(page);
  await expect(screenOf(page).saved).toContainText('Saved on this device');
  await page.evaluate(async (text) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('gapwright');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(new Error('not opened'));
    });
    await new Promise<void>((resolve) => {
      const transaction = database.transaction('playbook', 'readwrite');
      transaction.objectStore('playbook').put(text, 'current');
      transaction.oncomplete = () => resolve();
    });
    database.close();
  }, damaged);
  await page.reload();
  await expect(page.getByText('The playbook kept in this browser cannot be opened.')).toBeVisible();
  await expect(screenOf(page).saved).toContainText('left untouched');
  await screenOf(page).man('Defence, FS').focus();
  await page.keyboard.press('ArrowDown');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save what is kept to a file' }).click();
  const { readFileSync } = await import('node:fs');
  expect(readFileSync(await (await download).path(), 'utf8')).toBe(damaged);
  await page.reload();
  await expect(page.getByText('The playbook kept in this browser cannot be opened.')).toBeVisible();
});

test('what was done before a reload can be undone after it, and done again', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.man('Defence, FS').focus();
  const before = await spotOf(page);
  await page.keyboard.press('Shift+ArrowDown');
  await expect(screen.saved).toContainText(/^Saved on this device \d\d:\d\d$/);
  await page.reload();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(screen.notice).toContainText('Undone: moved FS');
  await screen.man('Defence, FS').focus();
  expect(await spotOf(page)).toEqual(before);
  await expect(screen.saved).toContainText(/^Saved on this device \d\d:\d\d$/);
  await page.reload();
  await page.getByRole('button', { name: 'Redo' }).click();
  await screen.man('Defence, FS').focus();
  expect(await spotOf(page)).toEqual({ ...before, depth: before.depth + 1 });
});
