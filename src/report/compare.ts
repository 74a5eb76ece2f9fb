import type { Verdict } from '../engine/index.ts';
import type { JobRow, Report } from './types.ts';
import { ROOM_WORDS } from './words/names.ts';

/** One look with the same call, or two calls, before and after. */
export interface ComparedLook {
  /** The look's name, as it is now. */
  readonly look: string;
  readonly before: Report;
  readonly after: Report;
}

/** What is another thing for one man now, and in which looks it is. */
export interface ManChange {
  readonly letter: string;
  readonly name: string;
  /** "job" or "alignment": what he does, or where he starts. */
  readonly what: 'job' | 'alignment';
  /** In words; "not in this front" where he is not one of the eleven. */
  readonly before: string;
  readonly after: string;
  readonly looks: readonly string[];
}

/** The changes of one position room, in the order of the line-up. */
export interface RoomChanges {
  readonly room: string;
  readonly changes: readonly ManChange[];
}

/** A look whose verdict is another one now. */
export interface VerdictChange {
  readonly look: string;
  readonly before: Verdict;
  readonly after: Verdict;
}

/** Everything that differs, for the rooms that have something to learn again. */
export interface Comparison {
  readonly rooms: readonly RoomChanges[];
  readonly verdicts: readonly VerdictChange[];
  /** How many looks were compared. */
  readonly looks: number;
}

const ABSENT = 'not in this front';

/**
 * What changed for whom. A change that is the same in several looks is told once with all of them; what stays the same is not
 * told.
 */
export function compareReports(looks: readonly ComparedLook[]): Comparison {
  const changes = new Map<string, ManChange & { readonly room: string }>();
  for (const { look, before, after } of looks) {
    for (const [was, is] of menOf(before, after)) {
      for (const change of changesOf(was, is, look)) {
        const key = [change.letter, change.name, change.what, change.before, change.after].join('|');
        const known = changes.get(key);
        changes.set(key, known === undefined ? change : { ...known, looks: [...known.looks, look] });
      }
    }
  }
  const rooms = Object.values(ROOM_WORDS).map((room): RoomChanges => ({
    room,
    changes: [...changes.values()]
      .filter((change) => change.room === room)
      .map(({ letter, name, what, before, after, looks: where }) => ({
        letter,
        name,
        what,
        before,
        after,
        looks: where,
      })),
  }));
  return {
    rooms: rooms.filter((room) => room.changes.length > 0),
    verdicts: looks.flatMap(({ look, before, after }) =>
      before.verdict === after.verdict ? [] : [{ look, before: before.verdict, after: after.verdict }],
    ),
    looks: looks.length,
  };
}

/** Each man of either eleven, as he was and as he is; men are known by their role. */
function menOf(before: Report, after: Report): readonly (readonly [JobRow | null, JobRow | null])[] {
  const now = after.jobs.map((is) => [before.jobs.find(({ role }) => role === is.role) ?? null, is] as const);
  const gone = before.jobs.filter((was) => !after.jobs.some(({ role }) => role === was.role));
  return [...now, ...gone.map((was) => [was, null] as const)];
}

function changesOf(
  was: JobRow | null,
  is: JobRow | null,
  look: string,
): readonly (ManChange & { readonly room: string })[] {
  const man = is ?? was;
  if (man === null) return [];
  const { letter, name, room } = man;
  const change = (what: ManChange['what'], before: string, after: string) =>
    before === after ? [] : [{ letter, name, room, what, before, after, looks: [look] }];
  if (was === null || is === null) return change('job', was?.job ?? ABSENT, is?.job ?? ABSENT);
  return [...change('alignment', was.aligns, is.aligns), ...change('job', was.job, is.job)];
}
