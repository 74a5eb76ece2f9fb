import { assertNever } from '../base/index.ts';
import { gapsEqual, type Analysis, type Assignment, type RoleId } from '../engine/index.ts';
import type { Asked, Spotted } from './types.ts';

/**
 * What is right for him, each of it alone: a man with two gaps may point at either. Empty: he cannot be asked. Nobody is asked
 * for a job that is in conflict, points at nobody, or is only his if nobody else has it: the coach could not mark that.
 */
export function rightAnswers(analysis: Analysis, role: RoleId, asked: Asked): readonly Spotted[] {
  const his = analysis.assignments.find(({ aligned }) => aligned.role.id === role);
  if (his === undefined || !isSure(his)) return [];
  return asked === 'run' ? his.run.gaps.map((gap): Spotted => ({ kind: 'gap', gap })) : againstPass(his);
}

function isSure({ combined }: Assignment): boolean {
  return combined.status !== 'conflict' && combined.status !== 'unresolved';
}

function againstPass({ pass }: Assignment): readonly Spotted[] {
  switch (pass.kind) {
    case 'zone':
      return [{ kind: 'zone', zone: pass.zone, side: pass.side }];
    case 'man':
      return [{ kind: 'receiver', player: pass.receiver }];
    case 'rush':
    case 'contain':
    case 'spy':
      return [{ kind: 'passer' }];
    case 'none':
      return [];
    default:
      return assertNever(pass);
  }
}

/** Everything he could point at, from left to right: the gaps of the look, or the zones of the shell, receivers and the passer. */
export function choices(analysis: Analysis, asked: Asked): readonly Spotted[] {
  const { facts, zones } = analysis;
  if (asked === 'run') {
    const fromLeft = [...analysis.gaps].sort((a, b) => a.x - b.x);
    return fromLeft.map(({ gap }): Spotted => ({ kind: 'gap', gap }));
  }
  const receivers = facts.receivers.filter(({ eligible }) => eligible).map(({ player }) => player);
  const backs = facts.backs.map(({ player }) => player);
  const dropped = analysis.assignments.flatMap(({ pass }) => (pass.kind === 'zone' ? [pass] : []));
  const needed = zones.map(({ zone, side }) => ({ zone, side }));
  return distinct([
    ...[...needed, ...dropped].map(({ zone, side }): Spotted => ({ kind: 'zone', zone, side })),
    ...[...receivers, ...backs].map((player): Spotted => ({ kind: 'receiver', player })),
    { kind: 'passer' },
  ]);
}

/** Whether two answers point at the same thing. */
export function sameSpotted(a: Spotted, b: Spotted): boolean {
  switch (a.kind) {
    case 'gap':
      return b.kind === 'gap' && gapsEqual(a.gap, b.gap);
    case 'zone':
      return b.kind === 'zone' && a.zone === b.zone && a.side === b.side;
    case 'receiver':
      return b.kind === 'receiver' && a.player === b.player;
    case 'passer':
      return b.kind === 'passer';
    default:
      return assertNever(a);
  }
}

/** Whether the answer is right. */
export function isRight(right: readonly Spotted[], answer: Spotted): boolean {
  return right.some((each) => sameSpotted(each, answer));
}

function distinct(all: readonly Spotted[]): readonly Spotted[] {
  return all.filter((each, index) => all.findIndex((other) => sameSpotted(each, other)) === index);
}
