import { expect, openApp, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

test('findings stand in groups, the gravest first, and are filtered by whom they are about', async ({ page }) => {
  await openApp(page);
  await page.getByLabel('Kept call').selectOption({ label: 'Culvert Weir Across' });
  const groups = page.locator('.finding-group');
  await expect(groups.first()).toContainText('Stops the call');
  const all = await page.locator('.finding').count();
  await page.getByLabel('About').selectOption({ label: 'Line' });
  const left = await page.locator('.finding').count();
  expect(left).toBeGreaterThan(0);
  expect(left).toBeLessThan(all);
  await expect(page.locator('.findings [role=status]')).toHaveText(`${left} of ${all} findings shown`);
  await page.getByLabel('About').selectOption({ label: 'everybody' });
  await expect(page.locator('.finding')).toHaveCount(all);
});

test('pointing at a suggestion shows it on the field; a change tells what is new and what is gone', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  const mend = page.locator('.mend').filter({ hasText: 'Turn Weir opposite the first' });
  await mend.hover();
  await expect(page.getByText('As the suggestion would make it')).toBeVisible();
  await page.mouse.move(3, 3);
  await expect(page.getByText('As the suggestion would make it')).toHaveCount(0);
  await expect(screen.verdict).toHaveText('Stop: do not install');
  await expect(page.locator('.new-mark')).toHaveCount(0);
  await mend.click();
  await expect(page.locator('.findings-head')).toContainText('gone since the last change');
  await expect(page.locator('.verdict-banner [role=status]')).toContainText('gone since the last change');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.new-mark').first()).toBeVisible();
  const fresh = await page.locator('.new-mark').count();
  await page.getByLabel('Only what is new').check();
  await expect(page.locator('.finding')).toHaveCount(fresh);
});
