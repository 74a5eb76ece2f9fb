/** Small helpers the other scripts share: finding programs, running them, asking apt. */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * Where a program of this name lies on PATH.
 * @param {string} name without `.exe`
 * @returns {string | undefined} its full path
 */
export function onPath(name) {
  const file = process.platform === 'win32' ? `${name}.exe` : name;
  for (const folder of (process.env['PATH'] ?? '').split(delimiter)) {
    const path = join(folder, file);
    if (folder !== '' && isProgram(path)) return path;
  }
  return undefined;
}

/**
 * Whether the path is a file this user may run.
 * @param {string} path
 * @returns {boolean}
 */
export function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * Runs a command to its end without a shell and keeps what it printed.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string>>} [env] added to the present environment
 * @returns {{ ok: boolean, said: string }} `said` is the last few lines, enough for an error message
 */
export function run(command, args, env = {}) {
  const result = spawnSync(command, args, {
    encoding: 'utf8',
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const lines = `${result.error?.message ?? ''}\n${result.stdout}\n${result.stderr}`.trim().split('\n');
  return { ok: result.status === 0, said: lines.slice(-4).join('\n').trim() };
}

/**
 * Whether Debian's package manager is here and this user may use it.
 * @returns {boolean}
 */
export function canAptInstall() {
  return process.platform === 'linux' && process.getuid?.() === 0 && onPath('apt-get') !== undefined;
}

/**
 * Installs one Debian package, after fetching fresh package lists (a bare image has none).
 * @param {string} name
 * @returns {{ ok: boolean, said: string }}
 */
export function aptInstall(name) {
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const lists = run('apt-get', ['update', '-q'], env);
  if (!lists.ok) return { ok: false, said: `apt-get update: ${lists.said}` };
  return run('apt-get', ['install', '-y', '-q', '--no-install-recommends', name], env);
}
