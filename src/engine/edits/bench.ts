import { compareBy } from '../../base/index.ts';
import { findWho } from '../resolve/who.ts';
import type {
  Aligned,
  Analysis,
  Assignment,
  Coverage,
  Gap,
  GapRef,
  PlayerId,
  Pressure,
  RoleId,
  RuleJob,
  SideDecision,
  TellCase,
  Who,
} from '../types/index.ts';
import type { Side } from '../vocabulary.ts';
import type { Half } from './edit.ts';
import { manNames } from '../naming.ts';
import { gapOrder, manOrder, playerOrder } from './orders.ts';
import { holdFor, tellHere, type TellHere } from './tellHere.ts';
import { turnedCase } from './turnAround.ts';

/** What one of the two pressures tells a man in this look. */
export interface TellInForce extends TellHere {
  readonly which: Half;
  readonly pressure: Pressure;
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
  const [name = { kind: 'role', role }] = manNames(role, callSide, aligned);
  return name;
}

const decided = (side: SideDecision | undefined): Side | null => (side?.kind === 'decided' ? side.side : null);

/** Lays an analysis out for the search for edits. */
export function makeBench(analysis: Analysis): Bench {
  const aligned = new Map(analysis.assignments.map((man) => [man.aligned.role.id, man.aligned]));
  const sideOf = (which: Half): Side | null => decided(analysis[which]?.side);
  const lean = sideOf('first') ?? sideOf('second');
  const shell = shellOf(analysis, sideOf);
  const lined = { facts: analysis.facts, aligned };
  const tellInForce = (which: Half, role: RoleId): TellInForce | null => {
    const pressure = analysis.setup[which];
    const side = sideOf(which);
    if (pressure === null || side === null) return null;
    const told = tellHere(pressure, role, side, lined);
    return told === null ? null : { which, pressure, ...told };
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
        const found =
          man.ok && man.value === role ? cases.find((each) => holdFor(each.when, role, side, lined)) : undefined;
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
