/** What is saved opens as the same playbook, and saving it again gives the same bytes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openDocument, saveDocument, type Playbook } from '../../src/document/index.ts';
import { places, withAt } from './json.ts';
import { sampleJson, samplePlaybook, type Json } from './samplePlaybook.ts';

function open(text: string): Playbook {
  const opened = openDocument(text);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  return opened.value;
}

const SAMPLE = sampleJson();
const NAMES = places(SAMPLE).filter(({ path }) => path.at(-1) === 'name');
const YARDS = places(SAMPLE).filter(({ path }) => ['x', 'y', 'depth', 'offset'].includes(String(path.at(-1))));

/** The sample with any names and any spots on the field, its keys in any order. */
const anyFile = fc
  .record({
    names: fc.array(fc.string({ unit: 'binary', maxLength: 60 }), { minLength: NAMES.length, maxLength: NAMES.length }),
    yards: fc.array(fc.double({ min: -60, max: 60, noNaN: true }), {
      minLength: YARDS.length,
      maxLength: YARDS.length,
    }),
    turn: fc.nat(14),
  })
  .map(({ names, yards, turn }) => {
    const named = NAMES.reduce<Json>((json, { path }, at) => withAt(json, path, names[at] ?? ''), SAMPLE);
    const spoilt = YARDS.reduce<Json>((json, { path }, at) => withAt(json, path, yards[at] ?? 0), named);
    return turned(spoilt, turn);
  });

/** The same value with the keys of every object begun at another one. */
function turned(value: Json, turn: number): Json {
  if (Array.isArray(value)) return value.map((each) => turned(each, turn));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value);
  const at = turn % Math.max(1, entries.length);
  return Object.fromEntries(
    [...entries.slice(at), ...entries.slice(0, at)].map(([key, each]) => [key, turned(each, turn)]),
  );
}

describe('saveDocument', () => {
  it('opens as the same playbook, and saves to the same bytes', () => {
    fc.assert(
      fc.property(anyFile, (file) => {
        // JSON.stringify writes -0 as 0, a file by another program may not.
        const text = JSON.stringify(file).replaceAll(':0,', ':-0,');
        const playbook = open(text);
        const saved = saveDocument(playbook);
        expect(open(saved)).toStrictEqual(playbook);
        expect(saveDocument(open(saved))).toBe(saved);
        expect(saved).not.toMatch(/-0[,\n]/);
      }),
      { numRuns: 50 },
    );
  });

  it('gives the same bytes whatever order the keys were made in', () => {
    const saved = saveDocument(samplePlaybook());
    for (let turn = 0; turn < 15; turn += 1) {
      const text = JSON.stringify(turned(SAMPLE, turn));
      expect(saveDocument(open(text))).toBe(saved);
      const { words, team, ...rest } = open(text);
      expect(saveDocument({ words, ...rest, team })).toBe(saved);
    }
  });

  it('begins with what it is, indents by two, and ends with a line break', () => {
    const saved = saveDocument(samplePlaybook());
    expect(saved.startsWith('{\n  "format": "gapwright-playbook",\n  "version": 3,\n  "calls": [\n    {\n')).toBe(true);
    expect(saved.endsWith('}\n')).toBe(true);
  });

  it('does not change the playbook', () => {
    const playbook = samplePlaybook();
    const before = structuredClone(playbook);
    saveDocument(playbook);
    expect(playbook).toStrictEqual(before);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('throws rather than lose %d', (x) => {
    const playbook = samplePlaybook();
    const [front] = playbook.fronts;
    const [spot] = front?.byHand ?? [];
    if (front === undefined || spot === undefined) throw new Error('The sample has a front with a spot by hand');
    const spoilt = { ...playbook, fronts: [{ ...front, byHand: [{ ...spot, x }] }] };
    expect(() => saveDocument(spoilt)).toThrow('x is not a number that can be saved');
  });
});
