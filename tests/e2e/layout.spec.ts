import { expect, openApp, screenOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
  [820, 1180],
] as const) {
  test(`nothing overlaps or sticks out at ${width} by ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openApp(page);
    await screenOf(page).man('Defence, N').click();
    await page.getByLabel('Kept call').selectOption({ label: 'Coppice or Bittern' });
    for (const summary of await page.locator('.section > summary').all()) await summary.click();
    const faults = await page.evaluate(() => {
      const clips = (box: Element): boolean =>
        getComputedStyle(box).overflowY !== 'visible' && box !== document.documentElement;
      // The part of an element that is not scrolled away above or below the edge of a box it lies in.
      const seen = (element: Element): { left: number; right: number; top: number; bottom: number } => {
        const { left, right, ...rest } = element.getBoundingClientRect().toJSON() as DOMRect;
        let { top, bottom } = rest;
        for (let box = element.parentElement; box !== null; box = box.parentElement) {
          if (!clips(box)) continue;
          const edge = box.getBoundingClientRect();
          top = Math.max(top, edge.top);
          bottom = Math.min(bottom, edge.bottom);
        }
        return { left, right, top, bottom };
      };
      // The box sideways beyond which an element cannot be seen, or only by scrolling sideways.
      const frame = (element: Element): { left: number; right: number } => {
        for (let box = element.parentElement; box !== null; box = box.parentElement) {
          if (clips(box)) return box.getBoundingClientRect();
        }
        return { left: 0, right: document.documentElement.clientWidth };
      };
      const shown = [
        ...document.querySelectorAll('button, select, input, summary, .field-stage, .gap-row, .verdict-banner'),
      ]
        .filter((element) => element.checkVisibility() && !element.matches('.unseen, .segment input'))
        .map((element) => ({ element, box: seen(element) }))
        .filter(
          ({ element, box }) =>
            box.right > box.left && box.bottom > box.top && element.closest('.strip-row, .moments') === null,
        );
      const name = (element: Element): string => `${element.className} ${(element.textContent || '').slice(0, 30)}`;
      const wide = shown
        .filter(({ element, box }) => box.left < frame(element).left - 1 || box.right > frame(element).right + 1)
        .map(({ element }) => `sticks out: ${name(element)}`);
      const over = shown.flatMap((a, index) =>
        shown
          .slice(index + 1)
          .filter(
            (b) =>
              !a.element.contains(b.element) &&
              !b.element.contains(a.element) &&
              Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left) > 1 &&
              Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top) > 1,
          )
          .map((b) => `${name(a.element)} over ${name(b.element)}`),
      );
      const sideways =
        document.documentElement.scrollWidth > document.documentElement.clientWidth ? ['scrolls sideways'] : [];
      // From a tablet on its side upwards only the parts scroll; a page that scrolls as well shows nothing below them.
      const { innerWidth, innerHeight } = window;
      const down =
        innerWidth >= 900 && document.documentElement.scrollHeight > innerHeight ? ['the page itself scrolls'] : [];
      return [...wide, ...over, ...sideways, ...down];
    });
    expect(faults).toEqual([]);
  });
}

test('a page that is longer than the screen opens at its top', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  await openApp(page);
  await expect(page.locator('.look-card .verdict-word svg')).not.toHaveCount(0);
  expect(await page.evaluate(() => window.scrollY)).toBe(0);
});
