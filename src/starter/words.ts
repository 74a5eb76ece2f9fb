/**
 * Short words for writing playbook tables: every function makes one value of the engine's own types and nothing else. The
 * tables beside this file then read like a coach's page, and the compiler still checks every word of them.
 */
import {
  asGroupId,
  asRoleId,
  type AlignRule,
  type BodyName,
  type Comparison,
  type ContainJob,
  type Direction,
  type DropJob,
  type EdgePlay,
  type GapLetter,
  type GapRef,
  type Leverage,
  type LookTest,
  type ManJob,
  type Manner,
  type PreSnap,
  type ReceiverRef,
  type RuleJob,
  type RuleNames,
  type RunSupport,
  type RushJob,
  type SideRef,
  type SideStep,
  type Spot,
  type Strength,
  type Support,
  type Tell,
  type TellCase,
  type ToldBasis,
  type Track,
  type Who,
  type Yards,
  type Zone,
} from '../engine/index.ts';

// Who ---------------------------------------------------------------------------------------------------------------

/** One role of the playbook, whichever side he is on. */
export const man = (role: string): Who => ({ kind: 'role', role: asRoleId(role) });
/** The man of a group on the call side. */
export const callMan = (group: string): Who => ({ kind: 'group', group: asGroupId(group), side: 'call' });
/** The man of a group away from the call. */
export const awayMan = (group: string): Who => ({ kind: 'group', group: asGroupId(group), side: 'away' });

// Gaps --------------------------------------------------------------------------------------------------------------

/** A gap by its letter: `gap('A', 'call')`. */
export const gap = (letter: GapLetter, side: SideRef): GapRef => ({ kind: 'letter', side, letter });
/** The outermost gap of a side, whatever its letter. */
export const edgeGap = (side: SideRef): GapRef => ({ kind: 'edge', side });

// Sides of a rule ---------------------------------------------------------------------------------------------------

export const toward = (by: Strength): SideStep => ({ kind: 'strength', by, toward: 'to' });
export const awayFrom = (by: Strength): SideStep => ({ kind: 'strength', by, toward: 'away' });
export const always = (side: 'left' | 'right'): SideStep => ({ kind: 'fixed', side });
export const withRole = (role: string, direction: Direction): SideStep => ({
  kind: 'role',
  role: asRoleId(role),
  toward: direction,
});

// Conditions --------------------------------------------------------------------------------------------------------

export const bodies = (side: SideRef, compare: Comparison, count: number): LookTest => ({
  kind: 'bodies',
  side,
  compare,
  count,
});
export const receivers = (side: SideRef, compare: Comparison, count: number): LookTest => ({
  kind: 'receivers',
  side,
  compare,
  count,
});
export const backs = (compare: Comparison, count: number): LookTest => ({ kind: 'backs', compare, count });

/** The backs are offset to that side. */
export const backOn = (side: SideRef): LookTest => ({ kind: 'back', side });

/** A side of the call, for rules that are told once for each. */
export type CallSide = 'call' | 'away';
export const otherSide = (side: CallSide): CallSide => (side === 'call' ? 'away' : 'call');
const OPPOSITE: Readonly<Record<SideRef, SideRef>> = {
  call: 'away',
  away: 'call',
  mine: 'other',
  other: 'mine',
  left: 'right',
  right: 'left',
};

/** A tight end is attached on that side, or a man outside him as well. */
export const tightEnd = (side: SideRef): LookTest => bodies(side, 'at-least', 3);
export const tightEndAndWing = (side: SideRef): LookTest => bodies(side, 'at-least', 4);
/** Nobody is attached outside the tackle. */
export const openSide = (side: SideRef): LookTest => bodies(side, 'at-most', 2);
export const two = (side: SideRef): LookTest => receivers(side, 'at-least', 2);
export const trips = (side: SideRef): LookTest => receivers(side, 'at-least', 3);
/**
 * A slot: two receivers or more and nobody attached. Against a tight end and a wing on the other side everybody is needed
 * in a gap, so it does not count.
 */
export const slotOn = (side: SideRef): readonly LookTest[] => [
  two(side),
  openSide(side),
  bodies(OPPOSITE[side], 'at-most', 3),
];
export const single = (side: SideRef): LookTest => receivers(side, 'at-most', 1);
export const noBack = backs('at-most', 0);
export const aBack = backs('at-least', 1);
export const twoBacks = backs('at-least', 2);

// Alignment ---------------------------------------------------------------------------------------------------------

const rule = (spot: Spot, when: readonly LookTest[]): AlignRule => ({ when, spot });

export const onBody = (on: BodyName, leverage: Leverage, depth: Yards, ...when: LookTest[]): AlignRule =>
  rule({ kind: 'technique', on, leverage, depth }, when);
export const offEdge = (offset: Yards, depth: Yards, ...when: LookTest[]): AlignRule =>
  rule({ kind: 'edge', offset, depth }, when);
export const onReceiver = (
  number: number,
  leverage: 'inside' | 'head' | 'outside',
  depth: Yards,
  ...when: LookTest[]
): AlignRule => rule({ kind: 'receiver', number, leverage, depth }, when);
export const apex = (number: number, depth: Yards, ...when: LookTest[]): AlignRule =>
  rule({ kind: 'apex', number, depth }, when);
export const offBall = (offset: Yards, depth: Yards, ...when: LookTest[]): AlignRule =>
  rule({ kind: 'ball', offset, depth }, when);

// Jobs --------------------------------------------------------------------------------------------------------------

const STRAIGHT: Track<Who> = { kind: 'straight' };
export const past = (how: 'under' | 'over' | 'inside-hip' | 'outside-hip', neighbour: Who): Track<Who> => ({
  kind: 'past',
  how,
  neighbour,
});

export const rush = (
  where: GapRef,
  manner: Manner,
  edge: EdgePlay | null = null,
  track: Track<Who> = STRAIGHT,
): RushJob<RuleNames> => ({ kind: 'rush', gaps: [where], manner, track, edge, peel: false, order: null });
export const contain = (
  where: GapRef,
  manner: Manner,
  edge: EdgePlay | null = null,
  track: Track<Who> = STRAIGHT,
): ContainJob<RuleNames> => ({ kind: 'contain', gaps: [where], manner, track, edge, peel: false, order: null });
/** No gap of his own and no support: he plays the pass and comes late. */
const NO_RUN: RunSupport<GapRef> = { fits: [], firm: false, support: null };
/** Takes one of these only if nobody else has it, the first one first. */
export const ifFree = (support: Support | null, ...fits: GapRef[]): RunSupport<GapRef> => ({
  fits,
  firm: false,
  support,
});

export const drop = (zone: Zone, side: SideRef | 'middle', run: RunSupport<GapRef> = NO_RUN): DropJob<RuleNames> => ({
  kind: 'drop',
  zone,
  side,
  run,
});

export const receiver = (side: SideRef, number: number): ReceiverRef => ({ kind: 'number', side, number });
export const THE_BACK: ReceiverRef = { kind: 'back', number: 1 };
export const cover = (who: ReceiverRef, run: RunSupport<GapRef> = NO_RUN): ManJob<RuleNames> => ({
  kind: 'man',
  receiver: who,
  run,
});

/** Goes before or after that man where their paths meet. */
export const inOrder = <J extends RushJob<RuleNames> | ContainJob<RuleNames>>(
  job: J,
  turn: 'first' | 'second',
  neighbour: Who,
): J => ({ ...job, order: { turn, neighbour } });
/** Leaves with the back if the back flares to him. */
export const peeling = <J extends RushJob<RuleNames> | ContainJob<RuleNames>>(job: J): J => ({ ...job, peel: true });

// Tellings ----------------------------------------------------------------------------------------------------------

export const atDepth = (depth: Yards): PreSnap => ({ kind: 'depth', depth });

/** One case of a telling; `when` may be empty. */
export const on = (
  when: readonly LookTest[],
  basis: ToldBasis,
  job: RuleJob,
  preSnap: PreSnap | null = null,
): TellCase => ({ when, basis, job, preSnap });

/** Tells one man, whatever the look. */
export const tell = (who: Who, basis: ToldBasis, job: RuleJob, preSnap: PreSnap | null = null): Tell => ({
  who,
  cases: [on([], basis, job, preSnap)],
});
/** Tells one man by cases, the first that holds. */
export const tellBy = (who: Who, ...cases: TellCase[]): Tell => ({ who, cases });
