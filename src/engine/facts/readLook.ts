import { compareBy, remembered } from '../../base/index.ts';
import type { Look, LookFacts, OffencePlayer, PlayerId } from '../types/index.ts';
import type { Place, RuleLevel } from '../vocabulary.ts';
import { fieldAt } from './field.ts';
import { readFaults } from './legality.ts';
import { readBacks, readReceivers } from './receivers.ts';
import { personnelCode, readStrengths } from './strengths.ts';
import { edgeLetter, gapsOfSide, isOnLine, readSurface } from './surface.ts';

/**
 * Stage 1: everything the rules ask of an offensive look at one ball spot. The order of the players never matters.
 * A look without a snapper is a broken promise (the document refuses it), hence an exception.
 * All calls ask it of the same few looks, so it is remembered.
 */
export const readLook = remembered(readOnce);

function readOnce(look: Look, level: RuleLevel, spot: Place): LookFacts {
  const players = [...look.players].sort(
    compareBy<OffencePlayer>(
      (player) => player.x,
      (player) => player.id,
    ),
  );
  const snapper = players.find((player) => player.kind === 'snapper');
  if (snapper === undefined) throw new Error(`Look ${look.id} has no snapper`);
  const marks = fieldAt(level, spot);
  const surface = { left: readSurface(players, snapper, 'left'), right: readSurface(players, snapper, 'right') };
  const receivers = readReceivers(players, surface);
  const backs = readBacks(players, surface);
  return {
    players: new Map<PlayerId, OffencePlayer>(players.map((player) => [player.id, player])),
    personnel: personnelCode(players),
    onLine: players.filter(isOnLine).map((player) => player.id),
    surface,
    gaps: [...gapsOfSide(surface.left, 'left')].reverse().concat(gapsOfSide(surface.right, 'right')),
    receivers,
    backs,
    passer: players.find((player) => player.kind === 'passer')?.id ?? null,
    strengths: readStrengths(surface, receivers, backs, marks),
    faults: readFaults(players, level, marks),
    sidelines: { left: marks.leftSideline, right: marks.rightSideline },
    edge: { left: edgeLetter(surface.left), right: edgeLetter(surface.right) },
  };
}
