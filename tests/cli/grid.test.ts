/** The grid of verdicts from the terminal: the same verdicts as the whole report, in CSV and in JSON. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { asFrontId } from '../../src/engine/index.ts';
import { pressuresOf } from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

const bytes = readFileSync(new URL('../../demo-data/playbook.json', import.meta.url));

function checked(...argv: readonly string[]) {
  let out = '';
  let err = '';
  const code = run(['book.json', ...argv], {
    readFile: () => ({ ok: true, value: bytes }),
    out: (text) => (out += text),
    err: (text) => (err += text),
  });
  return { code, out, err };
}

const { calls, looks, fronts } = demo();
const look = looks[0]?.id ?? '';
const call = calls[0]?.id ?? '';

interface Line {
  readonly call: string;
  readonly look: string;
  readonly spot: string;
  readonly verdict: string;
}

function casesIn(out: string): readonly Line[] {
  const parsed = JSON.parse(out) as { format: string; version: number; cases: readonly Line[] };
  expect([parsed.format, parsed.version]).toEqual(['gapwright-grid', 1]);
  return parsed.cases;
}

describe('--grid', () => {
  it('calls: a line for every call, look and spot, with the verdict of the whole report', () => {
    const grid = casesIn(checked('--grid', 'calls', '--spot', 'middle', '--look', look, '--json').out);
    expect(grid.map((line) => line.call).toSorted()).toEqual(calls.map(({ id }) => id).toSorted());
    const whole = JSON.parse(checked('--spot', 'middle', '--look', look, '--json').out) as {
      calls: readonly { id: string; looks: readonly { verdict: string }[] }[];
    };
    expect(grid.map((line) => [line.call, line.verdict])).toEqual(
      whole.calls.map(({ id, looks: seen }) => [id, seen[0]?.verdict]),
    );
  });

  it('pairs: a line for every ordered pair of pressures that are written for the front', () => {
    const grid = casesIn(checked('--grid', 'pairs', '--look', look, '--spot', 'left', '--json').out);
    const here = pressuresOf(demo(), fronts[0]?.id ?? asFrontId('none')).length;
    expect(grid).toHaveLength(here * (here - 1));
    expect(new Set(grid.map((line) => line.spot))).toEqual(new Set(['left']));
  });

  it('CSV has the same lines under a head, ended as RFC 4180 (2005), section 2, says', () => {
    const { out, code } = checked('--grid', 'calls', '--call', call);
    const lines = out.split('\r\n');
    expect(lines.pop()).toBe('');
    expect(lines[0]).toBe('call,front,first,second,turn,look,spot,verdict,stops,checks,notes,doubts,rules');
    expect(lines).toHaveLength(1 + looks.length * 3);
    const grid = casesIn(checked('--grid', 'calls', '--call', call, '--json').out);
    expect(lines.slice(1).map((line) => line.split(',')[7])).toEqual(grid.map((line) => line.verdict));
    expect(code).toBe(grid.some((line) => line.verdict === 'stop') ? 1 : 0);
  });

  it.each<readonly [argv: readonly string[], says: string]>([
    [['--grid', 'rows'], '--grid takes calls or pairs.'],
    [['--front', fronts[0]?.id ?? ''], '--front and --turn go with --grid pairs.'],
    [['--grid', 'calls', '--turn', 'same'], '--front and --turn go with --grid pairs.'],
    [['--grid', 'pairs', '--turn', 'around'], '--turn takes own, same or opposite.'],
    [['--grid', 'pairs', '--call', call], '--call says nothing of a grid of pairs.'],
    [['--grid', 'pairs', '--front', 'none'], '--front: found "none", expected one of '],
  ])('%j is refused', (argv, says) => {
    const { code, out, err } = checked(...argv);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });
});
