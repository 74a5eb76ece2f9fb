/**
 * Finds a Chromium for the browser tests, or installs one.
 *
 * A browser that exists is not yet a browser that works (missing libraries, no fonts, a wrapper script that fails), so a
 * candidate is accepted only after it has opened a page. Nothing is kept outside the usual places of whoever installs it.
 */
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { aptInstall, canAptInstall, isProgram, onPath } from './commands.mjs';

/** Stands for the browser that Playwright downloaded itself, which is started without naming a path. */
export const PLAYWRIGHTS_OWN = 'playwright';

/** Set by `scripts/test.mjs`, and by the Playwright configuration for its workers: a browser already proved to work. */
export const PROVED_BROWSER = 'GAPWRIGHT_BROWSER';

/** Without --disable-gpu a machine with no graphics card draws by emulation, several times slower. */
const ARGS = [
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
];

/**
 * What to pass to Playwright's `launch` for a browser that `findChromium` returned.
 * @param {string} browser a full path, or `PLAYWRIGHTS_OWN`
 * @returns {{ args: string[], executablePath?: string }}
 */
export function launchOptionsFor(browser) {
  return browser === PLAYWRIGHTS_OWN ? { args: ARGS } : { args: ARGS, executablePath: browser };
}

/**
 * The first browser that opens a page, in this order: CHROMIUM_PATH, an installed one, the one Playwright has or can
 * download, Debian's package when root.
 * @param {(line: string) => void} [say] told what was tried, one line at a time
 * @returns {Promise<string>} a full path, or `PLAYWRIGHTS_OWN`
 * @throws {Error} naming all that was tried and what to do
 */
export async function findChromium(say = () => undefined) {
  /** @type {string[]} */
  const tried = [];
  /** @param {string} line */
  const refuse = (line) => {
    tried.push(line);
    say(line);
  };
  /** @param {string} browser @param {string} origin */
  const works = async (browser, origin) => {
    const problem = await whyItFails(browser);
    if (problem !== undefined) refuse(`${origin} (${browser}): ${problem}`);
    return problem === undefined;
  };

  const named = process.env['CHROMIUM_PATH'];
  if (named !== undefined && named !== '' && (await works(named, 'CHROMIUM_PATH'))) return named;

  const installed = installedBrowsers();
  for (const path of installed) if (await works(path, 'installed')) return path;
  if (installed.length === 0) refuse('installed: no Chromium, Chrome or Edge on PATH or in the usual places');

  if (await works(PLAYWRIGHTS_OWN, "Playwright's own, as it is")) return PLAYWRIGHTS_OWN;
  say('downloading a Chromium with Playwright');
  const download = installWithPlaywright();
  if (download !== undefined) refuse(`playwright install chromium: ${download}`);
  else if (await works(PLAYWRIGHTS_OWN, "Playwright's own, downloaded")) return PLAYWRIGHTS_OWN;

  if (!canAptInstall()) refuse("Debian's package: not tried (needs apt-get and root)");
  else {
    for (const name of ['chromium-headless-shell', 'chromium']) {
      say(`installing Debian's ${name}`);
      const result = aptInstall(name);
      const path = onPath(name);
      if (!result.ok || path === undefined) refuse(`apt-get install ${name}: ${result.said}`);
      else if (await works(path, `Debian's ${name}`)) return path;
    }
  }
  throw new Error(
    [
      'No browser for the browser tests. Tried, in this order:',
      ...tried.map((line) => `  - ${line}`),
      'Install Chromium, Chrome or Edge (on Debian: apt-get install chromium-headless-shell), or set CHROMIUM_PATH to one.',
    ].join('\n'),
  );
}

/**
 * Opens a page, draws on it and reads it back.
 * @param {string} browser
 * @returns {Promise<string | undefined>} what went wrong, in one line
 */
async function whyItFails(browser) {
  let running;
  try {
    running = await chromium.launch({ ...launchOptionsFor(browser), timeout: 30_000 });
    const page = await running.newPage();
    page.setDefaultTimeout(30_000);
    await page.setContent('<title>opened</title><button>Read me</button>');
    await page.click('button');
    const title = await page.title();
    return title === 'opened' ? undefined : `opened a page but read back "${title}"`;
  } catch (error) {
    return String(error instanceof Error ? error.message : error)
      .split('\n')
      .filter((line) => !/[═║╔╚]/.test(line))
      .slice(0, 2)
      .join(' ');
  } finally {
    await running?.close();
  }
}

/** @returns {string[]} browsers that exist on this machine, the quickest to start first */
function installedBrowsers() {
  const names = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  const found = [...names, 'microsoft-edge', 'msedge', 'chrome'].map(onPath).filter((path) => path !== undefined);
  const usual = usualPlaces().filter(isProgram);
  return [...new Set([...found, ...usual])];
}

/** @returns {string[]} where Mac and Windows keep browsers, which are not on PATH there */
function usualPlaces() {
  if (process.platform === 'darwin') {
    const apps = [
      'Chromium.app/Contents/MacOS/Chromium',
      'Google Chrome.app/Contents/MacOS/Google Chrome',
      'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    ];
    const roots = ['/Applications', join(process.env['HOME'] ?? '/', 'Applications')];
    return roots.flatMap((root) => apps.map((app) => join(root, app)));
  }
  if (process.platform === 'win32') {
    const programs = [
      'Chromium\\Application\\chrome.exe',
      'Google\\Chrome\\Application\\chrome.exe',
      'Microsoft\\Edge\\Application\\msedge.exe',
    ];
    const roots = ['LOCALAPPDATA', 'PROGRAMFILES', 'PROGRAMFILES(X86)'].map((name) => process.env[name]);
    return roots.filter((root) => root !== undefined).flatMap((root) => programs.map((program) => join(root, program)));
  }
  return [];
}

/** @returns {string | undefined} what went wrong */
function installWithPlaywright() {
  const cli = join(dirname(createRequire(import.meta.url).resolve('@playwright/test/package.json')), 'cli.js');
  const result = spawnSync(process.execPath, [cli, 'install', 'chromium'], { encoding: 'utf8', timeout: 300_000 });
  if (result.status === 0) return undefined;
  const lines = `${result.stdout}\n${result.stderr}\n${result.error?.message ?? ''}`.split('\n');
  return lines.find((line) => /error/i.test(line))?.trim() ?? `ended with ${String(result.status ?? result.signal)}`;
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    console.log(await findChromium((line) => console.error(line)));
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
