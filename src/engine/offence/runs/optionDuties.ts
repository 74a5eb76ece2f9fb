import { compareBy, firstInOrder, ok, refused, type Result } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import { signOf } from '../../facts/surface.ts';
import { gapsEqual } from '../../gaps.ts';
import type {
  Because,
  Gap,
  ManRule,
  OptionDuties,
  OptionRule,
  ReadOutcome,
  RoleId,
  RunPicture,
  Yards,
} from '../../types/index.ts';
import { GAP_LETTERS, type Side } from '../../vocabulary.ts';
import { isAtLine, LINEBACKER_DEPTH, thousandths } from '../row.ts';
import { readMan } from './readMan.ts';
import type { OptionMan } from './types.ts';
import { OPTION_PHASES, type OptionPhase, type ReadReaction } from '../../offenceVocabulary.ts';

const outwardOf = (man: OptionMan, side: Side): Yards => man.x * signOf(side);
const owns = (man: OptionMan, gap: Gap): boolean => man.gaps.some((own) => gapsEqual(own, gap));

/**
 * Who has the dive, the quarterback and the pitch once the read man does what he does. He takes the phase his reaction takes;
 * the others go to whoever owns their gaps. If the read man crashed out of the passer's gap and nobody else owns it, the
 * linebacker from the next gap inside goes over the top for him (the exchange), else a man from outside comes. The pitch goes
 * to a man outside who has nothing yet, the owner of its gap first, else the nearest to the edge.
 * Sources: "Teaching Gap Exchanges & Defending the Zone Read", MatchQuarters; "Defending the zone-read: athleticism and the
 * 'scrape-exchange'", Smart Football; "Blitzing Zone Read from the 3-3-5", Blitzology, 2015.
 * Refused for a run without an option, and where nobody stands where the read man should.
 */
export function optionDuties(
  picture: RunPicture,
  men: readonly OptionMan[],
  reaction: ReadReaction,
): Result<OptionDuties, Because> {
  const option = optionOf(picture);
  if (option === null) return refused(fact('this run has no option'));
  const role = readMan(picture, men);
  const man = men.find((each) => each.role === role);
  if (man === undefined) return refused(fact('nobody stands where the read man should', option.read.words));
  const outcome = outcomeOf(option, reaction);
  return ok(dutiesTold(option, man, reaction, outcome, sharedOut(option, man, men, outcome)));
}

/** The option is defended as well as the best reaction of the man who is read allows; the first of equals. */
export function bestDuties(option: Option, men: readonly OptionMan[], read: RoleId): OptionDuties | null {
  const man = men.find((each) => each.role === read);
  if (man === undefined) return null;
  const crash = sharedOut(option, man, men, option.ifCrash);
  if (crash.missing.length === 0) return dutiesTold(option, man, 'crash', option.ifCrash, crash);
  // Square and upfield bring the same, so the first of the two stands for both.
  const wait = sharedOut(option, man, men, option.ifWait);
  return wait.missing.length < crash.missing.length
    ? dutiesTold(option, man, 'square', option.ifWait, wait)
    : dutiesTold(option, man, 'crash', option.ifCrash, crash);
}

/** What makes a run an option. */
export interface Option extends OptionRule {
  /** Where the passer keeps the ball, and where it is pitched; null: it is not. */
  readonly keep: Gap;
  readonly pitch: Gap | null;
  readonly read: ManRule;
}

/** The option in a run; null: it has none. */
export function optionOf({ option, keeper, read, pitch }: RunPicture): Option | null {
  if (option === null || keeper === null || read === null) return null;
  const { give, ifCrash, ifWait } = option;
  return { give, ifCrash, ifWait, keep: keeper.where, pitch: pitch?.where ?? null, read };
}

function outcomeOf({ ifCrash, ifWait }: OptionRule, reaction: ReadReaction): ReadOutcome {
  return reaction === 'crash' ? ifCrash : ifWait;
}

/** Who has which phase, which of them nobody has, and who went over the top for the read man. */
interface Shared extends Pick<OptionDuties, OptionPhase | 'missing'> {
  readonly scraper: OptionMan | null;
}

function sharedOut(option: Option, man: OptionMan, men: readonly OptionMan[], { takes }: ReadOutcome): Shared {
  const { keep, give, pitch, read } = option;
  const others = men.filter((each) => each !== man);
  const first = (phase: OptionPhase): readonly RoleId[] => (takes === phase ? [man.role] : []);
  const keepers = others.filter((each) => owns(each, keep));
  const scraper = takes === 'quarterback' || keepers.length > 0 ? null : overTheTop(others, man, keep);
  const quarterback = [...first('quarterback'), ...rolesOf(keepers), ...(scraper === null ? [] : [scraper.role])];
  const divers = others.filter((each) => each !== scraper && give.some((gap) => owns(each, gap)));
  const dive = [...first('dive'), ...rolesOf(divers)];
  const free = others.filter((each) => !quarterback.includes(each.role) && !dive.includes(each.role));
  const outside = pitch === null || takes === 'pitch' ? null : onPitch(free, pitch, read);
  const duties = { dive, quarterback, pitch: [...first('pitch'), ...(outside === null ? [] : [outside.role])] };
  const missing = OPTION_PHASES.filter((phase) => duties[phase].length === 0 && isPartOf(phase, option));
  return { dive, quarterback, pitch: duties.pitch, missing, scraper };
}

/** Whether this concept has a phase. */
function isPartOf(phase: OptionPhase, { give, pitch }: Option): boolean {
  return phase === 'dive' ? give.length > 0 : phase === 'pitch' ? pitch !== null : true;
}

function dutiesTold(
  option: Option,
  man: OptionMan,
  reaction: ReadReaction,
  outcome: ReadOutcome,
  { dive, quarterback, pitch, missing, scraper }: Shared,
): OptionDuties {
  const why = reasons(option, man, reaction, outcome, scraper);
  return { ball: outcome.ball, dive, quarterback, pitch, missing, because: why };
}

function rolesOf(men: readonly OptionMan[]): readonly RoleId[] {
  return men.map((man) => man.role);
}

/**
 * Who replaces the read man in the passer's gap: off the line and on that side, a man whose own gap is beside it (he goes over
 * the top) before a man with no gap (he comes from outside), the nearest first.
 */
function overTheTop(men: readonly OptionMan[], read: OptionMan, gap: Gap): OptionMan | null {
  const beside = (man: OptionMan): boolean =>
    man.gaps.some((own) => own.side === gap.side && Math.abs(rank(own) - rank(gap)) === 1);
  const could = men
    .filter((man) => !isAtLine(man) && man.y <= LINEBACKER_DEPTH && outwardOf(man, gap.side) > 0)
    .filter((man) => beside(man) || man.gaps.length === 0);
  const scraper = firstInOrder(
    could,
    compareBy(
      (man) => (beside(man) ? 0 : 1),
      (man) => thousandths(Math.abs(man.x - read.x)),
      (man) => thousandths(man.y),
      (man) => man.role,
    ),
  );
  return scraper ?? null;
}

function rank(gap: Gap): number {
  return GAP_LETTERS.indexOf(gap.letter);
}

/** Who has the pitch: the owner of its gap, else whoever outside the tackle is nearest to the edge. */
function onPitch(free: readonly OptionMan[], where: Gap, read: ManRule): OptionMan | null {
  const way = (man: OptionMan): number => thousandths(Math.hypot(outwardOf(man, where.side) - read.reach, man.y));
  const nearest = firstInOrder(
    free.filter((man) => owns(man, where) || outwardOf(man, where.side) > read.from),
    compareBy(
      (man) => (owns(man, where) ? 0 : 1),
      way,
      (man) => man.role,
    ),
  );
  return nearest ?? null;
}

function reasons(
  { read, keep }: Option,
  man: OptionMan,
  reaction: ReadReaction,
  { takes, ball }: ReadOutcome,
  scraper: OptionMan | null,
): Because {
  const data = {
    who: datum.role(man.role),
    how: datum.word(REACTION_WORDS[reaction]),
    phase: datum.word(takes),
    ball: datum.word(BALL_WORDS[ball]),
  };
  const scrapes =
    scraper === null
      ? []
      : [
          because('{who} goes over the top to {gap} in his place', {
            who: datum.role(scraper.role),
            gap: datum.gap(keep),
          }),
        ];
  return because(
    'by rule, {who} is read: he {how} and takes the {phase}, so the ball is {ball}',
    data,
    read.words,
    ...scrapes,
  );
}

const REACTION_WORDS: Readonly<Record<ReadReaction, string>> = {
  crash: 'comes down inside',
  square: 'stays square',
  upfield: 'goes upfield',
};
const BALL_WORDS: Readonly<Record<ReadOutcome['ball'], string>> = {
  give: 'handed off',
  keep: 'kept',
  pitch: 'pitched',
};
