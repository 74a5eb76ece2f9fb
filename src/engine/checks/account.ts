import type { FilledZone, Played, PlayerId } from '../types/index.ts';
import type { Side } from '../vocabulary.ts';
import { turnsBack } from './edges.ts';
import { rushes, whoDoes, type Known } from './outcomes.ts';

/** As much of how a call is played as a check of what is told may ask. */
export interface Account {
  /** Zones the shell needs and nobody drops to. */
  readonly emptyZones: readonly Pick<FilledZone, 'zone' | 'side'>[];
  /** Receivers nobody answers. */
  readonly openReceivers: readonly PlayerId[];
  /** Whether somebody turns the ball back in on a side, or may. */
  readonly turnedBack: Readonly<Record<Side, boolean>>;
  /** Who comes for sure, and who may. */
  readonly rushers: Known;
  /** How many come as they stand for now. */
  readonly rush: number;
}

/** The account of how a call is played. */
export function accountOf(played: Played): Account {
  const isTurned = (side: Side): boolean => {
    const { sure, maybe } = turnsBack(played, side);
    return sure.length + maybe.length > 0;
  };
  return {
    emptyZones: played.zones.filter((zone) => zone.by === null).map(({ zone, side }) => ({ zone, side })),
    openReceivers: played.answers.filter((answer) => answer.by === null).map(({ player }) => player),
    turnedBack: { left: isTurned('left'), right: isTurned('right') },
    rushers: whoDoes(played, rushes),
    rush: played.passCount.rush,
  };
}
