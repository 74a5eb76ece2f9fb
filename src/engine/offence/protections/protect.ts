import { ok } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import type { ProtectionSchemeName } from '../../offenceVocabulary.ts';
import type { ProtectionPicture } from '../../types/index.ts';
import { crewOf } from './crew.ts';
import { hotRule } from './hot.ts';
import { mismatches } from './mismatches.ts';
import { passOffs } from './passOff.ts';
import { pickUp } from './pickUp.ts';
import { plan } from './plan.ts';
import type { ProtectionInput, ProtectionResult } from './types.ts';

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
export function protect(input: ProtectionInput): ProtectionResult {
  const { facts, scheme, defenders, rushers } = input;
  const strayed = rushers.find((rusher) => defenders.every((man) => man.role !== rusher.role));
  if (strayed !== undefined) throw new Error(`Rusher ${strayed.role} is not among the defenders`);
  const crew = crewOf(facts, scheme);
  if (!crew.ok) return crew;
  const duties = plan({ facts, scheme, crew: crew.value, defenders });
  const met = pickUp(duties, rushers, facts);
  return ok({
    ...met,
    passOff: passOffs(duties, met, rushers, facts),
    mismatches: mismatches(duties, met.blocks, rushers, defenders, facts),
    hot: hotRule(met, duties, scheme),
    because: summary(input, duties.length, met),
  });
}

function summary(
  { scheme, rushers }: ProtectionInput,
  blockers: number,
  met: Pick<ProtectionPicture, 'blocks' | 'unblocked' | 'idle'>,
): ProtectionPicture['because'] {
  const data = {
    scheme: datum.word(SCHEME_WORDS[scheme.scheme]),
    side: datum.side(scheme.slideSide),
    blockers: datum.number(blockers),
    rushers: datum.number(rushers.length),
    free: datum.number(met.unblocked.length),
  };
  const reasons = [...met.blocks, ...met.unblocked, ...met.idle].map((each) => each.because);
  return because(
    'by rule, {scheme} to the {side}: {blockers} blockers, {rushers} rushers, {free} free',
    data,
    ...(reasons.length > 0 ? reasons : [fact('nobody comes')]),
  );
}
