import { compareBy, gather, ok, refused, type Result } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { gapsEqual } from '../gaps.ts';
import { GAP_LETTERS, type BodyName, type Side } from '../vocabulary.ts';
import type { Because, Gap, GapRef, LookFacts, PlayerId, ReceiverRef, SideRef, SurfaceBody } from '../types/index.ts';
import { signOf } from '../facts/surface.ts';
import { opposite } from './sides.ts';

/** What relative names are read against: the look, the call side, and the side of the man the rule speaks to. */
export interface NameContext {
  readonly facts: LookFacts;
  /** Null where no call is meant (a front's own rules). */
  readonly callSide: Side | null;
  /** Null for a man in the middle. */
  readonly mySide: Side | null;
}

/** A name found in this look, or the reason why it points at nobody. */
export type Found<Value> = Result<Value, Because>;

/** Which side a relative side is. */
export function findSide(ref: SideRef, context: NameContext): Found<Side> {
  switch (ref) {
    case 'left':
    case 'right':
      return ok(ref);
    case 'call':
    case 'away': {
      if (context.callSide === null) return refused(fact('there is no call side'));
      return ok(ref === 'call' ? context.callSide : opposite(context.callSide));
    }
    case 'mine':
    case 'other': {
      if (context.mySide === null) return refused(fact('he stands in the middle and has no side of his own'));
      return ok(ref === 'mine' ? context.mySide : opposite(context.mySide));
    }
  }
}

const BODY_INDEX: Readonly<Record<Exclude<BodyName, 'last'>, number>> = {
  snapper: 0,
  guard: 1,
  tackle: 2,
  end: 3,
  wing: 4,
};

/** A body of the surface by its name, counted from the snapper outward. */
export function findBody(name: BodyName, side: Side, facts: LookFacts): Found<SurfaceBody> {
  const surface = facts.surface[side];
  const body = name === 'last' ? surface[surface.length - 1] : surface[BODY_INDEX[name]];
  if (body !== undefined) return ok(body);
  return refused(
    because('there is no {body} on the {side}', {
      body: datum.word(name === 'end' ? 'attached tight end' : name),
      side: datum.side(side),
    }),
  );
}

/** The gap a rule means, in this look. */
export function findGap(ref: GapRef, context: NameContext): Found<Gap> {
  const side = findSide(ref.side, context);
  if (!side.ok) return side;
  const edge = context.facts.edge[side.value];
  switch (ref.kind) {
    case 'edge':
      return ok({ side: side.value, letter: edge });
    case 'letter':
      if (GAP_LETTERS.indexOf(ref.letter) <= GAP_LETTERS.indexOf(edge)) {
        return ok({ side: side.value, letter: ref.letter });
      }
      return refused(
        because('there is no {letter} gap on the {side}', {
          letter: datum.letter(ref.letter),
          side: datum.side(side.value),
        }),
      );
    case 'outside': {
      const body = findBody(ref.body, side.value, context.facts);
      if (!body.ok) return body;
      // A drawing may crowd more men on one side than there are letters; the last letter is then the edge.
      return ok({ side: side.value, letter: GAP_LETTERS[body.value.index] ?? edge });
    }
  }
}

/** Each gap once: a rule may name one gap two ways, the edge and the letter it has in this look. */
function eachOnce(gaps: readonly Gap[]): readonly Gap[] {
  return gaps.filter((gap, index) => gaps.findIndex((other) => gapsEqual(other, gap)) === index);
}

/** Several gaps at once, each of them once: all of them, or the first reason one is missing. */
export function findGaps(refs: readonly GapRef[], context: NameContext): Found<readonly Gap[]> {
  const gaps: Gap[] = [];
  for (const ref of refs) {
    const gap = findGap(ref, context);
    if (!gap.ok) return gap;
    gaps.push(gap.value);
  }
  return ok(eachOnce(gaps));
}

/** Those of the gaps that exist in this look, each once; for lists of gaps a man may fit, where a missing one is no fault. */
export function gapsThatExist(refs: readonly GapRef[], context: NameContext): readonly Gap[] {
  return eachOnce(
    gather(refs, (ref) => {
      const gap = findGap(ref, context);
      return gap.ok ? [gap.value] : [];
    }),
  );
}

/**
 * The receiver a rule means, in this look. Backs are counted from the man's own side outward; for a man in the middle from
 * the call side.
 */
export function findReceiver(ref: ReceiverRef, context: NameContext): Found<PlayerId> {
  if (ref.kind === 'back') {
    const { facts, mySide, callSide } = context;
    const sign = signOf(mySide ?? callSide ?? 'left');
    const backs = [...facts.backs].sort(compareBy(({ player }) => -sign * (facts.players.get(player)?.x ?? 0)));
    const back = backs[ref.number - 1];
    if (back !== undefined) return ok(back.player);
    return refused(because('there is no back number {n} in the backfield', { n: datum.number(ref.number) }));
  }
  const side = findSide(ref.side, context);
  if (!side.ok) return side;
  const receiver = context.facts.receivers.find((each) => each.side === side.value && each.number === ref.number);
  if (receiver !== undefined) return ok(receiver.player);
  return refused(
    because('there is no receiver number {n} on the {side}', {
      n: datum.number(ref.number),
      side: datum.side(side.value),
    }),
  );
}
