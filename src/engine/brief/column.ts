import { createNumbering, remembered } from '../../base/index.ts';
import type { Man } from '../complete/ownGaps.ts';
import { manOf } from '../tell.ts';
import type { Aligned, BaseJob, Choice, Combined, Job, LookFacts, ResolvedPressure, Telling } from '../types/index.ts';

/** A pressure in a look, and by number what it tells each man of the front, in its order: equal numbers, equal tellings; 0, nothing. */
export interface Heard {
  readonly resolved: ResolvedPressure;
  readonly tellings: readonly number[];
}

/** A man with his tellings; and as he plays, the very same man, and of the same number, for all tellings he plays alike. */
export interface Known {
  readonly told: Man<Combined>;
  readonly playing: Man;
  readonly number: number;
}

/** One man of a front with what two pressures tell him at his place in their lists; `ran` is the half that is run, null both. */
export type Column = (at: number, first: Heard, second: Heard | null, ran: Choice['ran'] | null) => Known;

/** More than there are different tellings in one look. */
const MOST_NUMBERS = 1 << 20;

/** What two pressures make of a man, each different pair of tellings worked out once. */
export function columnOf(atRule: Aligned, base: BaseJob, facts: LookFacts, jobNumber: (job: Job) => number): Column {
  const { id } = atRule.role;
  const plays = createNumbering((man: Man) => playText(man, jobNumber));
  const known = { both: new Map<number, Known>(), first: new Map<number, Known>(), second: new Map<number, Known>() };
  return (at, first, second, ran) => {
    const table = known[ran ?? 'both'];
    const pair = (first.tellings[at] ?? 0) * MOST_NUMBERS + (second?.tellings[at] ?? 0);
    const found = table.get(pair);
    if (found !== undefined) return found;
    const [a, b] = [first.resolved.tellings.get(id) ?? null, second?.resolved.tellings.get(id) ?? null];
    const told = manOf(atRule, base, a, b, ran, facts);
    const number = plays.numberOf(told);
    const made = { told, playing: plays.things[number] ?? told, number };
    table.set(pair, made);
    return made;
  };
}

/** A telling without its words; none: he is told nothing. */
export function tellingText(telling: Telling | undefined): string {
  if (telling === undefined) return '';
  if (telling.kind === 'unresolved') return telling.kind;
  return JSON.stringify([telling.basis, telling.job, telling.preSnap?.depth ?? null]);
}

/** Numbers for jobs by what they say. A job is told in many pairs, so it is read once. */
export function numberingJobs(): (job: Job) => number {
  return remembered(createNumbering((job: Job) => JSON.stringify(job)).numberOf);
}

/** How a man plays, without its words. */
function playText({ aligned, combined }: Man, jobNumber: (job: Job) => number): string {
  const { job, torn, sure, byShell } = combined;
  const told = job === null ? '' : jobNumber(job);
  return `${aligned.x} ${aligned.y} ${aligned.by} ${told} ${torn.map(jobNumber).join()} ${sure} ${byShell}`;
}
