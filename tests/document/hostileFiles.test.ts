/** Files that are no playbook at all, or would hurt a careless reader: each is refused in words, and nothing is touched. */
import { afterEach, describe, expect, it } from 'vitest';
import { MAX_FILE_BYTES, openDocument, refusalText } from '../../src/document/index.ts';
import { sampleJson, type Json } from './samplePlaybook.ts';

const PROTOTYPE = Object.getOwnPropertyNames(Object.prototype).sort();
const SAMPLE = JSON.stringify(sampleJson(), null, 2);

const encode = (text: string): Uint8Array => new TextEncoder().encode(text);

/** What a file is refused with, one line a problem; empty when it opens. */
function refusals(file: string | Uint8Array): readonly string[] {
  const opened = openDocument(file);
  return opened.ok ? [] : opened.problem.map(refusalText);
}

afterEach(() => {
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(PROTOTYPE);
  expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
});

describe('a file that holds nothing', () => {
  it.each([
    ['no bytes', ''],
    ['one space', ' '],
    ['only line breaks', '\n\r\n\n'],
    ['only a byte order mark', '\uFEFF'],
  ])('%s', (_, text) => {
    const said = ['the whole file: found nothing: the file is empty, expected a Gapwright playbook'];
    expect(refusals(text)).toEqual(said);
    expect(refusals(encode(text))).toEqual(said);
  });

  it('267 KB of zero bytes, as a crash while saving leaves it', () => {
    expect(refusals(new Uint8Array(267_000))).toEqual([
      'the whole file: found 267000 zero bytes: probably a crash while it was being saved, ' +
        'expected a Gapwright playbook; look for an earlier copy of this file',
    ]);
    expect(refusals('\0\0')).toEqual([expect.stringContaining('2 zero bytes')]);
  });
});

describe('a file cut short', () => {
  const whole = encode(SAMPLE.replace('Millbrook', 'Mühlbach 🏈'));

  it.each(Array.from({ length: 49 }, (_, index) => index + 1))('at %i fiftieths', (part) => {
    const cut = Math.floor((whole.length * part) / 50);
    expect(refusals(whole.slice(0, cut))).toEqual([
      `the whole file: found a file that ends too early at byte ${cut}, ` +
        'expected the rest of a Gapwright playbook; fetch or save the file again',
    ]);
  });

  it.each(['tru', '-', '[1.', '[1e', '[1.5e+', '["\\', '["\\u00', '["abc', '{"a"', '{"a":', '[1', '[1,', '{'])(
    'in the middle of %s',
    (text) => {
      expect(refusals(text)).toEqual([expect.stringContaining(`ends too early at byte ${text.length},`)]);
    },
  );

  it('counted from the first byte of the file, a byte order mark included', () => {
    expect(refusals('\uFEFF[1')).toEqual([expect.stringContaining('ends too early at byte 5,')]);
    expect(refusals(`\uFEFF${'['.repeat(33)}`)).toEqual([expect.stringContaining('nested too deep at byte 35,')]);
  });

  it('in the middle of a character', () => {
    const bytes = encode('["ü');
    expect(refusals(bytes.slice(0, 3))).toEqual([expect.stringContaining('ends too early at byte 3,')]);
  });

  it('only by its last line break: it opens', () => {
    expect(refusals(SAMPLE)).toEqual([]);
    expect(refusals(`${SAMPLE}\n`)).toEqual([]);
  });
});

describe('bytes that are not UTF-8', () => {
  it('a byte order mark of UTF-8 is dropped', () => {
    expect(refusals(encode(`\uFEFF${SAMPLE}`))).toEqual([]);
    expect(refusals(`\uFEFF${SAMPLE}`)).toEqual([]);
  });

  it.each([
    ['UTF-16, little end first', [0xff, 0xfe, 0x7b, 0x00], 0],
    ['UTF-16, big end first', [0xfe, 0xff, 0x00, 0x7b], 0],
    ['Latin-1', [0x5b, 0x22, 0xfc, 0x22, 0x5d], 2],
    ['an overlong slash', [0x22, 0xc0, 0xaf, 0x22], 1],
    ['a surrogate', [0x22, 0xed, 0xa0, 0x80, 0x22], 1],
  ])('%s', (_, bytes, at) => {
    expect(refusals(Uint8Array.from(bytes))).toEqual([
      `the whole file: found a byte that is not UTF-8 at byte ${at}, expected text in UTF-8`,
    ]);
  });
});

describe('text that is not JSON', () => {
  it.each([
    ['not a number', '{"a":\n NaN}', 'line 2, column 2: found "NaN", expected a value'],
    ['infinity', '[-Infinity]', 'line 1, column 2: found "-Infinity", expected a number'],
    ['a comment', '{// why\n}', 'line 1, column 2: found "/", expected a key in double quotes or "}"'],
    ['a comma too many', '{"a":1,}', 'line 1, column 8: found "}", expected a key in double quotes'],
    ['single quotes', "{'a':1}", 'line 1, column 2: found "\'", expected a key in double quotes'],
    ['a missing comma', '[1 2]', 'line 1, column 4: found "2", expected "," or the closing bracket'],
    ['the wrong bracket', '[1}', 'line 1, column 3: found "}", expected "," or the closing bracket'],
    ['a leading zero', '[01]', 'line 1, column 3: found "1", expected "," or the closing bracket'],
    ['a line break in a text', '["a\nb"]', 'line 1, column 4: found "\\u000A", expected text without'],
    ['an unknown escape', '["\\x41"]', 'line 1, column 3: found "\\\\", expected an escape'],
    ['more after the end', '{} {}', 'line 1, column 4: found "{", expected the end of the file'],
    ['a picture', '<svg xmlns=""/>', 'line 1, column 1: found "<", expected a value'],
    ['zero bytes after the end', '{}\0\0', 'line 1, column 3: found "\\u0000", expected the end of the file'],
  ])('%s', (_, text, says) => {
    expect(refusals(text)).toEqual([expect.stringContaining(says)]);
  });
});

describe('lists and objects too deep', () => {
  it.each([33, 1_000, 100_000, 1_000_000])('%i inside each other', (depth) => {
    expect(refusals('['.repeat(depth) + ']'.repeat(depth))).toEqual([
      'line 1, column 33: found lists and objects nested too deep at byte 32, expected at most 32 inside each other',
    ]);
  });

  it('32 are read, and then are no playbook', () => {
    expect(refusals('['.repeat(32) + ']'.repeat(32))).toEqual([expect.stringContaining('expected an object')]);
  });
});

describe('files too large', () => {
  it('one byte too many', () => {
    const says = `the whole file: found ${MAX_FILE_BYTES + 1} bytes, expected at most ${MAX_FILE_BYTES} bytes`;
    expect(refusals(new Uint8Array(MAX_FILE_BYTES + 1))).toEqual([says]);
    expect(refusals('ü'.repeat(MAX_FILE_BYTES / 2) + 'u')).toEqual([says]);
  });

  it('50 MB in one text', () => {
    expect(refusals(JSON.stringify('a'.repeat(50_000_000)))).toEqual([expect.stringContaining('50000002 bytes')]);
  });

  it('20 MB in one name', () => {
    const long = JSON.stringify({
      ...sampleJson(),
      team: { name: 'a'.repeat(20_000_000), level: 'college', season: '' },
    });
    expect(refusals(long)).toEqual([
      `team.name: found "${'a'.repeat(80)}…" (text), expected text of at most 120 characters`,
    ]);
  });

  it('1,000,000 keys in one object', () => {
    const keys = Array.from({ length: 1_000_000 }, (_, index) => `"k${index}":0`).join(',');
    expect(refusals(`{${keys},${SAMPLE.slice(1)}`)).toEqual([
      'line 1, column 509: found more than 64 keys in one object, expected at most 64',
    ]);
  });

  it('1,000,000 wrong entries in one list', () => {
    const text = JSON.stringify({ ...sampleJson(), calls: Array.from({ length: 1_000_000 }, () => 1) });
    expect(refusals(text)).toEqual(['calls: found a list of 1000000, expected a list of at most 20000']);
  });
});

describe('JSON that is something else', () => {
  it.each([
    ['[]', 'an empty list'],
    ['[1,2]', 'a list of 2'],
    ['"text"', '"text" (text)'],
    ['""', 'an empty text'],
    ['12', '12'],
    ['null', 'null'],
    ['true', 'true'],
  ])('%s', (text, found) => {
    expect(refusals(text)).toEqual([
      `the whole file: found ${found}, expected an object with "format": "gapwright-playbook"`,
    ]);
  });

  it.each([
    ['{}', 'nothing'],
    ['{"version":1}', 'nothing'],
    ['{"format":"gapwright-report","version":1}', '"gapwright-report" (text)'],
    ['{"format":1}', '1'],
    ['{"type":"FeatureCollection","features":[]}', 'nothing'],
    ['{"__proto__":{"format":"gapwright-playbook","version":1}}', 'nothing'],
  ])('%s', (text, found) => {
    expect(refusals(text)).toEqual([`format: found ${found}, expected "gapwright-playbook"`]);
  });
});

describe('the version', () => {
  const withVersion = (version: string): string => SAMPLE.replace('"version": 3', `"version": ${version}`);

  it.each(['0', '-1', '1.5', '"1"', 'null', '1e999', '1e300'])('%s is none', (version) => {
    expect(refusals(withVersion(version))).toEqual([
      expect.stringMatching(/^version: found .+, expected a whole number from 1 to 3$/),
    ]);
  });

  it('missing', () => {
    expect(refusals(SAMPLE.replace('"version": 3,', ''))).toEqual([
      'version: found nothing, expected a whole number from 1 to 3',
    ]);
  });

  it.each(['4', '999', '1e9'])('%s is from the future, and refused by both names', (version) => {
    expect(refusals(withVersion(version))).toEqual([
      `version: found version ${Number(version)}, written by a newer Gapwright, ` +
        'expected version 3 or older: open it with the newer one',
    ]);
  });
});

describe('keys that objects already own', () => {
  const spoilt = (at: string, key: string): string =>
    SAMPLE.replace(at, `${at.slice(0, 1)}"${key}":{"polluted":1},${at.slice(1)}`);

  it.each(['__proto__', 'constructor', 'prototype', 'hasOwnProperty', 'toString', 'then', 'toJSON'])('%s', (key) => {
    const step = key === '__proto__' ? '["__proto__"]' : key;
    expect(refusals(spoilt('{\n  "format"', key))).toEqual([
      `${step}: found an object, expected no entry of this name here`,
    ]);
    const below = key === '__proto__' ? step : `.${key}`;
    expect(refusals(spoilt('{\n      "front": "odd"', key))).toEqual([
      `calls[0]${below} (Anvil): found an object, expected no entry of this name here`,
    ]);
    expect(refusals(spoilt('{\n          "id": "T1"', key))).toEqual([
      `looks[0].players[0]${below} (Tight right): found an object, expected no entry of this name here`,
    ]);
  });
});

describe('numbers JSON can write and a playbook cannot keep', () => {
  const withX = (x: string): string => SAMPLE.replace('"x": -2.6', `"x": ${x}`);

  it.each([
    ['1e999', 'a number too large to keep (Infinity)'],
    ['-1e999', 'a number too large to keep (-Infinity)'],
    ['1e308', '1e+308'],
    ['-1e308', '-1e+308'],
    ['1e9', '1000000000'],
    ['60.001', '60.001'],
    ['"12yd"', '"12yd" (text)'],
  ])('%s', (x, found) => {
    expect(refusals(withX(x))).toEqual([
      `looks[0].players[0].x (Tight right): found ${found}, expected a number from -60 to 60 (yards)`,
    ]);
  });

  it.each(['60', '-60', '-0', '1e-320', '2.5000000000000001'])('%s is kept', (x) => {
    expect(refusals(withX(x))).toEqual([]);
  });

  it('-0 is kept as 0', () => {
    const opened = openDocument(withX('-0'));
    expect(opened.ok && opened.value.looks[0]?.players[0]?.x).toBe(0);
  });
});

it('shows the first 50 problems and counts the others', () => {
  const players: Json = Array.from({ length: 11 }, () => ({ id: 'a b', letter: 1, kind: 'x', x: null, y: null }));
  const look = { id: 'one', name: 'One', motion: null, runs: [], protections: [] };
  const said = refusals(JSON.stringify({ ...sampleJson(), looks: [{ ...look, players }] }));
  expect(said).toHaveLength(51);
  expect(said.at(-1)).toBe('the rest of the file: found + 5 more, expected no problems');
});
