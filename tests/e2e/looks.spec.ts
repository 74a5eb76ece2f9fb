import { demoText, expect, openApp, pixelOf, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

test('the strip shows one opponent’s looks, and arrow keys walk through them', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  const cards = page.locator('.look-card');
  const all = await cards.count();
  await page.locator('.strip-filter select').selectOption('looks of Brindlecote Millers');
  expect(await cards.count()).toBeLessThan(all);
  await cards.first().click();
  const name = (await cards.nth(1).locator('.look-name').textContent()) ?? '';
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('#board-title')).toHaveText(name);
  await expect(screen.lookCard(name).locator('input')).toBeChecked();
  await page.locator('.strip-filter select').selectOption('all looks');
  await expect(cards).toHaveCount(all);
});

test('every look has its verdict, in word and shape, and the tally adds up', async ({ page }) => {
  await openApp(page);
  const cards = page.locator('.look-card');
  const total = await cards.count();
  await expect(page.locator('.look-card .verdict-word svg')).toHaveCount(total);
  const counts = await page.locator('.tally li').allTextContents();
  expect(counts.reduce((sum, words) => sum + Number(/\d+/.exec(words)?.[0] ?? 'NaN'), 0)).toBe(total);
});

test('moving a man of the offence changes what the defence is told; turning the board changes nothing', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.lookCard('11 wing right').click();
  const before = await page.locator('.sides').textContent();
  const jobs = await page.locator('.job-table').textContent();
  await page.getByRole('button', { name: 'Turn the board' }).click();
  expect(await page.locator('.job-table').textContent()).toBe(jobs);
  await page.getByRole('button', { name: 'Turn the board' }).click();

  // The wing, brought over to the other end of the line by hand.
  const wing = page.getByRole('button', { name: /^Offence, the tight end/ }).first();
  await wing.click();
  const x = Number(await page.getByRole('spinbutton', { name: 'Across' }).inputValue());
  const depth = Number(await page.getByRole('spinbutton', { name: 'Depth' }).inputValue());
  const from = await pixelOf(page, x, -depth);
  const to = await pixelOf(page, -x, -depth);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 10 });
  await page.mouse.up();
  expect(await page.locator('.sides').textContent()).not.toBe(before);
  await page.keyboard.press('Control+z');
  expect(await page.locator('.sides').textContent()).toBe(before);
});

test('Escape gives a drag up', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  const jobs = await page.locator('.job-table').textContent();
  await screen.man('Defence, W').click();
  const at = await pixelOf(
    page,
    Number(await page.getByRole('spinbutton', { name: 'Across' }).inputValue()),
    Number(await page.getByRole('spinbutton', { name: 'Depth' }).inputValue()),
  );
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 90, at.y + 40, { steps: 5 });
  await expect(page.locator('.job-table')).not.toHaveText(jobs ?? '');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(page.locator('.job-table')).toHaveText(jobs ?? '');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
});

test('a playbook without looks says so, and can be undone', async ({ page }) => {
  await openApp(page);
  const parsed: unknown = JSON.parse(demoText);
  const empty = {
    ...(parsed as object),
    looks: [],
    fronts: [],
    pressures: [],
    calls: [],
    coverages: [],
    opponents: [],
    checkOuts: [],
  };
  await page.locator('input[type=file]').setInputFiles({
    name: 'empty.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(empty)),
  });
  await expect(page.getByText('This playbook has no looks: there is nothing to line up against.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.field-stage')).toBeVisible();
});
