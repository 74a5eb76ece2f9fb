/**
 * `npm test`: everything that must hold, in order, stopping at the first thing that does not.
 *
 * The last line is `N passed, N failed`: the unit, property and browser tests together. A step that fails without naming
 * a failed test (a type error, say) counts as one failure, so the line never says "0 failed" of a run that failed.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PROVED_BROWSER, findChromium } from './find-chromium.mjs';
import { findPoppler } from './find-poppler.mjs';
import { freePort } from './free-port.mjs';

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Counts
 * @typedef {{ name: string, run: () => Counts | void | Promise<Counts | void> }} Step throws when the step fails
 */

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..');
const CACHE = join(ROOT, '.cache');
const UNIT_RESULTS = join(CACHE, 'unit-results.json');
const BROWSER_RESULTS = join(CACHE, 'browser-results.json');

/** A step that failed; `counts` when it got as far as running tests. */
class StepFailed extends Error {
  /** @param {string} message @param {Counts} [counts] */
  constructor(message, counts) {
    super(message);
    this.counts = counts;
  }
}

/** @type {readonly Step[]} */
const STEPS = [
  { name: 'find a browser', run: findBrowserStep },
  { name: 'find the PDF readers', run: () => say(`poppler ${findPoppler(say)}`) },
  { name: 'format', run: () => script('format:check') },
  { name: 'types', run: () => script('typecheck') },
  { name: 'lint', run: () => script('lint') },
  { name: 'structure', run: () => script('structure') },
  { name: 'unit and property tests', run: unitStep },
  { name: 'build', run: () => script('build') },
  { name: 'browser tests', run: browserStep },
];

process.chdir(ROOT);
process.exitCode = await main();

/** @returns {Promise<number>} the exit code */
async function main() {
  mkdirSync(CACHE, { recursive: true });
  const total = { passed: 0, failed: 0 };
  let failure;
  for (const [index, step] of STEPS.entries()) {
    console.log(`\n== ${index + 1}/${STEPS.length} ${step.name}`);
    const began = Date.now();
    try {
      const counts = await step.run();
      total.passed += counts?.passed ?? 0;
      console.log(`   ok (${((Date.now() - began) / 1000).toFixed(1)} s)`);
    } catch (error) {
      const counts = error instanceof StepFailed ? error.counts : undefined;
      total.passed += counts?.passed ?? 0;
      total.failed += Math.max(1, counts?.failed ?? 0);
      failure = `\nFAILED at step ${index + 1}/${STEPS.length}, ${step.name}: ${messageOf(error)}`;
      break;
    }
  }
  if (failure !== undefined) console.error(failure);
  console.log(`\n${total.passed} passed, ${total.failed} failed`);
  return total.failed === 0 ? 0 : 1;
}

async function findBrowserStep() {
  const browser = await findChromium(say);
  process.env[PROVED_BROWSER] = browser;
  say(browser);
}

/** @returns {Promise<Counts>} */
async function unitStep() {
  rmSync(UNIT_RESULTS, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${UNIT_RESULTS}`];
  const problem = await npmRun('test:unit', reporters);
  return judge(problem, UNIT_RESULTS, (results) => ({
    passed: numberAt(results, 'numPassedTests'),
    failed: numberAt(results, 'numFailedTests'),
    skipped: numberAt(results, 'numPendingTests') + numberAt(results, 'numTodoTests'),
  }));
}

/** @returns {Promise<Counts>} */
async function browserStep() {
  rmSync(BROWSER_RESULTS, { force: true });
  process.env['GAPWRIGHT_BROWSER_RESULTS'] = BROWSER_RESULTS;
  process.env['GAPWRIGHT_PORT'] = String(await freePort());
  const problem = await npmRun('test:e2e');
  return judge(problem, BROWSER_RESULTS, (results) => {
    const stats = objectAt(results, 'stats');
    return {
      passed: numberAt(stats, 'expected'),
      failed: numberAt(stats, 'unexpected') + numberAt(stats, 'flaky'),
      skipped: numberAt(stats, 'skipped'),
    };
  });
}

/**
 * Turns a test run into counts, or into a failure that still carries them. A skipped test fails the step: it would
 * otherwise be a check that cannot fail.
 * @param {string | undefined} problem how the run itself ended, when not well
 * @param {string} file the results it wrote
 * @param {(results: unknown) => Counts} read
 * @returns {Counts}
 */
function judge(problem, file, read) {
  let counts;
  try {
    counts = read(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    throw new StepFailed(problem ?? `no readable results: ${messageOf(error)}`);
  }
  if (problem !== undefined) throw new StepFailed(problem, counts);
  if (counts.failed > 0) throw new StepFailed(`${counts.failed} failed`, counts);
  if (counts.skipped > 0) throw new StepFailed(`${counts.skipped} skipped; none may be`, counts);
  if (counts.passed === 0) throw new StepFailed('no test ran', counts);
  return counts;
}

/** @param {string} name of a script in package.json */
async function script(name) {
  const problem = await npmRun(name);
  if (problem !== undefined) throw new StepFailed(problem);
}

/**
 * Runs a script of package.json, so that each command is written down in one place only.
 * @param {string} name
 * @param {readonly string[]} [args]
 * @returns {Promise<string | undefined>} how it ended, when not well
 */
function npmRun(name, args = []) {
  const shell = process.platform === 'win32';
  const child = spawn('npm', ['run', '--silent', name, ...(args.length > 0 ? ['--', ...args] : [])], {
    stdio: 'inherit',
    shell,
  });
  return new Promise((settle) => {
    child.once('error', (error) => settle(`npm run ${name} did not start: ${error.message}`));
    child.once('exit', (code, signal) =>
      settle(code === 0 ? undefined : `npm run ${name} ended with ${code ?? signal}`),
    );
  });
}

/** @param {string} line */
function say(line) {
  console.log(`   ${line}`);
}

/** @param {unknown} error */
function messageOf(error) {
  return error instanceof Error ? error.message : String(error);
}

/** @param {unknown} value @param {string} key @returns {unknown} */
function objectAt(value, key) {
  return typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
}

/** @param {unknown} value @param {string} key @returns {number} */
function numberAt(value, key) {
  const number = objectAt(value, key);
  if (typeof number !== 'number') throw new Error(`the results say no number for "${key}"`);
  return number;
}
