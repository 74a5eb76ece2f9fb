import { ok, refused, type Result } from '../base/index.ts';
import type { Call, LookId, Place, Setup } from '../engine/index.ts';
import { quoted, type Refusal } from './refusal.ts';
import type { Playbook } from './schema/playbook.ts';

/** What is to be looked at: a call (of the playbook, or one being put together), a look, and where the ball lies. */
export interface Question {
  readonly call: Call;
  readonly look: LookId;
  readonly spot: Place;
}

/**
 * Translates one question about a playbook into what the engine needs. The shell is the call's own, else the first
 * pressure's. Refused when the call or the question names something the playbook does not have.
 */
export function toSetup(playbook: Playbook, { call, look, spot }: Question): Result<Setup, Refusal> {
  const front = find(playbook.fronts, call.front, 'call.front');
  if (!front.ok) return front;
  const shown = find(playbook.looks, look, 'look');
  if (!shown.ok) return shown;
  const first = find(playbook.pressures, call.first, 'call.first');
  if (!first.ok) return first;
  const second = call.second === null ? ok(null) : find(playbook.pressures, call.second, 'call.second');
  if (!second.ok) return second;
  const coverage = find(playbook.coverages, call.coverage ?? first.value.coverage, 'call.coverage');
  if (!coverage.ok) return coverage;
  return ok({
    level: playbook.team.level,
    spot,
    roles: playbook.roles,
    front: front.value,
    look: shown.value,
    first: first.value,
    second: second.value,
    turn: call.turn,
    coverage: coverage.value,
  });
}

function find<Item extends { readonly id: string }>(
  items: readonly Item[],
  id: Item['id'],
  path: string,
): Result<Item, Refusal> {
  const item = items.find((each) => each.id === id);
  if (item !== undefined) return ok(item);
  return refused({ path, found: quoted(id), expected: 'the id of something in this playbook' });
}
