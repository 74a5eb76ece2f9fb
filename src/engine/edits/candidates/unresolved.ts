import { gather } from '../../../base/index.ts';
import { findWho } from '../../resolve/who.ts';
import type { RoleId } from '../../types/index.ts';
import type { Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';
import { halvesOf } from './callWide.ts';
import { edgeByName } from './gapsAndEdges.ts';
import { retold, settle } from './oneMan.ts';

/** For a man whose rule points at nobody here: name the edge instead of a letter, go straight, or settle it otherwise. */
export function unresolvedTelling(bench: Bench, role: RoleId): readonly Edit[] {
  const straight = retold(bench, role, (job) =>
    job.kind === 'rush' || job.kind === 'contain' ? { ...job, track: { kind: 'straight' }, order: null } : null,
  );
  return [...edgeByName(bench, role), ...straight, ...settle(bench, role)];
}

/** Pressures that speak to somebody who is not in this front no longer do. */
export function lostAddressees(bench: Bench): readonly Edit[] {
  return gather(halvesOf(bench), (which): readonly Edit[] => {
    const pressure = bench.analysis.setup[which];
    const side = bench.sideOf(which);
    if (pressure === null || side === null) return [];
    return pressure.tells
      .filter(({ who }) => !findWho(who, side, bench.aligned).ok)
      .map(({ who }) => ({ kind: 'untell', which, pressure: pressure.id, who }));
  });
}
