/**
 * What axe-core finds on every screen. The colours are asked about in each theme, the sizes of what is pointed at on each
 * screen size, and everything once, in the light, at 1440 by 900: nothing else of a screen changes with theme or size.
 * First steps, quiz, palette and picking on the field are asked about where they are tested.
 */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, openApp, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 240_000 });

/** Rules of WCAG 2.0 to 2.2, levels A and AA, as axe-core knows them, and its best practices. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Asked {
  /** Only these rules; all by default. */
  readonly rules?: readonly string[];
  /** Only this part of the page. */
  readonly within?: string;
}

/** Expects that axe finds nothing. */
async function expectNothing(page: Page, { rules, within }: Asked = {}): Promise<void> {
  const whole = new AxeBuilder({ page });
  const part = within === undefined ? whole : whole.include(within);
  const asked = rules === undefined ? part.withTags(TAGS) : part.withRules([...rules]);
  const { violations, passes } = await asked.analyze();
  expect(violations.flatMap(({ id, impact, nodes }) => nodes.map((node) => `${impact} ${id}: ${node.html}`))).toEqual(
    [],
  );
  // Nothing found is only worth something where something was looked at.
  expect(passes.length).toBeGreaterThan(0);
}

/** The board with all it can show: a man, findings of every kind with what would mend them, every part unfolded. */
async function fullBoard(page: Page): Promise<void> {
  await screenOf(page).man('Defence, N').click();
  await page.getByLabel('Kept call').selectOption({ label: 'Culvert Weir Across' });
  await page.locator('.why summary').first().click();
  for (const summary of await page.locator('.section > summary').all()) await summary.click();
  await expect(page.locator('.mends').first()).toBeVisible();
  await page.locator('.moment').first().click();
}

async function openMenu(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Whole menu' }).click();
  await expect(page.locator('.grid-cell').first()).toBeVisible();
}

const TABS = ['Fronts', 'Coverages', 'Roles', 'Looks', 'Pressures'];

/** Every tab of the playbook with the first of its rules open. */
async function onEveryTab(page: Page, ask: () => Promise<void>): Promise<void> {
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  for (const tab of TABS) {
    await page.getByRole('tab', { name: tab }).click();
    await expect(page.locator('.desk .editor').first()).toBeVisible();
    for (const summary of (await page.locator('.desk .rule > summary').all()).slice(0, 3)) await summary.click();
    await ask();
  }
}

test('nothing is in the way of a reader, on any screen', async ({ page }) => {
  const inDialog = { within: 'dialog[open]' };
  const dialog = page.getByRole('dialog');
  await openApp(page);

  await test.step('the board', async () => {
    await fullBoard(page);
    await expectNothing(page);
  });

  await test.step('its dialogs', async () => {
    await page.getByRole('button', { name: 'Print…' }).click();
    await expect(dialog).toBeVisible();
    await expectNothing(page, inDialog);
    await page.keyboard.press('Escape');
    await page.locator('input[type=file]').setInputFiles({
      name: 'bad.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{}'),
    });
    await expect(dialog).toBeVisible();
    await expectNothing(page, inDialog);
    await page.keyboard.press('Escape');
    await page
      .getByRole('button', { name: /^Live with it/ })
      .first()
      .click();
    await dialog.getByRole('button', { name: 'Live with it' }).click();
    await expectNothing(page, inDialog);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Keep as call…' }).click();
    await expectNothing(page, inDialog);
    await page.keyboard.press('Escape');
  });

  await test.step('the playbook', async () => {
    await onEveryTab(page, () => expectNothing(page, { within: '.desk' }));
    await page.getByRole('button', { name: 'Start my own playbook…' }).click();
    await expect(dialog).toBeVisible();
    await expectNothing(page, inDialog);
    await page.keyboard.press('Escape');
  });

  await test.step('the whole menu', async () => {
    await openMenu(page);
    await expectNothing(page);
    await page.getByLabel('What goes with…', { exact: true }).check();
    await expect(page.locator('.partner').first()).toBeVisible({ timeout: 120_000 });
    await expectNothing(page, { within: 'main' });
  });
});

for (const theme of ['Dark', 'Projector'] as const) {
  test(`everything can be told from its ground, ${theme.toLowerCase()}`, async ({ page }) => {
    const colours = { rules: ['color-contrast'] };
    await openApp(page);
    await page.getByLabel('Light or dark').selectOption({ label: theme });
    await expect(page.locator('html')).toHaveAttribute('data-theme', theme.toLowerCase());
    await page.keyboard.press('Control+k');
    await page.keyboard.type('first steps');
    await page.getByRole('menuitem', { name: 'Show the first steps' }).click();
    await expect(page.getByRole('complementary', { name: 'First steps' })).toBeVisible();
    await fullBoard(page);
    await expectNothing(page, colours);
    await page.getByRole('button', { name: 'Print…' }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
    await expectNothing(page, { ...colours, within: 'dialog[open]' });
    await page.keyboard.press('Escape');
    await onEveryTab(page, () => expectNothing(page, { ...colours, within: '.desk' }));
    await openMenu(page);
    await expectNothing(page, { ...colours, within: 'main' });
    await page.getByRole('button', { name: 'Quiz', exact: true }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByRole('group', { name: 'Or pick it here' }).getByRole('button').first().click();
    await expectNothing(page, { ...colours, within: 'main' });
  });
}

for (const [width, height] of [
  [1024, 768],
  [820, 1180],
] as const) {
  test(`what is pointed at is large enough, and what scrolls is reached by keys, at ${width} by ${height}`, async ({
    page,
  }) => {
    const sizes = { rules: ['target-size', 'scrollable-region-focusable'] };
    await page.setViewportSize({ width, height });
    await openApp(page);
    await fullBoard(page);
    await expectNothing(page, sizes);
    await onEveryTab(page, () => expectNothing(page, { ...sizes, within: '.desk' }));
    await openMenu(page);
    await expectNothing(page, sizes);
  });
}
