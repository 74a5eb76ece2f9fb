import { mirrorSetup, type Coverage, type RuleJob, type Setup, type TellCase } from '../../../src/engine/index.ts';
import type { Edit, JobChange, Told } from '../../../src/engine/edits/index.ts';

/** An edit flipped left to right, by way of the setup's own mirror: cases, jobs and spots are flipped where they stand in one. */
export function mirrorEdit(edit: Edit, setup: Setup): Edit {
  switch (edit.kind) {
    case 'turn':
    case 'swap':
    case 'rushers':
    case 'untell':
    case 'leave-out':
      return edit;
    case 'coverage':
      return { ...edit, coverage: mirrorSetup({ ...setup, coverage: edit.coverage }).coverage };
    case 'tie-break': {
      const { first } = mirrorSetup({ ...setup, first: { ...setup.first, callSide: [edit.step] } });
      const [step = edit.step] = first.callSide;
      return { ...edit, step };
    }
    case 'stand':
      return { ...edit, x: edit.x === 0 ? 0 : -edit.x };
    case 'duty':
      return { ...edit, job: mirrorJob(edit.job, setup) };
    case 'job':
      return { ...edit, to: mirrorChange(edit.to, setup) };
    case 'surface':
      return { ...edit, told: edit.told === null ? null : mirrorTold(edit.told, setup) };
  }
}

function mirrorCases(cases: readonly TellCase[], setup: Setup): readonly TellCase[] {
  const who = { kind: 'group', group: setup.roles[0]?.group ?? fail(), side: 'call' } as const;
  return mirrorSetup({ ...setup, first: { ...setup.first, tells: [{ who, cases }] } }).first.tells[0]?.cases ?? fail();
}

function mirrorTold(told: Told, setup: Setup): Told {
  const [flipped = fail()] = mirrorCases([{ when: [], ...told }], setup);
  const { basis, job, preSnap } = flipped;
  return { basis, job, preSnap };
}

function mirrorJob(job: RuleJob, setup: Setup): RuleJob {
  return mirrorTold({ basis: 'path', job, preSnap: null }, setup).job;
}

function mirrorChange(to: JobChange, setup: Setup): JobChange {
  return to.kind === 'other'
    ? { ...to, cases: mirrorCases(to.cases, setup) }
    : { ...to, told: mirrorTold(to.told, setup) };
}

/** A library flipped with its setup. */
export function mirrorShells(shells: readonly Coverage[], setup: Setup): readonly Coverage[] {
  return shells.map((coverage) => mirrorSetup({ ...setup, coverage }).coverage);
}

function fail(): never {
  throw new Error('A mirror lost something');
}
