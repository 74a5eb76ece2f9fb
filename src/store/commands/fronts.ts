import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import {
  readLook,
  ruleAt,
  type AlignRule,
  type BaseJob,
  type Front,
  type FrontId,
  type FrontRole,
  type LookId,
  type LookTest,
  type Place,
  type Role,
  type RoleId,
} from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { nextIds } from './entries.ts';
import { withEntry } from './lists.ts';
import { freeName } from './names.ts';

/** The players of a defence (the game's own law at all three rule levels). */
export const ELEVEN = 11;

/** A man of a front. */
export interface FrontMan {
  readonly front: FrontId;
  readonly role: RoleId;
}

/** Makes a front of eleven roles, each standing where a man of his room stands first, with no gap of his own yet. */
export function newFront(
  playbook: Playbook,
  args: { readonly name: string; readonly roles: readonly RoleId[] },
): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.fronts, args.name, null, 'front');
  if (!name.ok) return name;
  const roles = playbook.roles.filter(({ id }) => args.roles.includes(id));
  if (roles.length !== ELEVEN) return refused({ kind: 'not-eleven', found: roles.length });
  const front: Front = {
    id: nextIds.front(playbook),
    name: name.value,
    roles: roles.map(firstRules),
    byHand: [],
  };
  return ok({ ...playbook, fronts: [...playbook.fronts, front] });
}

/** Where a man of each room stands before anybody has said so (common practice, no source). */
function firstRules({ id, room, side }: Role): FrontRole {
  const middle = side.kind === 'middle';
  const base: BaseJob = { gaps: [], style: 'one-gap', pass: room === 'line' ? 'rush' : 'none' };
  return { role: id, rules: [{ when: [], spot: middle ? overBall(room) : onSide(room) }], base };
}

function overBall(room: Role['room']): AlignRule['spot'] {
  switch (room) {
    case 'line':
      return { kind: 'technique', on: 'snapper', leverage: 'head', depth: 0.5 };
    case 'linebackers':
      return { kind: 'ball', offset: 0, depth: 4.5 };
    case 'secondary':
      return { kind: 'ball', offset: 0, depth: 12 };
  }
}

function onSide(room: Role['room']): AlignRule['spot'] {
  switch (room) {
    case 'line':
      return { kind: 'technique', on: 'tackle', leverage: 'head', depth: 0.5 };
    case 'linebackers':
      return { kind: 'technique', on: 'guard', leverage: 'outside-foot', depth: 4.5 };
    case 'secondary':
      return { kind: 'receiver', number: 1, leverage: 'head', depth: 7 };
  }
}

/** Another man comes in for one: he takes over his rules, his base job and his spots by hand. */
export function replaceRole(
  playbook: Playbook,
  args: FrontMan & { readonly by: RoleId },
): Result<Playbook, CommandProblem> {
  if (!playbook.roles.some(({ id }) => id === args.by)) return refused({ kind: 'not-there', what: 'role' });
  return withFront(playbook, args.front, (front) => {
    if (!front.roles.some(({ role }) => role === args.role)) return refused({ kind: 'not-there', what: 'role' });
    if (front.roles.some(({ role }) => role === args.by)) return refused({ kind: 'plays-already' });
    return ok({
      ...front,
      roles: front.roles.map((each) => (each.role === args.role ? { ...each, role: args.by } : each)),
      byHand: front.byHand.map((hand) => (hand.role === args.role ? { ...hand, role: args.by } : hand)),
    });
  });
}

/** Says where he stands: the first of the rules that holds. One at least, or nobody would know. */
export function setAlignRules(
  playbook: Playbook,
  args: FrontMan & { readonly rules: readonly AlignRule[] },
): Result<Playbook, CommandProblem> {
  if (args.rules.length === 0) return refused({ kind: 'last-one', what: 'rule' });
  return withMan(playbook, args, (man) => ({ ...man, rules: args.rules }));
}

/** Says what he plays in this front when nobody tells him anything else. Two-gapping takes two gaps. */
export function setBaseJob(
  playbook: Playbook,
  args: FrontMan & { readonly base: BaseJob },
): Result<Playbook, CommandProblem> {
  if (args.base.style === 'two-gap' && args.base.gaps.length < 2) return refused({ kind: 'two-gaps-needed' });
  return withMan(playbook, args, (man) => ({ ...man, base: args.base }));
}

/** Gives everybody back to his rule: in one look, or in all of them (null). Refused when nobody stands by hand. */
export function clearHands(
  playbook: Playbook,
  args: { readonly front: FrontId; readonly look: LookId | null },
): Result<Playbook, CommandProblem> {
  return withFront(playbook, args.front, (front) => {
    const byHand = args.look === null ? [] : front.byHand.filter(({ look }) => look !== args.look);
    return byHand.length === front.byHand.length ? refused({ kind: 'no-longer' }) : ok({ ...front, byHand });
  });
}

/**
 * Makes a rule of where a man stands by hand in a look: for all looks with that surface he then stands there by rule, before
 * every other rule of his; the spot by hand is gone. A rule for the very same looks is replaced. `spot` is where the ball
 * lies, for a man who goes by the field. Refused when he does not stand by hand there, or no rule can say it.
 */
export function handToRule(
  playbook: Playbook,
  args: FrontMan & { readonly look: LookId; readonly spot: Place },
): Result<Playbook, CommandProblem> {
  const look = playbook.looks.find(({ id }) => id === args.look);
  if (look === undefined) return refused({ kind: 'not-there', what: 'look' });
  return withFront(playbook, args.front, (front) => {
    const hand = front.byHand.find((each) => each.look === args.look && each.role === args.role);
    if (hand === undefined) return refused({ kind: 'no-longer' });
    const facts = readLook(look, playbook.team.level, args.spot);
    const rule = ruleAt(args.role, hand, playbook.roles, facts);
    if (!rule.ok) return refused({ kind: 'not-over-ball' });
    return ok({
      ...front,
      roles: front.roles.map((man) =>
        man.role === args.role ? { ...man, rules: [rule.value, ...withoutTests(man.rules, rule.value.when)] } : man,
      ),
      byHand: front.byHand.filter((each) => each !== hand),
    });
  });
}

function withoutTests(rules: readonly AlignRule[], when: readonly LookTest[]): readonly AlignRule[] {
  const asked = when.map(testKey).sort().join('; ');
  return rules.filter((rule) => rule.when.map(testKey).sort().join('; ') !== asked);
}

function testKey(test: LookTest): string {
  return Object.values(test).join(' ');
}

function withMan(
  playbook: Playbook,
  { front: id, role }: FrontMan,
  change: (man: FrontRole) => FrontRole,
): Result<Playbook, CommandProblem> {
  return withFront(playbook, id, (front) => {
    if (!front.roles.some((each) => each.role === role)) return refused({ kind: 'not-there', what: 'role' });
    return ok({ ...front, roles: front.roles.map((each) => (each.role === role ? change(each) : each)) });
  });
}

/** The playbook with one front changed. */
export function withFront(
  playbook: Playbook,
  id: FrontId,
  change: (front: Front) => Result<Front, CommandProblem>,
): Result<Playbook, CommandProblem> {
  const fronts = withEntry(playbook.fronts, id, change, { kind: 'not-there', what: 'front' });
  return fronts.ok ? ok({ ...playbook, fronts: fronts.value }) : fronts;
}
