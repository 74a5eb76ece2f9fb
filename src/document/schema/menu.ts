import * as z from 'zod/mini';
import {
  asCallId,
  asCoverageId,
  asPressureId,
  FORMATION_CLASSES,
  TOLD_BASES,
  TURNS,
  ZONES,
} from '../../engine/index.ts';
import { ELEVEN, LAST_CAMP_DAY, MAX_ENTRIES } from '../limits.ts';
import { frontId, lookId, lookTests, SIDE_REFS, sideSteps } from './defence.ts';
import { preSnap, ruleJob, who } from './job.ts';
import { count, evidence, id, list, name, note, ruleId, tag } from './leaves.ts';

const coverageId = id(asCoverageId).check(z.meta({ id: 'CoverageId' }));
const callId = id(asCallId).check(z.meta({ id: 'CallId' }));
const pressureId = id(asPressureId).check(z.meta({ id: 'PressureId' }));

const coverageTell = z.strictObject({
  who,
  cases: list(z.strictObject({ when: lookTests, job: ruleJob }), 1, MAX_ENTRIES.cases),
});

const zoneNeed = z.strictObject({
  when: lookTests,
  zone: z.enum(ZONES),
  side: z.enum([...SIDE_REFS, 'middle']),
  takers: list(who, 0, MAX_ENTRIES.takers),
});

/** How many rush; null when the coach does not say. */
const rushers = z.nullable(count(0, ELEVEN));

/** The day of camp it is put in, 1 the first; null when the coach does not say. */
const installDay = z.nullable(count(1, LAST_CAMP_DAY));

/** One shell. */
export const coverage = z
  .strictObject({
    id: coverageId,
    name,
    needs: list(zoneNeed, 0, MAX_ENTRIES.needs),
    tells: list(coverageTell, 0, MAX_ENTRIES.tells),
  })
  .check(z.meta({ id: 'Coverage' }));

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
    rushers,
    notAgainst: list(lookId, 0, MAX_ENTRIES.looks),
    installDay,
  })
  .check(z.meta({ id: 'Pressure' }));

const combination = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('together') }),
  z.strictObject({ kind: z.literal('either-or'), key: lookTests }),
]);

const waiver = z
  .strictObject({ rule: ruleId, look: lookId, evidence, reason: note })
  .check(z.meta({ id: 'Waiver', description: 'A finding the coach lives with; it lapses when its evidence changes.' }));

/** One call: a pressure, two that run at once, or one of two by a key. */
export const call = z
  .strictObject({
    id: callId,
    name,
    combination,
    front: frontId,
    first: pressureId,
    second: z.nullable(pressureId),
    turn: z.enum(TURNS),
    coverage: z.nullable(coverageId),
    rushers,
    waivers: list(waiver, 0, MAX_ENTRIES.waivers),
    tags: list(tag, 0, MAX_ENTRIES.tags),
    installDay,
  })
  .check(z.meta({ id: 'Call' }));

const checkOutAction = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('run') }),
  z.strictObject({ kind: z.literal('turn') }),
  z.strictObject({ kind: z.literal('swap') }),
  z.strictObject({ kind: z.literal('coverage'), coverage: coverageId }),
  z.strictObject({ kind: z.literal('check-to'), call: callId }),
]);

/** What one call becomes against classes of formations. */
export const checkOut = z
  .strictObject({
    call: callId,
    rows: list(
      z.strictObject({ formation: z.enum(FORMATION_CLASSES), action: checkOutAction }),
      0,
      MAX_ENTRIES.checkOuts,
    ),
  })
  .check(z.meta({ id: 'CheckOut', description: 'What a call becomes against classes of formations.' }));
