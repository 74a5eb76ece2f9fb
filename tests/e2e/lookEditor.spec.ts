import type { Page } from '@playwright/test';
import { expect, openApp, pixelOf, screenOf, spotOf, tabTo, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

/** The editor of looks, open beside the board. */
async function openLooks(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await page.getByRole('tab', { name: 'Looks' }).click();
  await expect(page.locator('.eleven')).toBeVisible();
}

const across = (page: Page, who: string) => page.getByRole('textbox', { name: `Across, ${who}` });
const snapped = (page: Page) => page.locator('.field-stage');

/** Presses at one point of the field, in yards, and holds the button down at another. */
async function dragTo(page: Page, from: readonly [number, number], to: readonly [number, number]): Promise<void> {
  const a = await pixelOf(page, ...from);
  const b = await pixelOf(page, ...to);
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 6 });
}

test('a receiver dragged off the line makes a look that is against the rules', async ({ page }) => {
  await openApp(page);
  await openLooks(page);
  await page.getByRole('button', { name: 'New… look' }).click();
  await page.getByLabel('Personnel', { exact: true }).selectOption('12');
  await page.getByLabel('Formation').selectOption('wing');
  await page.getByRole('dialog').getByLabel('left', { exact: true }).check({ force: true });
  await expect(page.getByLabel('Name of the look')).toHaveValue('12 wing left');
  await page.getByRole('button', { name: 'Make it' }).click();
  await expect(page.locator('#board-title')).toHaveText('12 wing left');
  await expect(page.getByText('Legal under high-school rules').first()).toBeVisible();
  await expect(across(page, 'the receiver X')).toHaveValue('13.5');

  // The single receiver comes off the line: six are on it, five are not. Words below the field grow; it may not.
  const scale = (await snapped(page).getAttribute('data-scale')) ?? '';
  await dragTo(page, [13.5, -0.6], [10, -1.48]);
  await expect(snapped(page)).toHaveAttribute('data-snapped', /off the line/);
  await expect(page.locator('.tally')).toContainText('Stop');
  await expect(snapped(page)).toHaveAttribute('data-scale', scale);
  await page.mouse.up();
  await expect(across(page, 'the receiver X')).not.toHaveValue('13.5');
  await expect(page.getByText('Not legal under high-school rules').first()).toBeVisible();
  await expect(page.locator('.legality')).toContainText('5 men are off the line, no more than four may be');
  await page.keyboard.press('Control+z');
  await expect(across(page, 'the receiver X')).toHaveValue('13.5');
  await expect(page.getByText('Legal under high-school rules').first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('#board-title')).not.toHaveText('12 wing left');
});

test('without a mouse: a spot typed, the other side of the ball, motion, a run, all undone', async ({ page }) => {
  await openApp(page);
  await openLooks(page);
  const name = await page.locator('#board-title').innerText();
  const split = await across(page, 'the receiver X').inputValue();
  await tabTo(page, across(page, 'the receiver X'));
  await page.keyboard.press('Control+a');
  await page.keyboard.type('-11');
  await expect(page.locator('.player', { hasText: /^X$/ })).toHaveAccessibleName(/11 yards left/);

  await tabTo(page, page.getByRole('button', { name: 'Mirror it' }));
  await page.keyboard.press('Enter');
  await expect(across(page, 'the receiver X')).toHaveValue('11');
  await tabTo(page, page.getByLabel('Who moves before the snap'));
  await page.keyboard.type('the receiver X');
  await expect(page.getByRole('textbox', { name: 'Across at the snap' })).toHaveValue('-11');
  const runs = page.getByLabel(/^Run \d+$/);
  const before = await runs.count();
  await tabTo(page, page.getByRole('button', { name: 'Add a run' }));
  await page.keyboard.press('Enter');
  await expect(runs).toHaveCount(before + 1);

  // Typing in a list passes other men on its way to the one that is meant; each of them is a step.
  const undo = page.getByRole('button', { name: 'Undo' });
  for (let steps = 0; steps < 9 && (await undo.isEnabled()); steps += 1) await page.keyboard.press('Control+z');
  await expect(undo).toBeDisabled();
  await expect(page.locator('#board-title')).toHaveText(name);
  await expect(across(page, 'the receiver X')).toHaveValue(split);
  await expect(runs).toHaveCount(before);
});

test('techniques hold a defender who is dragged, and say their names; Alt and the Snap button let him pass', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  await screen.lookCard('11 wing right').click();
  await screen.man('Defence, LE').click();
  const start = await spotOf(page);
  // The tackle stands 2 2/3 yards out: a 5 is a foot outside him.
  await dragTo(page, [start.x, start.depth], [-3.07, 1.08]);
  await expect(snapped(page)).toHaveAttribute('data-snapped', '5 left, outside foot of the tackle, 1 yd deep');
  await page.mouse.up();
  expect(await spotOf(page)).toEqual({ x: -3, depth: 1 });
  await expect(screen.man('Defence, LE')).toHaveAccessibleName(/5 left/);
  await page.getByRole('button', { name: 'Snap', exact: true }).click();
  await dragTo(page, [-3, 1], [-3.5, 1.2]);
  await expect(snapped(page)).toHaveAttribute('data-snapped', '');
  await page.mouse.up();
  expect(Math.abs((await spotOf(page)).x + 3.5)).toBeLessThan(0.06);
});

test('several men: swept over, dragged as one step, nudged, arranged, carried to another look', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  const card = screen.card;
  const grassLeft = await pixelOf(page, -8, 0.4);
  const grassRight = await pixelOf(page, 8, 2.2);
  await page.mouse.move(grassLeft.x, grassLeft.y);
  await page.mouse.down();
  await page.mouse.move(grassRight.x, grassRight.y, { steps: 5 });
  await page.mouse.up();
  await expect(card.getByRole('heading')).toHaveText('3 men picked');
  await expect(card).toContainText('LE, N, RE');

  await screen.man('Defence, N').click({ modifiers: ['Shift'] });
  await expect(card).toContainText('LE, RE');
  await page.keyboard.press('Shift+ArrowDown');
  await card.getByRole('button', { name: 'Move down ¼ yard' }).click();
  await screen.man('Defence, RE').click();
  const nudged = (await spotOf(page)).depth;
  await screen.man('Defence, LE').click();
  expect((await spotOf(page)).depth).toBe(nudged);

  await screen.man('Defence, RE').click({ modifiers: ['Shift'] });
  await page.getByRole('button', { name: 'Copy their spots' }).click();
  await screen.lookCard('10 doubles, back right').click();
  await page.getByRole('button', { name: 'Put the 2 copied spots here' }).click();
  await screen.man('Defence, RE').click();
  expect((await spotOf(page)).depth).toBe(nudged);
  await expect(screen.card).toContainText('(by hand)');
  await page.keyboard.press('Delete');
  await expect(screen.card).toContainText('(by his rule)');
  for (let steps = 0; steps < 4; steps += 1) await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
});

test('the wheel looks closer at what is under it, the middle button shoves the field, 0 fits it', async ({ page }) => {
  await openApp(page);
  const stage = page.locator('.field-stage');
  const scale = async (): Promise<number> => Number(await stage.getAttribute('data-scale'));
  const fitted = await scale();
  const at = await pixelOf(page, 4, 3);
  await page.mouse.move(at.x, at.y);
  await page.mouse.wheel(0, -300);
  await expect.poll(scale).toBeGreaterThan(1.5 * fitted);
  const still = await pixelOf(page, 4, 3);
  expect(Math.hypot(still.x - at.x, still.y - at.y)).toBeLessThan(1.5);
  await page.mouse.down({ button: 'middle' });
  await page.mouse.move(at.x - 60, at.y + 10, { steps: 4 });
  await page.mouse.up({ button: 'middle' });
  const shoved = await pixelOf(page, 4, 3);
  expect(Math.abs(shoved.x - (at.x - 60))).toBeLessThan(2);
  await expect(page.getByRole('button', { name: 'Look to the left' })).toBeVisible();
  await page.keyboard.press('0');
  await expect.poll(scale).toBe(fitted);
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } });

  test('a new look is made and a man of it dragged; a second finger gives the drag up and looks closer', async ({
    page,
  }) => {
    await openApp(page);
    await page.getByRole('button', { name: 'Playbook', exact: true }).tap();
    await page.getByRole('tab', { name: 'Looks' }).tap();
    await page.getByRole('button', { name: 'New… look' }).tap();
    await page.getByRole('button', { name: 'Make it' }).tap();
    await expect(page.locator('#board-title')).toHaveText('11 trips right');
    const client = await page.context().newCDPSession(page);
    const touch = async (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      ...points: readonly { readonly x: number; readonly y: number }[]
    ): Promise<void> => {
      await client.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(({ x, y }, id) => ({ x, y, id })),
      });
    };
    const z = await pixelOf(page, 13.5, -1.5);
    const there = await pixelOf(page, 10.4, -1.5);
    await touch('touchStart', z);
    await touch('touchMove', { x: (z.x + there.x) / 2, y: z.y });
    await touch('touchMove', there);
    await expect(snapped(page)).toHaveAttribute('data-snapped', /off the line/);
    await touch('touchEnd');
    await expect(across(page, 'the receiver Z')).not.toHaveValue('13.5');
    const moved = await across(page, 'the receiver Z').inputValue();

    const fitted = Number(await snapped(page).getAttribute('data-scale'));
    const second = { x: there.x - 60, y: there.y + 60 };
    await touch('touchStart', there);
    await touch('touchMove', { x: there.x + 30, y: there.y });
    await touch('touchStart', { x: there.x + 30, y: there.y }, second);
    await touch('touchMove', { x: there.x + 60, y: there.y - 40 }, { x: second.x - 60, y: second.y + 60 });
    await touch('touchEnd');
    expect(Number(await snapped(page).getAttribute('data-scale'))).toBeGreaterThan(fitted);
    await expect(across(page, 'the receiver Z')).toHaveValue(moved);
  });
});
