import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import { asCallId, type Call, type CallId } from '../../engine/index.ts';
import { partsOf } from '../board.ts';
import type { CommandProblem } from '../problems.ts';
import type { CallParts } from '../types.ts';
import { freshId, withEntry } from './lists.ts';
import { freeName } from './names.ts';
import { keptTags } from './tags.ts';

/** The id the next kept call gets: the first number nobody has. The same playbook always gives the same one. */
export function nextCallId(playbook: Playbook): CallId {
  return asCallId(freshId(playbook.calls, 'call'));
}

/**
 * Keeps what is called under a name. `from` is the kept call it was made of: what the coach lives with there he lives with
 * here, as long as the evidence is the same, and its tags are kept; the day it is put in is its own. Null: it was put together from nothing.
 */
export function keepCall(
  playbook: Playbook,
  args: { readonly id: CallId; readonly name: string; readonly parts: CallParts; readonly from: CallId | null },
): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.calls, args.name, null, 'call');
  if (!name.ok) return name;
  const parts = wholeParts(args.parts);
  if (!parts.ok) return parts;
  const from = playbook.calls.find(({ id }) => id === args.from);
  const call: Call = {
    id: args.id,
    name: name.value,
    ...parts.value,
    waivers: from?.waivers ?? [],
    tags: from?.tags ?? [],
    installDay: null,
  };
  return ok({ ...playbook, calls: [...playbook.calls, call] });
}

/** Puts what is called now into a call that was kept before; its name, and what the coach lives with, stay. */
export function updateCall(
  playbook: Playbook,
  args: { readonly call: CallId; readonly parts: CallParts },
): Result<Playbook, CommandProblem> {
  const parts = wholeParts(args.parts);
  if (!parts.ok) return parts;
  return withCall(playbook, args.call, (call) => ({ ...call, ...parts.value }));
}

/** Gives a kept call another name. */
export function renameCall(
  playbook: Playbook,
  args: { readonly call: CallId; readonly name: string },
): Result<Playbook, CommandProblem> {
  const name = freeName(playbook.calls, args.name, args.call, 'call');
  if (!name.ok) return name;
  return withCall(playbook, args.call, (call) => ({ ...call, name: name.value }));
}

/** Says on which day of camp a kept call is put in, and what it is tagged with. */
export function setCallParts(
  playbook: Playbook,
  args: { readonly call: CallId; readonly parts: Partial<Pick<Call, 'tags' | 'installDay'>> },
): Result<Playbook, CommandProblem> {
  const { tags } = args.parts;
  const kept = tags === undefined ? args.parts : { ...args.parts, tags: keptTags(tags) };
  return withCall(playbook, args.call, (call) => ({ ...call, ...kept }));
}

/** Takes a kept call out of the playbook, its check-outs with it. Refused while another call checks to it. */
export function deleteCall(playbook: Playbook, args: { readonly call: CallId }): Result<Playbook, CommandProblem> {
  const calls = playbook.calls.filter((call) => call.id !== args.call);
  if (calls.length === playbook.calls.length) return refused({ kind: 'not-there', what: 'call' });
  const checkOuts = playbook.checkOuts.filter((table) => table.call !== args.call);
  const by = checkOuts.find(({ rows }) =>
    rows.some(({ action }) => action.kind === 'check-to' && action.call === args.call),
  );
  if (by !== undefined) {
    return refused({ kind: 'checked-to', by: calls.find(({ id }) => id === by.call)?.name ?? by.call });
  }
  // The same list while nothing was in it, so that what depends on it stays good.
  return ok({
    ...playbook,
    calls,
    checkOuts: checkOuts.length === playbook.checkOuts.length ? playbook.checkOuts : checkOuts,
  });
}

/** Changes one kept call, every other object staying the very same. */
export function withCall(
  playbook: Playbook,
  id: CallId,
  change: (call: Call) => Call,
): Result<Playbook, CommandProblem> {
  const calls = withEntry(playbook.calls, id, (call) => ok(change(call)), { kind: 'not-there', what: 'call' });
  return calls.ok ? ok({ ...playbook, calls: calls.value }) : calls;
}

/** The parts of a call, nothing of it left open but what may be. */
function wholeParts(
  parts: CallParts,
): Result<Omit<Call, 'id' | 'name' | 'waivers' | 'tags' | 'installDay'>, CommandProblem> {
  const { front, first } = parts;
  if (front === null) return refused({ kind: 'not-there', what: 'front' });
  if (first === null) return refused({ kind: 'not-there', what: 'pressure' });
  return ok({ ...partsOf(parts), front, first });
}
