import AxeBuilder from '@axe-core/playwright';
import { expect, openApp, test } from './coach.ts';

test.describe.configure({ timeout: 120_000 });

test('a room is quizzed: questions by mouse, marked with the reason, and the result is kept until it is forgotten', async ({
  page,
}) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Quiz', exact: true }).click();
  await page.getByRole('radio', { name: 'Linebackers' }).check({ force: true });
  await page.getByRole('radio', { name: '5', exact: true }).check({ force: true });
  await page.getByRole('button', { name: 'Begin' }).click();
  for (let number = 1; number <= 5; number += 1) {
    await expect(page.getByText(`Question ${number} of 5`)).toBeVisible();
    await expect(page.getByRole('heading', { name: /^You are [A-Z]{1,2}, the / })).toBeVisible();
    await page.getByRole('group', { name: 'Or pick it here' }).getByRole('button').first().click();
    await expect(page.locator('.quiz-mark')).toHaveText(/^\s*(Right: |No, not .*: )./);
    await page.getByRole('button', { name: number === 5 ? 'See the result' : 'Next question' }).click();
  }
  await expect(page.getByRole('heading', { name: /^\d of 5 right$/ })).toBeVisible();
  await page.getByRole('button', { name: 'Another quiz' }).click();
  await expect(page.getByText(/Linebackers: \d of 5/)).toBeVisible();
  await page.getByRole('button', { name: 'Forget all results' }).click();
  await expect(page.getByText(/Linebackers: \d of 5/)).toHaveCount(0);
});

test('a question is answered and marked from the keyboard; nothing is wrong with it for axe', async ({ page }) => {
  await openApp(page);
  await page.keyboard.press('Alt+4');
  const begin = page.getByRole('button', { name: 'Begin' });
  await begin.focus();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.keyboard.press('Enter');
  const choices = page.getByRole('group', { name: 'Or pick it here' }).getByRole('button');
  await choices.nth(1).focus();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Next question' })).toBeFocused();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.keyboard.press('Enter');
  await expect(page.getByText('Question 2 of 10')).toBeVisible();
});

test('a gap is pointed at on the field', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Quiz', exact: true }).click();
  await page.getByRole('button', { name: 'Begin' }).click();
  const asksGap = page.getByText('Point to your gap.');
  // Questions come by chance: some ask for the pass.
  while (!(await asksGap.isVisible())) {
    await page.getByRole('group', { name: 'Or pick it here' }).getByRole('button').first().click();
    await page.getByRole('button', { name: 'Next question' }).click();
  }
  await expect(page.locator('.pick-layer rect.pick-may').first()).toBeVisible();
  const box = await page.locator('.pick-layer rect.pick-may').first().boundingBox();
  if (box === null) throw new Error('No gap is drawn');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect(page.locator('.pick-name')).toHaveText(/^the [A-G] gap (left|right)$/);
  await page.mouse.down();
  await page.mouse.up();
  await expect(page.locator('.quiz-mark')).toHaveText(/the [A-G] gap (left|right)/);
});
