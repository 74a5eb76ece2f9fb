import { compareBy, gather, ok, refused, type Result } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import { depthOf, isOnLine, signOf } from '../../facts/surface.ts';
import type { Because, LookFacts, OffencePlayer, PlayerId, SurfaceBody, Yards } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';
import { thousandths } from '../row.ts';
import { endsOf, tackleOf } from './landmarks.ts';

/** A man off the line this far outside the tackle still stands behind the line, not outside it (a convention of ours). */
const BEHIND_TACKLE: Yards = 1.5;

/** Who carries: the deepest back, the one nearest to the line, the man in motion, the passer. */
export type CarrierKind = 'deepest' | 'nearest' | 'motion' | 'passer';

/** Everybody behind the line apart from the passer: who carries, and the others, the nearest to the line first. */
export interface Backfield {
  readonly carrier: PlayerId;
  readonly others: readonly PlayerId[];
}

/**
 * Who carries and who may lead. Of two equally deep backs the one away from the run is the deeper, so that he crosses to it and
 * the near one leads (common practice, no source).
 */
export function backfieldOf(kind: CarrierKind, side: Side, facts: LookFacts): Result<Backfield, Because> {
  const backs = gather(facts.backs, (back) => facts.players.get(back.player) ?? []);
  const nearFirst = [...backs].sort(
    compareBy(
      (player) => thousandths(depthOf(player)),
      (player) => thousandths(-player.x * signOf(side)),
      (player) => player.id,
    ),
  );
  const ids = [...nearFirst, ...behindTheLine(facts)].map((player) => player.id);
  const carrier = carrierOf(kind, side, facts, nearFirst);
  if (!carrier.ok) return carrier;
  return ok({ carrier: carrier.value, others: ids.filter((id) => id !== carrier.value) });
}

function carrierOf(
  kind: CarrierKind,
  side: Side,
  facts: LookFacts,
  nearFirst: readonly OffencePlayer[],
): Result<PlayerId, Because> {
  switch (kind) {
    case 'deepest':
    case 'nearest': {
      const back = kind === 'nearest' ? nearFirst[0] : nearFirst[nearFirst.length - 1];
      return back === undefined ? refused(fact('there is no back to carry the ball')) : ok(back.id);
    }
    case 'motion':
      return inMotion(side, facts);
    case 'passer':
      return facts.passer === null ? refused(fact('there is no passer to carry the ball')) : ok(facts.passer);
  }
}

/** The innermost split receiver off the line on the side away from the run: he crosses the formation before the snap. */
function inMotion(side: Side, facts: LookFacts): Result<PlayerId, Because> {
  const [nearest] = gather(
    facts.receivers.filter((each) => each.side !== side && each.eligible && !each.attached),
    (each) => facts.players.get(each.player) ?? [],
  )
    .filter((player) => !isOnLine(player))
    .sort(
      compareBy(
        (player) => thousandths(Math.abs(player.x)),
        (player) => player.id,
      ),
    );
  if (nearest !== undefined) return ok(nearest.id);
  return refused(because('nobody off the line can come in motion to the {side}', { side: datum.side(side) }));
}

/** Men off the line behind the tackles who are too near to it to be backs. */
function behindTheLine(facts: LookFacts): readonly OffencePlayer[] {
  const bodies = new Set([...facts.surface.left, ...facts.surface.right].map((body) => body.player));
  const limit = BEHIND_TACKLE + Math.max(Math.abs(tackleOf(facts, 'left').x), tackleOf(facts, 'right').x);
  return gather(
    facts.receivers.filter((each) => !bodies.has(each.player)),
    (each) => facts.players.get(each.player) ?? [],
  )
    .filter((player) => !isOnLine(player) && Math.abs(player.x) <= limit)
    .sort(
      compareBy(
        (player) => thousandths(depthOf(player)),
        (player) => thousandths(Math.abs(player.x)),
        (player) => player.id,
      ),
    );
}

/** The guard or tackle who pulls; refused where a lopsided line has none on that side. */
export function pullingLineman(body: 'guard' | 'tackle', side: Side, facts: LookFacts): Result<SurfaceBody, Because> {
  const found = facts.surface[side][body === 'guard' ? 1 : 2];
  if (found !== undefined && facts.players.get(found.player)?.kind === 'lineman') return ok(found);
  return refused(
    because('there is no {body} on the {side} to pull', { body: datum.word(body), side: datum.side(side) }),
  );
}

/** A tight end or wing of a side who may leave it: the wing first, for he is off the line. */
export function attachedMover(side: Side, facts: LookFacts): SurfaceBody | null {
  const men = endsOf(facts, side).filter((body) => facts.players.get(body.player)?.kind !== 'lineman');
  return men.find((body) => body.how === 'wing') ?? men[0] ?? null;
}
