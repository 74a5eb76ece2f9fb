import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, openApp, test } from './coach.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

interface Said {
  readonly calls: readonly {
    readonly id: string;
    readonly looks: readonly {
      readonly id: string;
      readonly verdict: string;
      readonly findings: readonly { readonly rule: string; readonly because: { readonly text: string } }[];
    }[];
  }[];
}

/** What the headless check says of one call of the demo playbook, the ball in the middle. Exit 1 means a stop, not a fault. */
function headless(call: string): Said['calls'][number] {
  const run = [
    '--import',
    'tsx',
    'src/cli/main.ts',
    'demo-data/playbook.json',
    '--call',
    call,
    '--spot',
    'middle',
    '--json',
  ];
  let text: string;
  try {
    text = execFileSync(process.execPath, run, { cwd: ROOT, encoding: 'utf8', maxBuffer: 64_000_000 });
  } catch (error) {
    if (!(error instanceof Error && 'status' in error && error.status === 1 && 'stdout' in error)) throw error;
    text = String(error.stdout);
  }
  const said = JSON.parse(text) as Said;
  const [found] = said.calls;
  if (found === undefined) throw new Error(`Nothing said of ${call}`);
  return found;
}

const lines = (findings: readonly { readonly rule: string; readonly text: string }[]): readonly string[] =>
  findings.map(({ rule, text }) => `${rule}: ${text}`).sort();

for (const [id, name] of [
  ['sluice-weir', 'Sluice Weir'],
  ['culvert-marl', 'Culvert Marl'],
  ['weir-osier', 'Weir Osier'],
] as const) {
  test(`${name}: the page shows what the headless check prints, look by look`, async ({ page }) => {
    test.setTimeout(120_000);
    const said = headless(id);
    await openApp(page);
    await page.getByLabel('Kept call').selectOption(name);
    const looks = page.getByLabel('Look', { exact: true });
    expect(said.looks.length).toBe(await looks.locator('option').count());
    for (const look of said.looks) {
      await looks.selectOption(look.id);
      const shown = await page.locator('.finding').evaluateAll((items) =>
        items.map((item) => ({
          rule: item.getAttribute('data-rule') ?? '',
          text: item.querySelector('.finding-text')?.textContent ?? '',
        })),
      );
      expect(lines(shown), look.id).toEqual(
        lines(look.findings.map(({ rule, because }) => ({ rule, text: because.text }))),
      );
    }
  });
}
