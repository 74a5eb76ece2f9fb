/**
 * What a screen reader has of the board and the report: landmarks, headings and controls in the order a coach reads them, and
 * what is read out when something changes. Roles and names are those of WAI-ARIA 1.2 and "HTML Accessibility API Mappings".
 */
import type { Page } from '@playwright/test';
import { expect, openApp, pixelOf, screenOf, spotOf, test } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

/** Everything that has been read out since it was last asked. */
async function heard(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const said = (document.body.dataset['heard'] ?? '').split('\n').filter((words) => words !== '');
    document.body.dataset['heard'] = '';
    return said;
  });
}

/** Listens to the live regions of the page, those that are there now and those to come. */
async function listen(page: Page): Promise<void> {
  await page.evaluate(() => {
    const LIVE = '[role=status], [role=alert], [aria-live=polite], [aria-live=assertive]';
    new MutationObserver((changes) => {
      const regions = changes.map(({ target }) =>
        (target instanceof Element ? target : target.parentElement)?.closest(LIVE),
      );
      for (const region of new Set(regions)) {
        const words = region?.textContent ?? '';
        if (words !== '') document.body.dataset['heard'] = `${document.body.dataset['heard'] ?? ''}\n${words}`;
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

test('board and report are read in the order of the work: the call, the men, the field, the looks, the verdict', async ({
  page,
}) => {
  await openApp(page);
  await expect(page.locator('.look-card .verdict-word svg')).not.toHaveCount(0);

  // Each snapshot names, in this order, what must be there; other things may stand between.
  await expect(page.locator('body')).toMatchAriaSnapshot(`
    - banner:
      - heading "Gapwright" [level=1]
      - navigation "Screens":
        - button "Board"
        - button "Playbook"
        - button "Whole menu"
        - button "Quiz"
      - combobox "Light or dark"
      - button "Undo" [disabled]
      - button "Redo" [disabled]
      - button "Print…"
    - main:
      - region "The call":
        - heading "The call" [level=2]
        - combobox "Kept call"
        - combobox "Front"
        - combobox "First pressure"
        - combobox "Second pressure"
        - group "How the two go together"
        - combobox "The second goes"
        - combobox "How many come"
        - combobox "Coverage behind it"
        - heading "Against" [level=2]
        - combobox "Look"
        - group /Ball on/
      - region "Players on the field":
        - heading "Players on the field" [level=2]
        - group "Players on the field"
      - region "11 doubles, tight end flexed right":
        - heading "11 doubles, tight end flexed right" [level=2]
        - text: Stop
        - group "How much of the field"
        - group "Tools of the field"
        - region "The snap, walked through":
          - heading "The snap, walked through" [level=3]
          - slider "Time after the snap"
          - list "What happens when, by estimate"
        - list "Who has each run gap"
        - region "This call in every look":
          - heading "This call in every look" [level=2]
          - list "How many looks have which verdict"
          - radiogroup "Looks"
      - region "Report":
        - heading "Report" [level=2]
        - paragraph:
          - strong: "Stop: do not install"
        - region "Findings":
          - heading "Findings" [level=3]
        - 'region "The line: what each pressure says"':
          - 'heading "The line: what each pressure says" [level=3]'
  `);
  await expect(page.getByRole('region', { name: 'Report' })).toMatchAriaSnapshot(`
    - heading "Report" [level=2]
    - region "Findings":
      - heading "Findings" [level=3]
      - group "Findings to show"
      - heading /Stops the call/ [level=4]
      - list /Stop/:
        - listitem:
          - 'heading "Stop: A lineman is told two jobs" [level=5]'
          - paragraph: "N is told two things: Sluice says slant to the A gap right, Weir says slant to the A gap left"
          - list:
            - listitem:
              - button /^Turn Weir opposite the first/
          - button /^Show on the field/
          - button /^Live with it…/
          - group: /Why/
      - heading /Good to know/ [level=4]
    - 'region "The line: what each pressure says"':
      - table "What each pressure tells each lineman":
        - rowgroup:
          - row:
            - columnheader "Man"
            - columnheader /First says/
            - columnheader /Second says/
            - columnheader "Verdict"
        - rowgroup:
          - row /Left end/
          - row /Nose Slant to the A gap right Slant to the A gap left Two jobs/:
            - rowheader "N Nose"
          - row /Right end/
    - group:
      - heading "All eleven" [level=3]
    - group:
      - heading "Coverage" [level=3]
  `);
  await expect(page.getByRole('group', { name: 'Players on the field' })).toMatchAriaSnapshot(`
    - button /^Defence, LE, Left end, 4i left\\. Loop to the C gap left/
    - button /^Defence, N, Nose, 0\\. Slant to the A gap right/
    - button /^Defence, RE, Right end, 4i right/
    - button /^Offence, the receiver X, 14 yards left, on the line/
    - button /^Offence, the passer, over the ball/
  `);
});

test('headings never leave a level out, and every screen has one of the first', async ({ page }) => {
  await openApp(page);
  for (const screen of ['Board', 'Playbook', 'Whole menu', 'Quiz']) {
    await page.getByRole('button', { name: screen, exact: true }).click();
    await expect(page.getByRole('main').getByRole('heading').first()).toBeAttached();
    const levels = await page
      .getByRole('heading')
      .evaluateAll((headings) => headings.map((heading) => Number(heading.tagName.slice(1))));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    const skipped = levels.filter((level, at) => level > (levels[at - 1] ?? 0) + 1);
    expect(skipped, `${screen}: ${levels.join(' ')}`).toEqual([]);
  }
});

test('nothing is read out while a man is dragged; when he is let go the spot, the verdict and its count are', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  await page.getByLabel('Kept call').selectOption({ label: 'Osier' });
  await screen.man('Defence, LE').click();
  const from = await spotOf(page);
  const start = await pixelOf(page, from.x, from.depth);
  const end = await pixelOf(page, from.x, 0);
  // Until what was read out of the choices above has been.
  await expect(page.locator('.man-card [role=status]')).toContainText('LE:');
  await page.waitForTimeout(1_000);
  await listen(page);

  await test.step('in hand, even held still: silence', async () => {
    await page.mouse.move(start.x, start.y);
    await page.mouse.down();
    await page.mouse.move(end.x, end.y, { steps: 6 });
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await page.waitForTimeout(1_200);
    expect(await heard(page)).toEqual([]);
  });

  await test.step('let go: each thing once', async () => {
    await page.mouse.up();
    await expect(page.locator('.verdict-banner [role=status]')).toContainText('Stop: do not install');
    await expect(page.locator('.man-card [role=status]')).toContainText('0.00 deep');
    const said = await heard(page);
    expect(said.filter((words) => /^Stop: do not install\. \d+ stops?/.test(words))).toHaveLength(1);
    expect(said.filter((words) => /^LE: .*0\.00 deep/.test(words))).toHaveLength(1);
  });

  await test.step('undone: what was, and the verdict again; the same words twice are read twice', async () => {
    const undo = page.getByRole('button', { name: 'Undo' });
    await undo.click();
    await expect(screen.notice).toHaveRole('status');
    await expect(screen.notice).toContainText('Undone: moved LE (Left end)');
    await expect(page.locator('.verdict-banner [role=status]')).not.toContainText('Stop: do not install');
    expect((await heard(page)).filter((words) => words.startsWith('Undone: moved LE'))).toHaveLength(1);
    await page.getByRole('button', { name: 'Redo' }).click();
    await undo.click();
    expect((await heard(page)).filter((words) => words.startsWith('Undone: moved LE'))).toHaveLength(1);
  });
});
