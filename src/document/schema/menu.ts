import * as z from 'zod';
import { asCallId, asCoverageId, asPressureId, TOLD_BASES, TURNS } from '../../engine/index.ts';
import { MAX_ENTRIES } from '../limits.ts';
import { frontId, lookId, lookTests, sideSteps } from './defence.ts';
import { preSnap, ruleJob, who } from './job.ts';
import { id, list, name, tag } from './leaves.ts';

const coverageId = id(asCoverageId).meta({ id: 'CoverageId' });
const pressureId = id(asPressureId).meta({ id: 'PressureId' });

const coverageTell = z.strictObject({
  who,
  cases: list(z.strictObject({ when: lookTests, job: ruleJob }), 1, MAX_ENTRIES.cases),
});

/** One shell. */
export const coverage = z
  .strictObject({ id: coverageId, name, tells: list(coverageTell, 0, MAX_ENTRIES.tells) })
  .meta({ id: 'Coverage' });

const tellCase = z.strictObject({
  when: lookTests,
  basis: z.enum(TOLD_BASES),
  job: ruleJob,
  preSnap: z.nullable(preSnap),
});

const tell = z.strictObject({ who, cases: list(tellCase, 1, MAX_ENTRIES.cases) });

/** One pressure. */
export const pressure = z
  .strictObject({
    id: pressureId,
    name,
    tags: list(tag, 0, MAX_ENTRIES.tags),
    callSide: sideSteps,
    tells: list(tell, 0, MAX_ENTRIES.tells),
    coverage: coverageId,
    notAgainst: list(lookId, 0, MAX_ENTRIES.looks),
  })
  .meta({ id: 'Pressure' });

/** One call: a pressure, or two that run at once. */
export const call = z
  .strictObject({
    id: id(asCallId).meta({ id: 'CallId' }),
    name,
    kind: z.literal('together'),
    front: frontId,
    first: pressureId,
    second: z.nullable(pressureId),
    turn: z.enum(TURNS),
    coverage: z.nullable(coverageId),
  })
  .meta({ id: 'Call' });
