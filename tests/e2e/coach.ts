/**
 * What the browser tests share: a page that may not complain, the places of the screen by their names, and the field by
 * yards. Names of looks, fronts and pressures are those of the demo playbook, which is invented.
 */
import { readFileSync } from 'node:fs';
import { expect as plainExpect, test as base, type Locator, type Page } from '@playwright/test';

/** Generous: a slow machine is not a failed test. */
export const expect = plainExpect.configure({ timeout: 20_000 });

/** A test whose page must not log an error, throw, or ask for anything from elsewhere. */
export const test = base.extend({
  page: async ({ page, baseURL }, use) => {
    const complaints = watch(page, baseURL ?? '');
    await page.addInitScript(skipFirstSteps);
    await use(page);
    expect(complaints).toEqual([]);
  },
});

/** Every test is a first visit; only the test of the first steps wants to see them. */
function skipFirstSteps(): void {
  if (sessionStorage.getItem('first-steps-wanted') === null) localStorage.setItem('gapwright-first-steps', 'over');
}

/** Collects what a page complains of, for tests that open a second one. */
export function watch(page: Page, baseURL: string): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    const text = message.text();
    // The tests' own doing, but for the one that works without a network.
    if (text === 'Service Worker registration blocked by Playwright') return;
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(text);
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(baseURL)) complaints.push(request.url());
  });
  return complaints;
}

/** The demo playbook as it lies in the repository. */
export const demoText = readFileSync(new URL('../../demo-data/playbook.json', import.meta.url), 'utf8');

/** Opens the app and waits until the field is drawn. */
export async function openApp(page: Page): Promise<void> {
  await page.goto('./');
  await expect(page.locator('.field-stage canvas').first()).toBeVisible();
}

/** The parts of the screen a coach looks at. */
export function screenOf(page: Page) {
  return {
    verdict: page.locator('.verdict-banner strong'),
    saved: page.locator('.saved-state'),
    notice: page.locator('.notice'),
    lineman: (name: string): Locator => page.locator('.lineman-table tbody tr').filter({ hasText: name }),
    jobOf: (name: string): Locator => page.locator('.job-table tbody tr').filter({ hasText: name }),
    lookCard: (name: string): Locator => page.locator('.look-card').filter({ hasText: name }),
    man: (start: string): Locator => page.getByRole('button', { name: new RegExp(`^${start},`) }),
    card: page.locator('.man-card'),
    section: (title: string): Locator =>
      page.locator('.section').filter({ has: page.getByRole('heading', { name: title, exact: true }) }),
    finding: (title: string): Locator => page.locator('.finding').filter({ hasText: title }),
  };
}

/** Unfolds a part of the report. */
export async function unfold(page: Page, title: string): Promise<Locator> {
  const section = screenOf(page).section(title);
  await section.locator('summary').first().click();
  return section;
}

/** A point of the field, given in yards, in pixels of the page. */
export async function pixelOf(page: Page, x: number, y: number): Promise<{ readonly x: number; readonly y: number }> {
  const stage = page.locator('.field-stage');
  const box = await stage.boundingBox();
  if (box === null) throw new Error('The field is not on the screen');
  const number = async (name: string): Promise<number> => Number(await stage.getAttribute(name));
  const scale = await number('data-scale');
  return { x: box.x + (await number('data-ball-x')) + x * scale, y: box.y + (await number('data-ball-y')) + y * scale };
}

/** Where the selected man stands, from his card: yards across, and yards off the ball. */
export async function spotOf(page: Page): Promise<{ readonly x: number; readonly depth: number }> {
  const value = async (label: 'Across' | 'Depth'): Promise<number> =>
    Number(await page.getByRole('spinbutton', { name: label }).inputValue());
  return { x: await value('Across'), depth: await value('Depth') };
}

/** Presses Tab, or Shift and Tab, until that element has the focus, as a coach without a mouse does. */
export async function tabTo(page: Page, target: Locator, most = 200): Promise<void> {
  for (let presses = 0; presses < most; presses += 1) {
    const way = await target.evaluate((element) => {
      const focused = document.activeElement;
      if (element === focused) return null;
      const behind = (focused ?? element).compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING;
      return behind ? 'Shift+Tab' : 'Tab';
    });
    if (way === null) return;
    await page.keyboard.press(way);
  }
  throw new Error(`${most} Tabs did not reach ${String(target)}`);
}
