import { expect, openApp, pixelOf, screenOf, spotOf, test, unfold } from './coach.ts';

// A whole way through the app, on whatever machine this is.
test.describe.configure({ timeout: 120_000 });

test('a dragged man changes techniques and verdict while he is still in hand', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);

  await test.step('turned, the second pressure no longer disagrees with the first', async () => {
    await screen.lookCard('11 wing right').click();
    await page.getByLabel('Left hash', { exact: true }).check();
    await page.getByLabel('Kept call').selectOption({ label: 'Sluice Weir' });
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await page.getByLabel('The second goes').selectOption('to the side opposite the first');
    await expect(screen.verdict).toHaveText('Clean');
    await expect(screen.lineman('Nose')).toContainText('Same');
    await expect(screen.lookCard('11 wing right')).toContainText('Clean');
  });

  await test.step('the end, dragged outside the tackle, is another technique while he is still in hand', async () => {
    await expect(screen.jobOf('Left end')).toContainText('4i left');
    await unfold(page, 'All eleven');
    await screen.jobOf('Left end').locator('.man-button').click();
    const from = await spotOf(page);
    const start = await pixelOf(page, from.x, from.depth);
    const end = await pixelOf(page, from.x - 0.75, from.depth);
    await page.mouse.move(start.x, start.y);
    await page.mouse.down();
    await page.mouse.move(end.x, end.y, { steps: 8 });
    await expect(screen.jobOf('Left end')).toContainText('5 left');
    await page.mouse.up();
    await expect(screen.jobOf('Left end')).toContainText('5 left');
    await expect(screen.card.getByRole('button', { name: 'Back to the rule' })).toBeVisible();
  });

  await test.step('dragged into the neutral zone he changes the verdict', async () => {
    const from = await spotOf(page);
    const start = await pixelOf(page, from.x, from.depth);
    const end = await pixelOf(page, from.x, 0);
    await page.mouse.move(start.x, start.y);
    await page.mouse.down();
    await page.mouse.move(end.x, end.y, { steps: 8 });
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await page.mouse.up();
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await expect(screen.lookCard('11 wing right')).toContainText('Stop');
  });

  await test.step('two steps back he stands by his rule again', async () => {
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(screen.verdict).toHaveText('Clean');
    await expect(screen.jobOf('Left end')).toContainText('5 left');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(screen.jobOf('Left end')).toContainText('4i left');
    await expect(screen.notice).toContainText('Undone: moved LE (Left end)');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });
});

test('pointing at a finding lights it on the field, and why it matters can be read', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  const finding = screen.finding('A lineman is told two jobs');
  const canvas = page.locator('.field-stage canvas').first();
  const before = await canvas.screenshot();
  await finding.hover();
  await expect(finding).toHaveClass(/is-lit/);
  expect(await canvas.screenshot()).not.toEqual(before);
  await finding.getByText('Why', { exact: false }).last().click();
  await expect(finding.locator('.why-tree').first()).toBeVisible();
});

test('why a lineman is told two jobs is read across the whole table, not down a cell', async ({ page }) => {
  await openApp(page);
  const table = page.locator('.lineman-table');
  const why = table.getByRole('button', { name: 'Why for the Nose' });
  await why.click();
  const reasons = table.locator('.why-row li');
  await expect(reasons.first()).toContainText('A lineman is told two things');
  const deepest = table
    .locator('.why-row li')
    .filter({ hasText: /^The ball is in the middle of the field$/ })
    .first();
  const width = (await table.boundingBox())?.width ?? 0;
  expect((await deepest.boundingBox())?.width).toBeGreaterThan(0.6 * width);
  await why.click();
  await expect(reasons).toHaveCount(0);
});

test('a man can be placed with two clicks, without dragging', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.man('Defence, FS').click();
  await page.getByRole('button', { name: 'Place by click' }).click();
  const there = await pixelOf(page, 3, 12);
  await page.mouse.click(there.x, there.y);
  await expect(page.getByRole('button', { name: 'Place by click' })).toBeVisible();
  const spot = await spotOf(page);
  expect(Math.abs(spot.x - 3)).toBeLessThan(0.1);
  expect(Math.abs(spot.depth - 12)).toBeLessThan(0.1);
  await screen.card.getByRole('button', { name: 'Back to the rule' }).click();
  await expect(screen.card.getByRole('button', { name: 'Back to the rule' })).toHaveCount(0);
});

test('a call is kept, renamed and deleted, and every step can be taken back', async ({ page }) => {
  await openApp(page);
  const kept = page.getByLabel('Kept call');
  await page.getByLabel('Second pressure').selectOption('None: the first alone');
  await expect(page.getByText('Changed since it was kept.')).toBeVisible();
  await page.getByRole('button', { name: 'Keep as call…' }).click();
  await page.getByRole('dialog').getByLabel('Name of the call').fill('Reed');
  await page.getByRole('dialog').getByRole('button', { name: 'Keep' }).click();
  await expect(kept.locator('option:checked')).toHaveText('Reed');
  await page.getByRole('button', { name: 'Rename… the call' }).click();
  await page.getByLabel('New name').fill('Sedge Reed');
  await page.keyboard.press('Enter');
  await expect(kept.locator('option:checked')).toHaveText('Sedge Reed');
  await page.getByRole('button', { name: 'Delete the call' }).click();
  await expect(kept.locator('option', { hasText: 'Sedge Reed' })).toHaveCount(0);
  for (let steps = 0; steps < 3; steps += 1) await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await expect(kept.locator('option', { hasText: 'Reed' })).toHaveCount(0);
});
