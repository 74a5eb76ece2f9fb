import { gather } from '../../../base/index.ts';
import { movesOfDraft } from '../../move/index.ts';
import type { Assignment, Finding, Point, RoleId, RuleJob, Yards } from '../../types/index.ts';
import { nameOf, type Bench } from '../bench.ts';
import type { Edit } from '../edit.ts';
import type { Library } from '../library.ts';
import { leaveOuts, shells, swap, turns } from './callWide.ts';
import { retold, settle, toldNothing, toldOtherwise } from './oneMan.ts';
import { manDuties, zoneDuties } from './shellDuties.ts';
import { onTheWay } from './standing.ts';

/**
 * Two who run into each other: somebody is told to go second, or first, or not to wait at all. Of a lineman and a man from depth
 * the lineman goes first ("DL hits first and LBs second": K. Bowers, "Shuffle to Sprint Technique for 2-Players in Hot
 * Pressures", X&O Labs, 2022), so a man from depth is asked to wait before a lineman is.
 */
export function meetingApart(finding: Finding, bench: Bench, library: Library): readonly Edit[] {
  const men = bench.inOrder(finding.who).toReversed();
  return [
    ...turns(bench),
    ...swap(bench),
    ...gather(['second', 'first', null] as const, (turn) => gather(men, (role) => ordered(bench, role, men, turn))),
    ...gather(men, (role) => toldNothing(bench, role)),
    ...shells(bench, library),
    ...leaveOuts(bench),
  ];
}

/** He goes first or second of the two (null: whenever he likes). Only a rusher is told an order. */
function ordered(
  bench: Bench,
  role: RoleId,
  both: readonly RoleId[],
  turn: 'first' | 'second' | null,
): readonly Edit[] {
  const other = both.find((each) => each !== role);
  return retold(bench, role, (job, which): RuleJob | null => {
    const side = bench.sideOf(which);
    if ((job.kind !== 'rush' && job.kind !== 'contain') || other === undefined || side === null) return null;
    return { ...job, order: turn === null ? null : { turn, neighbour: nameOf(other, side, bench.aligned) } };
  });
}

/** How deep a man stands who creeps up to rush, the least change first: behind the linebackers, and among them. */
const CREPT_UP: readonly Yards[] = [6, 4];

/**
 * A man too far from his job: he starts nearer before the snap, by his pressure's word or by hand against this look; or the job
 * goes to somebody who is nearer, or to nobody.
 */
export function nearerToJob(finding: Finding, bench: Bench, library: Library): readonly Edit[] {
  const men = bench.inOrder(finding.who);
  return [
    ...turns(bench),
    ...swap(bench),
    ...gather(men, (role) => [...startsNearer(bench, role), ...creepsUp(bench, role)]),
    ...gather(men, (role) => [...settle(bench, role), ...takenOver(bench, role)]),
    ...shells(bench, library),
    ...leaveOuts(bench),
  ];
}

function startsNearer(bench: Bench, role: RoleId): readonly Edit[] {
  const man = bench.man(role);
  const to = man === null ? null : placeOfJob(bench, man);
  return to === null ? [] : onTheWay(bench, role, to);
}

/** Where his job is: his gap, the receiver he has, the middle of his zone. */
function placeOfJob(bench: Bench, { aligned, pass }: Assignment): Point | null {
  const { facts } = bench.analysis;
  if (pass.kind === 'man') {
    const receiver = facts.players.get(pass.receiver);
    // He plays him from his own depth, or closer.
    return receiver === undefined ? null : { x: receiver.x, y: aligned.y };
  }
  const path = movesOfDraft(bench.analysis).find((move) => move.role === aligned.role.id)?.path ?? [];
  if (pass.kind === 'zone') return path.at(-1) ?? null;
  // A rusher: where he crosses the line.
  return path.find(({ y }) => y <= 0) ?? null;
}

/** The pressure that sends him has him up before the snap. */
function creepsUp(bench: Bench, role: RoleId): readonly Edit[] {
  const depth = bench.aligned.get(role)?.y ?? 0;
  return gather(
    CREPT_UP.filter((up) => up < depth),
    (up) =>
      toldOtherwise(bench, role, (now) =>
        now.job.kind === 'rush' || now.job.kind === 'contain'
          ? { ...now, preSnap: { kind: 'depth', depth: up } }
          : null,
      ),
  );
}

/** What he covers goes to somebody who is free. */
function takenOver(bench: Bench, role: RoleId): readonly Edit[] {
  const pass = bench.man(role)?.pass;
  if (pass?.kind === 'man') return manDuties(bench, pass.receiver, [role]);
  return pass?.kind === 'zone' ? zoneDuties(bench, pass.zone, pass.side) : [];
}
