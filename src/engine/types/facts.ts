import type { GapLetter, Place, Side } from '../vocabulary.ts';
import type { Because } from './because.ts';
import type { PlayerId } from './ids.ts';
import type { Gap } from './job.ts';
import type { OffencePlayer, Yards } from './look.ts';

/** One body of the surface. `index` counts outward: snapper 0, guard 1, tackle 2, then end, wing, …. */
export interface SurfaceBody {
  readonly player: PlayerId;
  readonly index: number;
  readonly x: Yards;
  /** On the line, or a wing just behind it. */
  readonly how: 'line' | 'wing';
}

/** A run gap of this look: between two bodies, the outermost one of a side open to the sideline. */
export interface GapFact {
  readonly gap: Gap;
  readonly x: Yards;
  readonly inside: PlayerId;
  /** Null: this is the edge. */
  readonly outside: PlayerId | null;
}

/** A receiver outside the backfield, numbered from the sideline inward on his side. */
export interface ReceiverFact {
  readonly player: PlayerId;
  readonly side: Side;
  readonly number: number;
  /** Part of the surface (tight end, wing) or split from it. */
  readonly attached: boolean;
  /** False: he stands on the line but is not the end man of it, so he may not catch a forward pass. */
  readonly eligible: boolean;
}

/** A back in the backfield, and the side he is offset to. */
export interface BackFact {
  readonly player: PlayerId;
  readonly place: Place;
}

/** A strength of the formation, or that it has none. */
export interface StrengthFact {
  readonly side: Side | 'even';
  readonly because: Because;
}

/** One thing that makes a formation illegal as drawn. */
export interface LookFault {
  readonly because: Because;
  readonly players: readonly PlayerId[];
}

/** Everything stage 1 reads from a look at one ball spot. */
export interface LookFacts {
  readonly players: ReadonlyMap<PlayerId, OffencePlayer>;
  /** Backs, tight ends: "11", "22". */
  readonly personnel: string;
  readonly onLine: readonly PlayerId[];
  /** From the snapper outward on each side; index 0 (the snapper) is in both. */
  readonly surface: { readonly left: readonly SurfaceBody[]; readonly right: readonly SurfaceBody[] };
  /** Left to right across the line. */
  readonly gaps: readonly GapFact[];
  readonly receivers: readonly ReceiverFact[];
  readonly backs: readonly BackFact[];
  readonly passer: PlayerId | null;
  readonly strengths: {
    readonly 'tight-end': StrengthFact;
    readonly receivers: StrengthFact;
    readonly back: StrengthFact;
    readonly field: StrengthFact;
  };
  readonly faults: readonly LookFault[];
  /** The sidelines, in yards from the ball. */
  readonly sidelines: { readonly left: Yards; readonly right: Yards };
  /** The letter of the edge gap on each side. */
  readonly edge: { readonly left: GapLetter; readonly right: GapLetter };
}
