import type { Front, Room, Side, ToldBasis, ZoneNeed } from '../../../src/engine/index.ts';
import type { LookName } from './looks.ts';
import type { SpotName } from './spots.ts';

/**
 * A published pressure as a table: one row a man, who stands where, what he is told, and what must come out of it. Sides are
 * told from the call, so every table is run to the left and to the right.
 */

/** Where a job stands in the engine's words: the rush on one of its three bases, the shell, or the front's base job. */
export type Part = ToldBasis | 'shell' | 'base';

export interface Line {
  readonly man: string;
  /** Where he stands; two where the source allows two, tried one after the other. */
  readonly stands: readonly SpotName[];
  readonly part: Part;
  /** In the notation of rules; empty for the base job. */
  readonly job: string;
  readonly gap: string;
  /**
   * How he plays a block on the edge, his support, both, or the two-gap of his base. The engine tells a man who drops his gap
   * and not how he takes such a block: where a source has a dropping end spill or box, the table has `-` and says so.
   */
  readonly run: string;
  readonly pass: string;
}

/** man, stands, part, job, and what must come out: run gap, run role, pass. `-` is none. */
export function line(
  man: string,
  stands: SpotName | readonly SpotName[],
  part: Part,
  job: string,
  gap: string,
  run: string,
  pass: string,
): Line {
  return { man, stands: typeof stands === 'string' ? [stands] : stands, part, job, gap, run, pass };
}

/** One man of a front. `named` is how a pressure speaks to him. */
export interface FrontMan {
  readonly id: string;
  readonly named: string;
  readonly room: Room;
  readonly group: string;
  readonly side: 'call' | 'away' | 'field' | 'boundary' | 'middle';
  readonly base: Front['roles'][number]['base'];
}

export interface Row {
  /** Our own number for it, and what it does. */
  readonly id: string;
  readonly does: string;
  readonly source: string;
  readonly status: string;
  readonly front: readonly FrontMan[];
  readonly look: LookName;
  /** What picks the call side. */
  readonly goes: 'fixed' | 'field' | 'boundary' | 'receivers';
  /** Where the back may stand beside the passer for the table to hold. */
  readonly back: readonly ('call' | 'away')[];
  readonly men: readonly Line[];
  /** Men who come up before the snap, and how deep they then are. */
  readonly creeps: Readonly<Record<string, number>>;
  readonly needs: readonly ZoneNeed[];
  readonly counts: { readonly rush: number; readonly under: number; readonly deep: number; readonly man: number };
  readonly contain: string;
  readonly force: string;
  readonly cover: Readonly<Record<string, string>>;
  /** Everything the checks say, in their order: rule and whom it names; a list for each alignment. */
  readonly finds: readonly (readonly string[])[];
}

/** One way to run a row: the call to a side, the back to one side, and which of two alignments is used. */
export interface Way {
  readonly call: Side;
  readonly back: 'call' | 'away';
  readonly stand: 0 | 1;
}

export const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');

export function waysOf(row: Row): readonly Way[] {
  const stands = row.men.some((man) => man.stands.length > 1) ? ([0, 1] as const) : ([0] as const);
  return (['right', 'left'] as const).flatMap((call) =>
    row.back.flatMap((back) => stands.map((stand) => ({ call, back, stand }))),
  );
}

export const wayText = (way: Way): string => `call ${way.call}, back to the ${way.back}, alignment ${way.stand + 1}`;
