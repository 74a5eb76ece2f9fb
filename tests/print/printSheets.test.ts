import { beforeAll, describe, expect, it } from 'vitest';
import { PAPERS, printSheets } from '../../src/print/index.ts';
import { legendOf } from '../../src/scene/index.ts';
import { ELEVEN } from '../scene/board.ts';
import { boxesOf, fontsOf, overlapsOf, pagesOf, picturesOf } from './poppler.ts';
import { FINDING, input, REPORT, roleOf, sheet, TITLE } from './sample.ts';

const raw = (pdf: Uint8Array): string => Buffer.from(pdf).toString('latin1');

describe('a sheet of one look', () => {
  let pdf: Uint8Array = new Uint8Array();
  let page = '';
  beforeAll(async () => {
    pdf = await printSheets(input());
    page = pagesOf(pdf).join(' ');
  });

  it('fits on one page', () => {
    expect(pagesOf(pdf)).toHaveLength(1);
  });

  it.each(Object.entries(TITLE))('says in its head: %s', (_part, text) => {
    expect(page).toContain(text);
  });

  it('says the verdict in words', () => {
    expect(page).toContain('Stop: do not install');
  });

  it.each(ELEVEN.map((man) => man.letter))('has the row of %s', (letter) => {
    for (const cell of [`the ${letter} man`, `spot ${letter}`, `run ${letter}`, `pass ${letter}`]) {
      expect(page).toContain(cell);
    }
    expect(page).toContain(`does what ${letter} does`);
  });

  it('puts the two tellings of every lineman side by side', () => {
    expect(page).toContain('First: Kiln Second: Trowel What stands Verdict');
    expect(page).toContain('N first to N second to N not decided Two jobs');
    expect(page).toContain('LE first to LE second to LE the first Told once');
  });

  it('gives every finding with why it matters and what it follows from, and what was checked', () => {
    expect(page).toContain(`${FINDING.title}: ${FINDING.text}`);
    expect(page).toContain('Why: He can only be in one gap. Kiln sends him right.');
    expect(page).toContain('Looked for 2 kinds of fault');
  });

  it('explains every sign of the picture', () => {
    const { scene } = sheet();
    expect(legendOf(scene).length).toBeGreaterThan(8);
    for (const { text } of legendOf(scene)) expect(page).toContain(text);
  });

  it('draws the letters of the picture as text: the zones, the slots, the men', () => {
    for (const text of ['deep third', 'deep middle', 'curl-flat', 'spy SS', 'N?']) expect(page).toContain(text);
  });

  it('carries the cautions, and names who decides', () => {
    for (const text of [
      'head up',
      'no launching',
      'low-block rule',
      'state association’s or league’s contact and heat rules',
      'school’s policy',
      'athletic trainer',
      'may have a head injury comes out and returns only when a medical professional clears him',
    ]) {
      expect(page).toContain(text);
    }
  });

  it('has whose it is, which version, and its number in the foot', () => {
    expect(page).toContain('Fictional Herons · version 7, 3 August');
    expect(page).toContain('page 1 of 1');
  });

  it('embeds every font it uses (poppler pdffonts)', () => {
    const fonts = fontsOf(pdf);
    expect(fonts.map((font) => font.name.replace(/^[A-Z]{6}\+/, '')).toSorted()).toEqual([
      'IBMPlexSans-Bold',
      'IBMPlexSans-Regular',
    ]);
    expect(fonts.every((font) => font.embedded)).toBe(true);
  });

  it('holds no picture: the drawing is lines and letters (poppler pdfimages)', () => {
    expect(picturesOf(pdf)).toBe(0);
  });

  it('does nothing by itself: no script, link, form, file or action', () => {
    expect(raw(pdf)).not.toMatch(/\/(JS|JavaScript|URI|Launch|AA|OpenAction|AcroForm|EmbeddedFiles?|Annots|GoToR)\b/);
  });

  it('is tagged, with one document at the root, and a bookmark a sheet', () => {
    const text = raw(pdf);
    expect(text.match(/\/S \/Document\b/g)).toHaveLength(1);
    expect(text).toContain('/MarkInfo');
    expect(text.match(/\/S \/Figure\b/g)).toHaveLength(1);
    expect(text).toContain('(Kiln Trowel: Tight end right)');
    expect(text).toContain('(Kiln Trowel sheets)');
  });

  it('gives the same bytes for the same input', async () => {
    expect(Buffer.compare(await printSheets(input()), pdf)).toBe(0);
  });

  it('keeps the day it was given, not the day it is', () => {
    expect(raw(pdf)).toContain('(D:20260803000000Z)');
  });
});

describe('paper', () => {
  // Sources: ANSI/ASME Y14.1, size A, 8.5 by 11 in; ISO 216, A4, 210 by 297 mm. A point is 1/72 in.
  it.each([
    ['letter', 612, 792],
    ['a4', 595.28, 841.89],
  ] as const)('%s is %d by %d points', async (paper, width, height) => {
    const [page] = boxesOf(await printSheets(input({ paper })));
    expect(page?.width).toBeCloseTo(width, 1);
    expect(page?.height).toBeCloseTo(height, 1);
  });

  it('has a page for each look, each with its own head', async () => {
    const looks = ['Doubles', 'Trips', 'Empty'];
    const sheets = looks.map((look) => sheet({ title: { ...TITLE, look } }));
    const pages = pagesOf(await printSheets(input({ sheets })));
    expect(pages).toHaveLength(3);
    looks.forEach((look, index) => {
      expect(pages[index]).toContain(look);
      expect(pages[index]).toContain(`page ${index + 1} of 3`);
    });
  });
});

describe('a room', () => {
  it("has the room's rows first and bold, the others after", async () => {
    const room = { name: 'Secondary', roles: ['SS', 'FS'].map(roleOf) };
    const [page = ''] = pagesOf(await printSheets(input({ room })));
    expect(page).toContain('Jobs: Secondary first');
    const order = ELEVEN.map((man) => man.letter).toSorted(
      (a, b) => page.indexOf(`the ${a} man spot`) - page.indexOf(`the ${b} man spot`),
    );
    expect(order.slice(0, 3)).toEqual(['SS', 'FS', 'LE']);
  });
});

describe('a call of one pressure', () => {
  it('has no table of two tellings', async () => {
    const report = { ...REPORT, sides: REPORT.sides.slice(0, 1) };
    const [page = ''] = pagesOf(await printSheets(input({ sheets: [sheet({ report })] })));
    expect(page).not.toContain('Second:');
    expect(page).not.toContain('second to N');
  });
});

/** Words that reach over the edge of the paper, and pairs that lie on each other below the picture. */
function faults(pdf: Uint8Array): { readonly outside: readonly string[]; readonly over: readonly string[] } {
  const pages = boxesOf(pdf);
  const outside = pages.flatMap(({ width, height, words }) =>
    words.filter((word) => word.left < 20 || word.right > width - 20 || word.top < 20 || word.bottom > height - 20),
  );
  const over = pages.flatMap(({ words }) => {
    const start = words.find((word) => word.text.startsWith('Jobs'))?.top ?? 0;
    return overlapsOf(words.filter((word) => word.top >= start));
  });
  return { outside: outside.map((word) => word.text), over };
}

describe('long words', () => {
  const long = (times: number): string => Array.from({ length: times }, (_, index) => `word${index}`).join(' ');

  it.each(PAPERS)('an ordinary sheet keeps to the paper and to itself: %s', async (paper) => {
    expect(faults(await printSheets(input({ paper })))).toEqual({ outside: [], over: [] });
  });

  it('wrap inside their cells, and go on over pages under the same head', async () => {
    const jobs = REPORT.jobs.map((row) => ({ ...row, move: long(60), run: long(20), name: long(8) }));
    const findings = Array.from({ length: 12 }, (_, index) => ({
      ...FINDING,
      key: String(index),
      rule: String(index),
      matters: long(80),
    }));
    const pdf = await printSheets(input({ sheets: [sheet({ report: { ...REPORT, jobs, findings } })] }));
    const pages = pagesOf(pdf);
    expect(pages.length).toBeGreaterThan(1);
    expect(pages[0]).not.toContain('Continued');
    for (const page of pages.slice(1)) expect(page).toMatch(/^Kiln Trowel .*Continued · Front: Odd/);
    for (const page of pages) expect(page).toContain('athletic trainer');
    expect(pages.join(' ').match(/word59\b/g)?.length).toBeGreaterThanOrEqual(11);
    expect(pages.join(' ').match(/word79\b/g)).toHaveLength(12);
    expect(faults(pdf)).toEqual({ outside: [], over: [] });
  });

  it('a row longer than a page goes on until it is all said', async () => {
    const jobs = REPORT.jobs.slice(0, 1).map((row) => ({ ...row, move: long(1500) }));
    const pdf = await printSheets(input({ sheets: [sheet({ report: { ...REPORT, jobs } })] }));
    const said = pagesOf(pdf).join(' ');
    for (const index of [0, 500, 1000, 1499]) expect(said).toMatch(new RegExp(`\\bword${index}\\b`));
    expect(faults(pdf)).toEqual({ outside: [], over: [] });
  });

  it('a word longer than its cell is cut, not lost', async () => {
    const name = 'x'.repeat(400);
    const jobs = REPORT.jobs.map((row, index) => (index === 0 ? { ...row, name } : row));
    const pdf = await printSheets(input({ sheets: [sheet({ report: { ...REPORT, jobs } })] }));
    const count = pagesOf(pdf)
      .join(' ')
      .split(' ')
      .filter((word) => /^x+$/.test(word))
      .join('').length;
    expect(count).toBe(400);
    expect(faults(pdf)).toEqual({ outside: [], over: [] });
  });

  it('a name too long for the head is cut with dots', async () => {
    const title = { ...TITLE, call: long(300), look: long(300) };
    const pdf = await printSheets(input({ sheets: [sheet({ title })], book: long(300) }));
    expect(pagesOf(pdf)[0]).toContain('...');
    expect(faults(pdf).outside).toEqual([]);
  });
});

describe('hostile names', () => {
  // Shapes known from attacks on PDF writers: delimiters, names of actions, octal escapes, half characters, direction marks.
  const NAMES = [
    ')>>/JS(app.alert(1))',
    '(unclosed',
    'closed)',
    '\\',
    '\\)',
    '\\101\\0',
    '<< /URI (x) >>',
    '<script>alert(1)</script>',
    '%PDF-1.7',
    'endstream endobj',
    'a\u0000b\u0007c',
    'line\r\nbreak\ttab',
    '\u202Egpj.exe',
    '\u200Bthin\u2066',
    '\uD800half',
    'half\uDC00',
    '\u{1F600}',
    'e\u0301\u0301\u0301\u0301',
    'ﬁ Ω ≤ →',
    '漢字',
    'العربية',
    "=cmd|' /C calc'!A0",
    '__proto__',
    '{}',
    '',
    '   ',
    'Ångström Łódź ő',
  ];

  let pdf: Uint8Array = new Uint8Array();
  beforeAll(async () => {
    const sheets = NAMES.map((name) => {
      const title = { ...TITLE, call: name, look: name, front: name, pressures: name, coverage: name };
      const jobs = REPORT.jobs.map((row) => ({ ...row, name, job: name, move: name, letter: name.slice(0, 2) }));
      const findings = [{ ...FINDING, title: name, text: name, matters: name }];
      return sheet({ title, report: { ...REPORT, jobs, findings, verdictText: name, checked: [name] } });
    });
    const all = NAMES.join(' ');
    pdf = await printSheets(input({ title: all, book: all, stamp: all, sheets }));
  });

  it('go everywhere and leave every sheet whole', () => {
    const pages = pagesOf(pdf);
    expect(pages).toHaveLength(NAMES.length);
    for (const page of pages) {
      expect(page).toContain('athletic trainer');
      expect(page).not.toMatch(/[\u0000-\u0008\u200B-\u200F\u202A-\u202E\u2066-\u2069\uFFFD]/u);
    }
    expect(fontsOf(pdf).every((font) => font.embedded)).toBe(true);
  });

  it('stay words: none becomes a part of the file', () => {
    // Streams and the strings of the dictionaries are taken out first: what is inside them is words.
    const outside = raw(pdf)
      .replace(/\nstream\r?\n[^]*?\nendstream/g, '')
      .replace(/\((?:\\[^]|[^\\()])*\)/g, '()');
    expect(outside.match(/\bendobj\b/g)?.length).toBeGreaterThan(100);
    expect(outside).not.toMatch(/\/(JS|JavaScript|URI|Launch|AA|OpenAction)\b/);
  });

  it('stay words in the metadata too, which is XML', () => {
    const [, packet = ''] = /<rdf:li[^>]*>([^]*?)<\/rdf:li>/.exec(raw(pdf)) ?? [];
    expect(packet).toContain('script');
    expect(packet).not.toMatch(/[<>&]/);
  });

  it('says what the typeface cannot draw in other signs, never with a hole', async () => {
    const title = { ...TITLE, call: 'a → b ≤ c', look: 'Łódź 漢字' };
    const said = pagesOf(await printSheets(input({ sheets: [sheet({ title })] }))).join(' ');
    expect(said).toContain('a -> b <= c');
    expect(said).toMatch(/\?ódz \?\?|Łódź \?\?|Łódz \?\?|\?ódź \?\?/);
  });
});
