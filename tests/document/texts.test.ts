/** Ids and texts at their limits, and texts that would hurt a careless page, sheet or table: kept as they are. */
import { describe, expect, it } from 'vitest';
import { checkPlaybook, openDocument, saveDocument, toSetup } from '../../src/document/index.ts';
import { analyse, asPlayerId, asRoleId, evidenceOf } from '../../src/engine/index.ts';
import { withAt } from './json.ts';
import { sampleJson, samplePlaybook, type Json } from './samplePlaybook.ts';

function refusal(value: Json): string | null {
  const checked = checkPlaybook(value);
  return checked.ok ? null : checked.problem.map(({ found, expected }) => `${found} / ${expected}`).join('\n');
}

describe('ids', () => {
  const AN_ID = 'an id: 1 to 40 letters, digits, "_" or "-", and not __proto__, constructor or prototype';
  const withId = (id: string): Json => withAt(sampleJson(), ['sheets', 0, 'id'], id);

  it.each(['a', 'A-1_b', '0', '-', 'a'.repeat(40), 'hasOwnProperty', 'toString', 'then', 'toJSON', '__proto'])(
    '%s',
    (id) => {
      expect(refusal(withId(id))).toBeNull();
    },
  );

  it.each([
    ['', 'an empty text'],
    ['a'.repeat(41), `"${'a'.repeat(41)}" (text)`],
    ['a'.repeat(1_000_000), `"${'a'.repeat(80)}…" (text)`],
    ['two words', '"two words" (text)'],
    ['🏈', '"🏈" (text)'],
    ['../up', '"../up" (text)'],
    ['"', '"\\"" (text)'],
    ['a\n', '"a\\u000A" (text)'],
    ['é', '"é" (text)'],
    ['__proto__', '"__proto__" (text)'],
    ['constructor', '"constructor" (text)'],
    ['prototype', '"prototype" (text)'],
  ])('%j is none', (id, found) => {
    expect(refusal(withId(id))).toBe(`${found} / ${AN_ID}`);
  });

  it('names of what objects can do are harmless as ids of roles', () => {
    const text = JSON.stringify(sampleJson())
      .replaceAll('"LE"', '"toString"')
      .replaceAll('"RE"', '"hasOwnProperty"')
      .replaceAll('"N"', '"valueOf"')
      .replaceAll('"letter":"valueOf"', '"letter":"N"');
    const opened = openDocument(text);
    if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
    const call = opened.value.calls[1];
    const look = opened.value.looks[0];
    if (call === undefined || look === undefined) throw new Error('The sample has two calls and a look');
    const setup = toSetup(opened.value, { call, look: look.id, spot: 'middle' });
    expect(setup.ok && analyse(setup.value).verdict).toBe('stop');
  });
});

describe('lengths are counted in characters', () => {
  const withName = (name: string): Json => withAt(sampleJson(), ['team', 'name'], name);

  it('120 of a name', () => {
    expect(refusal(withName('x'.repeat(120)))).toBeNull();
    expect(refusal(withName('🏈'.repeat(120)))).toBeNull();
    expect(refusal(withName('x'.repeat(121)))).toContain('text of at most 120 characters');
    expect(refusal(withName('🏈'.repeat(121)))).toContain('text of at most 120 characters');
  });

  it('4,000 of a reason', () => {
    const withReason = (reason: string): Json => withAt(sampleJson(), ['calls', 1, 'waivers', 0, 'reason'], reason);
    expect(refusal(withReason('🏈'.repeat(4_000)))).toBeNull();
    expect(refusal(withReason('x'.repeat(4_001)))).toContain('text of at most 4000 characters');
  });

  it('40 of a word of the staff, 120 of what it means', () => {
    const withEntry = (word: string, meaning: string): Json =>
      withAt(sampleJson(), ['dictionary', 0], { word, meaning });
    expect(refusal(withEntry('x'.repeat(40), 'x'.repeat(120)))).toBeNull();
    expect(refusal(withEntry('x'.repeat(41), 'x'))).toContain('text of at most 40 characters');
    expect(refusal(withEntry('x', 'x'.repeat(121)))).toContain('text of at most 120 characters');
  });

  it('40 of a tag', () => {
    expect(refusal(withAt(sampleJson(), ['pressures', 0, 'tags', 0], 'x'.repeat(40)))).toBeNull();
    expect(refusal(withAt(sampleJson(), ['pressures', 0, 'tags', 0], 'x'.repeat(41)))).toContain('at most 40');
  });

  it('one or two of a letter', () => {
    const withLetter = (letter: string): Json => withAt(sampleJson(), ['roles', 0, 'letter'], letter);
    expect(['E', 'SS', 'ß', '🏈🏈'].map((letter) => refusal(withLetter(letter)))).toEqual([null, null, null, null]);
    for (const letter of ['', 'SSS', 'a\n', '\n']) {
      expect(refusal(withLetter(letter))).toContain('one or two letters');
    }
  });
});

/** Sources of the kinds: OWASP Cross Site Scripting Prevention and CSV Injection; Unicode Standard 15, chapters 3 and 23. */
const TEXTS = [
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '"><svg onload=alert(1)>',
  ']]>',
  '--></style>',
  '&#x3c;script&#x3e;',
  '&amp;lt;',
  'javascript:alert(1)',
  'data:text/html,<b>x',
  "=cmd|' /C calc'!A0",
  '+1+1',
  '-2+3',
  '@SUM(1)',
  '\t=1',
  '\r=1',
  '\0=1',
  '＝1+1',
  'a "quoted", comma\r\nnext\rlone',
  ') /S /JavaScript /JS (app.alert(1)) >> endobj (',
  '\\\\',
  'a\\',
  '(((((',
  '\u0001\u0008\u001F\u007F\u2028\u2029\uFEFF',
  '\uD800',
  '\uDC00\uD800',
  '👨‍👩‍👧‍👦 漢字 العربية हिन्दी ไทย',
  'Z͑ͫ̓ͪa̴l͑go',
  'abc\u202Egpj.json',
  '__proto__',
  '1\n'.repeat(60),
  'x'.repeat(120),
];

describe('what a waived finding was about', () => {
  const withEvidence = (evidence: string): Json =>
    withAt(sampleJson(), ['calls', 1, 'waivers', 0, 'evidence'], evidence);

  it('is taken as the program writes it: ids, gaps and players', () => {
    const who = ['LE', 'N', 'a'.repeat(40)].map(asRoleId);
    const gaps = [{ side: 'left', letter: 'B' } as const, { side: 'right', letter: 'A' } as const];
    const evidence = evidenceOf({ who, gaps, players: [asPlayerId('T-1'), asPlayerId('T_2')] });
    expect(evidence).toContain('A right B left');
    expect(refusal(withEvidence(evidence))).toBeNull();
    expect(refusal(withEvidence(evidenceOf({ who: [], gaps: [], players: [] })))).toBeNull();
  });

  it.each(['1.5 2', 'é', '<b>', 'a\n', 'x'.repeat(2_001)])('and not as %j', (evidence) => {
    expect(refusal(withEvidence(evidence))).toContain('what a finding was about, as this program writes it');
  });
});

it.each(TEXTS)('%j survives saving and opening unchanged', (text) => {
  const sample = samplePlaybook();
  const named = {
    ...sample,
    team: { ...sample.team, name: text, season: text },
    calls: sample.calls.map((call) => ({
      ...call,
      waivers: call.waivers.map((waiver) => ({ ...waiver, reason: text })),
    })),
    dictionary: [{ word: Array.from(text).slice(0, 40).join(''), meaning: text }],
  };
  const saved = saveDocument(named);
  for (const file of [saved, new TextEncoder().encode(saved)]) {
    const opened = openDocument(file);
    expect(opened).toEqual({ ok: true, value: named });
  }
});

it('shows a hostile text in a refusal shortened, with nothing in it a screen would obey', () => {
  const name = '\u001B[31m\u202E\uFEFF\uD800"\\';
  const spoilt = withAt(withAt(sampleJson(), ['looks', 0, 'name'], name), ['looks', 0, 'players', 0, 'kind'], name);
  const checked = checkPlaybook(spoilt);
  expect(checked).toEqual({
    ok: false,
    problem: [
      {
        path: 'looks[0].players[0].kind (\\u001B[31m\\u202E\\uFEFF\\uD800\\"\\\\)',
        found: '"\\u001B[31m\\u202E\\uFEFF\\uD800\\"\\\\" (text)',
        expected: 'one of "snapper", "lineman", "tight-end", "receiver", "back", "passer"',
      },
    ],
  });
});
