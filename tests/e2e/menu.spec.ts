/** The whole menu: the grid against the board, what goes with a pressure, what is checked again. How usable it stays: menuSpeed. */
import { openDocument, saveDocument } from '../../src/document/index.ts';
import { demoText, expect, openApp, screenOf, test } from './coach.ts';
import type { Page } from '@playwright/test';

/** A part of the demo that is checked in a moment: six calls, eight looks. */
function smallMenu(): string {
  const demo = openDocument(demoText);
  if (!demo.ok) throw new Error('The demo playbook does not open');
  const { calls, fronts, pressures, ...rest } = demo.value;
  const looks = rest.looks.slice(0, 8);
  const kept = (look: string): boolean => looks.some(({ id }) => id === look);
  return saveDocument({
    ...rest,
    looks,
    calls: calls.slice(0, 6).map((call) => ({ ...call, waivers: [] })),
    fronts: fronts.map((front) => ({ ...front, byHand: front.byHand.filter(({ look }) => kept(look)) })),
    pressures: pressures.map((each) => ({ ...each, notAgainst: each.notAgainst.filter(kept) })),
    checkOuts: [],
    opponents: [],
  });
}

async function openMenu(page: Page, playbook: 'small' | 'whole' | 'kept' = 'small'): Promise<void> {
  await openApp(page);
  if (playbook === 'small') {
    await page
      .locator('header input[type="file"]')
      .setInputFiles({ name: 'small.json', mimeType: 'application/json', buffer: Buffer.from(smallMenu()) });
    await expect(page.locator('.notice')).toContainText('Opened small.json');
  }
  await page.getByRole('button', { name: 'Whole menu' }).click();
  await expect(page.getByRole('grid')).toBeVisible();
}

/** Checking a menu takes seconds, on a loaded machine many. */
const CHECKED = { timeout: 120_000 };

async function whenChecked(page: Page): Promise<void> {
  await expect(page.locator('.menu-progress')).toContainText(/^[\d,]+ checked$/, CHECKED);
}

function cell(page: Page, row: string, column: number) {
  return page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: row, exact: true }) })
    .getByRole('gridcell')
    .nth(column);
}

test('a cell says what the board says when it is opened', async ({ page }) => {
  test.slow();
  await openMenu(page);
  await whenChecked(page);
  const looks = await page.getByRole('columnheader').allTextContents();
  const { verdict, lookCard } = screenOf(page);
  for (const column of [0, 1, 4]) {
    const words = (await cell(page, 'Sluice Weir', column).getAttribute('aria-label')) ?? '';
    await cell(page, 'Sluice Weir', column).click();
    await expect(page.getByLabel('Kept call')).toHaveValue('sluice-weir');
    await expect(lookCard(looks[column + 1] ?? 'no such look').getByRole('radio')).toBeChecked();
    const shown = /^\w+/.exec(words)?.[0] ?? '';
    await expect(verdict).toContainText(new RegExp(`^${shown === 'Clean' ? '(Clean|Nothing)' : shown}`));
    await page.getByRole('button', { name: 'Whole menu' }).click();
  }
});

test('every cell is as high as its row, whatever its verdict and the theme', async ({ page }) => {
  test.slow();
  await openMenu(page);
  await whenChecked(page);
  await page.getByLabel('Light or dark').selectOption({ label: 'Projector' });
  await expect(page.locator('.grid-body .cell-note').first()).toBeVisible();
  const heights = await page
    .locator('.grid-body .grid-row')
    .evaluateAll((rows) =>
      rows.flatMap((row) =>
        [...row.querySelectorAll('.grid-cell')].map((each) => each.clientHeight - row.clientHeight),
      ),
    );
  // A line below each.
  expect(new Set(heights)).toEqual(new Set([-1]));
});

test('arrow keys walk the grid, Enter opens the board, filters and order change what is seen', async ({ page }) => {
  test.slow();
  await openMenu(page);
  await whenChecked(page);
  await cell(page, 'Sluice Weir', 0).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  await expect(cell(page, 'Weir Osier', 1)).toBeFocused();
  await page.keyboard.press('Control+End');
  const grid = page.getByRole('grid');
  const columns = Number(await grid.getAttribute('aria-colcount'));
  await expect(page.locator('[role="gridcell"]:focus')).toHaveAttribute('aria-colindex', String(columns));
  await page.keyboard.press('Control+Home');
  await expect(cell(page, 'Sluice Weir', 0)).toBeFocused();

  await page.getByLabel('Rows', { exact: true }).selectOption('soundest');
  await expect(page.getByRole('rowheader').first()).not.toHaveText('Sluice Weir');
  await page.getByLabel('Personnel', { exact: true }).selectOption('10');
  expect(Number(await grid.getAttribute('aria-colcount'))).toBeLessThan(columns);
  await page.getByLabel('Check', { exact: true }).selectOption('gap.open');
  await expect(page.locator('.tally').getByText('Check: 0')).toBeVisible();

  await page.getByRole('gridcell').first().focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.field-stage canvas').first()).toBeVisible();
});

test('what goes with a pressure: the best partner first, and the looks where another does not fit', async ({
  page,
}) => {
  test.slow();
  await openMenu(page);
  await page.getByLabel('What goes with…', { exact: true }).check();
  await page.getByLabel('First pressure').selectOption('sluice');
  await whenChecked(page);
  const partners = page.locator('.partner');
  await expect(partners.first()).toContainText('Weir');
  await expect(partners.first()).toContainText('to the side opposite the first');
  // How much fits is told by words and by a shape: a square with a tick, one filled in part, an octagon.
  await expect(partners.first()).toContainText(/fits all \d+ looks/);
  await expect(partners.first().locator('.mark-clean')).toBeVisible();
  await expect(
    partners
      .filter({ hasText: /fits \d+ of/ })
      .first()
      .locator('.mark-part'),
  ).toBeVisible();
  await expect(partners.last()).toContainText(/fits none of \d+ looks/);
  await expect(partners.last().locator('.mark-stop')).toBeVisible();
  for (const name of ['Front', 'First pressure']) {
    const cut = await page.getByLabel(name, { exact: true }).evaluate((list: HTMLSelectElement) => {
      const given = list.offsetWidth;
      list.style.width = 'max-content';
      const missing = list.offsetWidth - given;
      list.style.width = '';
      return missing;
    });
    expect(cut, name).toBeLessThanOrEqual(0);
  }
  const misfit = partners.filter({ hasText: 'A lineman is told two jobs' }).first();
  const look = misfit.locator('.misfits button').first();
  const name = (await look.textContent()) ?? '';
  await look.click();
  const { verdict, lookCard, finding } = screenOf(page);
  await expect(verdict).toContainText('Stop');
  await expect(finding('A lineman is told two jobs').first()).toBeVisible();
  await expect(lookCard(name).getByRole('radio')).toBeChecked();
});

test('after an edit only what depends on it is checked again, and the grid shows it', async ({ page }) => {
  test.slow();
  await openMenu(page);
  await whenChecked(page);
  const before = await cell(page, 'Sluice Weir', 0).getAttribute('aria-label');
  expect(before).toContain('Stop');
  await cell(page, 'Sluice Weir', 0).click();
  // The mend the report offers first is the call's alone.
  await page
    .getByRole('button', { name: /Turn Weir opposite the first/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Whole menu' }).click();
  await whenChecked(page);
  await expect(cell(page, 'Sluice Weir', 0)).toHaveAttribute('aria-label', /^(Clean|Note)/);
});

test('checking can be stopped and gone on with', async ({ page }) => {
  test.slow();
  await openMenu(page, 'whole');
  await page.getByLabel('Pressure with pressure', { exact: true }).check();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.locator('.menu-progress')).toContainText('Stopped at');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(page.locator('.menu-progress')).toContainText('Checking');
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await page.getByLabel('Calls against looks', { exact: true }).check();
  await expect(page.locator('.menu-progress')).toContainText('Checking');
});

test('two workers find what one finds', async ({ page }) => {
  test.slow();
  /** Everything the grid says, and by how many workers, on a machine of so many cores. */
  const found = async (cores: number, playbook: 'small' | 'kept') => {
    await page.addInitScript((hardwareConcurrency) => {
      Object.defineProperty(navigator, 'hardwareConcurrency', { configurable: true, value: hardwareConcurrency });
    }, cores);
    await openMenu(page, playbook);
    await whenChecked(page);
    const names = await Promise.all(page.workers().map((worker) => worker.evaluate(() => self.name)));
    const workers = names.filter((name) => name === 'menu').length;
    const tally = await page.locator('.tally li').allTextContents();
    const cells = await page
      .getByRole('gridcell')
      .evaluateAll((all) => all.map((each) => each.getAttribute('aria-label')));
    return { workers, tally, cells, checked: await page.locator('.menu-progress').textContent() };
  };
  const byOne = await found(1, 'small');
  const byTwo = await found(3, 'kept');
  expect(byOne.cells).toHaveLength(6 * 8);
  expect([byOne.workers, byTwo.workers]).toEqual([1, 2]);
  expect({ ...byTwo, workers: 1 }).toEqual(byOne);
});

test('what changed between two calls is told room by room', async ({ page }) => {
  await openMenu(page, 'whole');
  await page.getByLabel('What changed', { exact: true }).check();
  await expect(page.getByText('Choose two calls, or a file')).toBeVisible();
  await page.getByLabel('Before', { exact: true }).selectOption('sluice');
  await page.getByLabel('Now', { exact: true }).selectOption('sluice-weir');
  const linebackers = page.getByRole('region', { name: 'Linebackers' });
  await expect(linebackers.getByRole('row').filter({ hasText: 'inside' }).first()).toBeVisible();
  await page.getByLabel('Now', { exact: true }).selectOption('sluice');
  await expect(page.getByText('Choose two calls, or a file')).toBeVisible();
});

test('a worker whose program is not there is said to have failed', async ({ browser, baseURL }) => {
  // A page of its own: the browser itself complains of a file that is not there.
  const page = await browser.newPage({ ...(baseURL === undefined ? {} : { baseURL }), serviceWorkers: 'block' });
  await page.addInitScript(() => {
    localStorage.setItem('gapwright-first-steps', 'over');
  });
  await page.route(/\/assets\/worker-.*\.js$/, (route) => route.abort());
  await openMenu(page, 'whole');
  await expect(page.locator('.menu-progress')).toHaveText(/The checking has failed: its program could not be loaded/);
  await page.close();
});
