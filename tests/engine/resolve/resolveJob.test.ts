import { describe, expect, it } from 'vitest';
import { resolveJob, type JobContext } from '../../../src/engine/resolve/resolveJob.ts';
import { asRoleId, fact, printJob, type RoleId, type Who } from '../../../src/engine/index.ts';
import type { Found } from '../../../src/engine/resolve/names.ts';
import { factsOf, LOOKS, ruleJob, say } from '../book.ts';

/** Against a tight end on the right, called right, told to a man on the left; the only mate anybody finds is the call-side end. */
const context: JobContext = {
  facts: factsOf(LOOKS['11 tight end']),
  callSide: 'right',
  mySide: 'left',
  findMan: (who: Who): Found<RoleId> =>
    who.kind === 'group' && who.side === 'call'
      ? { ok: true, value: asRoleId('RE') }
      : { ok: false, problem: fact('he is not in this front') },
};

const ROWS: readonly (readonly [rule: string, job: string])[] = [
  ['rush B-call', 'rush B-right'],
  ['rush A-call+A-away two-gap', 'rush A-right+A-left two-gap'],
  ['rush B-call slant inside-hip:end-call spill', 'rush B-right slant inside-hip:RE spill'],
  ['rush edge-away box', 'rush C-left box'],
  ['contain C-call loop over:end-call box', 'contain C-right loop over:RE box'],
  ['contain edge-call', 'contain D-right'],
  ['fit B-mine', 'fit B-left'],
  ['fit outside:end-call slant force', 'fit D-right slant force'],
  ['drop seam-call', 'drop seam-right'],
  ['drop seam-away may edge-away force', 'drop seam-left may C-left force'],
  ['drop middle', 'drop middle'],
  ['drop hook-mine own B-mine cutback', 'drop hook-left own B-left cutback'],
  ['man #2-call', 'man Y'],
  ['man back own A-mine fold', 'man T own A-left fold'],
  ['spy', 'spy'],
  ['spy may A-call+A-away alley', 'spy may A-right+A-left alley'],
];

/** A list of gaps a man may fit is told once for all looks: those that are not there are left out. */
const MAY: readonly (readonly [rule: string, job: string])[] = [
  ['drop seam-away may D-away+C-away', 'drop seam-left may C-left'],
  ['drop seam-away may D-away', 'drop seam-left'],
  ['man #1-away may outside:end-away force', 'man X force'],
  ['spy may E-call+D-call', 'spy may D-right'],
];

const UNRESOLVED: readonly (readonly [rule: string, reason: string])[] = [
  ['rush D-away', 'there is no D gap on the left'],
  ['rush A-call+E-call two-gap', 'there is no E gap on the right'],
  ['rush A-call under:end-away', 'he is not in this front'],
  ['contain outside:end-away', 'there is no attached tight end on the left'],
  ['contain C-call over:@N', 'he is not in this front'],
  ['fit D-mine', 'there is no D gap on the left'],
  ['drop seam-call own E-call', 'there is no E gap on the right'],
  ['man #3-call', 'there is no receiver number 3 on the right'],
  ['man #2-call own E-call', 'there is no E gap on the right'],
  ['spy own D-away', 'there is no D gap on the left'],
];

describe('a job in this look', () => {
  it.each(ROWS)('%s: %s', (rule, expected) => {
    const job = resolveJob(ruleJob(rule), context);
    expect(job.ok ? printJob(job.value) : say(job.problem)).toBe(expected);
  });

  it.each(MAY)('%s: %s', (rule, expected) => {
    const job = resolveJob(ruleJob(rule), context);
    expect(job.ok ? printJob(job.value) : say(job.problem)).toBe(expected);
  });

  it.each(UNRESOLVED)('%s: %s', (rule, reason) => {
    const job = resolveJob(ruleJob(rule), context);
    expect(job.ok ? printJob(job.value) : say(job.problem)).toBe(reason);
  });

  it.each([
    ['drop seam-mine', 'he stands in the middle and has no side of his own'],
    ['man #1-other', 'he stands in the middle and has no side of his own'],
    ['rush A-mine', 'he stands in the middle and has no side of his own'],
  ])('%s, told to a man in the middle: %s', (rule, reason) => {
    const job = resolveJob(ruleJob(rule), { ...context, mySide: null });
    expect(job.ok ? printJob(job.value) : say(job.problem)).toBe(reason);
  });
});
