import { compareBy, gather, ok, refused, remembered, type Result } from '../../../base/index.ts';
import { fact } from '../../because.ts';
import { depthOf, signOf } from '../../facts/surface.ts';
import { opposite } from '../../resolve/sides.ts';
import type { Because, LookFacts, PlayerId } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';
import { rowOf, thousandths, type RowBody } from '../row.ts';
import type { ProtectionScheme } from './types.ts';

/** Everybody who stays in to block. */
export interface Crew {
  /** The linemen, from the defence's left to its right. */
  readonly line: readonly RowBody[];
  readonly snapper: RowBody;
  /** The tight ends and wings who stay, from the line outward. */
  readonly ends: Readonly<Record<Side, readonly RowBody[]>>;
  /** The back who works away from the slide; null: no back stays. */
  readonly back: PlayerId | null;
  /** The back who works with the slide; null: no second back stays. */
  readonly second: PlayerId | null;
}

/**
 * Who stays in, by the protection. If one back of several stays it is the one nearest to the side he works, of two equally
 * near the one nearer to the line (a convention of ours). Refused when the look lacks somebody the protection keeps in.
 */
export const crewOf = remembered(crewOnce);

function crewOnce(facts: LookFacts, scheme: ProtectionScheme): Result<Crew, Because> {
  const row = rowOf(facts);
  const snapper = row.find((body) => body.snapper);
  if (snapper === undefined) throw new Error('A surface without a snapper');
  const stay = scheme.tightEnds === 'stay';
  const ends = row.filter((body) => stay && !body.lineman);
  if (stay && ends.length === 0) return refused(fact('no tight end is attached who could stay in'));
  const backs = backsFrom(facts, opposite(scheme.slideSide));
  if (scheme.back !== 'releases' && backs.length === 0) return refused(fact('there is no back who could stay in'));
  if (scheme.back === 'both-stay' && backs.length === 1) return refused(fact('only one back could stay in'));
  const [first = null, ...others] = backs;
  return ok({
    line: row.filter((body) => body.lineman),
    snapper,
    ends: {
      left: ends.filter((body) => body.x < snapper.x).toReversed(),
      right: ends.filter((body) => body.x > snapper.x),
    },
    back: scheme.back === 'releases' ? null : first,
    second: scheme.back === 'both-stay' ? (others[others.length - 1] ?? null) : null,
  });
}

/** The backs of the look, the one nearest to that side first. */
function backsFrom(facts: LookFacts, side: Side): readonly PlayerId[] {
  return gather(facts.backs, (back) => facts.players.get(back.player) ?? [])
    .sort(
      compareBy(
        (player) => thousandths(-player.x * signOf(side)),
        (player) => thousandths(depthOf(player)),
        (player) => player.id,
      ),
    )
    .map((player) => player.id);
}
