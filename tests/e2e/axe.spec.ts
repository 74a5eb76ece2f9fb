import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, openApp, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

/** Rules of WCAG 2.0 to 2.2, levels A and AA, as axe-core knows them, and its best practices. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function violations(page: Page): Promise<readonly string[]> {
  const { violations: found } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  return found.flatMap(({ id, impact, nodes }) => nodes.map((node) => `${impact ?? ''} ${id}: ${node.html}`));
}

/** The themes of the page, as the list in its head calls them. */
const THEMES = ['Light', 'Dark', 'Projector'] as const;

async function openIn(page: Page, theme: (typeof THEMES)[number]): Promise<void> {
  await openApp(page);
  await page.getByLabel('Light or dark').selectOption({ label: theme });
  await expect(page.locator('html')).toHaveAttribute('data-theme', theme.toLowerCase());
}

for (const theme of THEMES) {
  for (const [width, height] of [
    [1440, 900],
    [1024, 768],
    [820, 1180],
  ] as const) {
    // The size changes what stands where, the theme the colours: every theme at one size, and every size in one theme.
    if (theme !== 'Light' && width !== 1440) continue;
    test(`nothing is in the way of a reader at ${width} by ${height}, ${theme.toLowerCase()}`, async ({ page }) => {
      await page.setViewportSize({ width, height });
      await openIn(page, theme);
      await screenOf(page).man('Defence, N').click();
      await page.getByLabel('Kept call').selectOption({ label: 'Culvert Weir Across' });
      await page.locator('.why summary').first().click();
      for (const summary of await page.locator('.section > summary').all()) await summary.click();
      await expect(page.locator('.mends').first()).toBeVisible();
      await page.locator('.moment').first().click();
      expect(await violations(page)).toEqual([]);
    });
  }

  test(`nor in the whole menu, ${theme.toLowerCase()}`, async ({ page }) => {
    await openIn(page, theme);
    await page.getByRole('button', { name: 'Whole menu' }).click();
    await expect(page.locator('.grid-cell').first()).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });

  test(`nor in the playbook, ${theme.toLowerCase()}`, async ({ page }) => {
    await openIn(page, theme);
    await page.getByRole('button', { name: 'Playbook', exact: true }).click();
    await expect(page.getByRole('button', { name: 'Playbook', exact: true })).toHaveAttribute('aria-current', 'page');
    await expect(page.getByRole('tab').first()).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });

  test(`nor in the dialogs, ${theme.toLowerCase()}`, async ({ page }) => {
    await openIn(page, theme);
    await page.getByLabel('Kept call').selectOption({ label: 'Culvert Weir Across' });
    await page.getByRole('button', { name: 'Print…' }).click();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('input[type=file]').setInputFiles({
      name: 'bad.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{}'),
    });
    await expect(page.getByRole('dialog')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page
      .getByRole('button', { name: /^Live with it/ })
      .first()
      .click();
    await page.getByRole('dialog').getByRole('button', { name: 'Live with it' }).click();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Keep as call…' }).click();
    expect(await violations(page)).toEqual([]);
  });
}
