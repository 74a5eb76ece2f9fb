import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';
import { PROVED_BROWSER, findChromium, launchOptionsFor } from './scripts/find-chromium.mjs';
import { USUAL_PORT } from './scripts/free-port.mjs';

if (!existsSync(new URL('dist/index.html', import.meta.url)))
  throw new Error('The browser tests read the built app: npm run build first.');

// Read again in every worker process; the environment carries the answer to them, so the browser is looked for once.
const browser = process.env[PROVED_BROWSER] ?? (await findChromium((line) => process.stderr.write(`${line}\n`)));
process.env[PROVED_BROWSER] = browser;

const address = `http://localhost:${process.env['GAPWRIGHT_PORT'] ?? String(USUAL_PORT)}`;

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results',
  fullyParallel: false,
  forbidOnly: true,
  retries: 0,
  workers: 1,
  reporter: [
    ['line'],
    ['json', { outputFile: process.env['GAPWRIGHT_BROWSER_RESULTS'] ?? '.cache/browser-results.json' }],
  ],
  use: {
    baseURL: address,
    browserName: 'chromium',
    viewport: { width: 1440, height: 900 },
    launchOptions: launchOptionsFor(browser),
    // Only the test of working without a network wants the page to be kept for it.
    serviceWorkers: 'block',
    trace: 'off',
    screenshot: 'only-on-failure',
  },
  // Serves what `npm run build` made.
  webServer: {
    command: `npx --no-install vite preview --strictPort --port ${new URL(address).port}`,
    url: address,
    reuseExistingServer: false,
    stdout: 'ignore',
    stderr: 'pipe',
  },
});
