import type { Page } from '@playwright/test';
import { demoText, expect, openApp, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

interface RawPlaybook {
  version: number;
  team: { name: string };
  looks: { players: { x: unknown }[] }[];
}

/** The demo playbook as plain JSON, to be spoiled. */
function raw(): RawPlaybook {
  const parsed: RawPlaybook = JSON.parse(demoText) as RawPlaybook;
  return parsed;
}

async function choose(page: Page, name: string, text: string): Promise<void> {
  await page
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

function spoiled(): string {
  const book = raw();
  const player = book.looks[3]?.players[2];
  if (player === undefined) throw new Error('The demo playbook is smaller than this test thinks');
  player.x = '12yd';
  return JSON.stringify(book);
}

const newer = JSON.stringify({ ...raw(), version: 99 });

const BAD = [
  ['with a word for a number', spoiled(), 'looks[3].players[2].x', '"12yd" (text)', 'a number from -60 to 60'],
  ['of a newer version', newer, 'version', 'version 99', 'version 3 or older'],
  ['that ends too early', '{"format": ', 'the whole file', 'ends too early at byte 11', 'a Gapwright playbook'],
  ['that is something else', '{"hello": 1}', 'format', 'nothing', 'gapwright-playbook'],
] as const;

test('a bad file is refused with what is wrong in it, and what was open stays', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await page.getByLabel('Second pressure').selectOption('Osier');
  const look = await page.locator('#board-title').textContent();
  for (const [kind, text, path, found, expected] of BAD) {
    await test.step(`a file ${kind}`, async () => {
      await choose(page, 'bad.json', text);
      const dialog = page.getByRole('dialog', { name: 'bad.json was not opened' });
      await expect(dialog).toBeVisible();
      const row = dialog.locator('tbody tr').first();
      await expect(row.locator('td').nth(0)).toContainText(path);
      await expect(row.locator('td').nth(1)).toContainText(found);
      await expect(row.locator('td').nth(2)).toContainText(expected);
      await page.keyboard.press('Escape');
      await expect(dialog).toHaveCount(0);
      await expect(page.getByText('Alderfen Herons')).toBeVisible();
      await expect(page.locator('#board-title')).toHaveText(look ?? '');
      await expect(page.getByLabel('Second pressure').locator('option:checked')).toHaveText('Osier');
      await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
      await expect(screen.saved).toContainText('Saved on this device');
    });
  }
});

test('a good file is opened; changes that are in no file are asked about first; Undo brings the old one back', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  const other = { ...raw(), team: { ...raw().team, name: 'Reed Cutters' } };
  await screen.man('Defence, FS').focus();
  await page.keyboard.press('ArrowDown');
  await choose(page, 'reed.json', JSON.stringify(other));
  const dialog = page.getByRole('dialog', { name: 'Open reed.json?' });
  await expect(dialog).toBeVisible();

  const download = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Save this one to a file' }).click();
  expect((await download).suggestedFilename()).toBe('alderfen-herons.gapwright.json');
  await dialog.getByRole('button', { name: 'Open reed.json' }).click();
  await expect(page.locator('.team-name')).toHaveText('Reed Cutters');
  await expect(screen.notice).toContainText('Undo brings back what was open');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.team-name')).toHaveText('Alderfen Herons');
});

test('a saved file holds what was changed, and opens again', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await page.getByRole('button', { name: 'Rename the playbook' }).click();
  await page.getByLabel('Name of the team').fill('Sedge Warblers');
  await page.keyboard.press('Enter');
  await expect(page.locator('.team-name')).toHaveText('Sedge Warblers');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save file' }).click();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe('sedge-warblers.gapwright.json');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('input[type=file]').setInputFiles(await saved.path());
  await page.getByRole('button', { name: /^Open (?!file)/ }).click();
  await expect(page.locator('.team-name')).toHaveText('Sedge Warblers');
  await expect(screen.saved).toContainText('Saved on this device');
});
