import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { asRoleId } from '../../src/engine/index.ts';
import type { PrintInput, Sheet, SheetTitle } from '../../src/print/index.ts';
import type { FindingRow, JobRow, LinemanRow, Report } from '../../src/report/index.ts';
import { buildScene, WHOLE_PICTURE } from '../../src/scene/index.ts';
import { board, ELEVEN } from '../scene/board.ts';

/** Sheets written by hand: what they say is invented, and chosen so that each sentence can be found again in the text. */

const font = (weight: number): Uint8Array => {
  const path = createRequire(import.meta.url).resolve(
    `@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-${weight}-normal.woff`,
  );
  return new Uint8Array(readFileSync(path));
};

export const FONTS = { regular: font(400), bold: font(700) };

export const TITLE: SheetTitle = {
  call: 'Kiln Trowel',
  front: 'Front: Odd',
  pressures: 'Kiln + Trowel, turned opposite',
  coverage: 'Coverage: Three deep',
  look: 'Tight end right',
  personnel: '11',
  spot: 'ball on the left hash',
  callSide: 'call side: right',
};

export const roleOf = (letter: string) => asRoleId(`${letter}-${ELEVEN.findIndex((man) => man.letter === letter)}`);

const job = (letter: string, room: string): JobRow => ({
  role: roleOf(letter),
  letter,
  name: `the ${letter} man`,
  room,
  aligns: `spot ${letter}`,
  job: `does what ${letter} does`,
  run: `run ${letter}`,
  pass: `pass ${letter}`,
  toldBy: 'first',
  why: { text: '', because: [] },
});

const lineman = (letter: string, status: LinemanRow['status']): LinemanRow => ({
  role: roleOf(letter),
  letter,
  name: `the ${letter} man`,
  first: `first to ${letter}`,
  second: `second to ${letter}`,
  status,
  verdict: status === 'conflict' ? 'Two jobs' : 'Told once',
  why: { text: '', because: [] },
});

export const FINDING: FindingRow = {
  key: 'f',
  rule: 'line.two-jobs',
  title: 'A lineman is told two jobs',
  severity: 'stop',
  text: 'the N man hears right and left',
  matters: 'He can only be in one gap',
  why: [{ text: 'Kiln sends him right', because: [] }],
  who: [roleOf('N')],
  gaps: [],
  players: [],
};

export const REPORT: Report = {
  verdict: 'stop',
  verdictText: 'Stop: do not install',
  sides: [
    { pressure: 'Kiln', text: 'Call side: right', why: { text: '', because: [] } },
    { pressure: 'Trowel', text: 'Call side: left', why: { text: '', because: [] } },
  ],
  linemen: [lineman('LE', 'one'), lineman('N', 'conflict'), lineman('RE', 'one')],
  jobs: ELEVEN.map((man) => job(man.letter, man.room)),
  gaps: [],
  findings: [FINDING],
  checked: ['One thing', 'Another thing'],
};

export function sheet(more: Partial<Sheet> = {}): Sheet {
  return { title: TITLE, scene: buildScene(board(ELEVEN), WHOLE_PICTURE), flip: true, report: REPORT, ...more };
}

export function input(more: Partial<PrintInput> = {}): PrintInput {
  return {
    paper: 'letter',
    fonts: FONTS,
    title: 'Kiln Trowel sheets',
    book: 'Fictional Herons',
    stamp: 'version 7, 3 August',
    created: new Date(Date.UTC(2026, 7, 3)),
    room: null,
    sheets: [sheet()],
    ...more,
  };
}
