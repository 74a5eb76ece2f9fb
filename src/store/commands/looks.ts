import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import {
  lineUp,
  mirrorLook,
  mirrorSide,
  mirrorX,
  type Front,
  type KnownProtection,
  type KnownRun,
  type Look,
  type LookId,
  type OffenceKind,
  type OffencePlayer,
  type Personnel,
  type PlayerId,
  type Point,
  type Role,
  type RoleId,
  type Shape,
  type Side,
} from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { nextIds } from './entries.ts';
import { withEntry } from './lists.ts';
import { freeName, keptLetter } from './names.ts';
import { keptPoint } from './points.ts';

/** A man of a look. */
export interface LookMan {
  readonly look: LookId;
  readonly player: PlayerId;
}

/** Makes a look of those men in that shape, strong to that side of the defence's; legal at every level. */
export function newLook(
  playbook: Playbook,
  args: { readonly name: string; readonly who: Personnel; readonly shape: Shape; readonly strong: Side },
): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.looks, args.name, null, 'look');
  if (!name.ok) return name;
  const look: Look = {
    id: nextIds.look(playbook),
    name: name.value,
    players: lineUp(args.who, args.shape, args.strong),
    motion: null,
    runs: [],
    protections: [],
  };
  return ok({ ...playbook, looks: [...playbook.looks, look] });
}

/** Gives a man another letter: one or two characters. Two men may have the same one. */
export function setPlayerLetter(
  playbook: Playbook,
  { look, player, letter }: LookMan & { readonly letter: string },
): Result<Playbook, CommandProblem> {
  const kept = keptLetter(letter);
  return kept.ok ? withPlayer(playbook, { look, player }, (man) => ({ ...man, letter: kept.value })) : kept;
}

/** Kinds of which a look has exactly one. */
const ONLY_ONE: readonly OffenceKind[] = ['snapper', 'passer'];

/**
 * Makes a man something else. There is one snapper and one passer: who becomes it changes with the one who was, and he
 * himself cannot become anything else.
 */
export function setPlayerKind(
  playbook: Playbook,
  { look: id, player, kind }: LookMan & { readonly kind: OffenceKind },
): Result<Playbook, CommandProblem> {
  return withLook(playbook, id, (look) => {
    const man = look.players.find((each) => each.id === player);
    if (man === undefined) return refused({ kind: 'not-there', what: 'player' });
    if (man.kind === kind) return ok(look);
    if (ONLY_ONE.includes(man.kind)) return refused({ kind: 'one-needed', what: man.kind });
    const kindOf = (each: OffencePlayer): OffenceKind => {
      if (each.id === player) return kind;
      return ONLY_ONE.includes(kind) && each.kind === kind ? man.kind : each.kind;
    };
    return ok({
      ...look,
      players: look.players.map((each) => (kindOf(each) === each.kind ? each : { ...each, kind: kindOf(each) })),
    });
  });
}

/** Stands a man exactly there as the look is set, before any motion. */
export function setPlayerSpot(
  playbook: Playbook,
  { look, player, at }: LookMan & { readonly at: Point },
): Result<Playbook, CommandProblem> {
  return withPlayer(playbook, { look, player }, (man) => ({ ...man, ...keptPoint(at) }));
}

/**
 * Puts the look on the other side of the ball, its runs and protections with it, and in every front the defenders who were
 * set by hand in it. Of two mates of whom one is always the left man and one the right, each takes the other's spot.
 */
export function mirrorInPlace(
  playbook: Playbook,
  { look: id }: { readonly look: LookId },
): Result<Playbook, CommandProblem> {
  const mirrored = withLook(playbook, id, (look) => ok(mirrorLook(look)));
  if (!mirrored.ok || !playbook.fronts.some(({ byHand }) => byHand.some(({ look }) => look === id))) return mirrored;
  const fronts = playbook.fronts.map((front) =>
    front.byHand.some(({ look }) => look === id)
      ? {
          ...front,
          byHand: front.byHand.map((hand) =>
            hand.look === id ? mirrorX({ ...hand, role: sideTwin(playbook.roles, front, hand.role) }) : hand,
          ),
        }
      : front,
  );
  return ok({ ...mirrored.value, fronts });
}

/** Who of the front is on the other side what that man is on his: his one mate there, if both always keep their sides. */
function sideTwin(roles: readonly Role[], front: Front, id: RoleId): RoleId {
  const man = roles.find((role) => role.id === id);
  const side = man === undefined ? null : alwaysOn(man);
  if (man === undefined || side === null) return id;
  const mates = roles.filter(
    ({ group, id: mate }) => group === man.group && front.roles.some(({ role }) => role === mate),
  );
  const on = (where: Side): readonly Role[] => mates.filter((mate) => alwaysOn(mate) === where);
  const [twin] = on(mirrorSide(side));
  // Two on one side have no one twin each: a spot could be taken twice.
  return twin !== undefined && on('left').length === 1 && on('right').length === 1 ? twin.id : id;
}

/** The side a man has whatever the look; null: it depends, or he has none. */
function alwaysOn({ side }: Role): Side | null {
  const first = side.kind === 'steps' ? side.steps[0] : undefined;
  return first?.kind === 'fixed' ? first.side : null;
}

/** Puts a mirrored copy behind the look, under that name and the id that is next. */
export function copyMirrored(
  playbook: Playbook,
  { look: id, name }: { readonly look: LookId; readonly name: string },
): Result<Playbook, CommandProblem> {
  const kept = freeName(playbook.looks, name, null, 'look');
  if (!kept.ok) return kept;
  if (!playbook.looks.some((look) => look.id === id)) return refused({ kind: 'not-there', what: 'look' });
  const made = { id: nextIds.look(playbook), name: kept.value };
  return ok({
    ...playbook,
    looks: playbook.looks.flatMap((look) => (look.id === id ? [look, { ...mirrorLook(look), ...made }] : [look])),
  });
}

/** A name with left and right changed about: "trips right" and "trips left". */
export function mirroredName(name: string): string {
  return name.replace(/\b(left|right)\b/gi, (side) => {
    const other = side.toLowerCase() === 'left' ? 'right' : 'left';
    return side.charAt(0) === side.charAt(0).toUpperCase() ? other.charAt(0).toUpperCase() + other.slice(1) : other;
  });
}

/** Sends a man in motion to where he is when the ball is snapped; null: nobody moves. */
export function setMotion(
  playbook: Playbook,
  {
    look: id,
    motion,
  }: { readonly look: LookId; readonly motion: { readonly player: PlayerId; readonly to: Point } | null },
): Result<Playbook, CommandProblem> {
  return withLook(playbook, id, (look) => {
    if (motion === null) return ok(look.motion === null ? look : { ...look, motion: null });
    if (!look.players.some((man) => man.id === motion.player)) return refused({ kind: 'not-there', what: 'player' });
    return ok({ ...look, motion: { player: motion.player, to: keptPoint(motion.to) } });
  });
}

/** The runs the look is known for; each to a side once. */
export function setRuns(
  playbook: Playbook,
  { look: id, runs }: { readonly look: LookId; readonly runs: readonly KnownRun[] },
): Result<Playbook, CommandProblem> {
  if (hasTwice(runs.map(({ concept, side, passOption }) => `${concept} ${side} ${passOption}`))) return TWICE;
  return withLook(playbook, id, (look) => ok({ ...look, runs }));
}

/** The protections the look is known for; each to a side once. */
export function setProtections(
  playbook: Playbook,
  { look: id, protections }: { readonly look: LookId; readonly protections: readonly KnownProtection[] },
): Result<Playbook, CommandProblem> {
  if (hasTwice(protections.map(({ protection, slideSide }) => `${protection} ${slideSide}`))) return TWICE;
  return withLook(playbook, id, (look) => ok({ ...look, protections }));
}

const TWICE = refused({ kind: 'twice' } as const);

function hasTwice(keys: readonly string[]): boolean {
  return new Set(keys).size < keys.length;
}

function withPlayer(
  playbook: Playbook,
  { look: id, player }: LookMan,
  change: (man: OffencePlayer) => OffencePlayer,
): Result<Playbook, CommandProblem> {
  return withLook(playbook, id, (look) => {
    const players = withEntry(look.players, player, (man) => ok(change(man)), { kind: 'not-there', what: 'player' });
    return players.ok ? ok({ ...look, players: players.value }) : players;
  });
}

function withLook(
  playbook: Playbook,
  id: LookId,
  change: (look: Look) => Result<Look, CommandProblem>,
): Result<Playbook, CommandProblem> {
  const looks = withEntry(playbook.looks, id, change, { kind: 'not-there', what: 'look' });
  return looks.ok ? ok({ ...playbook, looks: looks.value }) : looks;
}
