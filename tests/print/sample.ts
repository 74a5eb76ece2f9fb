import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { asRoleId } from '../../src/engine/index.ts';
import type { PrintInput, Sheet, SheetTitle } from '../../src/print/index.ts';
import type { FindingRow, JobRow, PairRow, ReceiverRow, Report, ZoneRow } from '../../src/report/index.ts';
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
  job: `does what ${letter} does, and more`,
  move: `does what ${letter} does`,
  run: `run ${letter}`,
  pass: `pass ${letter}`,
  toldBy: 'first',
  why: { text: '', because: [] },
});

const lineman = (letter: string, status: PairRow['status']): PairRow => ({
  role: roleOf(letter),
  letter,
  name: `the ${letter} man`,
  room: 'Line',
  stands: `first to ${letter}`,
  first: `first to ${letter}`,
  second: `second to ${letter}`,
  status,
  shellGaveWay: false,
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
  decides: true,
};

const LINEMEN = [lineman('LE', 'one'), lineman('N', 'conflict'), lineman('RE', 'one')];

export const REPORT: Report = {
  verdict: 'stop',
  verdictText: 'Stop: do not install',
  counts: '1 stop',
  checkOut: null,
  choice: null,
  motion: null,
  pair: LINEMEN,
  sides: [
    { pressure: 'Kiln', text: 'Call side: right', why: { text: '', because: [] } },
    { pressure: 'Trowel', text: 'Call side: left', why: { text: '', because: [] } },
  ],
  linemen: LINEMEN,
  jobs: ELEVEN.map((man) => job(man.letter, man.room)),
  gaps: [],
  coverage: {
    shell: 'Three deep',
    count: '5 rush, 3 under, 3 deep',
    headline: 'Every receiver has somebody',
    open: false,
    zones: [],
    receivers: [],
  },
  runs: [],
  protections: [],
  findings: [FINDING],
  waived: [],
  cannotTell: [],
  checked: ['One thing', 'Another thing'],
};

const WHY = { text: '', because: [] };
const of = (...letters: readonly string[]) => ({ who: letters.map(roleOf), players: [], gaps: [] });

const receiver = (name: string, letter: string | null, how: string | null): ReceiverRow => ({
  receiver: name,
  by: letter ?? 'nobody',
  how,
  text: '',
  open: letter === null,
  why: WHY,
  ...of(...(letter === null ? [] : [letter])),
});

const zone = (name: string, letter: string | null, how: ZoneRow['how']): ZoneRow => ({
  zone: name,
  by: letter ?? 'nobody',
  how,
  open: letter === null,
  why: WHY,
  ...of(...(letter === null ? [] : [letter])),
});

const finding = (key: string, severity: FindingRow['severity'], ...letters: readonly string[]): FindingRow => ({
  ...FINDING,
  key,
  rule: `rule.${key}`,
  title: `Title ${key}`,
  severity,
  text: `text ${key}`,
  matters: `it matters ${key}`,
  why: [],
  decides: severity === 'stop',
  who: letters.map(roleOf),
});

/** A report with something in every section. */
export const FULL: Report = {
  ...REPORT,
  counts: '4 stops, 2 checks; 1 cannot be told; 1 waived',
  checkOut: { text: 'Trips: check to Adze', why: WHY },
  choice: {
    text: 'Kiln is run',
    key: 'Kiln if it rains, otherwise Trowel',
    hear: 'N must hear the check',
    who: [],
    why: WHY,
  },
  motion: {
    text: 'The receiver H goes 9 yd to the right',
    sides: [
      { text: 'Call side of Kiln: left before, right after', turns: true },
      { text: 'Call side of Trowel: left before and after', turns: false },
    ],
    moves: 'SS has another spot or job after it',
    who: [],
    players: [],
  },
  pair: [
    ...LINEMEN,
    { ...lineman('W', 'either'), verdict: 'By the key', stands: 'stands for W' },
    { ...lineman('M', 'yields'), shellGaveWay: true },
    lineman('S', 'one'),
  ],
  coverage: {
    shell: 'Three deep',
    count: '5 rush, 3 under, 3 deep',
    headline: '',
    open: true,
    zones: [zone('hook left', null, null), zone('seam right', 'SS', 'filled in'), zone('flat left', 'LE', 'told')],
    receivers: [
      receiver('number 1 left X', 'LC', 'out of the deep third'),
      receiver('number 2 left H', null, null),
      receiver('the back B', 'LE', 'out of the flat'),
    ],
  },
  runs: [
    {
      name: 'power to the right',
      passOption: true,
      here: true,
      headline: 'unsaid',
      open: true,
      duties: [
        { what: 'Hits C gap right', by: 'RE', open: false, ...of('RE') },
        { what: 'G left pulls to C gap right', by: 'nobody', open: true, ...of() },
      ],
      notes: ['Read: J', '1 too few near the box'],
      why: [],
    },
    {
      name: 'iso to the left',
      passOption: false,
      here: false,
      headline: 'Cannot be run from this look: nobody leads',
      open: false,
      duties: [],
      notes: [],
      why: [],
    },
  ],
  protections: [
    {
      name: 'half slide, to the left',
      here: true,
      headline: 'Free: S through B gap right; hot to the right',
      free: [],
      blocks: [{ blocker: 'T right', rusher: 'RE', how: 'his man', why: WHY, ...of('RE') }],
      idle: [],
      notes: [],
      hot: null,
      why: WHY,
    },
  ],
  findings: [
    ...['a', 'b', 'c', 'd'].map((key) => finding(key, 'stop', 'N')),
    finding('e', 'check', 'N'),
    finding('f', 'check', 'FS'),
  ],
  waived: [{ ...finding('w', 'check', 'N'), reason: 'we have seen it on film' }],
  cannotTell: [
    {
      key: 'u',
      rules: ['gap.open'],
      titles: ['A run gap is open'],
      text: 'Whether anybody has it depends on N',
      why: [{ text: 'He is told two things', because: [] }],
      ...of('N'),
    },
  ],
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
