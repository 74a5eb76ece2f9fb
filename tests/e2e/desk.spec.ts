/** The desk: fronts, coverages and roles changed on screen, and a playbook of one's own from scratch to its first call. */
import type { Locator, Page } from '@playwright/test';
import { expect, openApp, screenOf, spotOf, tabTo, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

async function openDesk(page: Page, tab: string): Promise<Locator> {
  await openApp(page);
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await page.getByRole('tab', { name: tab }).click();
  const desk = page.locator('.desk');
  // The editor is loaded when it is first opened, and moves what is below it.
  await expect(desk.locator('.editor')).toBeVisible();
  return desk;
}

/** The rules of the man whose card is open in the front's editor. */
const rulesOf = (desk: Locator): Locator => desk.locator('.editor-part .rule > summary');

test('an alignment rule is changed: the man moves and the report follows', async ({ page }) => {
  const desk = await openDesk(page, 'Fronts');
  const { man, jobOf } = screenOf(page);
  // Picked on the board's own list, his rules open in the desk.
  await man('Defence, LE').click();
  await expect(desk.getByRole('heading', { name: 'LE · Left end' })).toBeVisible();
  const before = await spotOf(page);
  const second = rulesOf(desk).nth(1);
  await expect(second).toHaveText('Else 4i: inside foot of the tackle, 1 yd off the ball');
  await second.click();
  const rule = desk.locator('.rule').nth(1);
  await rule.getByLabel('How').selectOption({ label: 'a man outside' });
  await rule.getByLabel('Depth').fill('1.5');
  await expect(second).toHaveText('Else wide 5: a man outside the tackle, 1.5 yd off the ball');
  await expect.poll(async () => (await spotOf(page)).x).toBeLessThan(before.x - 0.9);
  expect((await spotOf(page)).depth).toBe(1.5);
  await page.locator('.section > summary').filter({ hasText: 'All eleven' }).click();
  await expect(jobOf('Left end')).toContainText('wide 5');

  // What makes no sense is refused at the field, in words; what was typed stays, nothing is lost.
  await rule.getByLabel('Depth').fill('99');
  await expect(rule.getByRole('alert').filter({ hasText: 'A number from' })).toContainText('Until then it stays 1.5');
  await rule.getByLabel('Depth').fill('1.5');

  // Typing into one field was one step; the choice another.
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(second).toHaveText('Else 4i: inside foot of the tackle, 1 yd off the ball');
  await expect.poll(() => spotOf(page)).toEqual(before);
});

test('a spot by hand becomes a rule for the looks with that surface', async ({ page }) => {
  const desk = await openDesk(page, 'Fronts');
  const { man, card } = screenOf(page);
  await man('Defence, LE').click();
  const rules = await rulesOf(desk).count();
  await page.getByRole('spinbutton', { name: 'Across' }).fill('-3.3');
  await card.getByRole('button', { name: 'Make this hand a rule' }).click();
  await expect(rulesOf(desk)).toHaveCount(rules + 1);
  await expect(rulesOf(desk).first()).toContainText('wide 5: a man outside the tackle');
  await expect(card).toContainText('by his rule');
});

test('a new coverage from a copy, by keyboard only', async ({ page }) => {
  await openApp(page);
  await tabTo(page, page.getByRole('button', { name: 'Playbook', exact: true }));
  await page.keyboard.press('Enter');
  const tabs = page.getByRole('tab');
  await expect(tabs.first()).toBeVisible();
  await tabTo(page, tabs.first());
  for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Coverages' })).toHaveAttribute('aria-selected', 'true');
  const desk = page.locator('.desk');
  await tabTo(page, desk.getByRole('button', { name: 'Copy… the coverage' }));
  await page.keyboard.press('Enter');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('Three deep, mine');
  await page.keyboard.press('Enter');
  await expect(desk.getByRole('row', { name: 'Three deep, mine' })).toHaveAttribute('aria-selected', 'true');
  await expect(page.locator('.field-stage canvas').first()).toBeVisible();

  // Its first zone is opened, and moved to the other side.
  const zone = desk.locator('.rule > summary').first();
  const said = await zone.textContent();
  expect(said).toMatch(/call-side/i);
  await tabTo(page, zone);
  await page.keyboard.press('Enter');
  await tabTo(page, desk.getByLabel('Side of: Zone 1'));
  await page.keyboard.type('left');
  await expect(zone).not.toHaveText(said ?? '');
  await expect(zone).toHaveText(/left/i);

  // Its last man is taken away; the focus stays in the list.
  const told = desk.getByRole('button', { name: /^Take away man \d+ of what is told$/ });
  const men = await told.count();
  await tabTo(page, told.last(), 200);
  await page.keyboard.press('Enter');
  await expect(told).toHaveCount(men - 1);
  await expect(told.last()).toBeFocused();
});

test('a new entry is scrolled to in its list, whatever was sought before', async ({ page }) => {
  const desk = await openDesk(page, 'Pressures');
  await desk.getByRole('searchbox', { name: 'Find a pressure' }).fill('weir');
  await expect(desk.locator('.entries [role="row"]')).toHaveCount(1);
  await desk.getByRole('button', { name: 'New… pressure' }).click();
  await page.getByRole('textbox', { name: 'Its name' }).fill('Reedbed');
  await page.getByRole('button', { name: 'Make it' }).click();
  const row = desk.getByRole('row', { name: 'Reedbed' });
  await expect(row).toHaveAttribute('aria-selected', 'true');
  await expect(row).toBeInViewport({ ratio: 0.95 });
  await desk.getByRole('row', { name: 'Sluice' }).scrollIntoViewIfNeeded();
  await expect(row).not.toBeInViewport();
});

test('a role: a side rule that may not decide is refused in words, and stays as it was', async ({ page }) => {
  const desk = await openDesk(page, 'Roles');
  await desk.getByRole('row', { name: 'Strong outside backer', exact: true }).click();
  const said = desk.locator('.rule-said');
  await expect(said).toHaveText(/^Side: toward the tight end.*to the right$/);
  await desk.getByRole('button', { name: 'Take away step 4 of S' }).click();
  await expect(screenOf(page).notice).toContainText('would not know his side in every look');
  await expect(said).toHaveText(/to the right$/);
  await desk.getByLabel('Letter').fill('SAMS');
  await desk.getByLabel('Letter').press('Enter');
  await expect(desk.getByRole('alert').filter({ hasText: 'one or two letters' })).toBeVisible();
  await desk.getByLabel('Letter').fill('K');
  await desk.getByLabel('Letter').press('Enter');
  await expect(screenOf(page).man('Defence, K')).toBeVisible();
});

test('a playbook of one’s own, from scratch to a first combined call', async ({ page }) => {
  await openApp(page);
  const { verdict, notice, man } = screenOf(page);
  await page.getByRole('button', { name: 'More…' }).click();
  await page.getByLabel('A few letters of it').fill('Start my own');
  await expect(page.getByRole('menuitem')).toHaveCount(1);
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Start my own playbook' });
  await dialog.getByRole('button', { name: 'Start it' }).click();
  await expect(dialog.getByRole('alert')).toHaveText('A name for the team is needed');
  await dialog.getByLabel('Team').fill('Reed Marsh');
  await dialog.getByRole('radio', { name: 'field and boundary' }).check();
  await dialog.getByLabel('Nose').fill('T');
  await dialog.getByRole('button', { name: 'Start it' }).click();
  await expect(notice).toContainText('Undo brings back what was open');
  await expect(page.locator('.team-name')).toHaveText('Reed Marsh');
  await expect(man('Defence, T')).toBeVisible();
  await page.getByLabel('Kept call').selectOption({ label: 'Base' });
  await expect(verdict).not.toContainText('Stop');

  // Two of its pressures at once are a call of his own.
  await page.getByLabel('First pressure').selectOption({ label: 'Inside' });
  await page.getByLabel('Second pressure').selectOption({ label: 'Edge' });
  await page.getByRole('button', { name: 'Keep as call…' }).click();
  await page.getByRole('dialog').getByRole('textbox').fill('Inside edge');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Kept call').locator('option:checked')).toHaveText('Inside edge');

  for (const _step of ['the call', 'the start']) await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.team-name')).toHaveText('Alderfen Herons');
});

test('empty lists say what to do', async ({ page }) => {
  const desk = await openDesk(page, 'Fronts');
  await desk.getByLabel('Find a front').fill('zzz');
  await expect(desk.getByText('None is called that.')).toBeVisible();
});
