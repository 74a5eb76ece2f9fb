import { compareBy } from '../../../base/index.ts';
import { because, datum } from '../../because.ts';
import type { LookFacts, PassOff, RoleId } from '../../types/index.ts';
import { GAP_LETTERS } from '../../vocabulary.ts';
import { gapIndex, type RowBody } from '../row.ts';
import type { PickUp } from './pickUp.ts';
import type { Duty } from './plan.ts';
import type { Rusher } from './types.ts';

/** A duty of a body of the surface; backs pass nobody on. */
type LineDuty = Duty & { readonly body: RowBody };

function isLineDuty(duty: Duty): duty is LineDuty {
  return duty.body !== null;
}

/**
 * Who could take an unblocked man if the line passes men on: an idle lineman beside whose body he comes; else a lineman beside
 * him whose own man went into the gap of an idle slider, and is handed to that slider. Everybody is used once, the free men
 * from the inside out. What counts as beside (one of the two gaps at a blocker's shoulders) is ours.
 */
export function passOffs(
  duties: readonly Duty[],
  pickUp: PickUp,
  rushers: readonly Rusher[],
  facts: LookFacts,
): readonly PassOff[] {
  const line = duties.filter(isLineDuty);
  const idle = new Set(pickUp.idle.map((each) => each.blocker));
  const ends = new Map<RoleId, number>(rushers.map((rusher) => [rusher.role, gapIndex(rusher.endGap, facts)]));
  const free = [...pickUp.unblocked].sort(
    compareBy(
      (each) => GAP_LETTERS.indexOf(each.endGap.letter),
      (each) => each.rusher,
    ),
  );
  const used = new Set<string>();
  const found: PassOff[] = [];
  for (const { rusher } of free) {
    const beside = line.filter((duty) => !used.has(duty.blocker) && isBeside(duty.body, ends.get(rusher)));
    const taker = beside.find((duty) => idle.has(duty.blocker));
    const handing = beside.flatMap((duty) => handOver(duty, line, ends, idle, used))[0];
    const passOff = taker === undefined ? handing?.(rusher) : direct(rusher, taker);
    if (passOff === undefined) continue;
    used.add(passOff.by);
    if (passOff.hands !== null) used.add(passOff.hands.to);
    found.push(passOff);
  }
  return found;
}

function isBeside(body: RowBody, gap: number | undefined): boolean {
  return gap === body.leftGap || gap === body.rightGap;
}

function direct(rusher: RoleId, taker: LineDuty): PassOff {
  const data = { by: datum.player(taker.blocker), rusher: datum.role(rusher) };
  return {
    rusher,
    by: taker.blocker,
    hands: null,
    because: because('{by} has nobody and could take {rusher}, who comes beside him', data),
  };
}

/** A man blocker who could give his man to the idle slider of the gap that man went into. */
function handOver(
  duty: LineDuty,
  line: readonly LineDuty[],
  ends: ReadonlyMap<RoleId, number>,
  idle: ReadonlySet<string>,
  used: ReadonlySet<string>,
): readonly ((rusher: RoleId) => PassOff)[] {
  if (duty.kind !== 'man') return [];
  const gap = ends.get(duty.man);
  const slider = line.find(
    (each) =>
      each.kind === 'gap' &&
      idle.has(each.blocker) &&
      !used.has(each.blocker) &&
      gap !== undefined &&
      each.gaps.includes(gap),
  );
  if (slider === undefined) return [];
  const hands = { rusher: duty.man, to: slider.blocker };
  return [
    (rusher) => ({
      rusher,
      by: duty.blocker,
      hands,
      because: because('{by} could take {rusher} if he passes {man} on to {to}', {
        by: datum.player(duty.blocker),
        rusher: datum.role(rusher),
        man: datum.role(hands.rusher),
        to: datum.player(hands.to),
      }),
    }),
  ];
}
