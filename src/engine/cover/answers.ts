import { compareBy, gather, remembered } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { matchSeekers, type Seeker } from '../complete/matchGaps.ts';
import type { Side, Zone } from '../vocabulary.ts';
import type { Answer, PlayedMan, LookFacts, PassCount, PlayerId, Point } from '../types/index.ts';

/** An eligible receiver, the passer not counted: by number and side, or a back by where he is offset. */
interface Target {
  readonly player: PlayerId;
  readonly as: Answer['as'];
  readonly place: Side | 'middle';
  readonly at: Point;
}

/** Deep zones; every other zone is an underneath one. */
const DEEP: readonly Zone[] = ['middle', 'third', 'half', 'quarter'];

/** A rank on a zone's list outweighs any distance; distances are whole thousandths of a yard. */
const RANK_COST = 100_000;

/** A rusher who leaves with the back is the last answer for him. */
const PEEL_RANK = 5;

/**
 * What a zone player takes, the most natural first; null: not his. Sources: seam on number two, hook to the third receiver
 * ("Fire Zone Techniques" after M. Archer, 2003; "3 Receiver Hook Drop", Blitzology, 30 Dec 2010); corner's third on number
 * one ("Fire Zone Coverage Series", Blitzology, 31 Dec 2010); quarter from memory. The post player helps and is never the
 * first man on anybody. Under halves nobody deep is on number two, so the hook player collisions and carries him, and the
 * flat player, who stays under and inside number one, has the back ("Blitz of the Week #9", Blitzology, 24 May 2010).
 */
function rankOf(zone: Zone, side: Side | 'middle', target: Target, underHalves: boolean): number | null {
  const mine = side === 'middle' || target.place === side;
  if (target.as.kind === 'back') return backRank(zone, side, mine || target.place === 'middle', underHalves);
  const number = target.as.number;
  switch (zone) {
    case 'third':
      return mine && number === 1 ? 0 : null;
    case 'half':
      return mine && number <= 2 ? (number - 1) * 2 : null;
    case 'quarter':
      return mine && number <= 2 ? 0 : null;
    case 'seam':
    case 'hot':
      return mine && number >= 2 ? number - 2 : null;
    case 'curl-flat':
      return mine ? (number === 2 ? (underHalves ? 1 : 0) : 2) : null;
    case 'flat':
      return mine && number <= 2 ? (underHalves ? 1 : 2 - number) : null;
    case 'hook':
    case 'hole':
      return number >= 3 ? (mine ? 0 : 1) : number === 2 && mine ? (underHalves ? 0 : 1) : null;
    case 'middle':
      return null;
  }
}

/**
 * The back is the third receiver of the side he releases to, so of two hooks he is first that of the side he stands on; a man
 * in the hole, over the ball, comes before both (from memory). Steps between whole ranks: more than any distance counts.
 */
function backRank(zone: Zone, side: Side | 'middle', near: boolean, underHalves: boolean): number | null {
  switch (zone) {
    case 'hole':
      return 0;
    case 'hook':
      return side === 'middle' ? 0 : near ? 0.25 : 0.5;
    case 'flat':
      return near ? 0 : null;
    case 'curl-flat':
      return near ? (underHalves ? 0 : 1) : 3;
    case 'seam':
    case 'hot':
      return near ? 1 : 3;
    case 'third':
    case 'half':
    case 'quarter':
    case 'middle':
      return null;
  }
}

const targetsOf = remembered((facts: LookFacts): readonly Target[] => {
  const at = (player: PlayerId): Point => facts.players.get(player) ?? { x: 0, y: 0 };
  const receivers = facts.receivers
    .filter((each) => each.eligible)
    .map((each): Target => ({
      player: each.player,
      as: { kind: 'number', side: each.side, number: each.number },
      place: each.side,
      at: at(each.player),
    }));
  const backs = facts.backs.map((back): Target => ({
    player: back.player,
    as: { kind: 'back' },
    place: back.place,
    at: at(back.player),
  }));
  return [...receivers, ...backs];
});

/** The same, the most urgent first: from the outside in, the leaning side first, the backs last. */
const inOrder = remembered((facts: LookFacts, lean: Side): readonly Target[] =>
  targetsOf(facts).toSorted(
    compareBy(
      (target) => (target.as.kind === 'back' ? 9 : target.as.number),
      (target) => (target.place === lean ? 0 : 1),
      (target) => target.player,
    ),
  ),
);

/**
 * Stage 6 for receivers: every eligible receiver with the man who answers him first. Man to man comes before zones, a zone
 * takes the receiver it is taught for, and what is left over is proved by the set of men who could reach it.
 */
export function answerReceivers(assignments: readonly PlayedMan[], facts: LookFacts, lean: Side): readonly Answer[] {
  const targets = targetsOf(facts);
  const byMan = new Map<PlayerId, PlayedMan>();
  for (const man of assignments) {
    if (man.pass.kind === 'man' && !byMan.has(man.pass.receiver)) byMan.set(man.pass.receiver, man);
  }
  const open = inOrder(facts, lean).filter((target) => !byMan.has(target.player));
  const men = assignments
    .filter((man) => man.pass.kind === 'zone' || peels(man))
    .toSorted(
      compareBy(
        (man) => Math.round(Math.abs(man.aligned.x) * 1000),
        (man) => (man.aligned.place === lean ? 0 : 1),
        (man) => man.aligned.y,
        (man) => man.aligned.role.id,
      ),
    );
  const underHalves = men.some(({ pass }) => pass.kind === 'zone' && pass.zone === 'half');
  const matching = matchSeekers(
    open.length,
    men.map((man) => seekerOf(man, open, underHalves)),
  );
  const matched = new Map<PlayerId, PlayedMan>();
  matching.taken.forEach((item, index) => {
    const target = item === null ? undefined : open[item];
    const man = men[index];
    if (target !== undefined && man !== undefined) matched.set(target.player, man);
  });
  return targets.map((target): Answer => {
    const told = byMan.get(target.player);
    const zone = matched.get(target.player);
    const proof = matching.proofs.get(open.indexOf(target));
    return {
      player: target.player,
      as: target.as,
      by: (told ?? zone)?.aligned.role.id ?? null,
      how: told !== undefined ? 'man' : zone === undefined ? null : peels(zone) ? 'peel' : 'zone',
      because: answerBecause(told, zone),
      proof:
        told !== undefined || zone !== undefined
          ? null
          : {
              players: gather(proof?.items ?? [], (item) => open[item]?.player ?? []),
              reachable: gather(proof?.seekers ?? [], (each) => men[each]?.aligned.role.id ?? []),
            },
    };
  });
}

function peels(man: PlayedMan): boolean {
  const { job } = man.combined;
  return (job?.kind === 'rush' || job?.kind === 'contain') && job.peel;
}

function seekerOf(man: PlayedMan, open: readonly Target[], underHalves: boolean): Seeker {
  const costs = new Map<number, number>();
  open.forEach((target, item) => {
    const rank =
      man.pass.kind === 'zone'
        ? rankOf(man.pass.zone, man.pass.side, target, underHalves)
        : target.as.kind === 'back' && (target.place === man.aligned.place || target.place === 'middle')
          ? PEEL_RANK
          : null;
    if (rank === null) return;
    const distance = Math.hypot(man.aligned.x - target.at.x, man.aligned.y - target.at.y);
    costs.set(item, rank * RANK_COST + Math.round(distance * 1000));
  });
  return { name: man.aligned.role.id, costs };
}

function answerBecause(told: PlayedMan | undefined, zone: PlayedMan | undefined): Answer['because'] {
  if (told !== undefined) {
    return because('{who} has him man to man', { who: datum.role(told.aligned.role.id) }, told.combined.because);
  }
  if (zone === undefined) return fact('no man has him, and no zone that is left takes him');
  const who = { who: datum.role(zone.aligned.role.id) };
  return peels(zone)
    ? because('{who} leaves his rush with him if he flares', who, zone.combined.because)
    : because('{who} takes him out of his zone', who, zone.combined.because);
}

/** How many do what against the pass: rush, underneath, deep, man, and the rest. They add up to the eleven. */
export function countPass(assignments: readonly PlayedMan[]): PassCount {
  const count = { rush: 0, under: 0, deep: 0, man: 0, free: 0 };
  for (const { pass } of assignments) {
    if (pass.kind === 'rush' || pass.kind === 'contain') count.rush += 1;
    else if (pass.kind === 'zone') count[DEEP.includes(pass.zone) ? 'deep' : 'under'] += 1;
    else if (pass.kind === 'man') count.man += 1;
    else count.free += 1;
  }
  return count;
}
