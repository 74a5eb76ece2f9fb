import * as z from 'zod';
import { asPlayerId, OFFENCE_KINDS } from '../../engine/index.ts';
import { ELEVEN } from '../limits.ts';
import { lookId } from './defence.ts';
import { id, letter, list, name, yards } from './leaves.ts';

const player = z
  .strictObject({
    id: id(asPlayerId).meta({ id: 'PlayerId' }),
    letter,
    kind: z.enum(OFFENCE_KINDS),
    x: yards,
    y: yards,
  })
  .meta({ id: 'OffencePlayer' });

/** One formation of the offence as drawn, sound or not: eleven players. */
export const look = z.strictObject({ id: lookId, name, players: list(player, ELEVEN, ELEVEN) }).meta({ id: 'Look' });
