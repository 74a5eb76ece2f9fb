import type { Because, Blanks, DataFor, Datum, Gap, Job, PlayerId, RoleId, Who } from './types/index.ts';
import type { GapLetter, Side, Zone } from './vocabulary.ts';

/** A fact in words: a sentence with blanks, the data for every blank, and the facts it follows from. */
export function because<Template extends string>(
  template: Template,
  data: DataFor<Template>,
  ...reasons: readonly Because[]
): Because {
  return { template, data, because: reasons };
}

/** A fact without blanks. */
export function fact<Template extends string>(
  template: Blanks<Template> extends never ? Template : never,
  ...reasons: readonly Because[]
): Because {
  return { template, data: {}, because: reasons };
}

/** Constructors of the values a sentence can hold. */
export const datum = {
  role: (role: RoleId): Datum => ({ kind: 'role', role }),
  roles: (roles: readonly RoleId[]): Datum => ({ kind: 'roles', roles }),
  gap: (gap: Gap): Datum => ({ kind: 'gap', gap }),
  gaps: (gaps: readonly Gap[]): Datum => ({ kind: 'gaps', gaps }),
  letter: (letter: GapLetter): Datum => ({ kind: 'letter', letter }),
  side: (side: Side): Datum => ({ kind: 'side', side }),
  player: (player: PlayerId): Datum => ({ kind: 'player', player }),
  players: (players: readonly PlayerId[]): Datum => ({ kind: 'players', players }),
  job: (job: Job): Datum => ({ kind: 'job', job }),
  zone: (zone: Zone, side: Side | 'middle'): Datum => ({ kind: 'zone', zone, side }),
  who: (who: Who): Datum => ({ kind: 'who', who }),
  pressure: (which: 'first' | 'second'): Datum => ({ kind: 'pressure', which }),
  number: (value: number): Datum => ({ kind: 'number', value }),
  word: (word: string): Datum => ({ kind: 'word', word }),
} as const;
