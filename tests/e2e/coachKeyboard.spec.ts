import { expect, openApp, screenOf, spotOf, tabTo, test } from './coach.ts';

// A whole way through the app, on whatever machine this is.
test.describe.configure({ timeout: 120_000 });

test('the field without a mouse: arrows, numbers, a held key', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await page.getByLabel('Kept call').selectOption({ label: 'Sluice Weir' });
  await page.getByLabel('The second goes').selectOption('to the side opposite the first');
  await page.getByLabel('Look', { exact: true }).selectOption('11 wing right');
  await tabTo(page, page.getByLabel('Middle', { exact: true }));
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByLabel('Left hash', { exact: true })).toBeChecked();
  await expect(screen.verdict).toHaveText('Clean');

  await test.step('he walks to the left end and moves him outside with the arrows', async () => {
    await tabTo(page, screen.man('Defence, LE'));
    await page.keyboard.press('End');
    await expect(page.locator('.player:focus')).toHaveAccessibleName(/^Offence,/);
    await page.keyboard.press('Home');
    await page.keyboard.press('PageDown');
    await page.keyboard.press('PageUp');
    await expect(screen.man('Defence, LE')).toBeFocused();
    await expect(screen.man('Defence, LE')).toHaveAccessibleName(/4i left/);
    const before = await spotOf(page);
    await page.keyboard.press('Shift+ArrowLeft');
    await page.keyboard.press('ArrowRight');
    const after = await spotOf(page);
    // Spots set by hand are kept to a twentieth of a yard.
    expect(Math.abs(after.x - (before.x - 0.75))).toBeLessThan(0.03);
    expect(after.depth).toBe(before.depth);
    await expect(screen.man('Defence, LE')).toHaveAccessibleName(/5 left/);
  });

  await test.step('up to the ball he changes the verdict; by number he goes back', async () => {
    await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press('Shift+ArrowUp');
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await tabTo(page, page.getByRole('spinbutton', { name: 'Depth' }));
    await page.keyboard.press('Control+a');
    await page.keyboard.type('1.5');
    await expect(screen.verdict).toHaveText('Clean');
    expect((await spotOf(page)).depth).toBe(1.5);
  });

  await test.step('a held arrow key is one step back', async () => {
    await tabTo(page, page.getByRole('button', { name: 'Place by click' }));
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Shift+Tab');
    await expect(screen.man('Defence, LE')).toBeFocused();
    const before = await spotOf(page);
    for (let held = 0; held < 5; held += 1) await page.keyboard.down('ArrowLeft');
    await page.keyboard.up('ArrowLeft');
    expect((await spotOf(page)).x).toBe(before.x - 1.25);
    await page.keyboard.press('Control+z');
    expect(await spotOf(page)).toEqual(before);
    await page.keyboard.press('Control+Shift+z');
    expect((await spotOf(page)).x).toBe(before.x - 1.25);
    for (let steps = 0; steps < 12; steps += 1) await page.keyboard.press('Control+z');
    await expect(screen.man('Defence, LE')).toHaveAccessibleName(/4i left/);
  });
});
