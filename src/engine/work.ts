import { compareBy } from '../base/index.ts';
import { align, standAt } from './align/align.ts';
import { combineMan, eitherMan } from './combine/combine.ts';
import type { Man } from './complete/ownGaps.ts';
import { chooseHalf, choiceOf } from './eitherOr.ts';
import { readLook } from './facts/readLook.ts';
import { play, type Shell } from './play.ts';
import { ownSide, resolvePressure, turnedSide } from './resolve/resolvePressure.ts';
import type {
  Aligned,
  Analysis,
  Choice,
  Combined,
  Front,
  LookFacts,
  ResolvedPressure,
  RoleId,
  Setup,
  SideDecision,
} from './types/index.ts';
import { ROOMS, type Side } from './vocabulary.ts';

/** An analysis before it is judged, for one moment of a look. */
export type Worked = Omit<Analysis, 'findings' | 'undetermined' | 'verdict' | 'motion'>;

/** A call as it is told in one moment of a look, stages 1 to 5: the sides of its pressures, the eleven with their tellings. */
export interface Told extends Pick<Analysis, 'setup' | 'facts' | 'first' | 'second' | 'choice' | 'lean'> {
  /** Line, linebackers, secondary, each from left to right. */
  readonly men: readonly Man<Combined>[];
  readonly shell: Shell;
}

/** Stages 1 to 6 for the look as given, its motion not run. */
export function work(setup: Setup): Worked {
  const { men, shell, ...told } = tell(setup);
  const played = play(men, told, shell, told.lean);
  return { ...played, ...told };
}

/** Stages 1 to 5 for the look as given, its motion not run. */
function tell(setup: Setup): Told {
  const facts = readLook(setup.look, setup.level, setup.spot);
  const atRule = align(setup.front, setup.roles, facts, setup.look.id);
  const firstSide = ownSide(setup.first, facts, atRule);
  const secondSide =
    setup.second === null ? null : turnedSide(setup.turn, firstSide, ownSide(setup.second, facts, atRule));
  const ran = halfRun(setup, firstSide, facts);
  const first = resolvePressure(setup.first, setup.coverage, firstSide, facts, atRule);
  const second =
    setup.second === null || secondSide === null
      ? null
      : resolvePressure(setup.second, ran === null ? null : setup.secondCoverage, secondSide, facts, atRule);
  const choice: Choice | null =
    ran === null || second === null
      ? null
      : choiceOf(
          ran,
          [...atRule.values()].map((man) => man.role),
          first,
          second,
        );
  return {
    setup,
    facts,
    first,
    second,
    choice,
    lean: leaningSide(firstSide, facts),
    men: menInOrder(setup.front, atRule, facts, first, second, choice),
    shell: shellInForce(setup, ran, firstSide, secondSide),
  };
}

/** Which half of an either-or call is run; null when both are, or there is only one. */
function halfRun(setup: Setup, firstSide: SideDecision, facts: LookFacts): Choice['ran'] | null {
  if (setup.second === null || setup.combination.kind === 'together') return null;
  return chooseHalf(setup.combination.key, firstSide.kind === 'decided' ? firstSide.side : null, facts);
}

/** The shell that is played, and the side it is told from. */
function shellInForce(
  setup: Setup,
  ran: Choice['ran'] | null,
  firstSide: SideDecision,
  secondSide: SideDecision | null,
): Shell {
  const sideOf = (decision: SideDecision | null): Side | null => (decision?.kind === 'decided' ? decision.side : null);
  return ran === 'second' && setup.secondCoverage !== null
    ? { coverage: setup.secondCoverage, side: sideOf(secondSide) }
    : { coverage: setup.coverage, side: sideOf(firstSide) };
}

/** Where a man stands once the telling that stands has moved him before the snap; a spot set by hand stays. */
function beforeSnap(man: Aligned, { first, second, from }: Combined, facts: LookFacts): Aligned {
  const telling = from === 'second' ? second : from === null || from === 'shell' ? null : first;
  const moved = telling?.kind === 'told' ? telling.preSnap : null;
  if (moved === null || man.by === 'hand') return man;
  return standAt(man.role, { x: man.x, y: moved.depth }, 'pressure', facts, moved.because);
}

/** The eleven with their tellings: line, linebackers, secondary, each from left to right. */
function menInOrder(
  front: Front,
  atRule: ReadonlyMap<RoleId, Aligned>,
  facts: LookFacts,
  first: ResolvedPressure,
  second: ResolvedPressure | null,
  choice: Choice | null,
): readonly Man<Combined>[] {
  const bases = new Map(front.roles.map((entry) => [entry.role, entry.base]));
  return [...atRule.values()]
    .map((man): Man<Combined> => {
      const { id } = man.role;
      const base = bases.get(id);
      if (base === undefined) throw new Error(`Role ${id} stands in a front it is not part of`);
      const [a, b] = [first.tellings.get(id) ?? null, second?.tellings.get(id) ?? null];
      const combined = choice === null ? combineMan(man.role, a, b) : eitherMan(man.role, a, b, choice.ran);
      return { aligned: beforeSnap(man, combined, facts), combined, base };
    })
    .sort(
      compareBy(
        ({ aligned }) => ROOMS.indexOf(aligned.role.room),
        ({ aligned }) => aligned.x,
        ({ aligned }) => aligned.y,
        ({ aligned }) => aligned.role.id,
      ),
    );
}

/** Which side breaks a perfect tie between two equal fits: the call side, else any strength the look has. */
function leaningSide(first: SideDecision, facts: LookFacts): Side {
  if (first.kind === 'decided') return first.side;
  const { strengths } = facts;
  const strong = [strengths['tight-end'], strengths.receivers, strengths.back, strengths.field]
    .map((strength) => strength.side)
    .find((side): side is Side => side !== 'even');
  return strong ?? 'left';
}
