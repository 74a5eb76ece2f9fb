import { asCallId, asLookId, type Call, type Coverage, type Front, type Look, type Pressure } from '../engine/index.ts';
import { twoUnder } from './coverages/fourDeep.ts';
import { free, nobodyFree } from './coverages/man.ts';
import { byRole, rolled } from './coverages/threeDeep.ts';
import { bear, even, odd } from './fronts/fronts.ts';
import { heavy } from './looks/heavy.ts';
import { spread } from './looks/spread.ts';
import {
  AWAY_INSIDE,
  awayEndOut,
  CALL_EDGE,
  CALL_INSIDE,
  callEndInside,
  offTheCallEdge,
  pressure,
  TO_TIGHT_END,
} from './pressures/menu.ts';
import type { StartFront } from './roles.ts';
import { gap, on, receivers, rush, tell, tellBy, trips } from './words.ts';

/** The front itself, without anybody standing by hand. */
export const frontOf: Readonly<Record<StartFront, Front>> = {
  odd: { ...odd, byHand: [] },
  even: { ...even, byHand: [] },
  bear: { ...bear, byHand: [] },
};

/** A dozen formations every defence has to line up against, from no tight end to two and two backs. */
const STANDARD = [
  'tight-11',
  'doubles-10',
  'trips-10',
  'trips-11',
  'wing-11',
  'bunch-10',
  'empty-11',
  'ace-12',
  'split-20',
  'i-21',
  'offset-21',
  'i-22',
].map(asLookId);

/** The standard looks, in that order. */
export const startLooks: readonly Look[] = STANDARD.flatMap((id) =>
  [...spread, ...heavy].filter((look) => look.id === id),
);

/** Three deep, man with one free, quarters, man with nobody free; three deep in another way where one outside backer plays. */
export function startCoverages(front: StartFront): readonly Coverage[] {
  return [front === 'even' ? byRole : rolled, free, twoUnder, nobodyFree];
}

/** What a front is played with: the shells behind its pressures, and behind two at once (null: that of the first). */
interface Shells {
  readonly base: Coverage;
  readonly edge: Coverage;
  readonly inside: Coverage;
  readonly both: Coverage | null;
}

/** With four on the line one outside backer is left, so the safeties force behind him; five on the line leave no zone. */
const SHELLS: Readonly<Record<StartFront, Shells>> = {
  odd: { base: rolled, edge: rolled, inside: rolled, both: null },
  even: { base: byRole, edge: twoUnder, inside: free, both: nobodyFree },
  bear: { base: nobodyFree, edge: nobodyFree, inside: nobodyFree, both: null },
};

/** Where the call goes, and what is not said: tags, day of camp, how many come. */
const PLAIN = { callSide: TO_TIGHT_END, tags: [], day: null, rushers: null } as const;

/** Nobody is told anything: the front as it stands. */
const base = (shell: Coverage): Pressure => pressure({ ...PLAIN, id: 'base', name: 'Base', coverage: shell.id });

/**
 * An outside backer off the edge. Of three or five on the line the end inside him goes in, the other one out; four stay in their
 * gaps, for the tackle has the one inside.
 */
const edge = (front: StartFront, shell: Coverage): Pressure =>
  pressure(
    { ...PLAIN, id: 'edge', name: 'Edge', coverage: shell.id },
    tell(CALL_EDGE, 'path', offTheCallEdge),
    ...(front === 'even' ? [] : [callEndInside, awayEndOut]),
  );

/** An inside backer through A; against three receivers he is under the third of them, and his mate comes instead. */
const inside = (shell: Coverage): Pressure =>
  pressure(
    { ...PLAIN, id: 'inside', name: 'Inside', coverage: shell.id },
    tellBy(CALL_INSIDE, on([receivers('call', 'at-most', 2)], 'path', rush(gap('A', 'call'), 'penetrate'))),
    tellBy(AWAY_INSIDE, on([trips('call')], 'path', rush(gap('A', 'away'), 'penetrate'))),
  );

/** The plain pressures of a front. */
export function startPressures(front: StartFront): readonly Pressure[] {
  const shells = SHELLS[front];
  return [base(shells.base), edge(front, shells.edge), inside(shells.inside)];
}

/** The front's plain call, each pressure alone, and the two at once. */
export function startCalls(front: StartFront): readonly Call[] {
  const shells = SHELLS[front];
  const call = (name: string, first: Pressure, second: Pressure | null, shell: Coverage | null): Call => ({
    id: asCallId(name.toLowerCase().replaceAll(' ', '-')),
    name,
    combination: { kind: 'together' },
    front: frontOf[front].id,
    first: first.id,
    second: second?.id ?? null,
    turn: 'own',
    coverage: shell?.id ?? null,
    waivers: [],
    rushers: null,
    tags: [],
    installDay: null,
  });
  return [
    call('Base', base(shells.base), null, null),
    call('Edge', edge(front, shells.edge), null, null),
    call('Inside', inside(shells.inside), null, null),
    call('Edge and inside', edge(front, shells.edge), inside(shells.inside), shells.both),
  ];
}
