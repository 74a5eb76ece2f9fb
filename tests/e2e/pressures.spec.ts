/**
 * A coach writes a new pressure: by clicking men and places with the mouse, and with the keyboard alone. What comes of it,
 * and the same by touch, is in wholePath. Names are those of the demo playbook, which is invented.
 */
import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, openApp, pixelOf, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 90_000 });

const editor = (page: Page): Locator => page.locator('.editor');
const panel = (page: Page): Locator => page.locator('.pick-panel');
const told = (page: Page): Locator => editor(page).locator('.told-list > li > details > summary');
const tellHim = (page: Page): Locator => panel(page).getByRole('button', { name: 'Tell him' });
const pickButton = (page: Page): Locator =>
  editor(page).getByRole('button', { name: 'Pick on the field', exact: true });

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Where the men stand in the first look against the first front, in yards: the nose, a backer off the ball, a safety. */
const NOSE = [0, 1] as const;

/** Where a defender stands, by his card. */
async function spotOf(page: Page, start: string): Promise<readonly [number, number]> {
  await screenOf(page).man(start).click();
  const value = async (label: 'Across' | 'Depth'): Promise<number> =>
    Number(await page.getByRole('spinbutton', { name: label }).inputValue());
  return [await value('Across'), await value('Depth')];
}

/** The middle of something the picking lights, in pixels of the page. */
async function middleOf(lit: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await lit.boundingBox();
  if (box === null) throw new Error('It is not on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 3 };
}

async function makePressure(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await page.getByRole('button', { name: 'New… pressure' }).click();
  await page.getByRole('textbox', { name: 'Its name' }).fill(name);
  await page.getByRole('button', { name: 'Make it' }).click();
  await expect(editor(page).getByRole('heading', { name })).toBeVisible();
  await expect(editor(page)).toContainText('Nobody yet');
}

/** By clicks: the nose to a gap, a backer around the edge, a safety to the deep middle, a spy. */
async function pickJobs(page: Page): Promise<void> {
  const point = (place: Spot): Promise<void> => page.mouse.click(...xy(place));
  const backer = await spotOf(page, 'Defence, S');
  const safety = await spotOf(page, 'Defence, FS');
  const inside = await spotOf(page, 'Defence, W');
  const gaps = page.locator('.pick-layer rect.pick-may');
  await pickButton(page).click();
  await expect(panel(page)).toContainText('Click a defender');
  await expect(page.locator('.pick-layer')).toBeVisible();

  await point(await pixelOf(page, ...NOSE));
  await expect(panel(page)).toContainText('Click a gap');
  // Six gaps without an attached tight end, left to right: C, B, A, A, B, C.
  await expect(gaps).toHaveCount(6);
  await point(await middleOf(gaps.nth(3)));
  await expect(panel(page).locator('.pick-said')).toContainText('N: slant to the call-side A gap');
  await tellHim(page).click();
  await expect(told(page)).toHaveText(['N: slant to the call-side A gap (line movement)']);

  await point(await pixelOf(page, ...backer));
  await point(await middleOf(gaps.nth(5)));
  await panel(page).getByRole('radio', { name: 'Rush, contain' }).check();
  await panel(page)
    .getByRole('radio', { name: /C gap right.*whatever the call$/ })
    .check();
  await expect(panel(page).locator('.pick-said')).toContainText('rush the C gap right; contain on a pass');
  await panel(page)
    .getByRole('radio', { name: /^Rush the call-side C gap/ })
    .check();
  await expect(panel(page).locator('.pick-said')).toContainText(
    'The call-side outside backer: rush the call-side C gap; contain on a pass',
  );
  await tellHim(page).click();

  await point(await pixelOf(page, ...safety));
  await point(await pixelOf(page, 0, 16));
  await expect(panel(page).locator('.pick-said')).toContainText('drop to the deep middle');
  await tellHim(page).click();

  await point(await pixelOf(page, ...inside));
  await point(await middleOf(page.locator('.pick-layer ellipse.pick-may').last()));
  await panel(page).getByRole('radio', { name: 'Spy' }).check();
  await tellHim(page).click();
  await expect(told(page)).toHaveCount(4);
  await panel(page).getByRole('button', { name: 'Stop picking' }).click();
  await expect(panel(page)).toBeHidden();
}

test('with the mouse; every job is one step of the history', async ({ page }) => {
  await openApp(page);
  await makePressure(page, 'Reedbed');
  await pickJobs(page);
  const axe = await new AxeBuilder({ page }).analyze();
  expect(axe.violations).toEqual([]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(told(page)).toHaveCount(3);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(told(page)).toHaveCount(4);
});

test('the pick panel keeps its promises: Escape goes back a step, nothing is changed before it is confirmed', async ({
  page,
}) => {
  await openApp(page);
  await makePressure(page, 'Reedbed');
  await pickButton(page).click();
  await expect(page.locator('.pick-layer')).toBeVisible();
  await page.mouse.click(...xy(await pixelOf(page, ...NOSE)));
  await page.mouse.click(...xy(await middleOf(page.locator('.pick-layer rect.pick-may').nth(2))));
  await expect(tellHim(page)).toBeVisible();
  const axe = await new AxeBuilder({ page }).analyze();
  expect(axe.violations).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(panel(page)).toContainText('Click a gap');
  await page.keyboard.press('Escape');
  await expect(panel(page)).toContainText('Click a defender');
  await page.keyboard.press('Escape');
  await expect(panel(page)).toBeHidden();
  await expect(editor(page)).toContainText('Nobody yet');
});

test('a man who is clicked before the field is ready to be picked from is picked, and not selected', async ({
  page,
}) => {
  let letIn = (): void => undefined;
  const late = new Promise<void>((resolve) => {
    letIn = resolve;
  });
  await page.route('**/PickOverlay-*.js', async (route) => {
    await late;
    await route.continue();
  });
  await openApp(page);
  await makePressure(page, 'Reedbed');
  await screenOf(page).man('Defence, W').click();
  await pickButton(page).click();
  await expect(panel(page)).toContainText('Click a defender');
  await page.mouse.click(...xy(await pixelOf(page, ...NOSE)));
  await expect(panel(page)).toContainText('Click a gap');
  await expect(page.locator('.pick-layer')).toHaveCount(0);
  letIn();
  await expect(page.locator('.pick-layer .pick-man')).toBeVisible();
  await panel(page).getByRole('button', { name: 'Stop picking' }).click();
  await expect(screenOf(page).card.getByRole('heading')).toHaveText(/^W\b/);
});

test('with the keyboard alone: picked by lists, told by a form', async ({ page }) => {
  await openApp(page);
  await press(page, page.getByRole('button', { name: 'Playbook', exact: true }));
  await press(page, page.getByRole('button', { name: 'New… pressure' }));
  await page.keyboard.type('Reedbed');
  await page.keyboard.press('Enter');
  await expect(editor(page).getByRole('heading', { name: 'Reedbed' })).toBeVisible();

  await press(page, pickButton(page));
  await expect(panel(page).getByLabel('Man', { exact: true })).toBeFocused();
  await choose(page, panel(page).getByLabel('Man', { exact: true }), 'N (Nose)');
  await choose(page, panel(page).getByLabel('Place', { exact: true }), 'A gap right');
  await press(page, tellHim(page));
  await expect(told(page)).toHaveText(['N: slant to the call-side A gap (line movement)']);
  await press(page, panel(page).getByRole('button', { name: 'Stop picking' }));

  await press(page, editor(page).getByRole('button', { name: 'Tell a man…' }));
  const form = editor(page).getByRole('group', { name: 'Tell a man' });
  await choose(page, form.getByLabel('Who', { exact: true }), 'the call-side outside backer');
  await choose(page, form.getByLabel('What he does'), 'Rush and contain');
  await choose(page, form.getByLabel('Gap of the new man', { exact: true }), 'edge gap');
  await expect(form.locator('.rule-said')).toContainText('rush the call-side edge gap; contain on a pass');
  await press(page, form.getByRole('button', { name: 'Tell him', exact: true }));
  await expect(told(page)).toHaveCount(2);

  // Another job where the end man is detached, asked before the one that always holds.
  await told(page).nth(1).focus();
  await page.keyboard.press('Enter');
  await press(page, editor(page).getByRole('button', { name: /^Another job in some looks/ }));
  await expect(told(page).nth(1)).toContainText('if the end man on my side is detached');

  await choose(page, editor(page).getByLabel('The call goes'), 'away from the field');
  await expect(editor(page)).toContainText('Call side: away from the field, then to the right.');
  await page.getByRole('button', { name: 'Undo' }).focus();
  await page.keyboard.press('Enter');
  // The entries the arrow keys passed on their way are no steps of their own.
  await expect(editor(page)).toContainText('Call side: toward the tight end, then to the right.');
});

test('what stands beside the rush is changed apart from it', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Playbook', exact: true }).click();
  await expect(told(page)).toHaveCount(4);
  const sentences = await told(page).allTextContents();
  await editor(page).getByLabel('Coverage behind it').selectOption({ index: 2 });
  await editor(page).getByLabel('How many come').fill('6');
  await editor(page).getByLabel('Put in on day').fill('99');
  await expect(editor(page).getByRole('alert').filter({ hasText: 'from 1 to 60' })).toBeVisible();
  await editor(page).getByLabel('Put in on day').fill('12');
  await editor(page).getByLabel('Tags').fill('third down, edge');
  await editor(page).getByLabel('Tags').press('Enter');
  await expect(editor(page)).toContainText('6 come; put in on day 12.');
  expect(await told(page).allTextContents()).toEqual(sentences);
  await editor(page).getByText('Run against every look').click();
  await editor(page).getByRole('checkbox').last().check();
  await expect(editor(page)).toContainText('Not run against');
});

function xy({ x, y }: Spot): [number, number] {
  return [x, y];
}

async function press(page: Page, button: Locator): Promise<void> {
  await button.focus();
  await page.keyboard.press('Enter');
}

/** Goes through a list by the arrow keys until that entry is chosen. */
async function choose(page: Page, list: Locator, label: string): Promise<void> {
  await list.focus();
  await page.keyboard.press('Home');
  for (let presses = 0; presses < 80; presses += 1) {
    const now = await list.evaluate((each) => (each instanceof HTMLSelectElement ? each.selectedOptions[0]?.text : ''));
    if (now === label) return;
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`${label} is not in the list`);
}
