import { ok } from '../../base/index.ts';
import { isObject } from '../refusal.ts';
import { eachOf } from './eachOf.ts';
import type { Migration, RawPlaybook } from './migration.ts';

/**
 * Version 2 says more of what version 1 left out. What a file of version 1 never said is filled in with "not said": a shell
 * needs no zone, nobody counts the rushers, two pressures run together, no finding is waived, a rusher neither peels nor
 * waits, "the back" is the first one, a look has no motion and no known runs or protections. A base man who rushed still
 * rushes. Anything that is not of the expected form is left as it is, an entry that version 1 did not have as well: the schema
 * judges it, and nothing is lost without a word.
 */
export const secondHalf: Migration = {
  from: 1,
  name: 'needs of a shell, rush counts, kinds of call, waivers, peel and order, motion and known plays',
  up: (playbook) =>
    ok({
      checkOuts: [],
      dictionary: [],
      ...playbook,
      fronts: eachOf(playbook['fronts'], (front) => ({ ...front, roles: eachOf(front['roles'], baseSaysPass) })),
      coverages: eachOf(playbook['coverages'], (shell) => ({
        needs: [],
        ...shell,
        tells: eachOf(shell['tells'], told),
      })),
      looks: eachOf(playbook['looks'], (look) => ({ motion: null, runs: [], protections: [], ...look })),
      pressures: eachOf(playbook['pressures'], (pressure) => ({
        rushers: null,
        ...pressure,
        tells: eachOf(pressure['tells'], told),
      })),
      calls: eachOf(playbook['calls'], callOf),
    }),
};

function baseSaysPass(role: RawPlaybook): RawPlaybook {
  const base = role['base'];
  if (!isObject(base) || typeof base['rushes'] !== 'boolean' || 'pass' in base) return role;
  const { rushes, ...rest } = base;
  return { ...role, base: { ...rest, pass: rushes ? 'rush' : 'none' } };
}

function told(tell: RawPlaybook): RawPlaybook {
  return { ...tell, cases: eachOf(tell['cases'], (each) => ({ ...each, job: jobOf(each['job']) })) };
}

function jobOf(job: unknown): unknown {
  if (!isObject(job)) return job;
  if (job['kind'] === 'rush' || job['kind'] === 'contain') return { peel: false, order: null, ...job };
  const receiver = job['receiver'];
  if (!isObject(receiver) || receiver['kind'] !== 'back') return job;
  return { ...job, receiver: { number: 1, ...receiver } };
}

function callOf(call: RawPlaybook): RawPlaybook {
  const { kind, ...rest } = call;
  // Version 1 had this one kind; anything else is refused where it stands.
  return kind === 'together' && !('combination' in call)
    ? { combination: { kind }, rushers: null, waivers: [], ...rest }
    : { rushers: null, waivers: [], ...call };
}
