import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import {
  sameWho,
  type CoverageId,
  type Pressure,
  type PressureId,
  type SideStep,
  type Tell,
  type TellCase,
  type Who,
} from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { withEntry } from './lists.ts';
import { freeName } from './names.ts';
import { keptTags } from './tags.ts';

/** What a new pressure starts from: the tight end's side, and where there is none or there are two, the right. */
const FIRST_CALL_SIDE: readonly SideStep[] = [
  { kind: 'strength', by: 'tight-end', toward: 'to' },
  { kind: 'fixed', side: 'right' },
];

/**
 * Makes a pressure that tells nobody anything yet. Its call side always decides; the shell behind it is the one asked for,
 * else the first of the playbook. Refused where there is no shell at all.
 */
export function newPressure(
  playbook: Playbook,
  args: { readonly id: PressureId; readonly name: string; readonly coverage: CoverageId | null },
): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.pressures, args.name, null, 'pressure');
  if (!name.ok) return name;
  const coverage = playbook.coverages.find(({ id }) => id === args.coverage) ?? playbook.coverages[0];
  if (coverage === undefined) return refused({ kind: 'not-there', what: 'coverage' });
  const pressure: Pressure = {
    id: args.id,
    name: name.value,
    tags: [],
    callSide: FIRST_CALL_SIDE,
    tells: [],
    coverage: coverage.id,
    rushers: null,
    notAgainst: [],
    installDay: null,
  };
  return ok({ ...playbook, pressures: [...playbook.pressures, pressure] });
}

/** What a pressure says besides its rush: each can be changed without touching who goes where. */
export type PressureParts = Pick<Pressure, 'coverage' | 'rushers' | 'tags' | 'notAgainst' | 'installDay'>;

/** Changes what a pressure says besides its rush; a tag keeps no blanks around it, and each tag stands once. */
export function setPressureParts(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly parts: Partial<PressureParts> },
): Result<Playbook, CommandProblem> {
  const { coverage, tags } = args.parts;
  if (coverage !== undefined && !playbook.coverages.some(({ id }) => id === coverage)) {
    return refused({ kind: 'not-there', what: 'coverage' });
  }
  const kept = tags === undefined ? args.parts : { ...args.parts, tags: keptTags(tags) };
  return withPressure(playbook, args.pressure, (pressure) => ok({ ...pressure, ...kept }));
}

/** Says which side is the call side, step by step. Without a step no side would ever be found. */
export function setCallSide(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly steps: readonly SideStep[] },
): Result<Playbook, CommandProblem> {
  if (args.steps.length === 0) return refused({ kind: 'last-step' });
  return withPressure(playbook, args.pressure, (pressure) => ok({ ...pressure, callSide: args.steps }));
}

/** Tells a man or a group a job he was not told yet. Refused when the pressure tells him something already. */
export function tellMan(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly who: Who; readonly told: TellCase },
): Result<Playbook, CommandProblem> {
  return withPressure(playbook, args.pressure, (pressure) =>
    tellOf(pressure, args.who) === undefined
      ? ok({ ...pressure, tells: [...pressure.tells, { who: args.who, cases: [args.told] }] })
      : refused({ kind: 'no-longer' }),
  );
}

/** Says what a man who is told something is told, case by case, the first that holds. Without a case he is told nothing. */
export function setCases(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly who: Who; readonly cases: readonly TellCase[] },
): Result<Playbook, CommandProblem> {
  return withTell(playbook, args, (tell) => ok(args.cases.length === 0 ? null : { ...tell, cases: args.cases }));
}

/**
 * Gives a man that job, whatever he was told before: in the place of his case `at`, else as one more case behind the ones he
 * has, else as the first thing he is told.
 */
export function giveJob(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly who: Who; readonly at: number | null; readonly told: TellCase },
): Result<Playbook, CommandProblem> {
  const { pressure, who, at, told } = args;
  const tells = playbook.pressures.find(({ id }) => id === pressure)?.tells ?? [];
  const cases = tells.find((tell) => sameWho(tell.who, who))?.cases;
  if (cases === undefined) return tellMan(playbook, { pressure, who, told });
  if (at === null) return setCases(playbook, { pressure, who, cases: [...cases, told] });
  if (cases[at] === undefined) return refused({ kind: 'no-longer' });
  return setCases(playbook, { pressure, who, cases: cases.with(at, told) });
}

/** Gives everything one man is told to another, who must not be told anything yet. */
export function retell(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly who: Who; readonly to: Who },
): Result<Playbook, CommandProblem> {
  const pressure = playbook.pressures.find(({ id }) => id === args.pressure);
  if (pressure !== undefined && tellOf(pressure, args.to) !== undefined) return refused({ kind: 'no-longer' });
  return withTell(playbook, args, (tell) => ok({ ...tell, who: args.to }));
}

/** Tells a man nothing any more: he keeps his base job, or what the shell gives him. */
export function untell(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly who: Who },
): Result<Playbook, CommandProblem> {
  return withTell(playbook, args, () => ok(null));
}

function tellOf(pressure: Pressure, who: Who): Tell | undefined {
  return pressure.tells.find((tell) => sameWho(tell.who, who));
}

function withPressure(
  playbook: Playbook,
  id: PressureId,
  change: (pressure: Pressure) => Result<Pressure, CommandProblem>,
): Result<Playbook, CommandProblem> {
  const pressures = withEntry(playbook.pressures, id, change, { kind: 'not-there', what: 'pressure' });
  return pressures.ok ? ok({ ...playbook, pressures: pressures.value }) : pressures;
}

/** Changes the telling with that name, all others staying the very same; null takes it out. */
function withTell(
  playbook: Playbook,
  args: { readonly pressure: PressureId; readonly who: Who },
  change: (tell: Tell) => Result<Tell | null, CommandProblem>,
): Result<Playbook, CommandProblem> {
  return withPressure(playbook, args.pressure, (pressure) => {
    const tell = tellOf(pressure, args.who);
    if (tell === undefined) return refused({ kind: 'no-longer' });
    const changed = change(tell);
    if (!changed.ok) return changed;
    const tells = pressure.tells.flatMap((each) => {
      if (each !== tell) return [each];
      return changed.value === null ? [] : [changed.value];
    });
    return ok({ ...pressure, tells });
  });
}
