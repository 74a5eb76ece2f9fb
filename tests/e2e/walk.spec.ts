import type { Locator, Page } from '@playwright/test';
import { expect, openApp, pixelOf, screenOf, spotOf, tabTo, test, unfold } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

/** The walk-through under the field. */
function walkOf(page: Page) {
  const bar = page.getByRole('region', { name: 'The snap, walked through' });
  return {
    slider: bar.getByRole('slider', { name: 'Time after the snap' }),
    clock: bar.locator('.walk-clock'),
    button: (name: string): Locator => bar.getByRole('button', { name, exact: true }),
    moments: bar.getByRole('list', { name: 'What happens when, by estimate' }).getByRole('button'),
    said: bar.getByRole('status'),
    bar,
  };
}

/** The field as it is painted, and nothing beside it. */
async function painted(page: Page): Promise<string> {
  // Nothing may be pointed at, which would light something.
  await page.mouse.move(2, 2);
  const layers = await page
    .locator('.field-stage canvas')
    .evaluateAll((canvases) =>
      canvases.map((canvas) => (canvas instanceof HTMLCanvasElement ? canvas.toDataURL() : '')),
    );
  return layers.filter((layer) => layer !== '').join(' ');
}

/** The seconds on the clock. */
const secondsOf = async (page: Page): Promise<number> => Number.parseFloat(await walkOf(page).clock.innerText());

test('a coach walks the snap through with the mouse', async ({ page }) => {
  const walk = walkOf(page);
  await openApp(page);
  const before = await painted(page);

  await test.step('a moment is a button that goes there', async () => {
    await expect(walk.clock).toHaveText('0.0 s');
    const nose = walk.moments.filter({ hasText: 'N is in the A gap right' });
    await expect(nose).toHaveAccessibleName(/^\d\.\d s ?: N is in the A gap right$/);
    await nose.click();
    await expect(nose).toHaveAttribute('aria-current', 'step');
    await expect(walk.clock).toHaveText((await nose.locator('.moment-time').innerText()).trim());
    expect(await painted(page)).not.toBe(before);
  });

  await test.step('a step is a tenth of a second, forth and back', async () => {
    const from = await secondsOf(page);
    await walk.button('On a tenth of a second').click();
    expect(await secondsOf(page)).toBeCloseTo(from + 0.1, 5);
    await walk.button('Back a tenth of a second').click();
    await walk.button('Back a tenth of a second').click();
    expect(await secondsOf(page)).toBeCloseTo(from - 0.1, 5);
  });

  await test.step('it plays, pauses where it is, and stops at its end', async () => {
    await walk.button('Play').click();
    await expect.poll(() => secondsOf(page)).toBeGreaterThan(1);
    await walk.button('Pause').click();
    const stopped = await painted(page);
    const at = await secondsOf(page);
    await page.waitForTimeout(300);
    expect(await secondsOf(page)).toBe(at);
    expect(await painted(page)).toBe(stopped);
    await walk.button('Play').click();
    await expect(walk.button('Play')).toBeVisible();
    await expect(walk.slider).toHaveValue((await walk.slider.getAttribute('max')) ?? '');
  });

  await test.step('while it is not at the start nobody can be dragged; at the start everybody can', async () => {
    const screen = screenOf(page);
    await screen.man('Defence, LE').click();
    const from = await spotOf(page);
    const drag = async (): Promise<void> => {
      const [start, end] = [await pixelOf(page, from.x, from.depth), await pixelOf(page, from.x - 1, from.depth)];
      await page.mouse.move(start.x, start.y);
      await page.mouse.down();
      await page.mouse.move(end.x, end.y, { steps: 5 });
      await page.mouse.up();
    };
    await drag();
    expect(await spotOf(page)).toEqual(from);
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
    await walk.button('To the start').click();
    await drag();
    expect((await spotOf(page)).x).toBeLessThan(from.x - 0.5);
    await page.getByRole('button', { name: 'Undo' }).click();
  });
});

test('at the start the board is as it was, to the pixel', async ({ page }) => {
  const walk = walkOf(page);
  await openApp(page);
  const before = await painted(page);
  await walk.slider.fill('1.5');
  expect(await painted(page)).not.toBe(before);
  await walk.slider.fill('0');
  expect(await painted(page)).toBe(before);
  await walk.button('Play').click();
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(0.3);
  await walk.button('To the start').click();
  expect(await painted(page)).toBe(before);
});

test('a protection that is drawn brings the free rusher and the hot throw, a run the ball', async ({ page }) => {
  const walk = walkOf(page);
  await openApp(page);
  await expect(walk.moments.filter({ hasText: 'would be at the passer if nobody blocked him' })).toHaveCount(1);
  const protections = await unfold(page, 'Protections of this look');
  await protections
    .getByRole('button', { name: /^Draw it/ })
    .first()
    .click();
  await expect(walk.moments.filter({ hasText: 'S comes free and is at the passer' })).toHaveCount(1);
  await expect(walk.moments.filter({ hasText: 'the hot throw to the right is gone' })).toHaveCount(1);
  await expect(walk.moments.filter({ hasText: /meets N$/ })).toHaveCount(1);
  const runs = await unfold(page, 'Runs of this look');
  await runs
    .getByRole('button', { name: /^Draw it/ })
    .first()
    .click();
  await expect(walk.moments.filter({ hasText: 'with the ball' })).toHaveCount(1);
  await expect(walk.moments.filter({ hasText: 'passer' })).toHaveCount(0);
});

test('the page says that times are estimates, and what is not shown', async ({ page }) => {
  const walk = walkOf(page);
  await openApp(page);
  await walk.bar.getByText('by estimate').click();
  await expect(walk.bar).toContainText('Times and ways are estimates');
  await expect(walk.bar).toContainText('N is told two things: he is shown doing what the first pressure says.');
});

test('the same with the keyboard alone, and a reader hears where it is', async ({ page }) => {
  const walk = walkOf(page);
  await openApp(page);
  await tabTo(page, walk.slider);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(walk.clock).toHaveText('0.2 s');
  await expect(walk.slider).toHaveAttribute('aria-valuetext', '0.2 seconds after the snap');
  await page.keyboard.press('End');
  await expect(walk.said).toHaveText(/^3\.0 s\. /);
  await page.keyboard.press('Home');
  await expect(walk.slider).toHaveAttribute('aria-valuetext', 'before the snap');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await expect(walk.button('Play')).toBeFocused();
  await page.keyboard.press('Space');
  await expect(walk.button('Pause')).toBeFocused();
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(0.2);
  await page.keyboard.press('Space');
  await expect(walk.button('Play')).toBeFocused();
  const first = walk.moments.first();
  await tabTo(page, first);
  await page.keyboard.press('Enter');
  await expect(walk.clock).toHaveText((await first.locator('.moment-time').innerText()).trim());
  await expect(walk.said).toContainText('N is in the A gap right');
});

test('where motion is not wanted it goes in steps of half a second', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const walk = walkOf(page);
  await openApp(page);
  await page.evaluate(() => {
    const seen: string[] = [];
    const clock = document.querySelector('.walk-clock');
    if (clock === null) throw new Error('There is no clock');
    new MutationObserver(() => {
      seen.push(clock.textContent);
      document.body.dataset['seen'] = seen.join(',');
    }).observe(clock, { characterData: true, childList: true, subtree: true });
  });
  await walk.button('Play').click();
  await expect(walk.clock).toHaveText('3.0 s');
  const seen = (await page.evaluate(() => document.body.dataset['seen'] ?? '')).split(',');
  expect(seen.length).toBeGreaterThan(2);
  for (const time of seen) expect(time).toMatch(/^\d\.[05] s$/);
});
