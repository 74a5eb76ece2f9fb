/** The sample playbook spoilt at every single place: the refusal always names that place. */
import { afterAll, describe, expect, it } from 'vitest';
import { checkPlaybook } from '../../src/document/index.ts';
import { pathText, places, withAt, type Step } from './json.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';

const PROTOTYPE = Object.getOwnPropertyNames(Object.prototype).sort();
const SAMPLE = sampleJson();
const PLACES = places(SAMPLE);

/** The paths a value is refused at, the name in brackets left out; null when it is accepted. */
function refusedAt(value: Json): readonly string[] | null {
  const checked = checkPlaybook(value);
  return checked.ok ? null : checked.problem.map(({ path }) => path.replace(/ \(.*\)$/, ''));
}

afterAll(() => {
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(PROTOTYPE);
});

it('starts from a playbook with nothing wrong in it, and enough of everything', () => {
  expect(refusedAt(SAMPLE)).toBeNull();
  expect(PLACES.length).toBeGreaterThan(1_000);
});

it('names every key that is missing', () => {
  const keys = PLACES.flatMap(({ path, value }) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.keys(value).map((key): readonly Step[] => [...path, key])
      : [],
  );
  for (const path of keys) expect(refusedAt(withAt(SAMPLE, path, undefined))).toContain(pathText(path));
});

it('names a key that does not belong, at every level', () => {
  for (const { path, value } of PLACES) {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) continue;
    const extra = [...path, 'extra'];
    expect(refusedAt(withAt(SAMPLE, extra, 'x'))).toEqual([pathText(extra)]);
  }
});

describe.each<{ readonly value: Json }>([
  { value: null },
  { value: {} },
  { value: [] },
  { value: '' },
  { value: 0 },
  { value: true },
  { value: 1e308 },
])('every value replaced by $value', ({ value }) => {
  it('is refused at its place, or fits there', () => {
    for (const { path } of PLACES) {
      const at = refusedAt(withAt(SAMPLE, path, value));
      if (at === null || path.length === 0) continue;
      // An emptied list can be right in itself and leave ids elsewhere that name nothing.
      const isEmptied = Array.isArray(value) && onlyDangling(withAt(SAMPLE, path, value));
      const isThere = at.some((each) => each === pathText(path) || each.startsWith(`${pathText(path)}.`));
      expect({ path: pathText(path), named: isThere || isEmptied }).toEqual({ path: pathText(path), named: true });
    }
  });

  it('never fits where an id, a kind or a list of eleven belongs', () => {
    for (const { path } of PLACES) {
      const last = path.at(-1);
      const isFixed = last === 'id' || last === 'kind' || last === 'players' || last === 'format' || last === 'version';
      if (isFixed) expect(refusedAt(withAt(SAMPLE, path, value))).not.toBeNull();
    }
  });
});

/** Whether everything wrong with a value is that ids name nothing. */
function onlyDangling(value: Json): boolean {
  const checked = checkPlaybook(value);
  return !checked.ok && checked.problem.every(({ expected }) => /^the id of a \w+ of this playbook$/.test(expected));
}
