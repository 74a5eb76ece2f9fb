import type { Look, LookId } from '../engine/index.ts';

/** The looks of each of several that share a playbook. */
export type LookShares = readonly (readonly LookId[])[];

/**
 * Shares looks out among `count`, evenly. What cases share is remembered look by look, so whoever has had a look keeps it, also
 * when looks come, go or change places, unless he would then have more than his part. A look that is new goes to who has the
 * fewest; so where nothing was shared out before, the one at `index` goes to `index % count`.
 */
export function shareLooks(looks: readonly Look[], count: number, before: LookShares): LookShares {
  const shares = Array.from({ length: count }, (): LookId[] => []);
  const most = Math.ceil(looks.length / count);
  const left = looks.filter(({ id }) => {
    const own = shares[before.findIndex((share) => share.includes(id))];
    if (own === undefined || own.length >= most) return true;
    own.push(id);
    return false;
  });
  for (const { id } of left) {
    const fewest = Math.min(...shares.map((share) => share.length));
    shares.find((share) => share.length === fewest)?.push(id);
  }
  return shares;
}
