/** A job changed from one kind to another is always whole: whatever is chosen in the form can be kept. */
import { describe, expect, it } from 'vitest';
import { checkPlaybook } from '../../src/document/index.ts';
import { MANNERS, type RuleJob } from '../../src/engine/index.ts';
import { FIRST_CASE, jobAs, JOB_KINDS, withManner } from '../../src/app/desk/pressures/jobForms.ts';
import { newPressure, nextIds, tellMan } from '../../src/store/index.ts';
import { demo, firstOf, valueOf } from '../store/demo.ts';

const playbook = demo();
const id = nextIds.pressure(playbook);
const blank = valueOf(newPressure(playbook, { id, name: 'Reed', coverage: null }));
const who = { kind: 'role', role: firstOf(playbook.roles).id } as const;
const jobs = playbook.pressures.flatMap(({ tells }) => tells.flatMap(({ cases }) => cases.map(({ job }) => job)));
const opens = (job: RuleJob): boolean =>
  checkPlaybook(valueOf(tellMan(blank, { pressure: id, who, told: { ...FIRST_CASE, job } }))).ok;

describe.each(JOB_KINDS)('a job made into: %s', (kind) => {
  it('is whole, whatever it was', () => {
    for (const job of jobs) {
      const made = jobAs(kind, job);
      expect(made.kind).toBe(kind);
      expect(opens(made)).toBe(true);
    }
  });

  it('is the very same when it was that already', () => {
    for (const job of jobs.filter((each) => each.kind === kind)) expect(jobAs(kind, job)).toBe(job);
  });
});

describe.each(MANNERS)('a gap played otherwise: %s', (manner) => {
  it('has two gaps for a man who two-gaps, and one for anybody else', () => {
    for (const job of jobs) {
      if (!('gaps' in job)) continue;
      const made = withManner(job, manner);
      expect(made.gaps).toHaveLength(manner === 'two-gap' ? 2 : 1);
      expect(made.gaps[0]).toEqual(job.gaps[0]);
      expect(opens(made)).toBe(true);
    }
  });
});

it('keeps the gap from rush to fit and back, and the run gap of a man in coverage', () => {
  const rush = FIRST_CASE.job;
  expect(jobAs('fit', rush)).toMatchObject({ gaps: 'gaps' in rush ? rush.gaps : [] });
  const gap = { kind: 'letter', side: 'mine', letter: 'C' } as const;
  const drop: RuleJob = {
    kind: 'drop',
    zone: 'flat',
    side: 'mine',
    run: { fits: [gap], firm: true, support: 'force' },
  };
  expect(jobAs('fit', drop)).toMatchObject({ gaps: [gap], support: 'force' });
  expect(jobAs('man', drop)).toMatchObject({ run: drop.run });
});
