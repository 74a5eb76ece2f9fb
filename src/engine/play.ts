import { assign, type Assigned } from './complete/columns.ts';
import { ownGaps, type Man } from './complete/ownGaps.ts';
import { answerReceivers, countPass } from './cover/answers.ts';
import { fillZones } from './cover/fillZones.ts';
import { answerProtection, answerRun } from './offence/answers.ts';
import type { Coverage, Played, Settled } from './types/index.ts';
import type { Side } from './vocabulary.ts';

/** Where a call is played: nothing of the call itself. */
export type Ground = Pick<Played, 'setup' | 'facts'>;

/** The shell that is played, and the side it is told from; no side: its rule ends in a tie. */
export interface Shell {
  readonly coverage: Coverage;
  readonly side: Side | null;
}

/**
 * Stage 6: how the eleven play, from where they stand and what stands for each, told in their order. It may look at who told a
 * man something only to say so; the type of the men sees to that.
 */
export function play<Known extends Settled>(
  told: readonly Man<Known>[],
  { setup, facts }: Ground,
  shell: Shell,
  lean: Side,
): Played & { readonly assignments: readonly Assigned<Known>[] } {
  const { men, zones } = fillZones(told, shell.coverage, shell.side, facts);
  const gaps = ownGaps(men, facts, lean);
  const assignments = men.map((man) => assign(man, gaps));
  const defence = { facts, assignments, gaps };
  return {
    setup,
    facts,
    lean,
    assignments,
    gaps,
    zones,
    answers: answerReceivers(assignments, facts, lean),
    passCount: countPass(assignments),
    runs: setup.look.runs.map((known) => answerRun(known, defence)),
    protections: setup.look.protections.map((known) => answerProtection(known, defence)),
  };
}
