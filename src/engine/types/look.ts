import type { OffenceKind } from '../vocabulary.ts';
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

/** An offensive formation as drawn. It may be unsound; `readLook` says in what. */
export interface Look {
  readonly id: LookId;
  readonly name: string;
  readonly players: readonly OffencePlayer[];
}
