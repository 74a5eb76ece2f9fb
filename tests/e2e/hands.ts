/**
 * One coach, three hands: a mouse, a keyboard, a finger. A path through the app is told once and gone with each of them;
 * none may be unable to do a step (WCAG 2.2, 2.1.1 Keyboard and 2.5.7 Dragging Movements).
 */
import type { Locator, Page } from '@playwright/test';
import { expect, pixelOf, screenOf, tabTo } from './coach.ts';

/** A point of the field in yards: across to the defence's right, and into the backfield of the defence. */
export type Spot = readonly [x: number, y: number];

/** A man of the offence: how he is called aloud, and where he stands. */
export interface Man {
  readonly spoken: string;
  readonly at: Spot;
}

/** A man or a place to point at while a job is picked: its words in the list, and a point of it on the field. */
export interface Target {
  readonly words: string;
  readonly at: Spot;
}

/** What a hand can do. */
export interface Hand {
  /** Presses a button, a tab, or whatever else is there to be pressed. */
  readonly press: (target: Locator) => Promise<void>;
  /** Chooses in a list, by the start of the words. */
  readonly choose: (list: Locator, words: string) => Promise<void>;
  /** Chooses one of a few that stand side by side. */
  readonly mark: (radio: Locator) => Promise<void>;
  readonly fill: (field: Locator, words: string) => Promise<void>;
  /** Moves a man of the offence sideways, by what this hand does best; he ends within a third of a yard of the place. */
  readonly moveMan: (man: Man, x: number) => Promise<void>;
  /** Points at a man and then at a place, to pick his job. */
  readonly pick: (man: Target, place: Target) => Promise<void>;
  readonly undo: () => Promise<void>;
}

/** How to begin with a hand on a page. */
export type HandOn = (page: Page) => Hand;

/** The whole words of the option that starts so. */
async function optionOf(list: Locator, words: string): Promise<string> {
  const options = await list.locator('option').allTextContents();
  const found = options.find((option) => option.startsWith(words));
  if (found === undefined) throw new Error(`No “${words}” among ${options.join('; ')}`);
  return found;
}

const fieldOf = (page: Page): Locator => page.locator('.field-stage');

/** Points at a spot of the field that is on the screen. */
async function onField(page: Page, at: Spot, press: (x: number, y: number) => Promise<void>): Promise<void> {
  await fieldOf(page).scrollIntoViewIfNeeded();
  const { x, y } = await pixelOf(page, ...at);
  await press(x, y);
}

/** Points at a man, then at a place, once the field is there to be picked from. */
async function pickOnField(
  page: Page,
  man: Target,
  place: Target,
  press: Parameters<typeof onField>[2],
): Promise<void> {
  await expect(page.locator('.pick-layer')).toBeVisible();
  await onField(page, man.at, press);
  await onField(page, place.at, press);
}

/** The lists that pick what the field picks. */
const pickLists = (page: Page) => ({
  man: page.getByLabel('Man', { exact: true }),
  place: page.getByLabel('Place', { exact: true }),
});

/** Drags on the field, clicks everything else. */
export const mouse: HandOn = (page) => {
  const click = (x: number, y: number): Promise<void> => page.mouse.click(x, y);
  return {
    press: (target) => target.click(),
    // The browser's own list opens outside of the page, where a test has no mouse.
    choose: async (list, words) => {
      await list.selectOption({ label: await optionOf(list, words) });
    },
    mark: (radio) => radio.locator('xpath=..').click(),
    fill: (field, words) => field.fill(words),
    moveMan: async ({ at: [x, y] }, to) => {
      await fieldOf(page).scrollIntoViewIfNeeded();
      const [a, b] = [await pixelOf(page, x, y), await pixelOf(page, to, y)];
      await page.mouse.move(a.x, a.y);
      await page.mouse.down();
      await page.mouse.move(b.x, b.y, { steps: 6 });
      await page.mouse.up();
    },
    pick: (man, place) => pickOnField(page, man, place, click),
    undo: () => page.getByRole('button', { name: 'Undo' }).click(),
  };
};

/** Taps, and nothing else: a man is moved by being pressed and then put down. */
export const finger: HandOn = (page) => {
  const tap = (x: number, y: number): Promise<void> => page.touchscreen.tap(x, y);
  return {
    press: (target) => target.tap(),
    choose: async (list, words) => {
      await list.tap();
      await list.selectOption({ label: await optionOf(list, words) });
    },
    mark: (radio) => radio.locator('xpath=..').tap(),
    fill: async (field, words) => {
      await field.tap();
      await expect(field).toBeFocused();
      await page.keyboard.insertText(words);
    },
    moveMan: async ({ at }, to) => {
      await onField(page, at, tap);
      await page.getByRole('button', { name: 'Place by click' }).tap();
      await onField(page, [to, at[1]], tap);
      await expect(page.getByRole('button', { name: 'Place by click' })).toBeVisible();
    },
    pick: (man, place) => pickOnField(page, man, place, tap),
    undo: () => page.getByRole('button', { name: 'Undo' }).tap(),
  };
};

/** Never points. */
export const keyboard: HandOn = (page) => {
  const press = async (target: Locator): Promise<void> => {
    await tabTo(page, target);
    await page.keyboard.press('Enter');
  };
  const choose = async (list: Locator, words: string): Promise<void> => {
    await tabTo(page, list);
    await page.keyboard.type(words);
    await expect(list.locator('option:checked')).toHaveText(await optionOf(list, words));
  };
  return {
    press: async (target) => {
      // Of tabs only the chosen one is reached by Tab; the arrow keys go on from there.
      if ((await target.getAttribute('role')) !== 'tab') return press(target);
      await tabTo(page, target.locator('xpath=../*[@aria-selected="true"]'));
      for (let tabs = 0; tabs < 8 && (await target.getAttribute('aria-selected')) !== 'true'; tabs += 1) {
        await page.keyboard.press('ArrowRight');
      }
    },
    choose,
    mark: async (radio) => {
      await tabTo(page, radio.locator('xpath=ancestor::fieldset').getByRole('radio', { checked: true }));
      for (let steps = 0; steps < 8 && !(await radio.isChecked()); steps += 1) await page.keyboard.press('ArrowRight');
    },
    fill: async (field, words) => {
      await tabTo(page, field);
      await page.keyboard.press('Control+a');
      await page.keyboard.type(words);
    },
    moveMan: async ({ spoken, at: [x] }, to) => {
      const him = screenOf(page).man(`Offence, ${spoken}`);
      await tabTo(page, page.locator('.player[tabindex="0"]'));
      await page.keyboard.press('End');
      for (let men = 0; men < 22 && !(await isFocused(him)); men += 1) await page.keyboard.press('PageUp');
      await expect(him).toBeFocused();
      const key = to < x ? 'ArrowLeft' : 'ArrowRight';
      const far = Math.abs(to - x);
      for (let yards = 1; yards <= far; yards += 1) await page.keyboard.press(`Shift+${key}`);
      for (let quarters = 1; quarters <= (far % 1) * 4; quarters += 1) await page.keyboard.press(key);
    },
    pick: async (man, place) => {
      const lists = pickLists(page);
      await choose(lists.man, man.words);
      await choose(lists.place, place.words);
    },
    undo: () => page.keyboard.press('Control+z'),
  };
};

const isFocused = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement);
