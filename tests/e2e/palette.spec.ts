import AxeBuilder from '@axe-core/playwright';
import { expect, openApp, screenOf, test } from './coach.ts';

test.describe.configure({ timeout: 120_000 });

test('anything is found by a few letters and done from the keyboard', async ({ page }) => {
  await openApp(page);
  await page.keyboard.press('Control+k');
  const palette = page.getByRole('dialog', { name: 'What do you want to do?' });
  await expect(palette.getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('trips left');
  await expect(palette.getByRole('menuitem')).toHaveText([/trips left/i]);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(palette).toBeHidden();
  await expect(page.getByRole('heading', { level: 2, name: /trips left/i })).toBeVisible();
});

test('what makes no sense now cannot be chosen, and a search without an answer says so', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'More…' }).click();
  const palette = page.getByRole('dialog', { name: 'What do you want to do?' });
  await expect(palette.getByRole('menuitem', { name: 'Undo' })).toHaveAttribute('aria-disabled', 'true');
  await page.keyboard.type('zzz');
  await expect(palette.getByText('Nothing here is called that.')).toBeVisible();
  const axe = await new AxeBuilder({ page }).analyze();
  expect(axe.violations).toEqual([]);
});

test('the sheet of keys lists the keys that work', async ({ page }) => {
  await openApp(page);
  await page.keyboard.press('Control+/');
  const sheet = page.getByRole('dialog', { name: 'All keys' });
  await expect(sheet.getByRole('row', { name: 'Undo Ctrl+Z' })).toBeVisible();
  await expect(sheet.getByRole('row', { name: 'Whole menu Alt+3' })).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Alt+3');
  await expect(page.getByRole('button', { name: 'Whole menu' })).toHaveAttribute('aria-current', 'page');
  await page.keyboard.press('Alt+1');
  await expect(screenOf(page).verdict).toBeVisible();
});
