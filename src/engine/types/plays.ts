import type { Because } from './because.ts';
import type { RoleId } from './ids.ts';
import type { KnownProtection, KnownRun } from './look.ts';
import type { ProtectionPicture } from './protections.ts';
import type { FloatingGap, OptionDuties, RunPicture } from './runs.ts';

/** A gap that is not there before the snap, and who fits it: somebody without a gap of his own, or nobody. */
export interface FloatingFit {
  readonly floating: FloatingGap;
  readonly by: RoleId | null;
}

/** One run the look is known for against this call, by the textbook rule: who is where the ball goes. */
export type RunAnswer =
  /** The look lacks somebody the run needs. */
  | { readonly kind: 'not-here'; readonly known: KnownRun; readonly because: Because }
  | {
      readonly kind: 'answered';
      readonly known: KnownRun;
      readonly picture: RunPicture;
      /** Owners of the point of attack, and of the gap the ball winds back to. */
      readonly atAim: readonly RoleId[];
      readonly atCutback: readonly RoleId[];
      /** Whom nobody blocks, and whom the passer reads. */
      readonly unblocked: RoleId | null;
      readonly read: RoleId | null;
      readonly floating: readonly FloatingFit[];
      /** Men near the box without a gap, less the floating gaps; below zero somebody must beat two. */
      readonly spare: number;
      /** For an option: the duties under the reaction of the read man that leaves the fewest phases open. */
      readonly option: OptionDuties | null;
    };

/** One protection the look is known for against this rush, by rule. */
export type ProtectionAnswer =
  | { readonly kind: 'not-here'; readonly known: KnownProtection; readonly because: Because }
  | { readonly kind: 'answered'; readonly known: KnownProtection; readonly picture: ProtectionPicture };
