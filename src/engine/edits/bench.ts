import { compareBy } from '../../base/index.ts';
import { allHold } from '../resolve/holds.ts';
import { findWho } from '../resolve/who.ts';
import type {
  Aligned,
  Analysis,
  Assignment,
  Coverage,
  Gap,
  GapRef,
  LookTest,
  PlayerId,
  Pressure,
  RoleId,
  RuleJob,
  SideDecision,
  TellCase,
  Who,
} from '../types/index.ts';
import type { Side } from '../vocabulary.ts';
import { casesOf } from './applyEdit.ts';
import type { Half } from './edit.ts';
import { gapOrder, manOrder, playerOrder } from './orders.ts';
import { turnedCase } from './turnAround.ts';

/** What a pressure tells a man in this look: the name it has for him, all his cases, and which of them holds. */
export interface TellInForce {
  readonly which: Half;
  readonly pressure: Pressure;
  readonly who: Who;
  readonly cases: readonly TellCase[];
  readonly at: number;
  readonly now: TellCase;
}

/** What the other pressure tells a man: all his cases, and the one that holds here. */
export interface OtherTelling {
  readonly cases: readonly TellCase[];
  readonly now: TellCase;
}

/** The shell that is played, and the side it is told from. */
export interface ShellInForce {
  readonly coverage: Coverage;
  readonly side: Side | null;
}

/** An analysis as those who look for edits read it: who tells whom what, by which name, and men and gaps in a set order. */
export interface Bench {
  readonly analysis: Analysis;
  readonly shell: ShellInForce;
  readonly aligned: ReadonlyMap<RoleId, Aligned>;
  readonly sideOf: (which: Half) => Side | null;
  /** Null: that pressure does not tell him anything here (its shell may). */
  readonly tellInForce: (which: Half, role: RoleId) => TellInForce | null;
  /** What the other pressure tells him here, in the words of this one; null: nothing, or a side is missing. */
  readonly otherTells: (which: Half, role: RoleId) => OtherTelling | null;
  /** What the shell tells him where the rush leaves him free; null: nothing. */
  readonly shellJob: (role: RoleId) => RuleJob | null;
  readonly man: (role: RoleId) => Assignment | null;
  /** The eleven: line, linebackers, secondary, each from the ball outward, the call side first. */
  readonly men: readonly Assignment[];
  readonly inOrder: (roles: readonly RoleId[]) => readonly RoleId[];
  readonly gapsInOrder: (gaps: readonly Gap[]) => readonly Gap[];
  readonly playersInOrder: (players: readonly PlayerId[]) => readonly PlayerId[];
}

/** The other of the two pressures. */
export const otherHalf = (which: Half): Half => (which === 'first' ? 'second' : 'first');

/** A side as a rule with that call side names it. */
export function relative(side: Side, callSide: Side): 'call' | 'away' {
  return side === callSide ? 'call' : 'away';
}

/** A gap as a rule with that call side names it. */
export function gapRef(gap: Gap, callSide: Side): GapRef {
  return { kind: 'letter', side: relative(gap.side, callSide), letter: gap.letter };
}

/** The name a rule has for a man: of two of a group the one on that side, else the man himself. */
export function nameOf(role: RoleId, callSide: Side, aligned: ReadonlyMap<RoleId, Aligned>): Who {
  const group = aligned.get(role)?.role.group;
  if (group === undefined) return { kind: 'role', role };
  const names = (['call', 'away'] as const)
    .map((side): Who => ({ kind: 'group', group, side }))
    .filter((who) => {
      const man = findWho(who, callSide, aligned);
      return man.ok && man.value === role;
    });
  const [name] = names;
  return name !== undefined && names.length === 1 ? name : { kind: 'role', role };
}

const decided = (side: SideDecision | undefined): Side | null => (side?.kind === 'decided' ? side.side : null);

/** Lays an analysis out for the search for edits. */
export function makeBench(analysis: Analysis): Bench {
  const aligned = new Map(analysis.assignments.map((man) => [man.aligned.role.id, man.aligned]));
  const sideOf = (which: Half): Side | null => decided(analysis[which]?.side);
  const lean = sideOf('first') ?? sideOf('second');
  const shell = shellOf(analysis, sideOf);
  const holds = (when: readonly LookTest[], callSide: Side, role: RoleId): boolean => {
    const place = aligned.get(role)?.place ?? 'middle';
    return allHold(when, { facts: analysis.facts, callSide, mySide: place === 'middle' ? null : place });
  };
  const tellInForce = (which: Half, role: RoleId): TellInForce | null => {
    const pressure = analysis.setup[which];
    const side = sideOf(which);
    if (pressure === null || side === null) return null;
    for (const { who } of pressure.tells) {
      const man = findWho(who, side, aligned);
      if (!man.ok || man.value !== role) continue;
      const cases = casesOf(pressure, who);
      const at = cases.findIndex((each) => holds(each.when, side, role));
      const now = cases[at];
      if (now !== undefined) return { which, pressure, who, cases, at, now };
    }
    return null;
  };
  const men = [...analysis.assignments].sort(manOrder(lean));
  const rank = new Map(men.map((man, index) => [man.aligned.role.id, index]));
  return {
    analysis,
    shell,
    aligned,
    sideOf,
    tellInForce,
    otherTells: (which, role) => {
      const from = tellInForce(otherHalf(which), role);
      const [mine, theirs] = [sideOf(which), sideOf(otherHalf(which))];
      if (from === null || mine === null || theirs === null) return null;
      const inWords = (each: TellCase): TellCase => (mine === theirs ? each : turnedCase(each));
      return { cases: from.cases.map(inWords), now: inWords(from.now) };
    },
    shellJob: (role) => {
      const { coverage, side } = shell;
      if (side === null) return null;
      for (const { who, cases } of coverage.tells) {
        const man = findWho(who, side, aligned);
        const found = man.ok && man.value === role ? cases.find((each) => holds(each.when, side, role)) : undefined;
        if (found !== undefined) return found.job;
      }
      return null;
    },
    man: (role) => men.find((each) => each.aligned.role.id === role) ?? null,
    men,
    inOrder: (roles) => [...roles].sort(compareBy((role) => rank.get(role) ?? men.length)),
    gapsInOrder: (gaps) => [...gaps].sort(gapOrder(lean)),
    playersInOrder: (players) => [...players].sort(playerOrder(lean, analysis.facts)),
  };
}

function shellOf({ setup, choice }: Analysis, sideOf: Bench['sideOf']): ShellInForce {
  return choice?.ran === 'second' && setup.secondCoverage !== null
    ? { coverage: setup.secondCoverage, side: sideOf('second') }
    : { coverage: setup.coverage, side: sideOf('first') };
}
