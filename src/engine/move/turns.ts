import type { PlayedMan, RoleId } from '../types/index.ts';
import { errandOf, orderOf } from './errands.ts';

/** One man goes after another, and whether that is told in so many words. */
export interface Turn {
  readonly role: RoleId;
  readonly first: RoleId;
  readonly told: boolean;
}

/**
 * Who goes after whom: by the one who is told to go second, or by the one who is told to go first; for two of whom nothing is
 * told by a track, because under a man is before him, and over him or off his hip is behind him.
 */
export function turnsOf(assignments: readonly PlayedMan[]): readonly Turn[] {
  const told: Turn[] = [];
  const tracks: Turn[] = [];
  for (const assignment of assignments) {
    const job = errandOf(assignment);
    if (job?.kind !== 'rush' && job?.kind !== 'contain') continue;
    const role = assignment.aligned.role.id;
    const order = orderOf(job);
    if (order?.turn === 'first') told.push({ role: order.neighbour, first: role, told: true });
    if (order?.turn === 'second') told.push({ role, first: order.neighbour, told: true });
    if (job.track.kind !== 'past') continue;
    const { neighbour, how } = job.track;
    const goesFirst = how === 'under';
    tracks.push({ role: goesFirst ? neighbour : role, first: goesFirst ? role : neighbour, told: false });
  }
  return [...told, ...tracks.filter((track) => !told.some((turn) => ofTheSameTwo(track, turn)))];
}

function ofTheSameTwo(a: Turn, b: Turn): boolean {
  return (a.role === b.role && a.first === b.first) || (a.role === b.first && a.first === b.role);
}

/** Whether one man goes after another, by what these two are told or by way of others between them. */
export function goesAfter(turns: readonly Turn[], role: RoleId, first: RoleId): boolean {
  const seen = new Set<RoleId>();
  const waiting: RoleId[] = [role];
  for (let man = waiting.pop(); man !== undefined; man = waiting.pop()) {
    if (seen.has(man)) continue;
    seen.add(man);
    const before = turns.filter((turn) => turn.role === man).map((turn) => turn.first);
    if (before.includes(first)) return true;
    waiting.push(...before);
  }
  return false;
}
