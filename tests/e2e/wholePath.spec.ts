import type { Page } from '@playwright/test';
import { expect, openApp, screenOf, test } from './coach.ts';
import { finger, keyboard, mouse, type HandOn } from './hands.ts';
import { readPdf } from './pdf.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 180_000 });

/** What a coach does with a new idea, from the first line-up to the sheet he hands out. */
async function goTheWholePath(page: Page, handOn: HandOn): Promise<void> {
  const screen = screenOf(page);
  const hand = handOn(page);
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
  const dialog = page.getByRole('dialog');
  await openApp(page);

  await test.step('he makes a look from who is in, and takes the single receiver closer', async () => {
    await hand.press(button('Playbook'));
    await hand.press(page.getByRole('tab', { name: 'Looks' }));
    await hand.press(button('New… look'));
    await hand.choose(dialog.getByLabel('Personnel', { exact: true }), '12');
    await hand.choose(dialog.getByLabel('Formation'), 'wing');
    await hand.mark(dialog.getByRole('radio', { name: 'left' }));
    await hand.press(dialog.getByRole('button', { name: 'Make it' }));
    await expect(page.locator('#board-title')).toHaveText('12 wing left');
    const across = page.getByRole('textbox', { name: 'Across, the receiver X' });
    await expect(across).toHaveValue('13.5');
    await hand.moveMan({ spoken: 'the receiver X', at: [13.5, -0.6] }, 10.25);
    await expect(across).not.toHaveValue('13.5');
    expect(Math.abs(Number(await across.inputValue()) - 10.25)).toBeLessThan(0.34);
    await expect(page.getByText('Legal under high-school rules').first()).toBeVisible();
  });

  await test.step('he writes a pressure: the nose away from the call, a backer through behind him', async () => {
    await hand.press(page.getByRole('tab', { name: 'Pressures' }));
    await hand.press(button('New… pressure'));
    await hand.fill(dialog.getByLabel('Its name'), 'Alder');
    await hand.press(dialog.getByRole('button', { name: 'Make it' }));
    await hand.press(button('Pick on the field'));
    await hand.pick({ words: 'N (', at: [0, 1] }, { words: 'A gap right', at: [0.67, -1.6] });
    await expect(page.locator('.pick-said')).toContainText('N: slant to the away-side A gap');
    await hand.press(button('Tell him'));
    await hand.pick({ words: 'M (', at: [-2.67, 4.5] }, { words: 'A gap left', at: [-0.67, -1.6] });
    await expect(page.locator('.pick-said')).toContainText('The call-side inside backer: rush the call-side A gap');
    await hand.press(button('Tell him'));
    await hand.press(button('Stop picking'));
    await expect(page.locator('.told-list > li')).toHaveCount(2);
  });

  await test.step('he runs it together with one he has, and keeps the two as a call', async () => {
    await hand.press(button('Board'));
    await hand.choose(page.getByLabel('First pressure'), 'Marl');
    await hand.choose(page.getByLabel('Second pressure'), 'Alder');
    await hand.press(button('Keep as call…'));
    await hand.fill(dialog.getByLabel('Name of the call'), 'Marl Alder');
    await hand.press(dialog.getByRole('button', { name: 'Keep' }));
    await expect(page.getByLabel('Kept call').locator('option:checked')).toHaveText('Marl Alder');
  });

  const finding = screen.finding('A lineman is told two jobs');

  await test.step('he finds out what is wrong with it', async () => {
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await expect(screen.lineman('Nose')).toContainText('Two jobs');
    await expect(screen.lookCard('12 wing left')).toContainText('Stop');
    await expect(finding).toContainText('Marl says slant to the A gap left, Alder says slant to the A gap right');
    await hand.press(finding.getByRole('button', { name: /^Show on the field/ }));
    await expect(finding).toHaveClass(/is-lit/);
  });

  await test.step('he lets the tool mend it, and takes that back', async () => {
    await hand.press(finding.getByRole('button', { name: /^Turn Alder opposite the first/ }));
    await expect(finding).toHaveCount(0);
    await expect(screen.verdict).toHaveText('Clean');
    await expect(screen.notice).toContainText('Undo takes it back');
    await hand.undo();
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await expect(screen.notice).toContainText('Undone: Turn Alder');
  });

  await test.step('he lives with it, and says why', async () => {
    await hand.press(finding.getByRole('button', { name: /^Live with it/ }));
    await hand.fill(dialog.getByLabel('Why do you live with it?'), 'The nose reads the centre here');
    await hand.press(dialog.getByRole('button', { name: 'Live with it' }));
    await expect(finding).toHaveCount(0);
    await expect(screen.verdict).not.toHaveText('Stop: do not install');
    await expect(page.locator('.verdict-banner .counts')).toContainText('1 waived');
    await expect(screen.section('You live with')).toContainText('The nose reads the centre here');
  });

  await test.step('he walks the snap through', async () => {
    const walk = page.getByRole('region', { name: 'The snap, walked through' });
    const clock = walk.locator('.walk-clock');
    await hand.press(walk.getByRole('button', { name: 'Play' }));
    await expect.poll(async () => Number.parseFloat(await clock.innerText())).toBeGreaterThan(0.2);
    await hand.press(walk.getByRole('button', { name: 'Pause' }));
    const backer = walk.getByRole('button', { name: /: M is in the A gap left$/ });
    await hand.press(backer);
    await expect(backer).toHaveAttribute('aria-current', 'step');
    await hand.press(walk.getByRole('button', { name: 'To the start' }));
    await expect(clock).toHaveText('0.0 s');
  });

  await test.step('he prints it', async () => {
    await hand.press(button('Print…'));
    await hand.mark(dialog.getByRole('radio', { name: 'Line', exact: true }));
    await expect(dialog.getByRole('listitem')).toHaveText(['12 wing left, ball in the middle']);
    const download = page.waitForEvent('download');
    await hand.press(dialog.getByRole('button', { name: 'Make the PDF' }));
    const pdf = readPdf(await (await download).path());
    for (const words of [
      '12 wing left',
      'Marl + Alder',
      'ball in the middle',
      'Left end',
      'The nose reads the centre',
    ]) {
      expect(pdf.text).toContain(words);
    }
    // Real text and drawn lines: every font is in the file, and no picture is.
    expect(pdf.fonts.length).toBeGreaterThan(0);
    expect(pdf.fonts.filter(({ embedded }) => !embedded)).toEqual([]);
    expect(pdf.images).toBe(0);
    await hand.press(dialog.getByRole('button', { name: 'Close' }));
    await expect(dialog).toHaveCount(0);
    await expect(button('Print…')).toBeFocused();
  });
}

test('an idea from line-up to sheet, with the mouse', ({ page }) => goTheWholePath(page, mouse));

test('the same with the keyboard alone', ({ page }) => goTheWholePath(page, keyboard));

test.describe('on an upright tablet', () => {
  test.use({ hasTouch: true, viewport: { width: 820, height: 1180 } });
  test('the same with a finger that only taps', ({ page }) => goTheWholePath(page, finger));
});
