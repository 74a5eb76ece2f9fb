import { compareBy } from '../../../base/index.ts';
import { because, datum } from '../../because.ts';
import type { PassOff, RoleId } from '../../types/index.ts';
import type { RowBody } from '../row.ts';
import type { Comer } from './comers.ts';
import type { PickUp } from './pickUp.ts';
import type { Duty } from './plan.ts';

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
export function passOffs(duties: readonly Duty[], pickUp: PickUp, comers: readonly Comer[]): readonly PassOff[] {
  if (pickUp.unblocked.length === 0) return [];
  const line = duties.filter(isLineDuty);
  const isFree = ({ rusher }: Comer): boolean => pickUp.unblocked.some((each) => each.rusher === rusher.role);
  const isIdle = ({ blocker }: Duty): boolean => pickUp.idle.some((each) => each.blocker === blocker);
  const found: PassOff[] = [];
  const isUsed = ({ blocker }: Duty): boolean => found.some(({ by, hands }) => by === blocker || hands?.to === blocker);
  for (const { rusher, end } of comers.filter(isFree).sort(insideOut)) {
    const beside = line.filter((duty) => isBeside(duty.body, end) && !isUsed(duty));
    const taker = beside.find(isIdle);
    const sliders = line.filter((duty) => duty.kind === 'gap' && isIdle(duty) && !isUsed(duty));
    const passOff = taker === undefined ? handOver(rusher.role, beside, sliders, comers) : direct(rusher.role, taker);
    if (passOff !== null) found.push(passOff);
  }
  return found;
}

const insideOut = compareBy(
  ({ outward }: Comer) => outward,
  ({ rusher }: Comer) => rusher.role,
);

function isBeside(body: RowBody, gap: number): boolean {
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
  rusher: RoleId,
  beside: readonly LineDuty[],
  idleSliders: readonly LineDuty[],
  comers: readonly Comer[],
): PassOff | null {
  for (const duty of beside) {
    const man = duty.kind === 'man' ? comers.find((each) => each.rusher.role === duty.man) : undefined;
    if (man === undefined) continue;
    const slider = idleSliders.find((each) => each.kind === 'gap' && each.gaps.includes(man.end));
    if (slider === undefined) continue;
    const hands = { rusher: man.rusher.role, to: slider.blocker };
    const data = {
      by: datum.player(duty.blocker),
      rusher: datum.role(rusher),
      man: datum.role(hands.rusher),
      to: datum.player(hands.to),
    };
    const why = because('{by} could take {rusher} if he passes {man} on to {to}', data);
    return { rusher, by: duty.blocker, hands, because: why };
  }
  return null;
}
