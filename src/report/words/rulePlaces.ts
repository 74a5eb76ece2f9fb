import { assertNever } from '../../base/index.ts';
import type { GapRef, ReceiverRef, SideRef, Zone } from '../../engine/index.ts';
import { numberText } from './lists.ts';
import { BODY_WORDS, ZONE_WORDS, zoneName } from './names.ts';

/** A side as a rule names it: "call side", "my side", "left". */
export const SIDE_WORDS: Readonly<Record<SideRef, string>> = {
  call: 'call side',
  away: 'away side',
  mine: 'my side',
  other: 'other side',
  left: 'left',
  right: 'right',
};

/** A side as it stands in a condition: "on the call side". */
export const ON_SIDE: Readonly<Record<SideRef, string>> = {
  call: 'on the call side',
  away: 'on the away side',
  mine: 'on my side',
  other: 'on the other side',
  left: 'on the left',
  right: 'on the right',
};

/** A thing with the side a rule gives it, as a coach says it: "call-side B gap", "B gap on my side", "B gap left". */
function sided(thing: string, side: SideRef): string {
  switch (side) {
    case 'call':
    case 'away':
      return `${side}-side ${thing}`;
    case 'mine':
    case 'other':
      return `${thing} ${ON_SIDE[side]}`;
    case 'left':
    case 'right':
      return `${thing} ${side}`;
    default:
      return assertNever(side);
  }
}

/** "Call-side B gap", in the middle of a sentence. */
export function gapText(gap: GapRef): string {
  return sided(gapAlone(gap), gap.side);
}

/** "Call-side seam", "middle hook", in the middle of a sentence. */
export function zoneText(zone: Zone, side: SideRef | 'middle'): string {
  return side === 'middle' ? zoneName(zone, side) : sided(ZONE_WORDS[zone], side);
}

/** The gap without its side: "B gap". */
export function gapAlone(gap: GapRef): string {
  switch (gap.kind) {
    case 'letter':
      return `${gap.letter} gap`;
    case 'edge':
      return 'edge gap';
    case 'outside':
      return `gap outside the ${BODY_WORDS[gap.body]}`;
    default:
      return assertNever(gap);
  }
}

/** "Call-side #2", "the back". */
export function receiverText(receiver: ReceiverRef): string {
  if (receiver.kind === 'back') {
    return receiver.number === 1 ? 'the back' : `back ${numberText(receiver.number)} from his side`;
  }
  return sided(`#${numberText(receiver.number)}`, receiver.side);
}
