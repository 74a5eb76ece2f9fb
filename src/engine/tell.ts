import { compareBy } from '../base/index.ts';
import { align, standAt } from './align/align.ts';
import { combineMan, eitherMan } from './combine/combine.ts';
import type { Man } from './complete/ownGaps.ts';
import { chooseHalf, choiceOf } from './eitherOr.ts';
import { readLook } from './facts/readLook.ts';
import type { Shell } from './play.ts';
import { ownSide, resolvePressure, turnedSide } from './resolve/resolvePressure.ts';
import type {
  Aligned,
  Analysis,
  BaseJob,
  Choice,
  Combined,
  Coverage,
  Front,
  LookFacts,
  Pressure,
  RoleId,
  Setup,
  SideDecision,
  Telling,
} from './types/index.ts';
import { ROOMS, type Side } from './vocabulary.ts';

/** A call as it is told in one moment of a look, stages 1 to 5: the sides of its pressures, the eleven with their tellings. */
interface AsTold extends Pick<Analysis, 'setup' | 'facts' | 'first' | 'second' | 'choice' | 'lean'> {
  /** Line, linebackers, secondary, each from left to right. */
  readonly men: readonly Man<Combined>[];
  readonly shell: Shell;
}

/** Stages 1 to 5 for the look as given, its motion not run. */
export function tell(setup: Setup): AsTold {
  const facts = readLook(setup.look, setup.level, setup.spot);
  const atRule = align(setup.front, setup.roles, facts, setup.look.id);
  const sides = sidesOf(setup, (pressure) => ownSide(pressure, facts, atRule));
  const ran = halfRun(setup, sides.first, facts);
  const { first, second } = tellBoth(setup, sides, ran, (pressure, coverage, side) =>
    resolvePressure(pressure, coverage, side, facts, atRule),
  );
  const choice: Choice | null =
    ran === null || second === null
      ? null
      : choiceOf(
          ran,
          [...atRule.values()].map((man) => man.role),
          first,
          second,
        );
  const telling = (man: Aligned): Man<Combined> => {
    const { id } = man.role;
    const [a, b] = [first.tellings.get(id) ?? null, second?.tellings.get(id) ?? null];
    return manOf(man, baseOf(setup.front, id), a, b, choice?.ran ?? null, facts);
  };
  return {
    setup,
    facts,
    first,
    second,
    choice,
    lean: leaningSide(sides.first, facts),
    men: [...atRule.values()].map(telling).sort(inOrder),
    shell: shellInForce(setup, ran, sides),
  };
}

/** The sides of a call's pressures. */
export interface Sides {
  readonly first: SideDecision;
  /** Null: there is no second pressure. */
  readonly second: SideDecision | null;
}

/** The side of each pressure, the second one turned as the call says; `ownSideOf` is what a pressure picks for itself. */
export function sidesOf({ first, second, turn }: Setup, ownSideOf: (pressure: Pressure) => SideDecision): Sides {
  const own = ownSideOf(first);
  return { first: own, second: second === null ? null : turnedSide(turn, own, ownSideOf(second)) };
}

/** What each pressure of a call tells. Of two that run at once only the first brings its shell. */
export function tellBoth<Heard>(
  setup: Setup,
  sides: Sides,
  ran: Choice['ran'] | null,
  hear: (pressure: Pressure, coverage: Coverage | null, side: SideDecision) => Heard,
): { readonly first: Heard; readonly second: Heard | null } {
  const { first, second, coverage, secondCoverage } = setup;
  return {
    first: hear(first, coverage, sides.first),
    second:
      second === null || sides.second === null
        ? null
        : hear(second, ran === null ? null : secondCoverage, sides.second),
  };
}

/** Which half of an either-or call is run; null when both are, or there is only one. */
export function halfRun(setup: Setup, firstSide: SideDecision, facts: LookFacts): Choice['ran'] | null {
  if (setup.second === null || setup.combination.kind === 'together') return null;
  return chooseHalf(setup.combination.key, firstSide.kind === 'decided' ? firstSide.side : null, facts);
}

/** The shell that is played, and the side it is told from. */
export function shellInForce(setup: Setup, ran: Choice['ran'] | null, { first, second }: Sides): Shell {
  const sideOf = (decision: SideDecision | null): Side | null => (decision?.kind === 'decided' ? decision.side : null);
  return ran === 'second' && setup.secondCoverage !== null
    ? { coverage: setup.secondCoverage, side: sideOf(second) }
    : { coverage: setup.coverage, side: sideOf(first) };
}

/** Where a man stands once the telling that stands has moved him before the snap; a spot set by hand stays. */
function beforeSnap(man: Aligned, { first, second, from }: Combined, facts: LookFacts): Aligned {
  const telling = from === 'second' ? second : from === null || from === 'shell' ? null : first;
  const moved = telling?.kind === 'told' ? telling.preSnap : null;
  if (moved === null || man.by === 'hand') return man;
  return standAt(man.role, { x: man.x, y: moved.depth }, 'pressure', facts, moved.because);
}

/** One of the eleven with his tellings; `ran` is the half that is run of an either-or call, null when both are. */
export function manOf(
  atRule: Aligned,
  base: BaseJob,
  first: Telling | null,
  second: Telling | null,
  ran: Choice['ran'] | null,
  facts: LookFacts,
): Man<Combined> {
  const { role } = atRule;
  const combined = ran === null ? combineMan(role, first, second) : eitherMan(role, first, second, ran);
  return { aligned: beforeSnap(atRule, combined, facts), combined, base };
}

/** Line, linebackers, secondary, each from left to right. */
export const inOrder = compareBy(
  ({ aligned }: Standing) => ROOMS.indexOf(aligned.role.room),
  ({ aligned }: Standing) => aligned.x,
  ({ aligned }: Standing) => aligned.y,
  ({ aligned }: Standing) => aligned.role.id,
);

/** Somebody who stands somewhere. */
type Standing = Pick<Man, 'aligned'>;

/** The base job a man has in a front he is part of. */
export function baseOf(front: Front, role: RoleId): BaseJob {
  const entry = front.roles.find((each) => each.role === role);
  if (entry === undefined) throw new Error(`Role ${role} stands in a front it is not part of`);
  return entry.base;
}

/** Which side breaks a perfect tie between two equal fits: the call side, else any strength the look has. */
export function leaningSide(first: SideDecision, facts: LookFacts): Side {
  if (first.kind === 'decided') return first.side;
  const { strengths } = facts;
  const strong = [strengths['tight-end'], strengths.receivers, strengths.back, strengths.field]
    .map((strength) => strength.side)
    .find((side): side is Side => side !== 'even');
  return strong ?? 'left';
}
