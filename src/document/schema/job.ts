import * as z from 'zod/mini';
import { EDGE_PLAYS, MANNERS, PASSINGS, SUPPORTS, ZONES } from '../../engine/index.ts';
import { MAX_ENTRIES } from '../limits.ts';
import { gapRef, groupId, receiverNumber, roleId, SIDE_REFS, sideRef } from './defence.ts';
import { flag, list, yards } from './leaves.ts';

/** A defender as a rule names him. */
export const who = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('role'), role: roleId }),
    z.strictObject({ kind: z.literal('group'), group: groupId, side: z.enum(['call', 'away']) }),
  ])
  .check(z.meta({ id: 'Who' }));

const track = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('straight') }),
  z.strictObject({ kind: z.literal('past'), how: z.enum(PASSINGS), neighbour: who }),
]);

const support = z.nullable(z.enum(SUPPORTS));

const runSupport = z.strictObject({ fits: list(gapRef, 0, MAX_ENTRIES.gaps), firm: flag, support });

/** One gap, or the two of a man who two-gaps. */
const jobGaps = list(gapRef, 1, 2);

const rushing = {
  gaps: jobGaps,
  manner: z.enum(MANNERS),
  track,
  edge: z.nullable(z.enum(EDGE_PLAYS)),
  peel: flag,
  order: z.nullable(z.strictObject({ turn: z.enum(['first', 'second']), neighbour: who })),
};

/** A job as a rule tells it. */
export const ruleJob = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('rush'), ...rushing }),
    z.strictObject({ kind: z.literal('contain'), ...rushing }),
    z.strictObject({ kind: z.literal('fit'), gaps: jobGaps, manner: z.enum(MANNERS), support }),
    z.strictObject({
      kind: z.literal('drop'),
      zone: z.enum(ZONES),
      side: z.enum([...SIDE_REFS, 'middle']),
      run: runSupport,
    }),
    z.strictObject({
      kind: z.literal('man'),
      receiver: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('number'), side: sideRef, number: receiverNumber }),
        z.strictObject({ kind: z.literal('back'), number: receiverNumber }),
      ]),
      run: runSupport,
    }),
    z.strictObject({ kind: z.literal('spy'), run: runSupport }),
  ])
  .check(z.meta({ id: 'Job' }));

/** What a man does before the snap because of his job. */
export const preSnap = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('heels'), of: who }),
    z.strictObject({ kind: z.literal('depth'), depth: yards }),
  ])
  .check(z.meta({ id: 'PreSnap' }));
