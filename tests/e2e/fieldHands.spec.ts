/** What a hand does on the field beside plain dragging: with Alt or the space bar held, with a pen, with a finger that picks. */
import type { Locator, Page } from '@playwright/test';
import { expect, openApp, pixelOf, screenOf, spotOf, test } from './coach.ts';
import { penOn } from './pens.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 60_000 });

type Spot = readonly [x: number, y: number];

const stage = (page: Page): Locator => page.locator('.field-stage');

/** Presses at one spot of the field and holds the button down at another. */
async function dragTo(page: Page, from: Spot, to: Spot): Promise<void> {
  const [a, b] = [await pixelOf(page, ...from), await pixelOf(page, ...to)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 6 });
}

/** How far the selected man is from a spot, in yards. */
async function offFrom(page: Page, [x, y]: Spot): Promise<number> {
  const at = await spotOf(page);
  return Math.hypot(at.x - x, at.depth - y);
}

/** A pixel of the field is a few hundredths of a yard. */
const PIXEL = 0.06;

test('while Alt is held no technique draws the man who is dragged, and it does again as soon as Alt is let go', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.lookCard('11 wing right').click();
  await screen.man('Defence, LE').click();
  const start = await spotOf(page);
  const beside: Spot = [-3.15, 1.2];
  await page.keyboard.down('Alt');
  await dragTo(page, [start.x, start.depth], beside);
  await expect(stage(page)).toHaveAttribute('data-snapped', '');
  await page.mouse.up();
  await page.keyboard.up('Alt');
  expect(await offFrom(page, beside)).toBeLessThan(PIXEL);
  await page.getByRole('button', { name: 'Undo' }).click();
  await dragTo(page, [start.x, start.depth], beside);
  await expect(stage(page)).toHaveAttribute('data-snapped', /^5 left/);
  await page.mouse.up();
  expect(await spotOf(page)).toEqual({ x: -3, depth: 1 });
});

test('while the space bar is held a drag shoves the field, and moves nobody', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.man('Defence, FS').click();
  const { x, depth } = await spotOf(page);
  await page.getByRole('button', { name: 'Look closer' }).click();
  await expect(page.getByRole('button', { name: 'Look from farther' })).toBeEnabled();
  // The space bar presses the button that has the focus, as everywhere.
  await stage(page).evaluate(() => document.activeElement instanceof HTMLElement && document.activeElement.blur());
  const before = await pixelOf(page, x, depth);
  await page.keyboard.down(' ');
  await page.mouse.move(before.x, before.y);
  await page.mouse.down();
  await page.mouse.move(before.x - 50, before.y - 20, { steps: 4 });
  await page.mouse.up();
  await page.keyboard.up(' ');
  const after = await pixelOf(page, x, depth);
  expect(Math.hypot(after.x - (before.x - 50), after.y - (before.y - 20))).toBeLessThan(2);
  expect(await spotOf(page)).toEqual({ x, depth });
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  // Without the bar the same drag takes him along.
  await dragTo(page, [x, depth], [x + 1, depth + 1]);
  await page.mouse.up();
  expect(await offFrom(page, [x, depth])).toBeGreaterThan(0.9);
});

test.describe('with a pen', () => {
  test.use({ hasTouch: true });

  test('it need not hit a man as exactly as a mouse, and drags him', async ({ page }) => {
    const screen = screenOf(page);
    await openApp(page);
    await screen.man('Defence, FS').click();
    const { x, depth } = await spotOf(page);
    await page.keyboard.press('Escape');
    const him = await pixelOf(page, x, depth);
    const beside = { x: him.x, y: him.y + 14 };
    await page.mouse.click(beside.x, beside.y);
    await expect(screen.card).toHaveCount(0);
    const pen = await penOn(page);
    await pen.down(beside);
    await expect(screen.card.getByRole('heading')).toHaveText(/^FS\b/);
    for (const part of [0.5, 1]) await pen.move({ x: beside.x + 60 * part, y: beside.y + 20 * part });
    await pen.up({ x: beside.x + 60, y: beside.y + 20 });
    await expect.poll(() => offFrom(page, [x, depth])).toBeGreaterThan(2);
  });

  test('a hand that comes to rest while it drags, and is lifted again, changes nothing', async ({ page }) => {
    const { to } = await dragByPen(page, async (pen, rest) => {
      await pen.restHand(rest);
      await pen.liftHand();
    });
    expect(await offFrom(page, to)).toBeLessThan(0.4);
  });

  test('a hand that rests before the pen comes down does not keep it from dragging', async ({ page }) => {
    await openApp(page);
    const pen = await penOn(page);
    await pen.restHand(await pixelOf(page, 14, 6));
    const { to } = await dragByPen(page, async () => pen.liftHand());
    expect(await offFrom(page, to)).toBeLessThan(0.4);
    // Nor were the two fingers that look closer.
    await expect(page.getByRole('button', { name: 'Fit the field' })).toBeDisabled();
  });
});

/** Drags the free safety sideways with a pen; half way something happens to the hand, which rests on grass. */
async function dragByPen(
  page: Page,
  halfWay: (pen: Awaited<ReturnType<typeof penOn>>, rest: { readonly x: number; readonly y: number }) => Promise<void>,
): Promise<{ readonly to: Spot }> {
  if ((await stage(page).count()) === 0) await openApp(page);
  await screenOf(page).man('Defence, FS').press('Enter');
  const { x, depth } = await spotOf(page);
  const to: Spot = [x + 4, depth + 2];
  const [a, b] = [await pixelOf(page, x, depth), await pixelOf(page, ...to)];
  const pen = await penOn(page);
  await pen.down(a);
  await pen.move({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  await halfWay(pen, await pixelOf(page, 14, 6));
  await pen.move(b);
  await pen.up(b);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  return { to };
}

test('men of a look are brought to one depth or width, spread and mirrored by buttons, each as one step', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await page.getByRole('tab', { name: 'Looks' }).click();
  await expect(page.locator('.eleven')).toBeVisible();
  const spots = (): Promise<readonly string[]> =>
    Promise.all(
      ['the receiver H', 'the back B', 'the tight end Y'].map(async (who) => {
        const value = (what: string): Promise<string> =>
          page.getByRole('textbox', { name: `${what}, ${who}` }).inputValue();
        return `${await value('Across')} ${await value('Depth')}`;
      }),
    );
  const start = ['-7.5 1.5', '1.5 5', '6.5 1.5'];
  expect(await spots()).toEqual(start);
  await screen.man('Offence, the receiver H').click();
  for (const other of ['the back B', 'the tight end Y']) {
    await screen.man(`Offence, ${other}`).click({ modifiers: ['Shift'] });
  }
  for (const [button, then] of [
    ['Same depth as H', ['-7.5 1.5', '1.5 1.5', '6.5 1.5']],
    ['Same width as H', ['-7.5 1.5', '-7.5 5', '-7.5 1.5']],
    ['Spread evenly', ['-7.5 1.5', '-0.5 5', '6.5 1.5']],
    ['Mirror left to right', ['7.5 1.5', '-1.5 5', '-6.5 1.5']],
  ] as const) {
    await screen.card.getByRole('button', { name: button }).click();
    await expect.poll(spots, button).toEqual(then);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(spots).toEqual(start);
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  }
});

test('another man is brought into a front: he stands and plays as the one he came for', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await page.getByRole('tab', { name: 'Fronts' }).click();
  // The editor is loaded when it is first opened, and moves what is below it.
  await expect(page.locator('.editor')).toBeVisible();
  await screen.man('Defence, S').click();
  const spot = await spotOf(page);
  const editor = page.locator('.editor');
  await editor.getByLabel('Bring in for S').selectOption({ label: 'NB (Fifth back)' });
  await expect(screen.man('Defence, NB')).toBeVisible();
  await expect(screen.man('Defence, S')).toHaveCount(0);
  await expect(editor.getByRole('heading', { name: 'NB · Fifth back' })).toBeVisible();
  expect(await spotOf(page)).toEqual(spot);
  await expect(editor.getByLabel('Bring in for NB').locator('option').filter({ hasText: /^S \(/ })).toHaveCount(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(screen.man('Defence, S')).toBeVisible();
  await expect(screen.man('Defence, NB')).toHaveCount(0);
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } });

  test('grass and the passer are picked by a tap', async ({ page }) => {
    await openApp(page);
    await page.getByRole('button', { name: 'Playbook', exact: true }).tap();
    await page.getByRole('button', { name: 'New… pressure' }).tap();
    await page.getByRole('textbox', { name: 'Its name' }).fill('Reedbed');
    await page.getByRole('button', { name: 'Make it' }).tap();
    await page.getByRole('button', { name: 'Pick on the field', exact: true }).tap();
    await expect(page.locator('.pick-layer')).toBeVisible();
    const tap = async (...at: Spot): Promise<void> => {
      await stage(page).scrollIntoViewIfNeeded();
      const { x, y } = await pixelOf(page, ...at);
      await page.touchscreen.tap(x, y);
    };
    const panel = page.locator('.pick-panel');
    const said = panel.locator('.pick-said');
    await tap(-5.5, 11);
    await expect(panel).toContainText('Click a gap');
    await tap(0, 16);
    await expect(said).toHaveText(/: drop to the deep middle/);
    await panel.getByRole('button', { name: 'Tell him' }).tap();
    await expect(page.locator('.told-list > li')).toHaveCount(1);
    await tap(-2.67, 4.5);
    await tap(0, -5);
    await panel.getByRole('radio', { name: 'Spy' }).check();
    await expect(said).toHaveText(/spy/);
    await panel.getByRole('button', { name: 'Tell him' }).tap();
    await expect(page.locator('.told-list > li')).toHaveCount(2);
  });
});
