import { assertNever, remembered } from '../../base/index.ts';
import { ruleNames } from '../notation/names.ts';
import type {
  Coverage,
  CoverageId,
  LookId,
  PressureId,
  RoleId,
  RuleJob,
  SideStep,
  TellCase,
  Who,
  Yards,
} from '../types/index.ts';
import type { Turn } from '../vocabulary.ts';

/** One of the two pressures of a call, as the setup at hand has them. */
export type Half = 'first' | 'second';

/** A part of the playbook as an edit names it: by its id for the machine, by its name for the coach. */
export interface Named<Id> {
  readonly id: Id;
  readonly name: string;
}

/** One pressure: `pressure` is what is changed, `which` is what the setup at hand calls it, for the sentence. */
interface InPressure {
  readonly which: Half;
  readonly pressure: PressureId;
}

/** One man in one pressure, as the pressure names him. */
interface ManInPressure extends InPressure {
  readonly who: Who;
}

/** What a man is told in one case, its conditions apart. */
export type Told = Omit<TellCase, 'when'>;

/** What a man's job in a pressure becomes. */
export type JobChange =
  /** The job the other pressure tells him: its cases, told from this pressure's side. */
  | { readonly kind: 'other'; readonly cases: readonly TellCase[] }
  /** A given job: in one of his cases (counted from 0), or, where `at` is null, in every look. */
  | { readonly kind: 'given'; readonly at: number | null; readonly told: Told };

/** Looks with at least, or at most, so many attached bodies on that side of the ball (guard and tackle are 2). */
export interface SurfaceTest {
  readonly side: 'mine' | 'call';
  readonly compare: 'at-least' | 'at-most';
  readonly count: number;
}

/** One thing a coach may change about a call, whole enough to be applied without asking back. */
export type Edit =
  /** Turn the second pressure another way. */
  | { readonly kind: 'turn'; readonly turn: Turn }
  /** First and second change places; the shell in force is then the other one's. */
  | { readonly kind: 'swap' }
  /** Play another shell behind it, whatever the pressures say. */
  | { readonly kind: 'coverage'; readonly coverage: Coverage }
  /** Tell one man another job; a man the pressure did not tell is told it from now on. */
  | ({ readonly kind: 'job'; readonly to: JobChange } & ManInPressure)
  /** Tell one man nothing. */
  | ({ readonly kind: 'untell' } & ManInPressure)
  /** One case more: on that surface he is told this, or (null) nothing. */
  | ({ readonly kind: 'surface'; readonly surface: SurfaceTest; readonly told: Told | null } & ManInPressure)
  /** Do not run the pressure against a look. */
  | ({ readonly kind: 'leave-out'; readonly look: Named<LookId> } & InPressure)
  /** A last step for the rule of the call side, for looks where nothing before it decides. */
  | ({ readonly kind: 'tie-break'; readonly step: SideStep } & InPressure)
  /** The shell tells one man this, in front of whatever it tells him now. */
  | { readonly kind: 'duty'; readonly coverage: Named<CoverageId>; readonly who: Who; readonly job: RuleJob }
  /** Stand one man on a spot by hand against one look. */
  | {
      readonly kind: 'stand';
      readonly look: Named<LookId>;
      readonly role: RoleId;
      readonly x: Yards;
      readonly y: Yards;
    }
  /** How many the call says come. */
  | { readonly kind: 'rushers'; readonly count: number };

/** Edits of a pressure's own rules. */
export type PressureEdit = Extract<Edit, InPressure>;

/**
 * How much has to be taught anew, smallest first: a word of the call, where one man stands against one look, one man's
 * rule for one surface, one man's job, a whole shell, a look that is not run at all. The order is ours.
 */
const SIZES: Readonly<Record<Edit['kind'], number>> = {
  turn: 1,
  rushers: 1,
  swap: 2,
  'tie-break': 2,
  stand: 3,
  surface: 4,
  job: 5,
  untell: 5,
  duty: 5,
  coverage: 6,
  'leave-out': 8,
};

/** The size of a change; see the table. */
export function sizeOf(edit: Edit): number {
  return SIZES[edit.kind];
}

/** The place an edit changes, as a stable text: two edits of one place are never made together. */
export function placeOf(edit: Edit): string {
  switch (edit.kind) {
    case 'turn':
    case 'swap':
    case 'coverage':
    case 'rushers':
      return edit.kind;
    case 'job':
    case 'untell':
    case 'surface':
      return `tell ${edit.pressure} ${ruleNames.who.write(edit.who)}`;
    case 'leave-out':
      return `leave-out ${edit.look.id}`;
    case 'tie-break':
      return `tie-break ${edit.pressure}`;
    case 'duty':
      return `duty ${edit.coverage.id} ${ruleNames.who.write(edit.who)}`;
    case 'stand':
      return `stand ${edit.look.id} ${edit.role}`;
    default:
      return assertNever(edit);
  }
}

/** The edits, each once, smallest first; of equal ones those given first stay first. */
export function smallestFirst(edits: readonly Edit[]): readonly Edit[] {
  const once = new Map<string, Edit>();
  for (const edit of edits) {
    const key = textOf(edit);
    if (!once.has(key)) once.set(key, edit);
  }
  return [...once.values()].toSorted((a, b) => sizeOf(a) - sizeOf(b));
}

/** All that an edit says. Thousands of edits name the same few shells and jobs, so the text of a part is kept. */
function textOf(edit: Edit): string {
  return Object.entries(edit)
    .map(
      ([name, part]: readonly [string, unknown]) =>
        `${name} ${isObject(part) ? textOfPart(part) : JSON.stringify(part)}`,
    )
    .join();
}

const textOfPart = remembered((part: object): string => JSON.stringify(part));

function isObject(part: unknown): part is object {
  return typeof part === 'object' && part !== null;
}
