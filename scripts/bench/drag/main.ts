/**
 * What one move of the pointer costs while a man is dragged with the report and the look strip live: CPU time of the page's
 * main thread, as a ratio to painting the same scenes on a bare canvas in the same run. Wall time on a shared machine says
 * little; the ratio is what to compare. Reads the built app, and builds it when there is none.
 */
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { chromium, type CDPSession, type Page } from '@playwright/test';
import { build } from 'vite';
import { openDocument } from '../../../src/document/index.ts';
import { buildScene, WHOLE_PICTURE, type Scene } from '../../../src/scene/index.ts';
import { createAnalyst, createAppStore, standings } from '../../../src/store/index.ts';
import { findChromium, launchOptionsFor } from '../../find-chromium.mjs';
import { freePort } from '../../free-port.mjs';

/** Moves that count, and those before that warm everything up. */
const MOVES = 150;
const WARM = 30;
/** The drag goes to and fro this far, in pixels. */
const REACH = 60;
const MAN = 'LE';

interface Point {
  readonly x: number;
  readonly y: number;
}

const root = new URL('../../../', import.meta.url).pathname;

/** The scenes of the drag, made in Node: the left end at thirty spots along its way. */
function scenesOfDrag(scale: number): readonly Scene[] {
  const opened = openDocument(readFileSync(new URL('../../../demo-data/playbook.json', import.meta.url)));
  if (!opened.ok) throw new Error('The demo playbook does not open');
  const store = createAppStore(opened.value, { readOnly: false });
  const analyst = createAnalyst();
  const role = opened.value.roles.find(({ letter }) => letter === MAN)?.id;
  const start = analyst.onBoard(store.get());
  if (!start.ok || role === undefined) throw new Error('The demo has nothing to drag');
  const at = standings(start.value).find(({ man }) => man.kind === 'defender' && man.role === role)?.at;
  if (at === undefined) throw new Error(`Nobody is called ${MAN}`);
  return Array.from({ length: 30 }, (_, index) => {
    const x = at.x + (REACH / scale) * Math.sin((index / 30) * 2 * Math.PI);
    store.setPreview([{ man: { kind: 'defender', role }, at: { x, y: at.y } }]);
    const analysis = analyst.onBoard(store.get());
    if (!analysis.ok) throw new Error('The demo shows nothing');
    return buildScene(analysis.value, WHOLE_PICTURE);
  });
}

/**
 * CPU milliseconds of the page's main thread for each of so many moves of the pointer about a point, its button held. The
 * browser is told of them without Playwright's mouse, which looks through the page before and after each move of a held button.
 */
async function costOfMoves(page: Page, around: Point): Promise<readonly number[]> {
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  const costs: number[] = [];
  for (let move = 0; move < WARM + MOVES; move += 1) {
    const x = around.x + REACH * Math.sin((move / 30) * 2 * Math.PI);
    const before = await taskTime(client);
    await client.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x, y: around.y, button: 'left', buttons: 1 });
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))),
    );
    costs.push((await taskTime(client)) - before);
  }
  return costs.slice(WARM);
}

async function taskTime(client: CDPSession): Promise<number> {
  const { metrics } = await client.send('Performance.getMetrics');
  const seconds = metrics.find(({ name }) => name === 'TaskDuration')?.value;
  if (seconds === undefined) throw new Error('This browser does not say how long its tasks took');
  return seconds * 1000;
}

function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? Number.NaN;
}

async function bundleOfBare(): Promise<string> {
  const outDir = `${root}.cache/bench`;
  await build({
    configFile: false,
    logLevel: 'error',
    root,
    build: {
      outDir,
      emptyOutDir: true,
      copyPublicDir: false,
      lib: {
        entry: `${root}scripts/bench/drag/bareCanvas.ts`,
        formats: ['iife'],
        name: 'bare',
        fileName: () => 'bare.js',
      },
    },
  });
  return readFileSync(`${outDir}/bare.js`, 'utf8');
}

async function main(): Promise<void> {
  if (!existsSync(`${root}dist/index.html`)) {
    process.stderr.write('Building the app first\n');
    spawnSync('npx', ['--no-install', 'vite', 'build'], { cwd: root, stdio: 'ignore' });
  }
  const port = await freePort();
  const server = spawn('npx', ['--no-install', 'vite', 'preview', '--strictPort', '--port', String(port)], {
    cwd: root,
    stdio: 'ignore',
    detached: true,
  });
  const browser = await chromium.launch(launchOptionsFor(await findChromium()));
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await openWhenServed(page, `http://localhost:${port}/`);
    const stage = page.locator('.field-stage');
    await stage.locator('canvas').first().waitFor();
    await page.getByRole('button', { name: new RegExp(`^Defence, ${MAN},`) }).click();
    // The strip is worked through once before anything counts.
    await page.waitForTimeout(3000);
    const box = await stage.boundingBox();
    if (box === null) throw new Error('The field is not on the screen');
    const number = async (name: string): Promise<number> => Number(await stage.getAttribute(name));
    const [scale, ballX, ballY] = [
      await number('data-scale'),
      await number('data-ball-x'),
      await number('data-ball-y'),
    ];
    const value = async (name: string): Promise<number> =>
      Number(await page.getByRole('spinbutton', { name }).inputValue());
    const man = {
      x: box.x + ballX + (await value('Across')) * scale,
      y: box.y + ballY + (await value('Depth')) * scale,
    };
    await page.mouse.move(man.x, man.y);
    await page.mouse.down();
    const live = await costOfMoves(page, man);
    await page.keyboard.press('Escape');
    await page.mouse.up();

    const bare = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await bare.setContent('<body style="margin:0"></body>');
    await bare.addScriptTag({ content: await bundleOfBare() });
    const size = { width: box.width, height: box.height };
    const viewport = { scale, ball: { px: ballX, py: ballY }, turned: false };
    await bare.evaluate((input) => window.startBare(input.scenes, input.viewport, input.size), {
      scenes: scenesOfDrag(scale),
      viewport,
      size,
    });
    const middle = { x: box.width / 2, y: box.height / 2 };
    await bare.mouse.move(middle.x, middle.y);
    await bare.mouse.down();
    const painted = await costOfMoves(bare, middle);
    say(live, painted);
  } finally {
    await browser.close();
    if (server.pid !== undefined && server.exitCode === null) process.kill(-server.pid);
  }
}

/** The server takes a moment. */
async function openWhenServed(page: Page, address: string): Promise<void> {
  for (let tries = 0; tries < 50; tries += 1) {
    try {
      await page.goto(address);
      return;
    } catch {
      await page.waitForTimeout(200);
    }
  }
  throw new Error(`Nothing is served at ${address}`);
}

function say(live: readonly number[], painted: readonly number[]): void {
  const line = (name: string, values: readonly number[]): string =>
    `${name.padEnd(44)} p50 ${quantile(values, 0.5).toFixed(2)} ms   p95 ${quantile(values, 0.95).toFixed(2)} ms   p99 ${quantile(values, 0.99).toFixed(2)} ms`;
  const ratio = (part: number): string => (quantile(live, part) / quantile(painted, part)).toFixed(2);
  process.stdout.write(
    [
      '',
      `One move of the pointer, CPU of the main thread, ${MOVES} moves:`,
      line('a man dragged, report and look strip live', live),
      line('the same scenes on a bare canvas', painted),
      `${'ratio'.padEnd(44)} p50 ${ratio(0.5)}      p95 ${ratio(0.95)}      p99 ${ratio(0.99)}`,
      '',
    ].join('\n'),
  );
}

await main();
