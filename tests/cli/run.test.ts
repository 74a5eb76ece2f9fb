/** The headless check: which exit code, and what goes to which stream. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { MAX_FILE_BYTES } from '../../src/document/index.ts';
import { withAt } from '../document/json.ts';
import { sampleJson, type Json } from '../document/samplePlaybook.ts';

/** Runs the check on a file that holds this value. */
function checked(value: Json, ...argv: readonly string[]) {
  let out = '';
  let err = '';
  const code = run(['book.json', ...argv], {
    readFile: (path) =>
      path === 'book.json'
        ? { ok: true, value: new TextEncoder().encode(JSON.stringify(value)) }
        : { ok: false, problem: `no ${path}` },
    out: (text) => (out += text),
    err: (text) => (err += text),
  });
  return { code, out, err };
}

/** Look, spot and verdict of every look in a JSON report, call by call. */
function verdicts(out: string): unknown {
  const report: unknown = JSON.parse(out);
  expect(report).toMatchObject({ format: 'gapwright-report', version: 1, calls: expect.any(Array) as unknown });
  const { calls } = report as { calls: { id: string; looks: { id: string; spot: string; verdict: string }[] }[] };
  return calls.map(({ id, looks }) => [id, ...looks.map((look) => `${look.id} ${look.spot} ${look.verdict}`)]);
}

describe('the exit code', () => {
  it('is 0 where nothing is at stop', () => {
    const { code, out, err } = checked(sampleJson(), '--call', 'anvil');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Checked: 6 (6 clean)');
  });

  it('is 1 where one look of one call is at stop', () => {
    const { code, out, err } = checked(sampleJson());
    expect([code, err]).toEqual([1, '']);
    expect(out).toMatch(/^Anvil and Bellows {2}Tight right {2}middle {6}Stop: do not install$/m);
    expect(out).toMatch(/^ {2}Stop {3}line\.two-jobs: N is told two things/m);
  });

  it('is 0 where the call is not run against the look, whatever would be wrong there', () => {
    const { code, out } = checked(sampleJson(), '--call', 'both', '--look', 'spread');
    expect(code).toBe(0);
    expect(out).toContain('Not run against this look');
  });

  it('is 0 where there is nothing to check, which is said', () => {
    const noCalls = withAt(withAt(sampleJson(), ['calls'], []), ['checkOuts'], []);
    expect(checked(noCalls, '--json')).toEqual({
      code: 0,
      out: `${JSON.stringify({ format: 'gapwright-report', version: 1, calls: [] }, null, 2)}\n`,
      err: 'Nothing is checked: the playbook has no calls.\n',
    });
  });
});

describe('a refused file', () => {
  it('is answered with path, found and expected on the error stream only', () => {
    const spoilt = withAt(sampleJson(), ['looks', 0, 'players', 3, 'x'], '12yd');
    expect(checked(spoilt, '--json')).toEqual({
      code: 2,
      out: '',
      err:
        'book.json is refused:\n' +
        'looks[0].players[3].x (Tight right): found "12yd" (text), expected a number from -60 to 60 (yards)\n',
    });
  });

  it('and so is one that cannot be read', () => {
    const streams = {
      out: expect.unreachable,
      err: (text: string) => expect(text).toBe('other is refused:\nno other\n'),
    };
    expect(run(['other'], { readFile: (path) => ({ ok: false, problem: `no ${path}` }), ...streams })).toBe(2);
  });

  it.each([
    ['--call', 'nope', '--call: found "nope", expected one of anvil, both, either'],
    ['--look', 'nope', '--look: found "nope", expected one of spread, tight'],
  ])('and so is an unknown %s', (flag, id, says) => {
    expect(checked(sampleJson(), flag, id)).toEqual({ code: 2, out: '', err: `book.json is refused:\n${says}\n` });
  });
});

describe('the JSON report', () => {
  it('has every call, look and spot', () => {
    expect(verdicts(checked(sampleJson(), '--json').out)).toEqual([
      [
        'anvil',
        ...['spread left clean', 'spread middle clean', 'spread right clean'],
        ...['tight left clean', 'tight middle clean', 'tight right clean'],
      ],
      [
        'both',
        ...['spread left left-out', 'spread middle left-out', 'spread right left-out'],
        ...['tight left stop', 'tight middle stop', 'tight right stop'],
      ],
      [
        'either',
        ...['spread left clean', 'spread middle clean', 'spread right clean'],
        ...['tight left stop', 'tight middle stop', 'tight right stop'],
      ],
    ]);
  });

  it('has only what was asked for', () => {
    const asked = ['--json', '--call', 'both', '--look', 'tight', '--spot', 'right'];
    expect(verdicts(checked(sampleJson(), ...asked).out)).toEqual([['both', 'tight right stop']]);
  });

  it('says who, where and why', () => {
    const { out } = checked(sampleJson(), '--json', '--call=both', '--look=tight', '--spot=middle');
    const report: unknown = JSON.parse(out);
    const twoJobs = { rule: 'line.two-jobs', severity: 'stop', who: ['N'], waived: null };
    const livedWith = { rule: 'align.tell', who: ['LI'], waived: 'He only steps up with the cadence.' };
    const findings: unknown = expect.arrayContaining([
      expect.objectContaining(twoJobs),
      expect.objectContaining(livedWith),
    ]);
    expect(report).toMatchObject({ calls: [{ looks: [{ callSide: 'right', findings }] }] });
    expect(out).toContain('N is told two things');
  });

  it('is the same whatever order the file lists things in', () => {
    const sample = sampleJson();
    const reverse = (part: string): Json => [...(sample[part] as Json[])].reverse();
    const reversed = { ...sample, calls: reverse('calls'), looks: reverse('looks'), roles: reverse('roles') };
    expect(checked(reversed, '--json').out).toBe(checked(sample, '--json').out);
  });
});

describe('called wrongly', () => {
  const wrong = (argv: readonly string[]) => {
    let err = '';
    const io = { readFile: expect.unreachable, out: expect.unreachable, err: (text: string) => (err += text) };
    return [run(argv, io), err];
  };

  it.each([
    [[], 'No file is named.'],
    [['a', 'b'], 'More than one file is named.'],
    [['a', '--spot', 'centre'], '--spot takes left, middle or right.'],
    [['a', '--call', 'x', '--call', 'y'], '--call is given more than once.'],
    [['a', '--call'], "Option '--call <value>' argument missing"],
    [['a', '--frob'], "Unknown option '--frob'"],
    [['a', '--json=yes'], "Option '--json' does not take an argument"],
  ])('%j', (argv, says) => {
    expect(wrong(argv)).toEqual([2, expect.stringContaining(says)]);
    expect(wrong(argv)).toEqual([2, expect.stringContaining('\n  check FILE [--call ID]')]);
  });

  it('--help prints the usage', () => {
    const { code, out, err } = checked(sampleJson(), '--help');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('check FILE [--call ID] [--look ID] [--spot left|middle|right] [--json]');
  });
});

describe('as a program', () => {
  const ROOT = join(import.meta.dirname, '../..');
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'gapwright-check-'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  function program(...argv: readonly string[]) {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ['--import', 'tsx', join(ROOT, 'src/cli/main.ts'), ...argv],
      { cwd: ROOT, encoding: 'utf8' },
    );
    return { code: status, out: stdout, err: stderr };
  }

  it('checks a file on disk', () => {
    const file = join(folder, 'book.json');
    writeFileSync(file, JSON.stringify(sampleJson()));
    const { code, out, err } = program(file, '--json');
    expect([code, err]).toEqual([1, '']);
    expect(out).toBe(checked(sampleJson(), '--json').out);
  });

  it('refuses a folder, a missing file and 2 GB of nothing, unread', () => {
    const large = join(folder, 'large.json');
    writeFileSync(large, '');
    truncateSync(large, 2 ** 31);
    for (const [file, says] of [
      [folder, 'found no file'],
      [join(folder, 'none.json'), 'found nothing that can be read (ENOENT'],
      [large, `found 2147483648 bytes, expected at most ${MAX_FILE_BYTES} bytes`],
    ] as const) {
      const { code, out, err } = program(file);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(`${file} is refused:\nthe whole file: ${says}`);
    }
  });
});
