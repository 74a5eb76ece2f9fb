import AxeBuilder from '@axe-core/playwright';
import { expect, openApp, screenOf, test } from './coach.ts';

test.describe.configure({ timeout: 120_000 });

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => {
    if (sessionStorage.getItem('first-steps-wanted') === null) localStorage.removeItem('gapwright-first-steps');
    sessionStorage.setItem('first-steps-wanted', 'yes');
  });
});

test('the first visit opens on a call in conflict and leads through drag, combine, mend and print, once', async ({
  page,
}) => {
  await openApp(page);
  const guide = page.getByRole('complementary', { name: 'First steps' });
  await expect(screenOf(page).verdict).toContainText('Stop');
  await expect(guide).toContainText('1 of 4: Move a man.');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await screenOf(page).man('Defence, FS').focus();
  await page.keyboard.press('ArrowDown');
  await expect(guide).toContainText('Done.');
  await guide.getByRole('button', { name: 'Next step' }).click();

  await expect(guide).toContainText('2 of 4: Combine two pressures.');
  await page.getByLabel('The second goes').selectOption({ index: 2 });
  await expect(guide).toContainText('Done.');
  await guide.getByRole('button', { name: 'Next step' }).click();

  await expect(guide).toContainText('3 of 4: Mend what is wrong.');
  await page.getByLabel('The second goes').selectOption({ index: 0 });
  await expect(guide).toContainText('Done.');
  await guide.getByRole('button', { name: 'Next step' }).click();

  await expect(guide).toContainText('4 of 4: Print it for a room.');
  await page.getByRole('button', { name: 'Print…' }).click();
  await page.keyboard.press('Escape');
  await expect(guide).toContainText('Done.');
  await guide.getByRole('button', { name: 'Finish' }).click();
  await expect(guide).toHaveCount(0);
  await page.reload();
  await expect(screenOf(page).verdict).toBeVisible();
  await expect(guide).toHaveCount(0);
});

test('the first steps are skipped with one press, and come back when asked for', async ({ page }) => {
  await openApp(page);
  const guide = page.getByRole('complementary', { name: 'First steps' });
  await guide.getByRole('button', { name: 'Skip these steps' }).click();
  await expect(guide).toHaveCount(0);
  await page.keyboard.press('Control+k');
  await expect(page.getByRole('searchbox')).toBeFocused();
  await page.keyboard.type('first steps');
  await page.getByRole('menuitem', { name: 'Show the first steps' }).click();
  await expect(guide).toContainText('1 of 4');
});
