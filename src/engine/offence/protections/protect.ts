import { ok } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import type { ProtectionSchemeName } from '../../offenceVocabulary.ts';
import type { ProtectionPicture } from '../../types/index.ts';
import type { Stand } from '../stand.ts';
import { comersOf, type Comer } from './comers.ts';
import { hotRule } from './hot.ts';
import { mismatches } from './mismatches.ts';
import { passOffs } from './passOff.ts';
import { pickUp } from './pickUp.ts';
import { plan } from './plan.ts';
import type { ProtectionInput, ProtectionResult, ProtectionScheme } from './types.ts';

const SCHEME_WORDS: Readonly<Record<ProtectionSchemeName, string>> = {
  'half-slide': 'half slide',
  'full-slide': 'full slide',
  man: 'man protection',
};

/**
 * One protection against one rush, by the textbook rule: who blocks whom, who comes free told strictly, who stands idle, who
 * could be passed on, which blocks are bad, and where the passer must throw hot. Defenders are known only by where they stand
 * and the gap they end in. Refused when the look lacks a back or tight end the protection keeps in; a rusher who is not among
 * the defenders, or comes to a gap this look has not, is a broken promise.
 * Sources: beside each scheme in `plan`, and "It Really Isn't That Simple", Blitzology, 2020 (the strict rule).
 */
export function protect({ facts, scheme, defenders, rushers }: ProtectionInput): ProtectionResult {
  const strayed = rushers.find((rusher) => defenders.every((man) => man.role !== rusher.role));
  if (strayed !== undefined) throw new Error(`Rusher ${strayed.role} is not among the defenders`);
  return meet({ facts, men: defenders }, scheme, comersOf(rushers, facts));
}

/** The same for a stand that is asked about again and again, and for those of it who come. */
export function meet(stand: Stand, scheme: ProtectionScheme, comers: readonly Comer[]): ProtectionResult {
  const planned = plan(stand, scheme);
  if (!planned.ok) return planned;
  const { duties } = planned.value;
  const met = pickUp(planned.value, comers);
  return ok({
    blocks: met.blocks,
    unblocked: met.unblocked,
    idle: met.idle,
    passOff: passOffs(duties, met, comers),
    mismatches: mismatches(duties, met.blocks, comers),
    hot: hotRule(met, duties, scheme),
    because: summary(scheme, duties.length, comers.length, met),
  });
}

function summary(
  scheme: ProtectionScheme,
  blockers: number,
  rushers: number,
  met: Pick<ProtectionPicture, 'blocks' | 'unblocked' | 'idle'>,
): ProtectionPicture['because'] {
  const data = {
    scheme: datum.word(SCHEME_WORDS[scheme.scheme]),
    side: datum.side(scheme.slideSide),
    blockers: datum.number(blockers),
    rushers: datum.number(rushers),
    free: datum.number(met.unblocked.length),
  };
  const reasons = [...met.blocks, ...met.unblocked, ...met.idle].map((each) => each.because);
  return because(
    'by rule, {scheme} to the {side}: {blockers} blockers, {rushers} rushers, {free} free',
    data,
    ...(reasons.length > 0 ? reasons : [fact('nobody comes')]),
  );
}
