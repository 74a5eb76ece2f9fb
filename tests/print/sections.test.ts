import { beforeAll, describe, expect, it } from 'vitest';
import { PAPERS, printSheets, type PrintInput } from '../../src/print/index.ts';
import { boxesOf, overlapsOf, pagesOf } from './poppler.ts';
import { FINDING, FULL, input, REPORT, roleOf, sheet } from './sample.ts';

const room = (name: string, ...letters: readonly string[]): PrintInput['room'] => ({
  name,
  roles: letters.map(roleOf),
});
const LINE = room('Line', 'LE', 'N', 'RE');
const BACKERS = room('Linebackers', 'W', 'M', 'S', 'J');
const printed = async (of: PrintInput['room'], report = FULL): Promise<string> =>
  pagesOf(await printSheets(input({ room: of, sheets: [sheet({ report })] }))).join(' ');

/** Texts in the order in which they stand on the sheet. */
const inOrder = (page: string, texts: readonly string[]): readonly string[] =>
  texts.toSorted((a, b) => page.indexOf(a) - page.indexOf(b));

describe("everybody's sheet with something in every section", () => {
  let page = '';
  beforeAll(async () => {
    page = await printed(null);
  });

  it('has the verdict, what it counts, what is run here, and what decides before the picture and the jobs', () => {
    const texts = [
      'Stop: do not install',
      '4 stops, 2 checks; 1 cannot be told; 1 waived',
      'Check-out: Trips: check to Adze.',
      'Either-or: Kiln is run. Kiln if it rains, otherwise Trowel. N must hear the check.',
      'Motion: The receiver H goes 9 yd to the right. Call side of Kiln: left before, right after. SS has another spot',
      'Title a: text a',
      'Title c: text c',
      'Jobs',
      'What each pressure says',
      'Coverage · Three deep · 5 rush, 3 under, 3 deep',
      'What this look is known for. By the textbook rule, not from scouting',
      'Other findings',
      'Title d: text d',
      'Title e: text e',
      'Cannot be told',
      'Waived',
      'Looked for 2 kinds of fault',
    ];
    for (const text of texts) expect(page).toContain(text);
    expect(inOrder(page, texts)).toEqual(texts);
  });

  it('does not repeat below what stands above', () => {
    expect(page.match(/Title a/g)).toHaveLength(1);
    expect(page.match(/By the textbook rule/g)).toHaveLength(1);
    expect(page).not.toContain('Call side of Trowel: left before and after');
  });

  it('has every receiver with who has him, and zones that are filled in or nobody’s', () => {
    expect(page).toContain('number 1 left X number 2 left H the back B');
    expect(page).toContain('LC, out of the deep third nobody LE, out of the flat');
    expect(page).toContain('Nobody drops to the hook left. SS fills in the seam right.');
    expect(page).not.toContain('drops to the flat left');
  });

  it('has a row for each run and each protection', () => {
    expect(page).toContain('power to the right, with a pass');
    expect(page).toContain('Hits C gap right: RE; G left pulls to C gap right: nobody');
    expect(page).toContain('Read: J; 1 too few near the box');
    expect(page).toContain('Cannot be run from this look: nobody leads');
    expect(page).toContain('Free: S through B gap right; hot to the right RE by T right');
  });

  it('says why something was waived, and what could not be judged', () => {
    expect(page).toContain('Reason: we have seen it on film');
    expect(page).toContain('Whether anybody has it depends on N');
    expect(page).toContain('He is told two things. Not judged: a run gap is open.');
  });

  it('pairs the two tellings of linemen, and of others only where the two differ', () => {
    expect(page).toContain('W first to W second to W stands for W By the key');
    expect(page).not.toContain('second to M');
    expect(page).not.toContain('second to S');
  });
});

describe("a room's sheet", () => {
  it('of the line has nothing about coverage but what its own men do of it', async () => {
    const page = await printed(LINE);
    expect(page).not.toContain('Coverage ·');
    expect(page).not.toContain('number 1 left X');
    expect(page).toContain('Linemen in coverage the back B LE, out of the flat LE drops to the flat left.');
    const { zones, receivers } = REPORT.coverage;
    const none = await printed(LINE, { ...FULL, coverage: { ...FULL.coverage, zones, receivers } });
    expect(none).not.toContain('Linemen in coverage');
  });

  it('of the linebackers has the whole coverage, and its own men of the pair table', async () => {
    const page = await printed(BACKERS);
    expect(page).toContain('number 1 left X number 2 left H the back B');
    expect(page).toContain('By the key');
    expect(page).not.toContain('second to N');
  });

  it('leaves findings that decide nothing to the rooms they are about, and says that it does', async () => {
    const page = await printed(LINE);
    expect(page).toContain('Title e: text e');
    expect(page).not.toContain('Title f');
    expect(page).toContain('1 finding about other rooms: on the sheet for everybody.');
    expect(await printed(BACKERS)).toContain('2 findings about other rooms');
  });
});

describe('verdicts other than stop', () => {
  it('a check that rests on what cannot be told has it above the picture', async () => {
    const page = await printed(null, { ...FULL, verdict: 'check', findings: [], waived: [] });
    expect(page.indexOf('Whether anybody has it')).toBeLessThan(page.indexOf('Jobs'));
    expect(page).not.toContain('Cannot be told');
  });

  it('a clean look says that nothing was found, and how much was looked for', async () => {
    const clean = { ...REPORT, verdict: 'clean', verdictText: 'Clean', counts: 'nothing found', findings: [] } as const;
    const page = await printed(null, clean);
    expect(page).toContain('Nothing was found. Looked for 2 kinds of fault');
  });

  it('a call that is not run against this look has no coverage and no plays', async () => {
    const page = await printed(null, { ...FULL, verdict: 'left-out', findings: [], checked: [] });
    expect(page).not.toContain('Coverage ·');
    expect(page).not.toContain('known for');
    expect(page).not.toContain('Looked for');
  });
});

describe('findings of one rule', () => {
  it('stand under one title, and say why once', async () => {
    const twice = ['one', 'two'].map((key) => ({ ...FINDING, key, text: `text ${key}` }));
    const page = await printed(null, { ...REPORT, findings: twice });
    expect(page).toContain(`${FINDING.title} text one text two Why: ${FINDING.matters}.`);
  });
});

describe('with an empty picture, so that every word on the page is a word of the sheet', () => {
  const empty = { shapes: [], bounds: { left: -9, right: 9, top: -7, bottom: 7 } };
  const long = (times: number): string => Array.from({ length: times }, (_, index) => `word${index}`).join(' ');
  const loud = {
    ...FULL,
    counts: long(9),
    choice: FULL.choice === null ? null : { ...FULL.choice, key: long(60) },
    runs: FULL.runs.map((run) => ({ ...run, notes: [long(30)] })),
    waived: FULL.waived.map((row) => ({ ...row, reason: long(200) })),
  };

  it.each(PAPERS.flatMap((paper) => [['short', paper, FULL] as const, ['long', paper, loud] as const]))(
    'nothing lies on anything else, or over the edge: %s words on %s',
    async (_words, paper, report) => {
      for (const page of boxesOf(await printSheets(input({ paper, sheets: [sheet({ report, scene: empty })] })))) {
        const { width, height, words } = page;
        const outside = words.filter(
          (word) => word.left < 20 || word.right > width - 20 || word.top < 20 || word.bottom > height - 20,
        );
        expect(outside).toEqual([]);
        expect(overlapsOf(words)).toEqual([]);
      }
    },
  );
});
