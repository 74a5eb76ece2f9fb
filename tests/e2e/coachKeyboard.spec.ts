import { readPdf } from './pdf.ts';
import { expect, openApp, screenOf, spotOf, tabTo, test } from './coach.ts';
import type { Locator, Page } from '@playwright/test';

// A whole way through the app, on whatever machine this is.
test.describe.configure({ timeout: 120_000 });

/** Chooses in a list by typing the start of the words, as in any list. */
async function typeInto(page: Page, list: Locator, words: string): Promise<void> {
  await tabTo(page, list);
  await page.keyboard.type(words);
  await expect(list.locator('option:checked')).toHaveText(new RegExp(`^${words}`));
}

test('the same way without a mouse', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);

  await test.step('he chooses what is called, and against what', async () => {
    await typeInto(page, page.getByLabel('Front', { exact: true }), 'Odd, ends inside');
    await typeInto(page, page.getByLabel('First pressure'), 'Sluice');
    await typeInto(page, page.getByLabel('Second pressure'), 'Weir');
    await typeInto(page, page.getByLabel('The second goes'), 'by its own rule');
    await typeInto(page, page.getByLabel('Look', { exact: true }), '11 wing right');
    await tabTo(page, page.getByLabel('Middle', { exact: true }));
    await page.keyboard.press('ArrowLeft');
    await expect(page.getByLabel('Left hash', { exact: true })).toBeChecked();
  });

  await test.step('he hears of the conflict, turns the second, and it is gone', async () => {
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await expect(screen.lineman('Nose')).toContainText('Two jobs');
    await expect(page.locator('.verdict-banner [role=status]')).toContainText('Stop: do not install');
    const turn = page.getByLabel('The second goes');
    await page.keyboard.press('Shift+Tab');
    for (
      let back = 0;
      back < 10 && !(await turn.evaluate((element) => element === document.activeElement));
      back += 1
    ) {
      await page.keyboard.press('Shift+Tab');
    }
    await page.keyboard.press('End');
    await expect(turn.locator('option:checked')).toHaveText('to the side opposite the first');
    await expect(screen.verdict).toHaveText('Clean');
    await expect(page.locator('.verdict-banner [role=status]')).toContainText('Clean');
  });

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

  await test.step('he prints', async () => {
    await page.keyboard.press('Shift+Tab');
    await tabTo(page, page.getByRole('button', { name: 'Print…' }), 200);
    await page.keyboard.press('Enter');
    const make = page.getByRole('button', { name: 'Make the PDF' });
    await tabTo(page, make);
    const download = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    expect(readPdf(await (await download).path()).text).toContain('11 wing right');
    await expect(page.getByText(/^Made .*[.]pdf$/)).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Print…' })).toBeFocused();
  });
});
