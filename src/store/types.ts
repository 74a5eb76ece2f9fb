import type {
  CallId,
  Combination,
  CoverageId,
  Edit,
  FrontId,
  Gap,
  LookId,
  Place,
  PlayerId,
  Point,
  PressureId,
  RoleId,
  Turn,
  Zone,
} from '../engine/index.ts';
import type { OpponentId, Playbook } from '../document/index.ts';

/** One of the 22 on the field. */
export type Man =
  { readonly kind: 'defender'; readonly role: RoleId } | { readonly kind: 'offence'; readonly player: PlayerId };

/** Whether the two are the same man. */
export function sameMan(a: Man | null, b: Man | null): boolean {
  return a !== null && b !== null && manKey(a) === manKey(b);
}

/** A man as a stable text, safe as a key among the 22. */
export function manKey(man: Man): string {
  return man.kind === 'defender' ? `defender ${man.role}` : `offence ${man.player}`;
}

/** Whether the man is among them. */
export function includesMan(men: readonly Man[], man: Man): boolean {
  return men.some((each) => sameMan(each, man));
}

/** The men with one of them taken out, or put behind the others when he was not there. */
export function toggledMan(men: readonly Man[], man: Man): readonly Man[] {
  return includesMan(men, man) ? men.filter((each) => !sameMan(each, man)) : [...men, man];
}

/** A man and where he stands, in yards. */
export interface Standing {
  readonly man: Man;
  readonly at: Point;
}

/**
 * A spot that can be put into another look: a defender's by his role, a man of the offence's by his letter; of several
 * with one letter the how manyth, from the defence's left.
 */
export type ClipSpot =
  | { readonly kind: 'defender'; readonly role: RoleId; readonly at: Point }
  | { readonly kind: 'offence'; readonly letter: string; readonly nth: number; readonly at: Point };

/** What is called. Null where the playbook has nothing to choose from. */
export interface CallParts {
  readonly front: FrontId | null;
  readonly first: PressureId | null;
  /** Null: the first pressure alone. */
  readonly second: PressureId | null;
  readonly turn: Turn;
  /** How the two make one call; of no account without a second. */
  readonly combination: Combination;
  /** Null: the coverage of the first pressure. */
  readonly coverage: CoverageId | null;
  /** How many the coach says come; null: he does not say. */
  readonly rushers: number | null;
}

/** What the coach is looking at: a call, in a look, at a ball spot. Not part of the playbook. */
export interface Board extends CallParts {
  readonly look: LookId | null;
  readonly spot: Place;
  /** The kept call the parts came from; they may have been changed since. Null: none. */
  readonly call: CallId | null;
}

/** How much of the field is shown. */
export const ZOOMS = ['players', 'box', 'field'] as const;
export type Zoom = (typeof ZOOMS)[number];

/** What is lit on the field: the people and gaps of a finding, or of another row of the report. */
export interface Lit {
  /** The row, by its key in the report. */
  readonly key: string;
  readonly roles: readonly RoleId[];
  readonly players: readonly PlayerId[];
  readonly gaps: readonly Gap[];
}

/** One run or protection the look is known for, drawn over the call: its place in the look's list. */
export interface Overlay {
  readonly kind: 'run' | 'protection';
  readonly look: LookId;
  readonly index: number;
}

/** The entry each section's editor was last opened on; null: none yet. Looks and fronts are chosen on the board. */
export interface Chosen {
  readonly pressures: PressureId | null;
  readonly coverages: CoverageId | null;
  readonly roles: RoleId | null;
}

/** A place of the field that a job can be picked by. */
export type PickPlace =
  | { readonly kind: 'gap'; readonly gap: Gap }
  | { readonly kind: 'zone'; readonly zone: Zone; readonly side: Place }
  | { readonly kind: 'receiver'; readonly player: PlayerId }
  | { readonly kind: 'passer' };

/** A job that is being picked on the field: first the man, then the place. Nothing is changed yet. */
export interface Picking {
  readonly pressure: PressureId;
  readonly man: RoleId | null;
  readonly place: PickPlace | null;
}

/** How the coach looks at it. */
export interface View {
  /** True: half a turn, the offence below. */
  readonly turned: boolean;
  readonly zoom: Zoom;
  /** The men who are picked, the one picked first in front. Empty: nobody. */
  readonly selection: readonly Man[];
  /** True: techniques, depths and landmarks draw a man to themselves while he is dragged. */
  readonly snapping: boolean;
  /** True: a press adds to those who are picked, for a hand without Shift. */
  readonly several: boolean;
  /** Spots that were copied, to be put into another look. */
  readonly clip: readonly ClipSpot[];
  readonly lit: Lit | null;
  /** Null: the call alone. */
  readonly overlay: Overlay | null;
  /** True: a line to every receiver from the man who answers him. */
  readonly answers: boolean;
  readonly chosen: Chosen;
  /** Null: no job is being picked on the field. */
  readonly picking: Picking | null;
  /** Only this opponent's looks are shown; null: all. */
  readonly opponent: OpponentId | null;
}

/** Men shown where they are being dragged to; the playbook does not know of it until they are let go. */
export type Preview = readonly Standing[];

/** What the last step of the history did, for the undo notice. */
export interface Change {
  /** "Moved the Nose", as in "Undone: …". */
  readonly label: string;
  /** The look it was made in; null when it has none. */
  readonly look: LookId | null;
}

/** A playbook as it once was, and the change that led to it. */
export interface Step {
  readonly playbook: Playbook;
  readonly change: Change | null;
}

/** The way back and the way forth: the nearest step is the last of either list. */
export interface Steps {
  readonly past: readonly Step[];
  /** The change that led to the playbook between the two. */
  readonly change: Change | null;
  readonly future: readonly Step[];
}

/** Everything the app knows. */
export interface AppState {
  readonly playbook: Playbook;
  /** The step that led to this playbook; null at the start. Kept in the history beside it. */
  readonly change: Change | null;
  readonly board: Board;
  readonly view: View;
  readonly preview: Preview | null;
  /** A suggestion whose outcome is shown on the field; nothing is changed yet. */
  readonly trial: Edit | null;
  /** The gesture the last change belongs to: more of it joins the same step of the history. */
  readonly gesture: string | null;
  /** True: another tab writes, so nothing may be changed here. */
  readonly readOnly: boolean;
}
