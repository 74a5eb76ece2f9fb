import { ok, refused, remembered, type Result } from '../../../base/index.ts';
import { because, datum, fact } from '../../because.ts';
import { signOf } from '../../facts/surface.ts';
import { gapsEqual } from '../../gaps.ts';
import type {
  Because,
  Datum,
  FloatingGap,
  Gap,
  Lead,
  LookFacts,
  PlayerId,
  Puller,
  RunPicture,
  SurfaceBody,
  Yards,
} from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';
import { CONCEPTS, type ConceptRule } from './concepts.ts';
import { endsOf, gapInside, gapOf, manRule, sideMeant, xOf, type ManPlace, type Place } from './landmarks.ts';
import { attachedMover, backfieldOf, pullingLineman, type Backfield } from './people.ts';
import { RUN_CONCEPT_WORDS, type FloatingKind, type RunConcept } from '../../offenceVocabulary.ts';

/** A pitch goes about this far outside the edge (an estimate, for drawing). */
const PITCH_WIDTH: Yards = 2;

/** Where a concept is run. */
interface Ground {
  readonly rule: ConceptRule;
  readonly side: Side;
  readonly facts: LookFacts;
}

/** Who moves: pullers out of the surface, leads out of the backfield, the man who may be pitched to. */
interface Movers {
  readonly pullers: readonly Puller[];
  readonly leads: readonly Lead[];
  readonly pitch: RunPicture['pitch'];
  /** A gap of the surface that closes because the pitch man leaves it. */
  readonly pitchCloses: Gap | null;
}

/**
 * One run concept in one look, `side` being the side it goes to: where it hits, who pulls and leads, which gaps that opens and
 * closes, who is read, who is left. Refused, with the reason, when the look lacks a body the concept needs.
 * Gap arithmetic: gaps to own are blockers and one more; a puller takes his gap along, a man who leads out of the backfield
 * adds one, a passer who runs adds one ("Two Gap, One Gap Revisited", Football Is Life blog, 2015, for the count; that it moves
 * with the puller from memory). The concepts themselves: beside each in `CONCEPTS`.
 * No defence is asked, so it is remembered for all of them.
 */
export const runConcept = remembered(conceptOnce);

function conceptOnce(facts: LookFacts, concept: RunConcept, side: Side): Result<RunPicture, Because> {
  const rule = CONCEPTS[concept];
  const ground: Ground = { rule, side, facts };
  if (rule.keeper !== undefined && facts.passer === null) return refused(fact('there is no passer to carry the ball'));
  const backfield = backfieldOf(rule.carrier, side, facts);
  if (!backfield.ok) return backfield;
  const movers = moversOf(ground, backfield.value);
  if (!movers.ok) return movers;
  return ok(picture(concept, ground, backfield.value, movers.value));
}

function moversOf(ground: Ground, backfield: Backfield): Result<Movers, Because> {
  const { rule, side, facts } = ground;
  const pullers: Puller[] = [];
  for (const pull of rule.pulls ?? []) {
    const from = sideMeant(pull.of, side);
    const body = pullingLineman(pull.body, from, facts);
    if (!body.ok) return body;
    pullers.push({ player: body.value.player, from: gapInside(body.value, from), to: gapOf(pull.to, side, facts) });
  }
  const pitched = pitchOf(ground, backfield);
  if (!pitched.ok) return pitched;
  const { pitch } = pitched.value;
  const free = backfield.others.filter((player) => player !== pitch?.player);
  const led = leadOf(ground, free);
  if (!led.ok) return led;
  pullers.push(...led.value.pullers);
  const spare = free.filter((player) => led.value.leads.every((lead) => lead.player !== player));
  const leads = [...led.value.leads, ...spare.map((player) => ({ player, to: gapOf(rule.spare, side, facts) }))];
  return ok({ pullers, leads, pitch, pitchCloses: pitched.value.closes });
}

/** The man who must lead: from behind the line, else an attached man who leaves it, else an end whose block does instead. */
function leadOf(
  { rule, side, facts }: Ground,
  free: readonly PlayerId[],
): Result<{ readonly pullers: readonly Puller[]; readonly leads: readonly Lead[] }, Because> {
  if (rule.lead === undefined) return ok({ pullers: [], leads: [] });
  const { attachedOf, endBlocksOut } = rule.lead;
  const to = gapOf(rule.lead.to, side, facts);
  const [player] = free;
  if (player !== undefined) return ok({ pullers: [], leads: [{ player, to }] });
  if (attachedOf !== null) {
    const from = sideMeant(attachedOf, side);
    const body = attachedMover(from, facts);
    if (body !== null) return ok({ pullers: [pullerOf(body, from, to)], leads: [] });
    return refused(because('no second back, and nobody attached on the {side}, can lead', { side: datum.side(from) }));
  }
  if (!endBlocksOut) return refused(fact('there is no second back to lead'));
  if (endsOf(facts, side).length > 0) return ok({ pullers: [], leads: [] });
  const data = { side: datum.side(side) };
  return refused(because('no second back, and no tight end on the {side}, can block the edge out', data));
}

function pullerOf(body: SurfaceBody, from: Side, to: Gap): Puller {
  return { player: body.player, from: gapInside(body, from), to };
}

/** The man who may be pitched to: the carrier himself, else another back, else a wing who comes around from the other side. */
function pitchOf(
  { rule, side, facts }: Ground,
  { carrier, others }: Backfield,
): Result<{ readonly pitch: RunPicture['pitch']; readonly closes: Gap | null }, Because> {
  if (rule.pitch === undefined) return ok({ pitch: null, closes: null });
  const where = gapOf(rule.pitch.to, side, facts);
  if (rule.pitch.by === 'carrier') return ok({ pitch: { player: carrier, where }, closes: null });
  const back = others[others.length - 1];
  if (back !== undefined) return ok({ pitch: { player: back, where }, closes: null });
  const from = sideMeant('away', side);
  const wing = endsOf(facts, from).find((body) => body.how === 'wing');
  if (wing === undefined) return refused(fact('there is no second back and no wing to pitch to'));
  return ok({ pitch: { player: wing.player, where }, closes: gapInside(wing, from) });
}

/** Everything the rule says of this look, with the gaps it opens and closes. */
function picture(concept: RunConcept, ground: Ground, { carrier }: Backfield, movers: Movers): RunPicture {
  const { rule, side, facts } = ground;
  const gap = (place: Place): Gap => gapOf(place, side, facts);
  const optional = (place: Place | undefined): Gap | null => (place === undefined ? null : gap(place));
  const aims = distinct(rule.aims.map(gap));
  const aim = gap(rule.aims[0]);
  const cutback = optional(rule.cutback);
  const { pullers, leads, pitch } = movers;
  const keeper =
    rule.keeper === undefined || facts.passer === null ? null : { player: facts.passer, where: gap(rule.keeper) };
  const floating = floats(ground, movers, keeper);
  const man = (place: ManPlace | null | undefined): RunPicture['read'] =>
    place === null || place === undefined ? null : manRule(place, side, facts);
  const handsOff = rule.pitch?.by !== 'carrier';
  return {
    concept,
    side,
    carrier,
    aim,
    aims,
    bounce: optional(rule.bounce),
    cutback,
    pullers,
    leads,
    keeper,
    pitch,
    read: man(rule.read),
    pitchRead: man(rule.pitchRead),
    option:
      rule.outcomes === undefined
        ? null
        : { give: handsOff ? distinct([...aims, ...(cutback === null ? [] : [cutback])]) : [], ...rule.outcomes },
    leftUnblocked: rule.unblocked === undefined ? null : { words: rule.unblocked.words, man: man(rule.unblocked.man) },
    gapChange: changes(floating, movers),
    floating,
    fit: rule.fit,
    because: reasons(concept, ground, aim, movers, rule.read?.words ?? null),
  };
}

function distinct(gaps: readonly Gap[]): readonly Gap[] {
  return gaps.filter((gap, index) => gaps.findIndex((other) => gapsEqual(gap, other)) === index);
}

/**
 * What opens. A passer who only takes the place of the back as the runner opens nothing himself: the back who leads for him
 * does (five linemen and one who carries make six gaps, whoever carries).
 */
function floats({ rule, side, facts }: Ground, movers: Movers, keeper: RunPicture['keeper']): readonly FloatingGap[] {
  const float = (kind: FloatingKind, player: PlayerId, near: Gap, beyond: Yards = 0): FloatingGap => ({
    id: `${kind} ${player}`,
    kind,
    side: near.side,
    near,
    x: xOf(near, facts) + beyond * signOf(side),
    player,
  });
  const { pullers, leads, pitch } = movers;
  return [
    ...pullers.map((each) => float('puller', each.player, each.to)),
    ...leads.map((each) => float('lead', each.player, each.to)),
    ...(keeper === null || rule.carrier === 'passer' ? [] : [float('passer', keeper.player, keeper.where)]),
    ...(pitch === null || rule.pitch?.by === 'carrier' ? [] : [float('pitch', pitch.player, pitch.where, PITCH_WIDTH)]),
  ];
}

/** Gaps more or fewer on each side: what floats in, less what closes behind whoever left. */
function changes(floating: readonly FloatingGap[], { pullers, pitchCloses }: Movers): RunPicture['gapChange'] {
  const closed = [...pullers.map((each) => each.from), ...(pitchCloses === null ? [] : [pitchCloses])];
  const change = (side: Side): number =>
    floating.filter((each) => each.side === side).length - closed.filter((gap) => gap.side === side).length;
  return { left: change('left'), right: change('right') };
}

function reasons(
  concept: RunConcept,
  { side }: Ground,
  aim: Gap,
  { pullers, leads, pitch }: Movers,
  read: Because | null,
): Because {
  const move = ({ player, to }: Lead): { readonly who: Datum; readonly to: Datum } => ({
    who: datum.player(player),
    to: datum.gap(to),
  });
  return because(
    'by rule, {concept} to the {side} hits {aim}',
    { concept: datum.word(RUN_CONCEPT_WORDS[concept]), side: datum.side(side), aim: datum.gap(aim) },
    ...pullers.map((each) =>
      because('{who} pulls to {to}, so {from} closes behind him', { ...move(each), from: datum.gap(each.from) }),
    ),
    ...leads.map((each) => because('{who} leads to {to}, one gap more', move(each))),
    ...(pitch === null
      ? []
      : [because('{who} may be pitched to outside {to}', move({ player: pitch.player, to: pitch.where }))]),
    ...(read === null ? [] : [fact('one defender is read instead of blocked', read)]),
  );
}
