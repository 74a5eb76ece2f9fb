import { ok, remembered, type Result } from '../../../base/index.ts';
import type { Because, FloatingGap, KnownRun, RoleId, RunPicture } from '../../types/index.ts';
import type { Stand } from '../stand.ts';
import { fittersOf, type Fitter } from './fits.ts';
import { optionOf, type Option } from './optionDuties.ts';
import { findMan, readMan } from './readMan.ts';
import { runConcept } from './runConcept.ts';

/** A run in a look, and what of it depends on where the defenders stand but not on what they are told. */
export interface RunHere {
  readonly picture: RunPicture;
  /** The gaps that open at the snap; those of the passer and the pitch come later. */
  readonly floating: readonly FloatingGap[];
  /** Who could fit them, the nearest first. */
  readonly fitters: readonly Fitter[];
  readonly option: Option | null;
  readonly read: RoleId | null;
  readonly unblocked: RoleId | null;
}

/** A run the look is known for against men who stand like this. Refused when the look lacks somebody the run needs. */
export const runHere = remembered((stand: Stand, known: KnownRun): Result<RunHere, Because> => {
  const result = runConcept(stand.facts, known.concept, known.side);
  if (!result.ok) return result;
  const picture = result.value;
  const unblocked = picture.leftUnblocked?.man ?? null;
  const floating = picture.floating.filter((each) => each.kind !== 'passer' && each.kind !== 'pitch');
  return ok({
    picture,
    floating,
    fitters: fittersOf(stand, floating),
    option: optionOf(picture),
    read: readMan(picture, stand.men),
    unblocked: unblocked === null ? null : findMan(unblocked, stand.men),
  });
});
