import { ok } from '../../base/index.ts';
import { isObject } from '../refusal.ts';
import type { Migration, RawPlaybook } from './migration.ts';

/**
 * Version 2 says more of what version 1 left out. What a file of version 1 never said is filled in with "not said": a shell
 * needs no zone, nobody counts the rushers, two pressures run together, no finding is waived, a rusher neither peels nor
 * waits, "the back" is the first one, a look has no motion and no known runs or protections. A base man who rushed still
 * rushes. Anything that is not of the expected form is left as it is: the schema refuses it with its path.
 */
export const secondHalf: Migration = {
  from: 1,
  name: 'needs of a shell, rush counts, kinds of call, waivers, peel and order, motion and known plays',
  up: (playbook) =>
    ok({
      ...playbook,
      fronts: eachOf(playbook['fronts'], (front) => ({ ...front, roles: eachOf(front['roles'], baseSaysPass) })),
      coverages: eachOf(playbook['coverages'], (shell) => ({
        ...shell,
        needs: [],
        tells: eachOf(shell['tells'], told),
      })),
      looks: eachOf(playbook['looks'], (look) => ({ ...look, motion: null, runs: [], protections: [] })),
      pressures: eachOf(playbook['pressures'], (pressure) => ({
        ...pressure,
        rushers: null,
        tells: eachOf(pressure['tells'], told),
      })),
      calls: eachOf(playbook['calls'], callOf),
      checkOuts: [],
      dictionary: [],
    }),
};

/** Applies a step to every object of a list; what is not such a list stays what it is. */
function eachOf(list: unknown, step: (entry: RawPlaybook) => RawPlaybook): unknown {
  return Array.isArray(list) ? list.map((entry: unknown) => (isObject(entry) ? step(entry) : entry)) : list;
}

function baseSaysPass(role: RawPlaybook): RawPlaybook {
  const base = role['base'];
  if (!isObject(base) || typeof base['rushes'] !== 'boolean') return role;
  const { rushes, ...rest } = base;
  return { ...role, base: { ...rest, pass: rushes ? 'rush' : 'none' } };
}

function told(tell: RawPlaybook): RawPlaybook {
  return { ...tell, cases: eachOf(tell['cases'], (each) => ({ ...each, job: jobOf(each['job']) })) };
}

function jobOf(job: unknown): unknown {
  if (!isObject(job)) return job;
  if (job['kind'] === 'rush' || job['kind'] === 'contain') return { ...job, peel: false, order: null };
  const receiver = job['receiver'];
  if (!isObject(receiver) || receiver['kind'] !== 'back') return job;
  return { ...job, receiver: { ...receiver, number: 1 } };
}

function callOf(call: RawPlaybook): RawPlaybook {
  const { kind, ...rest } = call;
  return { ...rest, combination: { kind }, rushers: null, waivers: [] };
}
