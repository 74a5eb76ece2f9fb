/**
 * What the shells are built from. A shell tells only men whom the rush leaves free, so each names more men than it needs.
 */
import {
  asCoverageId,
  type Coverage,
  type GapRef,
  type LookTest,
  type RuleJob,
  type RunSupport,
  type Who,
  type Zone,
  type ZoneNeed,
} from '../../engine/index.ts';
import {
  aBack,
  awayMan,
  callMan,
  cover,
  drop,
  edgeGap,
  gap,
  ifFree,
  otherSide,
  receivers,
  slotOn,
  THE_BACK,
  tightEnd,
  tightEndAndWing,
  trips,
  type CallSide,
} from '../words.ts';

export interface Told {
  readonly who: Who;
  readonly cases: readonly { readonly when: readonly LookTest[]; readonly job: RuleJob }[];
}
export const tells = (who: Who, job: RuleJob): Told => ({ who, cases: [{ when: [], job }] });
export const tellsBy = (who: Who, ...cases: (readonly [readonly LookTest[], RuleJob])[]): Told => ({
  who,
  cases: cases.map(([when, job]) => ({ when, job })),
});

export const shell = (id: string, name: string, needs: readonly ZoneNeed[], ...told: Told[]): Coverage => ({
  id: asCoverageId(id),
  name,
  needs,
  tells: told,
});

/** The man of a group on one side of the call. */
export const manOf = (group: string, side: CallSide): Who => (side === 'call' ? callMan(group) : awayMan(group));

/** A zone the shell cannot do without, and who takes it when nobody is told to. */
export const need = (zone: Zone, side: ZoneNeed['side'], ...takers: Who[]): ZoneNeed => ({
  when: [],
  zone,
  side,
  takers,
});
/** The same where only some looks need it. */
export const needIf = (when: readonly LookTest[], zone: Zone, side: ZoneNeed['side'], ...takers: Who[]): ZoneNeed => ({
  when,
  zone,
  side,
  takers,
});

/** Force and no gap: where somebody inside has the edge gap, so that nobody has a gap and a slot receiver at once. */
export const FORCE: RunSupport<GapRef> = ifFree('force');
/** The backer who forces is never sent inside a tight end: he would leave the edge he sets. */
export const edgeForce = (side: CallSide) => ifFree('force', edgeGap(side), gap('D', side));
/** A man who forces, and where nobody else has them the gaps from the outside in. */
export const force = (side: CallSide) => ifFree('force', edgeGap(side), gap('D', side), gap('C', side));
/** The backer on the edge when somebody else forces. */
export const edge = (side: CallSide) => ifFree(null, edgeGap(side), gap('D', side), gap('C', side));
/** An inside backer: his own side from the inside out, then back across the ball. */
export const inside = (side: CallSide) => {
  const other = otherSide(side);
  return ifFree(
    'cutback',
    gap('A', side),
    gap('B', side),
    gap('C', side),
    gap('D', side),
    gap('A', other),
    gap('B', other),
    gap('C', other),
  );
};

/** The man in the seam who forces: no gap where a slot is his, else the edge. */
export const seam = (who: Who, side: CallSide, run: RunSupport<GapRef>): Told =>
  tellsBy(
    who,
    [slotOn(side), drop('seam', side, FORCE)],
    [[trips(side), aBack], drop('seam', side, FORCE)],
    [[], drop('seam', side, run)],
  );

/** The deep middle. Against a tight end a gap can be one too many: he has the alley there, on his own side first. */
export const post = (side: CallSide): Told => {
  const alley = (on: CallSide) => [gap('D', on), edgeGap(on), gap('C', on)];
  const other = otherSide(side);
  return tellsBy(
    manOf('safeties', side),
    [[tightEnd(side)], drop('middle', 'middle', ifFree('alley', ...alley(side), ...alley(other)))],
    [[tightEnd(other)], drop('middle', 'middle', ifFree('alley', ...alley(other)))],
    [[], drop('middle', 'middle')],
  );
};

/** A corner with nobody outside a wing stands close and sets the edge when nobody else does. */
export const deepCorner = (side: CallSide, zone: 'third' | 'quarter' | 'half'): Told =>
  tellsBy(
    manOf('corners', side),
    [
      [tightEndAndWing(side), receivers(side, 'at-most', 2)],
      drop(zone, side, ifFree(null, edgeGap(side), gap('D', side))),
    ],
    [[], drop(zone, side)],
  );
export const THIRDS = [deepCorner('call', 'third'), deepCorner('away', 'third')];

/** An inside backer in the hook. */
export const hook = (side: CallSide): Told =>
  tells(manOf('inside-backers', side), drop('hook', 'middle', inside(side)));

export const theBack = (side: CallSide) => cover(THE_BACK, inside(side));
