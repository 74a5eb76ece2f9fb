import type { Front, Pressure, Role, Who } from '../engine/index.ts';

/** Whether a pressure is written for a front: everybody its rush speaks to, and everybody it sends them past, is in it. */
export function fitsFront({ tells }: Pressure, front: Front, roles: readonly Role[]): boolean {
  const there = new Set(front.roles.map(({ role }) => role));
  const groups = new Set(roles.filter(({ id }) => there.has(id)).map(({ group }) => group));
  const isThere = (who: Who): boolean => (who.kind === 'role' ? there.has(who.role) : groups.has(who.group));
  return tells.every(({ who, cases }) => isThere(who) && cases.flatMap(({ job }) => neighboursOf(job)).every(isThere));
}

/** Whom a job names besides the man who is told it. */
function neighboursOf(job: Pressure['tells'][number]['cases'][number]['job']): readonly Who[] {
  if (job.kind !== 'rush' && job.kind !== 'contain') return [];
  const past = job.track.kind === 'past' ? [job.track.neighbour] : [];
  return job.order === null ? past : [...past, job.order.neighbour];
}
