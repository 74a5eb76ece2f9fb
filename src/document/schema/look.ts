import * as z from 'zod/mini';
import { asPlayerId, OFFENCE_KINDS, PROTECTIONS, RUN_CONCEPTS, SIDES } from '../../engine/index.ts';
import { ELEVEN, MAX_ENTRIES } from '../limits.ts';
import { lookId } from './defence.ts';
import { flag, id, letter, list, name, yards } from './leaves.ts';

const playerId = id(asPlayerId).check(z.meta({ id: 'PlayerId' }));

const player = z
  .strictObject({
    id: playerId,
    letter,
    kind: z.enum(OFFENCE_KINDS),
    x: yards,
    y: yards,
  })
  .check(z.meta({ id: 'OffencePlayer' }));

const motion = z.strictObject({ player: playerId, to: z.strictObject({ x: yards, y: yards }) });

const knownRun = z.strictObject({ concept: z.enum(RUN_CONCEPTS), side: z.enum(SIDES), passOption: flag });

const knownProtection = z.strictObject({
  protection: z.enum(PROTECTIONS.map(({ id: name }) => name)),
  slideSide: z.enum(SIDES),
});

/** One formation of the offence as drawn, sound or not: eleven players. */
export const look = z
  .strictObject({
    id: lookId,
    name,
    players: list(player, ELEVEN, ELEVEN),
    motion: z.nullable(motion),
    runs: list(knownRun, 0, MAX_ENTRIES.runs),
    protections: list(knownProtection, 0, MAX_ENTRIES.protections),
  })
  .check(z.meta({ id: 'Look' }));
