import { expect, openApp, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

/** The colour of the field's first layer in its corner, where nothing is drawn. */
const groundOf = (page: Parameters<typeof openApp>[0]): Promise<string> =>
  page.locator('.field-frame').evaluate((frame) => getComputedStyle(frame).backgroundColor);
const lookPicture = (page: Parameters<typeof openApp>[0]): Promise<string | null> =>
  page.locator('.look-card img').first().getAttribute('src');

test('the theme is chosen in the head, changes page and pictures, and is kept on the device', async ({ page }) => {
  await openApp(page);
  const html = page.locator('html');
  await expect(html).toHaveAttribute('data-theme', 'light');
  const [ground, picture] = [await groundOf(page), await lookPicture(page)];
  await page.getByLabel('Light or dark').selectOption({ label: 'Dark' });
  await expect(html).toHaveAttribute('data-theme', 'dark');
  expect(await groundOf(page)).not.toBe(ground);
  expect(await lookPicture(page)).not.toBe(picture);
  await page.reload();
  await expect(page.locator('.field-stage canvas').first()).toBeVisible();
  await expect(html).toHaveAttribute('data-theme', 'dark');
  await expect(page.getByLabel('Light or dark')).toHaveValue('dark');
  await page.getByLabel('Light or dark').selectOption({ label: 'Projector' });
  const size = await page.locator('body').evaluate((body) => Number.parseFloat(getComputedStyle(body).fontSize));
  expect(size).toBeGreaterThanOrEqual(18);
});

test('a page to be printed stays black on white in the dark', async ({ page }) => {
  await openApp(page);
  await page.getByLabel('Light or dark').selectOption({ label: 'Dark' });
  await page.getByRole('button', { name: 'Print…' }).click();
  const preview = page.getByRole('dialog').locator('.print-preview img').first();
  await expect(preview).toHaveCSS('background-color', 'rgb(255, 255, 255)');
  await expect(preview).toHaveAttribute('src', /%23000000/);
});

test('as the device says, and as it says next', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openApp(page);
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await page.emulateMedia({ colorScheme: 'light' });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'light');
});

test('on a projector the heads of page and field keep to their lines, on the small ones as well', async ({ page }) => {
  await openApp(page);
  await page.getByLabel('Light or dark').selectOption({ label: 'Projector' });
  const [head, turn] = [page.locator('.board-head'), page.getByRole('button', { name: 'Turn the board' })];
  const heightOf = async (part: string): Promise<number> => (await page.locator(part).boundingBox())?.height ?? NaN;
  for (const [width, height] of [
    [1440, 900],
    [1280, 800],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    const button = (await turn.boundingBox())?.height ?? NaN;
    expect(await heightOf('.view-tools'), `tools at ${width}`).toBe(button);
    expect(await heightOf('.walk-line'), `walk at ${width}`).toBe(button);
    expect(await heightOf('.app-header'), `page at ${width}`).toBeLessThan(2 * button);
    const cut = await head.locator('h2').evaluate((name) => name.scrollWidth - name.clientWidth);
    expect(cut, `name at ${width}`).toBeLessThanOrEqual(0);
  }
});

test('where nothing can be kept it is still chosen', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new Error('shut off');
      },
    });
  });
  await openApp(page);
  await page.getByLabel('Light or dark').selectOption({ label: 'Projector' });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'projector');
});
