import { assertNever } from '../../base/index.ts';
import type {
  AlignRule,
  BaseJob,
  Comparison,
  CoverageCase,
  GapRef,
  LookTest,
  PreSnap,
  ReceiverRef,
  Role,
  RoleSide,
  RuleJob,
  RuleNames,
  SideRef,
  SideStep,
  Spot,
  Tell,
  TellCase,
  ToldBasis,
  Who,
  ZoneNeed,
} from '../../engine/index.ts';
import { defenderWords } from './defenders.ts';
import { jobSentence, type NameWords } from './jobSentence.ts';
import { capitalised, listed, lowered, numberText, yardsText } from './lists.ts';
import { BODY_WORDS, STRENGTH_WORDS } from './names.ts';
import { gapAlone, gapText, ON_SIDE, receiverText, SIDE_WORDS, zoneText } from './rulePlaces.ts';
import type { StaffWords } from './staffWords.ts';
import { atDepth, leverageText, techniqueLabel } from './technique.ts';

/** Every part of a rule as words: a rule must be readable by somebody who never saw the editor. No full stops. */
export interface RuleWords {
  /** "call side", "my side", "left". */
  readonly side: (side: SideRef) => string;
  /** "call-side B gap", "away-side edge gap", "B gap on my side". */
  readonly gap: (gap: GapRef) => string;
  /** The gap without its side, as a list to pick from shows it: "B gap", "edge gap", "gap outside the tight end". */
  readonly gapAlone: (gap: GapRef) => string;
  readonly who: (who: Who) => string;
  /** "call-side #2", "the back". */
  readonly receiver: (receiver: ReceiverRef) => string;
  /** "Rush the call-side B gap off the inside hip of the E". */
  readonly job: (job: RuleJob) => string;
  /** "the end man on my side is detached". */
  readonly test: (test: LookTest) => string;
  /** The condition without its side: "the end man is detached". */
  readonly testAlone: (test: LookTest) => string;
  /** "If the end man on my side is detached and there is no back in the backfield"; "Always" without a condition. */
  readonly when: (tests: readonly LookTest[]) => string;
  /** "toward the tight end". */
  readonly step: (step: SideStep) => string;
  /** "Call side: toward the tight end, then toward the receivers, then toward the field". */
  readonly callSide: (steps: readonly SideStep[]) => string;
  /** "Side: middle", "Side: away from the tight end, then left". */
  readonly roleSide: (side: RoleSide) => string;
  /** "5: outside foot of the tackle, 0.5 yd off the ball". */
  readonly spot: (spot: Spot) => string;
  /** "If there is no back in the backfield: 10 yd deep over the ball". */
  readonly alignRule: (rule: AlignRule) => string;
  /** "Two-gap: A gap left and A gap right; rushes on a pass". */
  /** All rules of a man in their order: "If …: head up on …; else over the ball, 10 yd deep". */
  readonly alignRules: (rules: readonly AlignRule[]) => string;
  readonly base: (base: BaseJob) => string;
  readonly preSnap: (preSnap: PreSnap) => string;
  /** "Call-side flat: the call-side E, else N"; "If …: deep half left: nobody yet". */
  readonly need: (need: ZoneNeed) => string;
  /** "Force on the call side: the call-side E; on the away side: nobody is told to". */
  readonly forces: (tells: readonly CoverageTell[]) => string;
  /** "If the end man on my side is detached, rush the call-side C gap". */
  readonly tellCase: (told: TellCase) => string;
  /** "E: if …, rush …; otherwise contain …". */
  readonly tell: (tell: Tell) => string;
  /** What a shell tells one man, in the same form. */
  readonly coverageTell: (tell: CoverageTell) => string;
}

/** What a shell tells one man. */
interface CoverageTell {
  readonly who: Who;
  readonly cases: readonly CoverageCase[];
}

/** Said behind a job whose ground the coach may have to know: it decides who gives way. */
const BASIS_WORDS: Readonly<Record<ToldBasis, string>> = {
  path: '',
  movement: ' (line movement)',
  consequence: ' (follows from the others)',
};

function counted(compare: Comparison, count: number, one: string, many: string): string {
  const number = `${numberText(count)} ${count === 1 ? one : many}`;
  return compare === 'exactly' ? `exactly ${number}` : `${compare === 'at-least' ? 'at least' : 'at most'} ${number}`;
}

/** Guard and tackle are always there, so two bodies or fewer is the coach's "detached". `where` is led by a blank. */
function bodiesText(test: Extract<LookTest, { kind: 'bodies' }>, where: string): string {
  if (test.count === 2 && test.compare !== 'at-least') return `the end man${where} is detached`;
  if (test.count === 3 && test.compare === 'at-least') return `a man is attached outside the tackle${where}`;
  const number = counted(test.compare, test.count, 'man', 'men');
  return `the surface has ${number} outside the snapper${where}`;
}

function thereAre(test: { readonly compare: Comparison; readonly count: number }, one: string): string {
  if (test.count === 0 && test.compare !== 'at-least') return `there is no ${one}`;
  return `there ${test.count === 1 ? 'is' : 'are'} ${counted(test.compare, test.count, one, `${one}s`)}`;
}

function testText(test: LookTest): string {
  return testSaid(test, test.kind === 'backs' ? '' : ` ${ON_SIDE[test.side]}`);
}

/** A condition with its side in words, or with none. */
function testSaid(test: LookTest, where: string): string {
  switch (test.kind) {
    case 'bodies':
      return bodiesText(test, where);
    case 'receivers':
      return `${thereAre(test, 'receiver')}${where}`;
    case 'backs':
      return `${thereAre(test, 'back')} in the backfield`;
    case 'field':
      return `the wide side of the field is${where === '' ? ' there' : where}`;
    case 'back':
      return `the back is offset${where}`;
    default:
      return assertNever(test);
  }
}

function spotText(spot: Spot, staff: StaffWords): string {
  switch (spot.kind) {
    case 'technique':
      return `${techniqueOf(spot, staff)}, ${yardsText(spot.depth)} off the ball`;
    case 'edge':
      return `${yardsText(spot.offset)} outside the last man, ${yardsText(spot.depth)} off the ball`;
    case 'receiver': {
      const how = spot.leverage === 'head' ? 'head up' : spot.leverage;
      return `on #${numberText(spot.number)}, ${how}, ${yardsText(spot.depth)} deep`;
    }
    case 'apex':
      return `halfway between the last man and #${numberText(spot.number)}, ${yardsText(spot.depth)} deep`;
    case 'ball': {
      if (spot.offset === 0) return `over the ball, ${yardsText(spot.depth)} deep`;
      const where = spot.offset > 0 ? 'toward my side' : 'toward the other side';
      return `${yardsText(Math.abs(spot.offset))} from the ball ${where}, ${yardsText(spot.depth)} deep`;
    }
    default:
      return assertNever(spot);
  }
}

function alignText({ when, spot }: AlignRule, staff: StaffWords): string {
  return when.length === 0 ? spotText(spot, staff) : `if ${conditions(when)}: ${spotText(spot, staff)}`;
}

function elseText(rule: AlignRule, at: number, staff: StaffWords): string {
  return `${at === 0 ? '' : 'else '}${alignText(rule, staff)}`;
}

const INDEX_OF_BODY = { snapper: 0, guard: 1, tackle: 2, end: 3, wing: 4 } as const;

/** A number where that spot has one; on whoever is last the common number depends on the look, so only the words are said. */
function techniqueOf(spot: Extract<Spot, { kind: 'technique' }>, staff: StaffWords): string {
  const { on, leverage, depth } = spot;
  const words = leverageText(BODY_WORDS[on], leverage);
  const label =
    on === 'last'
      ? (staff.techniques.find((each) => each.on === on && each.leverage === leverage)?.label ?? null)
      : techniqueLabel({ index: INDEX_OF_BODY[on], leverage, last: false }, staff);
  return label === null ? words : `${atDepth(label, depth)}: ${words}`;
}

const BASE_PASS: Readonly<Record<BaseJob['pass'], string>> = {
  rush: '; rushes on a pass',
  contain: '; rushes and contains on a pass',
  none: '',
};

function baseText(base: BaseJob): string {
  const rushes = BASE_PASS[base.pass];
  const gaps = base.gaps.map(gapText);
  if (gaps.length === 0) return `No gap of his own${rushes}`;
  if (base.style === 'two-gap') {
    const rest = gaps.slice(2);
    const more = rest.length === 0 ? '' : `, else ${rest.join(', then ')}`;
    return `Two-gap: ${listed(gaps.slice(0, 2), '')}${more}${rushes}`;
  }
  return `${capitalised(gaps.join(', else '))}${rushes}`;
}

/** "if a and b, job; otherwise job": cases in their order, the first that holds. */
function casesText(cases: readonly { readonly when: readonly LookTest[]; readonly said: string }[]): string {
  const parts = cases.map(({ when, said }, index) => {
    const job = lowered(said);
    if (when.length > 0) return `if ${conditions(when)}, ${job}`;
    return index === 0 ? job : `otherwise ${job}`;
  });
  const always = cases.some((each) => each.when.length === 0);
  const rest = parts.length === 0 ? 'nothing' : 'otherwise nothing';
  return [...parts, ...(always ? [] : [rest])].join('; ');
}

function conditions(when: readonly LookTest[]): string {
  return listed(when.map(testText), '');
}

function needText({ when, zone, side, takers }: ZoneNeed, who: (who: Who) => string): string {
  const where = zoneText(zone, side);
  const by = takers.length === 0 ? 'nobody yet' : takers.map(who).join(', else ');
  return capitalised(`${when.length === 0 ? '' : `if ${conditions(when)}: `}${where}: ${by}`);
}

/** Whom a shell tells to force, side by side. A man told by his role may be on either side. */
function forcesText(tells: readonly CoverageTell[], who: (who: Who) => string): string {
  const forcers = tells.filter(({ cases }) => cases.some(({ job }) => forces(job)));
  const on = (side: 'call' | 'away'): string => {
    const men = forcers.filter(({ who: man }) => man.kind === 'group' && man.side === side);
    return listed(
      men.map((tell) => who(tell.who) + (tell.cases.every(({ job }) => forces(job)) ? '' : ' in some looks')),
      'nobody is told to',
    );
  };
  const either = forcers.filter(({ who: man }) => man.kind === 'role').map((tell) => who(tell.who));
  const more = either.length === 0 ? '' : `; wherever they are: ${listed(either, '')}`;
  return `Force on the call side: ${on('call')}; on the away side: ${on('away')}${more}`;
}

function forces(job: RuleJob): boolean {
  switch (job.kind) {
    case 'fit':
      return job.support === 'force';
    case 'drop':
    case 'man':
    case 'spy':
      return job.run.support === 'force';
    case 'rush':
    case 'contain':
      return false;
  }
}

function stepText(step: SideStep, who: (who: Who) => string): string {
  switch (step.kind) {
    case 'fixed':
      return `to the ${step.side}`;
    case 'strength':
      return `${step.toward === 'to' ? 'toward' : 'away from'} ${STRENGTH_WORDS[step.by]}`;
    case 'role':
      return `${step.toward === 'to' ? 'toward' : 'away from'} ${who({ kind: 'role', role: step.role })}`;
    default:
      return assertNever(step);
  }
}

/** Words for rules. Needs the roles they speak of, and the staff's own technique table. */
export function makeRuleWords(roles: readonly Role[], staff: StaffWords): RuleWords {
  const defenders = defenderWords(roles);
  const names: NameWords<RuleNames> = {
    gap: gapText,
    who: defenders.theMan,
    zone: zoneText,
    receiver: receiverText,
  };
  const job = (told: RuleJob): string => jobSentence(told, names);
  const steps = (all: readonly SideStep[]): string => all.map((each) => stepText(each, defenders.who)).join(', then ');
  const preSnap = (told: PreSnap): string =>
    told.kind === 'heels'
      ? `stand as deep as the heels of ${defenders.theMan(told.of)}`
      : `stand ${yardsText(told.depth)} deep`;
  const toldText = (told: TellCase): string => {
    const before = told.preSnap === null ? '' : `${preSnap(told.preSnap)} before the snap, then `;
    return `${before}${lowered(job(told.job))}${BASIS_WORDS[told.basis]}`;
  };
  const saidCase = (told: TellCase) => ({ when: told.when, said: toldText(told) });
  return {
    side: (side) => SIDE_WORDS[side],
    gap: gapText,
    gapAlone,
    who: defenders.who,
    receiver: receiverText,
    job,
    test: testText,
    testAlone: (test) => testSaid(test, ''),
    when: (tests) => (tests.length === 0 ? 'Always' : `If ${conditions(tests)}`),
    step: (step) => stepText(step, defenders.who),
    callSide: (all) => `Call side: ${all.length === 0 ? 'not said' : steps(all)}`,
    roleSide: (side) => `Side: ${side.kind === 'middle' ? 'the middle' : steps(side.steps)}`,
    spot: (spot) => spotText(spot, staff),
    alignRule: (rule) => capitalised(alignText(rule, staff)),
    alignRules: (rules) => capitalised(rules.map((rule, at) => elseText(rule, at, staff)).join('; ')),
    base: baseText,
    preSnap,
    need: (need) => needText(need, defenders.who),
    forces: (tells) => forcesText(tells, defenders.who),
    tellCase: (told) =>
      capitalised(told.when.length === 0 ? toldText(told) : `if ${conditions(told.when)}, ${toldText(told)}`),
    tell: (tell) => `${capitalised(defenders.who(tell.who))}: ${casesText(tell.cases.map(saidCase))}`,
    coverageTell: (tell) => {
      const cases = tell.cases.map((each) => ({ when: each.when, said: job(each.job) }));
      return `${capitalised(defenders.who(tell.who))}: ${casesText(cases)}`;
    },
  };
}
