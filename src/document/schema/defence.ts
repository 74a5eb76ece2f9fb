import * as z from 'zod/mini';
import {
  asFrontId,
  asGroupId,
  asLookId,
  asRoleId,
  BODIES,
  COMPARISONS,
  DIRECTIONS,
  GAP_LETTERS,
  LEVERAGES,
  ROOMS,
  SIDES,
  STRENGTHS,
} from '../../engine/index.ts';
import { ELEVEN, MAX_ENTRIES } from '../limits.ts';
import { count, id, letter, list, name, yards } from './leaves.ts';

/** Ids of the parts that more than one part names. */
export const roleId = id(asRoleId).check(z.meta({ id: 'RoleId' }));
export const groupId = id(asGroupId).check(z.meta({ id: 'GroupId' }));
export const lookId = id(asLookId).check(z.meta({ id: 'LookId' }));
export const frontId = id(asFrontId).check(z.meta({ id: 'FrontId' }));

const side = z.enum(SIDES);
const letterOfGap = z.enum(GAP_LETTERS);
/** A body of the surface, and where a man stands on it. */
export const body = z.enum(BODIES);
export const leverage = z.enum(LEVERAGES);
const direction = z.enum(DIRECTIONS);
const comparison = z.enum(COMPARISONS);
const playerCount = count(0, ELEVEN);

/** A receiver's number as a rule tells it, counted from the sideline inward. */
export const receiverNumber = count(1, ELEVEN);

/** How a rule names a side: by the call, by the man himself, or plainly. */
export const SIDE_REFS = ['call', 'away', 'mine', 'other', ...SIDES] as const;

/** A side as a rule names it. */
export const sideRef = z.enum(SIDE_REFS);

/** A gap as a rule names it. */
export const gapRef = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('letter'), side: sideRef, letter: letterOfGap }),
    z.strictObject({ kind: z.literal('edge'), side: sideRef }),
    z.strictObject({ kind: z.literal('outside'), side: sideRef, body }),
  ])
  .check(z.meta({ id: 'GapRef' }));

const lookTest = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('bodies'), side: sideRef, compare: comparison, count: playerCount }),
    z.strictObject({ kind: z.literal('receivers'), side: sideRef, compare: comparison, count: playerCount }),
    z.strictObject({ kind: z.literal('backs'), compare: comparison, count: playerCount }),
    z.strictObject({ kind: z.literal('field'), side: sideRef }),
    z.strictObject({ kind: z.literal('back'), side: sideRef }),
  ])
  .check(z.meta({ id: 'LookTest' }));

/** Conditions of a rule; none means always. */
export const lookTests = list(lookTest, 0, MAX_ENTRIES.tests);

const sideStep = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('fixed'), side }),
    z.strictObject({ kind: z.literal('strength'), by: z.enum(STRENGTHS), toward: direction }),
    z.strictObject({ kind: z.literal('role'), role: roleId, toward: direction }),
  ])
  .check(z.meta({ id: 'SideStep' }));

/** The steps that pick a side, in order. */
export const sideSteps = list(sideStep, 1, MAX_ENTRIES.steps);

/** One defensive role. */
export const role = z
  .strictObject({
    id: roleId,
    letter,
    name,
    room: z.enum(ROOMS),
    group: groupId,
    side: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('middle') }),
      z.strictObject({ kind: z.literal('steps'), steps: sideSteps }),
    ]),
  })
  .check(z.meta({ id: 'Role' }));

const spot = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('technique'), on: body, leverage, depth: yards }),
    z.strictObject({ kind: z.literal('edge'), offset: yards, depth: yards }),
    z.strictObject({
      kind: z.literal('receiver'),
      number: receiverNumber,
      leverage: z.enum(['inside', 'head', 'outside']),
      depth: yards,
    }),
    z.strictObject({ kind: z.literal('apex'), number: receiverNumber, depth: yards }),
    z.strictObject({ kind: z.literal('ball'), offset: yards, depth: yards }),
  ])
  .check(z.meta({ id: 'Spot' }));

const frontRole = z
  .strictObject({
    role: roleId,
    rules: list(z.strictObject({ when: lookTests, spot }), 1, MAX_ENTRIES.rules),
    base: z.strictObject({
      gaps: list(gapRef, 0, MAX_ENTRIES.gaps),
      style: z.enum(['one-gap', 'two-gap']),
      pass: z.enum(['rush', 'contain', 'none']),
    }),
  })
  .check(z.meta({ id: 'FrontRole' }));

/** One front: eleven roles and the spots set by hand. */
export const front = z
  .strictObject({
    id: frontId,
    name,
    roles: list(frontRole, ELEVEN, ELEVEN),
    byHand: list(z.strictObject({ look: lookId, role: roleId, x: yards, y: yards }), 0, MAX_ENTRIES.byHand),
  })
  .check(z.meta({ id: 'Front' }));
