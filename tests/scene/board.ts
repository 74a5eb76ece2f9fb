import {
  asCoverageId,
  asFrontId,
  asGroupId,
  asPlayerId,
  asPressureId,
  asRoleId,
  fact,
  gapsEqual,
  parseLook,
  readLook,
  type Analysis,
  type Assignment,
  type Because,
  type CombinedStatus,
  type Gap,
  type GapOwner,
  type Job,
  type Look,
  type PassColumn,
  type Place,
  type Pressure,
  type Role,
  type Room,
  type RunColumn,
  type Telling,
} from '../../src/engine/index.ts';

/**
 * Analyses written by hand, man by man, so that a picture's test does not depend on what the engine makes of a call. The
 * football in them need not be sound: each one only shows something worth drawing. Every value here is invented.
 */

const SAID: Because = fact('said by hand');

/** Two receivers left, tight end and flanker right, one back beside a passer five yards deep. */
export const TIGHT_RIGHT = 'line te:Y@4 wr:X@-17 wr:H@-9,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5';

export const lookOf = (text: string): Look => {
  const look = parseLook(text);
  if (!look.ok) throw new Error(JSON.stringify(look.problem));
  return look.value;
};

export const gap = (name: string): Gap => {
  const letter = (['A', 'B', 'C', 'D', 'E'] as const).find((one) => name.endsWith(one));
  if (letter === undefined) throw new Error(name);
  return { side: name.startsWith('l') ? 'left' : 'right', letter };
};

const told = (job: Job): Telling => ({ kind: 'told', basis: 'path', job, preSnap: null, because: SAID });

export const rush = (
  gaps: readonly Gap[],
  more: Partial<Extract<Job, { kind: 'rush' }>> = {},
): Extract<Job, { kind: 'rush' }> => ({
  kind: 'rush',
  gaps,
  manner: 'penetrate',
  track: { kind: 'straight' },
  edge: null,
  peel: false,
  order: null,
  ...more,
});

export const drop = (
  zone: Extract<Job, { kind: 'drop' }>['zone'],
  side: Place,
  support: RunColumn['support'] = null,
): Extract<Job, { kind: 'drop' }> => ({ kind: 'drop', zone, side, run: { fits: [], firm: false, support } });

/** One man: where he stands, what stands for him, and who told him. */
export interface Man {
  readonly letter: string;
  readonly room: Room;
  readonly x: number;
  readonly y: number;
  readonly status?: CombinedStatus;
  readonly job?: Job | null;
  readonly first?: Job | null;
  readonly second?: Job | null;
  /** His run gaps where his job has none. */
  readonly gaps?: readonly Gap[];
}

function passOf(job: Job | null): PassColumn {
  switch (job?.kind) {
    case 'rush':
      return { kind: 'rush' };
    case 'contain':
      return { kind: 'contain', side: job.gaps[0]?.side ?? 'left' };
    case 'drop':
      return { kind: 'zone', zone: job.zone, side: job.side };
    case 'man':
      return { kind: 'man', receiver: job.receiver };
    case 'spy':
      return { kind: 'spy' };
    case 'fit':
    case undefined:
      return { kind: 'none' };
  }
}

const gapsOf = (job: Job | null): readonly Gap[] =>
  job?.kind === 'rush' || job?.kind === 'contain' || job?.kind === 'fit' ? job.gaps : [];

function assignmentOf(man: Man, ordinal: number): Assignment {
  const role: Role = {
    id: asRoleId(`${man.letter}-${ordinal}`),
    letter: man.letter,
    name: `man ${man.letter}`,
    room: man.room,
    group: asGroupId('group'),
    side: { kind: 'middle' },
  };
  const { first = null, second = null } = man;
  const job = man.job ?? first ?? second;
  const run = job?.kind === 'drop' || job?.kind === 'man' || job?.kind === 'spy' ? job.run.support : null;
  return {
    aligned: {
      role,
      x: man.x,
      y: man.y,
      place: man.x < -0.3 ? 'left' : man.x > 0.3 ? 'right' : 'middle',
      by: 'rule',
      technique: null,
      inBox: Math.abs(man.x) < 5,
      because: SAID,
    },
    combined: {
      role,
      first: first === null ? null : told(first),
      second: second === null ? null : told(second),
      status: man.status ?? (first === null && second === null ? 'untold' : 'one'),
      job,
      torn: [],
      sure: man.status !== 'conflict' && man.status !== 'unresolved',
      byShell: false,
      from: first !== null ? 'first' : second !== null ? 'second' : null,
      because: SAID,
    },
    run: {
      gaps: man.gaps ?? gapsOf(job),
      twoGaps: job?.kind === 'rush' && job.manner === 'two-gap',
      edge: null,
      support: run,
    },
    pass: passOf(job),
  };
}

function ownersOf(one: Gap, assignments: readonly Assignment[]): readonly GapOwner[] {
  return assignments.flatMap(({ aligned, combined, run }): readonly GapOwner[] => {
    const both = [combined.first, combined.second].flatMap((each) => (each?.kind === 'told' ? gapsOf(each.job) : []));
    const mine = combined.status === 'conflict' ? both : run.gaps;
    if (!mine.some((each) => gapsEqual(each, one))) return [];
    const sure = combined.status !== 'conflict';
    return [{ role: aligned.role.id, how: 'told', sure, shared: run.twoGaps, because: SAID }];
  });
}

const pressure = (name: string): Pressure => ({
  id: asPressureId(name),
  name,
  tags: [],
  callSide: [],
  tells: [],
  coverage: asCoverageId('shell'),
  rushers: null,
  notAgainst: [],
  installDay: null,
});

/** An analysis of those men against a look (in the engine's notation); `pair` false: a call of one pressure. */
export function board(
  men: readonly Man[],
  more: { readonly look?: string; readonly spot?: Place; readonly pair?: boolean } = {},
): Analysis {
  const look = lookOf(more.look ?? TIGHT_RIGHT);
  const spot = more.spot ?? 'middle';
  const facts = readLook(look, 'high-school', spot);
  const assignments = men.map(assignmentOf);
  const resolved = {
    side: { kind: 'decided', side: 'right', because: SAID },
    tellings: new Map(),
    lost: [],
    again: [],
  } as const;
  return {
    setup: {
      level: 'high-school',
      spot,
      roles: assignments.map(({ aligned }) => aligned.role),
      front: { id: asFrontId('front'), name: 'Front', roles: [], byHand: [] },
      look,
      first: pressure('one'),
      second: more.pair === false ? null : pressure('two'),
      turn: 'own',
      combination: { kind: 'together' },
      coverage: { id: asCoverageId('shell'), name: 'Shell', needs: [], tells: [] },
      secondCoverage: null,
      waivers: [],
      dictionary: [],
      checkOut: null,
      rushers: null,
    },
    facts,
    lean: 'right',
    first: resolved,
    second: more.pair === false ? null : resolved,
    choice: null,
    motion: null,
    assignments,
    gaps: facts.gaps.map((each) => ({
      gap: each.gap,
      x: each.x,
      owners: ownersOf(each.gap, assignments),
      proof: null,
    })),
    zones: [],
    answers: [],
    passCount: { rush: 0, under: 0, deep: 0, man: 0, free: assignments.length },
    runs: [],
    protections: [],
    findings: [],
    undetermined: [],
    verdict: 'clean',
  };
}

/** Eleven men with one job of every kind: the nose in conflict, one open gap (the tight end's), one doubled. */
export const ELEVEN: readonly Man[] = [
  { letter: 'LE', room: 'line', x: -2.4, y: 1, first: rush([gap('lC')], { manner: 'slant' }) },
  {
    letter: 'N',
    room: 'line',
    x: 0,
    y: 1,
    status: 'conflict',
    first: rush([gap('rA')], { manner: 'slant' }),
    second: rush([gap('lA')], { manner: 'slant' }),
  },
  { letter: 'RE', room: 'line', x: 3, y: 1, second: { ...rush([gap('rC')]), kind: 'contain' } },
  {
    letter: 'W',
    room: 'linebackers',
    x: -1.6,
    y: 4.5,
    job: { kind: 'fit', gaps: [gap('lB')], manner: 'read', support: null },
  },
  { letter: 'M', room: 'linebackers', x: 1.6, y: 4.5, second: rush([gap('rB')]) },
  { letter: 'S', room: 'linebackers', x: 5.2, y: 1.5, first: rush([gap('rB')], { manner: 'loop' }) },
  { letter: 'J', room: 'linebackers', x: -6, y: 3, job: drop('curl-flat', 'left', 'force') },
  { letter: 'LC', room: 'secondary', x: -15.5, y: 7, job: drop('third', 'left') },
  {
    letter: 'SS',
    room: 'secondary',
    x: 7,
    y: 9,
    job: { kind: 'spy', run: { fits: [], firm: false, support: null } },
  },
  { letter: 'FS', room: 'secondary', x: -2, y: 12, job: drop('middle', 'middle') },
  {
    letter: 'RC',
    room: 'secondary',
    x: 12.5,
    y: 7,
    job: { kind: 'man', receiver: asPlayerId('Z'), run: { fits: [], firm: false, support: null } },
  },
];
