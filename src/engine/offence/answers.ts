import { remembered, rememberedLast } from '../../base/index.ts';
import { gapsEqual } from '../gaps.ts';
import type {
  Gap,
  KnownProtection,
  KnownRun,
  LookFacts,
  OwnedGap,
  PlayedMan,
  ProtectionAnswer,
  RoleId,
  RunAnswer,
} from '../types/index.ts';
import { comersOf, type Comer } from './protections/comers.ts';
import { meet } from './protections/protect.ts';
import { PROTECTIONS } from '../offenceVocabulary.ts';
import type { ProtectionScheme, Rusher } from './protections/types.ts';
import { fitFloating, isFree } from './runs/fits.ts';
import { bestDuties } from './runs/optionDuties.ts';
import { runHere } from './runs/runHere.ts';
import type { OptionMan } from './runs/types.ts';
import { standOf, type Stand } from './stand.ts';

/** What an answer is worked out from: the eleven with their jobs, the gaps with their owners. */
export interface Defence {
  readonly facts: LookFacts;
  readonly assignments: readonly PlayedMan[];
  readonly gaps: readonly OwnedGap[];
}

/** One run the look is known for against this defence. */
export function answerRun(known: KnownRun, defence: Defence): RunAnswer {
  const { stand, men, free } = seen(defence);
  const run = runHere(stand, known);
  if (!run.ok) return { kind: 'not-here', known, because: run.problem };
  const { picture, floating, fitters, option, read, unblocked } = run.value;
  const fit = fitters.filter(({ place }) => free[place]);
  return {
    kind: 'answered',
    known,
    picture,
    atAim: ownersOf(picture.aim, defence),
    atCutback: picture.cutback === null ? [] : ownersOf(picture.cutback, defence),
    unblocked,
    read,
    floating: fitFloating(floating, fit),
    spare: fit.length - floating.length,
    option: option === null || read === null ? null : bestDuties(option, men, read),
  };
}

/** What is asked of a defence again by every run and protection. */
interface Seen {
  readonly stand: Stand;
  readonly men: readonly OptionMan[];
  /** For each man of the stand, whether he is free to fit. */
  readonly free: readonly boolean[];
  readonly comers: readonly Comer[];
}

const seen = rememberedLast((defence: Defence): Seen => ({
  stand: standOf(defence.assignments, defence.facts),
  men: defence.assignments.map(optionMan),
  free: defence.assignments.map(isFree),
  comers: comersOf(rushersOf(defence), defence.facts),
}));

function optionMan({ aligned, run }: PlayedMan): OptionMan {
  return { role: aligned.role.id, x: aligned.x, y: aligned.y, gaps: run.gaps };
}

function ownersOf(gap: Gap, { gaps }: Defence): readonly RoleId[] {
  return gaps.find((owned) => gapsEqual(owned.gap, gap))?.owners.map((owner) => owner.role) ?? [];
}

/** One protection the look is known for against this rush. A rusher in conflict is taken where he stands for now. */
export function answerProtection(known: KnownProtection, defence: Defence): ProtectionAnswer {
  const { stand, comers } = seen(defence);
  const result = meet(stand, schemeOf(known), comers);
  return result.ok
    ? { kind: 'answered', known, picture: result.value }
    : { kind: 'not-here', known, because: result.problem };
}

function rushersOf({ assignments }: Defence): readonly Rusher[] {
  const rushers: Rusher[] = [];
  for (const { aligned, run, pass, combined } of assignments) {
    const [endGap] = run.gaps;
    if ((pass.kind !== 'rush' && pass.kind !== 'contain') || endGap === undefined) continue;
    const { job } = combined;
    const order = job?.kind === 'rush' || job?.kind === 'contain' ? (job.order?.turn ?? null) : null;
    rushers.push({ role: aligned.role.id, from: { x: aligned.x, y: aligned.y }, endGap, order });
  }
  return rushers;
}

const schemeOf = remembered((known: KnownProtection): ProtectionScheme => {
  const named = PROTECTIONS.find((each) => each.id === known.protection);
  if (named === undefined) throw new Error(`Unknown protection ${known.protection}`);
  return { scheme: named.scheme, back: named.back, tightEnds: named.tightEnds, slideSide: known.slideSide };
});
