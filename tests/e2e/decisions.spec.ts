import type { Page } from '@playwright/test';
import { expect, openApp, pixelOf, screenOf, spotOf, test, unfold } from './coach.ts';

// Generous: a slow machine is not a failed test.
test.describe.configure({ timeout: 120_000 });

/** Stands in a kept call, against a look. */
async function call(page: Page, name: string, look: string): Promise<void> {
  await page.getByLabel('Kept call').selectOption({ label: name });
  await screenOf(page).lookCard(look).click();
  await expect(page.locator('#board-title')).toHaveText(look);
}

/** Drags the selected man that many yards across. */
async function drag(page: Page, yards: number): Promise<void> {
  const from = await spotOf(page);
  const start = await pixelOf(page, from.x, from.depth);
  const end = await pixelOf(page, from.x + yards, from.depth);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(end.x, end.y, { steps: 8 });
  await page.mouse.up();
}

// "Align to Win Part 3", Blitzology, 28 Apr 2019: two gaps are hard from a 5 technique.
test('an end dragged from one technique to the next changes the verdict', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Lapwing', '11 doubles, tight end flexed right');
  await expect(screen.verdict).toHaveText('Clean');
  await expect(screen.jobOf('Left end')).toContainText('4i left');
  await expect(screen.lineman('Left end')).toContainText('Slant to the A gap left');
  await screen.man('Defence, LE').click();
  await drag(page, -0.75);
  await expect(screen.jobOf('Left end')).toContainText('5 left');
  await expect(screen.verdict).toHaveText('Check: you decide');
  await expect(screen.finding('A lineman has too far to go')).toContainText('LE must move 2 gaps');
  await expect(screen.lookCard('11 doubles, tight end flexed right')).toContainText('Check');
  await drag(page, 0.75);
  await expect(screen.jobOf('Left end')).toContainText('4i left');
  await expect(screen.verdict).toHaveText('Clean');
});

test('a finding is lived with for a reason, comes back, and lapses when others are in it', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Lapwing', '11 doubles, tight end flexed right');
  await screen.man('Defence, LE').click();
  await drag(page, -0.75);
  const finding = screen.finding('A lineman has too far to go');
  const dialog = page.getByRole('dialog');

  await test.step('it asks for a reason that is one', async () => {
    await finding.getByRole('button', { name: /^Live with it/ }).click();
    await dialog.getByLabel('Why do you live with it?').fill('quick');
    await dialog.getByRole('button', { name: 'Live with it' }).click();
    await expect(dialog).toContainText('at least 10 characters: 5 to go');
    await dialog.getByLabel('Why do you live with it?').fill('he is quick enough for it');
    await dialog.getByRole('button', { name: 'Live with it' }).click();
    await expect(dialog).toHaveCount(0);
  });

  await test.step('then it no longer counts, and stands with its reason below', async () => {
    await expect(screen.verdict).toHaveText('Clean');
    await expect(page.locator('.verdict-banner .counts')).toContainText('1 waived');
    await expect(finding).toHaveCount(0);
    const section = await unfold(page, 'You live with');
    await expect(section).toContainText('Because: he is quick enough for it');
    await expect(screen.saved).toContainText('Saved on this device');
    await page.reload();
    await call(page, 'Lapwing', '11 doubles, tight end flexed right');
    await expect(screen.section('You live with')).toContainText('he is quick enough for it');
  });

  await test.step('it lapses when the end is back where he belongs', async () => {
    await screen.man('Defence, LE').click();
    await screen.card.getByRole('button', { name: 'Back to the rule' }).click();
    await expect(screen.section('You live with')).toContainText('1 lapsed');
    await expect(screen.section('You live with')).toContainText('Lapsed: A lineman has too far to go');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(screen.section('You live with')).not.toContainText('lapsed');
  });

  await test.step('it is taken back, and undo lives with it again', async () => {
    const section = await unfold(page, 'You live with');
    await section.getByRole('button', { name: /^Take back/ }).click();
    await expect(screen.verdict).toHaveText('Check: you decide');
    await expect(finding).toBeVisible();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(screen.verdict).toHaveText('Clean');
    await expect(screen.notice).toContainText('Undone: no longer lives with');
  });
});

test('a reason has no place until the call is kept as it is', async ({ page }) => {
  await openApp(page);
  const live = page.getByRole('button', { name: /^Live with it/ }).first();
  await page.getByLabel('How many come').selectOption('8');
  await expect(page.locator('.finding[data-rule="rush.count"]')).toBeVisible();
  await live.click();
  await expect(page.getByRole('dialog')).toContainText('has been changed since it was kept');
  await page.keyboard.press('Escape');
  await page.getByLabel('Kept call').selectOption({ label: 'None: put together below' });
  await live.click();
  await expect(page.getByRole('dialog')).toContainText('Keep the call first');
});

test('one of two by a key: which is run here, and who must hear it', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Coppice or Bittern', '11 doubles, tight end right');
  const half = screen.section('Which half runs');
  await expect(half.locator('summary').first()).toContainText('Coppice is run');
  await expect(half.locator('summary').first()).toContainText('must hear the check');
  await expect(screen.lineman('Nose')).toContainText('By the key');
  await expect(page.getByLabel('Coppice is run if').locator('option:checked')).toHaveText(
    'the tight end is on the call side',
  );
  await page.getByLabel('Coppice is run if').selectOption('no tight end is on the call side');
  await expect(half.locator('summary').first()).toContainText('Bittern is run');
  await expect(page.getByText('Changed since it was kept.')).toBeVisible();
  await page.getByLabel('Both at once').check();
  await expect(half).toHaveCount(0);
  await page.getByLabel('One of the two').check();
  await expect(half.locator('summary').first()).toContainText('Coppice is run');
  await expect(page.getByText('Changed since it was kept.')).toHaveCount(0);
});

test('a look with motion says what it turns', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Lapwing', '11 wing trades to the left');
  await expect(screen.finding('The motion turns the call')).toContainText('the motion turns it');
  const motion = screen.section('Motion');
  await expect(motion.locator('summary').first()).toContainText('it turns the call');
  await unfold(page, 'Motion');
  await expect(motion).toContainText('The tight end Y goes');
  await expect(motion).toContainText(/Call side of Lapwing: (left before, right|right before, left) after/);
  await screen.lookCard('11 wing right').click();
  await expect(motion).toHaveCount(0);
});

test('a call is checked out of where its table says so', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Tussock Weir', '10 bunch right, back left');
  await expect(screen.section('Check-out').locator('summary').first()).toContainText('Bunch: check to Tussock');
  await expect(page.locator('.lineman-table thead')).not.toContainText('Weir');
  await screen.lookCard('11 wing right').click();
  await expect(screen.section('Check-out')).toHaveCount(0);
  await expect(page.locator('.lineman-table thead')).toContainText('Weir');
});

test('a suggestion shows its outcome, is done by one press, and is undone', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Sluice Weir', '11 wing right');
  await page.getByLabel('The second goes').selectOption('by its own rule');
  await expect(screen.verdict).toHaveText('Stop: do not install');
  const finding = screen.finding('A lineman is told two jobs');
  const turn = finding.getByRole('button', { name: 'Turn Weir opposite the first' });
  const onBoard = page.locator('.board-verdict');

  await test.step('pointing at it shows what would come of it, and nothing else changes', async () => {
    await expect(turn).toContainText('changes this call only');
    await turn.hover();
    await expect(onBoard).toHaveText(/Clean/);
    await expect(page.getByText('As the suggestion would make it')).toBeVisible();
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await page.mouse.move(5, 5);
    await expect(onBoard).toHaveText(/Stop/);
  });

  await test.step('pressing it does it, in every place; one step takes it back', async () => {
    await expect(page.locator('.new-mark')).toHaveCount(0);
    await turn.click();
    await expect(screen.verdict).toHaveText('Clean');
    await expect(page.locator('.findings-head')).toContainText('gone since the last change');
    await expect(page.locator('.verdict-banner [role=status]')).toContainText('gone since the last change');
    await expect(page.getByLabel('The second goes').locator('option:checked')).toHaveText(
      'to the side opposite the first',
    );
    await expect(screen.notice).toContainText('Undo takes it back');
    await expect(page.getByText('Changed since it was kept.')).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(screen.verdict).toHaveText('Stop: do not install');
    await expect(page.getByLabel('The second goes').locator('option:checked')).toHaveText('by its own rule');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  await test.step('what came back is marked as new, and can be shown alone', async () => {
    await expect(page.locator('.new-mark').first()).toBeVisible();
    const fresh = await page.locator('.new-mark').count();
    await page.getByLabel('Only what is new').check();
    await expect(page.locator('.finding')).toHaveCount(fresh);
    await page.getByLabel('Only what is new').uncheck();
  });

  await test.step('one that changes a pressure says for whom, and is undone as well', async () => {
    const pressure = finding.getByRole('button', { name: /changes the pressure \w+ for every call that uses it/ });
    await expect(pressure.first()).toBeVisible();
    await pressure.first().click();
    await expect(finding).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(finding).toBeVisible();
  });
});

test('a call is mended in every look at once, as one step', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Sluice Weir', '11 wing right');
  const tally = page.locator('.tally');
  await expect(tally).toContainText('Stop');
  await page.getByRole('button', { name: 'Mend it… in every look' }).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('status')).toContainText('One change is enough', { timeout: 90_000 });
  const way = dialog.locator('.mend-set').first();
  await expect(way).toContainText('changes this call only');
  await way.getByRole('button', { name: /^Do it/ }).click();
  await expect(dialog).toHaveCount(0);
  await expect(page.locator('.look-card .verdict-word svg')).toHaveCount(await page.locator('.look-card').count());
  await expect(tally).not.toContainText('Stop');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(tally).toContainText('Stop');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await expect(screen.notice).toContainText('Undone: Turn Weir');
});

test('a call that is not kept that way is mended on the board, and the kept one stays', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Sluice Weir', '11 wing right');
  await page.getByLabel('How many come').selectOption({ label: 'Not said' });
  await page.getByRole('button', { name: 'Mend it… in every look' }).click();
  const way = page.getByRole('dialog').locator('.mend-set').filter({ hasText: 'Turn Weir opposite the first' });
  await way.getByRole('button', { name: /^Do it/ }).click({ timeout: 90_000 });
  await expect(screen.notice).toContainText('Done on the board: Turn Weir');
  await expect(page.getByLabel('The second goes').locator('option:checked')).toHaveText(
    'to the side opposite the first',
  );
  await expect(page.locator('.look-card .verdict-word svg')).toHaveCount(await page.locator('.look-card').count());
  await expect(page.locator('.tally')).not.toContainText('Stop');
  await page.getByLabel('Kept call').selectOption({ label: 'Sluice' });
  await page.getByLabel('Kept call').selectOption({ label: 'Sluice Weir' });
  await expect(page.getByLabel('The second goes').locator('option:checked')).toHaveText('by its own rule');
});

test('runs and protections are drawn one at a time, and who has whom on top', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Osier', '11 doubles, tight end right');
  const canvas = page.locator('.field-stage canvas').first();
  const pictures = [await canvas.screenshot()];
  const isNew = async (): Promise<void> => {
    const next = await canvas.screenshot();
    expect(pictures.some((picture) => picture.equals(next))).toBe(false);
    pictures.push(next);
  };
  const run = (await unfold(page, 'Runs of this look')).getByRole('button', { name: /^Draw it/ }).first();
  const protection = (await unfold(page, 'Protections of this look')).getByRole('button', { name: /^Draw it/ }).first();
  await run.click();
  await page.mouse.move(5, 5);
  await isNew();
  await protection.click();
  await page.mouse.move(5, 5);
  await expect(run).toHaveAttribute('aria-pressed', 'false');
  await isNew();
  await page.getByRole('button', { name: 'Who has whom' }).click();
  await isNew();
  await screen.lookCard('11 wing right').click();
  await expect(page.locator('.play.is-drawn')).toHaveCount(0);
});

test('findings stand in groups, the gravest first; hidden by how grave they are or whom they are about, they still count', async ({
  page,
}) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Culvert Weir Across', '11 doubles, tight end right');
  const findings = page.locator('.finding');
  const all = await findings.count();
  const counts = (await page.locator('.verdict-banner .counts').textContent()) ?? '';
  await page.getByRole('checkbox', { name: /^Note/ }).uncheck();
  const left = await findings.count();
  expect(left).toBeGreaterThan(0);
  expect(left).toBeLessThan(all);
  await expect(page.locator('.findings [role=status]')).toHaveText(`${left} of ${all} findings shown`);
  await expect(page.locator('.verdict-banner .counts')).toHaveText(counts);
  await expect(page.locator('.finding-note')).toHaveCount(0);
  await page.getByRole('checkbox', { name: /^Note/ }).check();
  await expect(findings).toHaveCount(all);
  await expect(page.locator('.finding-group').first()).toContainText('Stops the call');
  await page.getByLabel('About').selectOption({ label: 'Line' });
  const ofLine = await findings.count();
  expect(ofLine).toBeGreaterThan(0);
  expect(ofLine).toBeLessThan(all);
  await expect(page.locator('.findings [role=status]')).toHaveText(`${ofLine} of ${all} findings shown`);
  await page.getByLabel('About').selectOption({ label: 'everybody' });
  await expect(findings).toHaveCount(all);
  await expect(screen.verdict).toHaveText('Stop: do not install');
});

test('how many come is held against how many are sent', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Osier', '11 doubles, tight end right');
  await expect(page.getByLabel('How many come').locator('option:checked')).toHaveText('4, as the pressure says');
  const before = await page.locator('.finding').count();
  await page.getByLabel('How many come').selectOption('6');
  await expect(page.locator('.finding')).toHaveCount(before + 1);
  await expect(page.locator('.finding[data-rule="rush.count"]')).toBeVisible();
  await expect(screen.verdict).not.toHaveText('Clean');
});

test('a kept call is checked out of against a formation, row by row', async ({ page }) => {
  const screen = screenOf(page);
  await openApp(page);
  await call(page, 'Osier Marl', '11 trips right, tight end left');
  const table = page.locator('.check-outs');
  await table.getByText('When to check out of it: never').click();
  await table.getByRole('button', { name: 'Add a formation' }).click();
  const row = table.locator('.rule > summary');
  await expect(row).toHaveText('against unbalanced: run it as called');
  await row.click();
  await table.getByLabel('Against').selectOption({ label: 'trips with a nub tight end' });
  await table.getByLabel('What is run then').selectOption({ label: 'check to Teasel' });
  await expect(row).toHaveText('against trips with a nub tight end: check to Teasel');
  await expect(table.getByLabel('What is run then').getByRole('option', { name: 'check to Osier Marl' })).toHaveCount(
    0,
  );
  await expect(screen.section('Check-out')).toContainText('Trips with a nub tight end: check to Teasel');
  // The arrow keys choose every entry on their way; one undo leads back to where the field was entered.
  await row.focus();
  await table.getByLabel('What is run then').focus();
  for (let presses = 0; presses < 3; presses += 1) await page.keyboard.press('ArrowDown');
  await expect(row).toHaveText('against trips with a nub tight end: check to Marl');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row).toHaveText('against trips with a nub tight end: check to Teasel');
  await table.getByRole('button', { name: 'Take away formation 1' }).click();
  await expect(table).toContainText('Run as called against everything.');
  await expect(screen.section('Check-out')).toHaveCount(0);
});
