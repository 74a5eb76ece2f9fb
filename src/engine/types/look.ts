import type { OffenceKind, Side } from '../vocabulary.ts';
import type { ProtectionId, RunConcept } from '../offenceVocabulary.ts';
import type { LookId, PlayerId } from './ids.ts';

/** Yards. Origin at the ball; x grows to the defence's right, y into the defensive backfield. */
export type Yards = number;

/** A point on the field, in yards from the ball. */
export interface Point {
  readonly x: Yards;
  readonly y: Yards;
}

/** One of the eleven of the offence, where he stands at the snap. His y is negative: he is on his side of the ball. */
export interface OffencePlayer extends Point {
  readonly id: PlayerId;
  /** The letter in his circle. */
  readonly letter: string;
  readonly kind: OffenceKind;
}

/** A man in motion: where he is when the ball is snapped. */
export interface Motion {
  readonly player: PlayerId;
  readonly to: Point;
}

/** A run the offence is known for in this look. `side` is the defence's side it goes to. */
export interface KnownRun {
  readonly concept: RunConcept;
  readonly side: Side;
  /** A pass is read off the same snap, so that one defender can be put in two minds. */
  readonly passOption: boolean;
}

/** A protection the offence is known for in this look, and the defence's side its line turns to. */
export interface KnownProtection {
  readonly protection: ProtectionId;
  readonly slideSide: Side;
}

/** An offensive formation as drawn, set before any motion. It may be unsound; `readLook` says in what. */
export interface Look {
  readonly id: LookId;
  readonly name: string;
  readonly players: readonly OffencePlayer[];
  readonly motion: Motion | null;
  readonly runs: readonly KnownRun[];
  readonly protections: readonly KnownProtection[];
}
