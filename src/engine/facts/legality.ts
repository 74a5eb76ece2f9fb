import { because, datum, fact } from '../because.ts';
import type { RuleLevel } from '../vocabulary.ts';
import type { LookFault, OffencePlayer } from '../types/index.ts';
import type { FieldMarks } from './field.ts';
import { BACK_DEPTH, depthOf, isOnLine } from './surface.ts';

/** A man of the offence stays on his side of the neutral zone, half the ball's 11 in; only the snapper may be in it (NFL 3-18). */
const NEUTRAL_ZONE_HALF = 0.155;

/**
 * What makes a formation illegal as drawn, at a rule level.
 * Sources: NFHS 2-14-1 and 7-2-5-a (2019: five on the line, no more than four backs), 7-2-5-b (five numbered 50-79);
 * NCAA 7-1-4-a (no more than four backs, five numbered 50-79); NFL 7-5-1 (seven on the line). The man between line and
 * backfield: NFHS 2-25-2, NCAA 2-27-4 ("no man's land", the one player under the snapper excepted).
 */
export function readFaults(
  players: readonly OffencePlayer[],
  level: RuleLevel,
  marks: FieldMarks,
): readonly LookFault[] {
  const faults: LookFault[] = [];
  const onLine = players.filter(isOnLine);
  const backs = players.filter((player) => !isOnLine(player));
  const linemen = players.filter((player) => player.kind === 'lineman' || player.kind === 'snapper');
  const ids = (list: readonly OffencePlayer[]): LookFault['players'] => list.map((player) => player.id);
  const add = (reason: LookFault['because'], who: readonly OffencePlayer[]): void => {
    faults.push({ because: reason, players: ids(who) });
  };

  if (level === 'professional') {
    if (onLine.length < 7)
      add(because('{n} men are on the line, seven are needed', { n: datum.number(onLine.length) }), backs);
  } else if (backs.length > 4) {
    add(because('{n} men are off the line, no more than four may be', { n: datum.number(backs.length) }), backs);
  }
  if (linemen.length < 5) {
    add(because('{n} linemen are in, five are needed', { n: datum.number(linemen.length) }), linemen);
  }
  const stray = linemen.filter((player) => !isOnLine(player));
  if (stray.length > 0) add(fact('a lineman is off the line'), stray);
  const between = backs.filter((player) => depthOf(player) < BACK_DEPTH && player.kind !== 'passer');
  for (const player of between) {
    add(because('{who} is neither on the line nor a back', { who: datum.player(player.id) }), [player]);
  }
  const limit = ({ kind }: OffencePlayer): number => (kind === 'snapper' ? -NEUTRAL_ZONE_HALF : NEUTRAL_ZONE_HALF);
  for (const player of players.filter((each) => depthOf(each) < limit(each))) {
    add(because('{who} stands in the neutral zone', { who: datum.player(player.id) }), [player]);
  }
  for (const player of players.filter((each) => each.x < marks.leftSideline || each.x > marks.rightSideline)) {
    add(because('{who} is off the field', { who: datum.player(player.id) }), [player]);
  }
  return faults;
}
