import { ok, refused, type Result } from '../base/index.ts';
import {
  checkOut,
  readLook,
  type Call,
  type CheckedOut,
  type Look,
  type LookId,
  type Place,
  type Setup,
} from '../engine/index.ts';
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
  const shown = find(playbook.looks, look, 'look');
  if (!shown.ok) return shown;
  const { level } = playbook.team;
  const asRun = asItIsRun(playbook, call, shown.value, spot);
  const parts = partsOf(playbook, asRun.call);
  if (!parts.ok) return parts;
  const { turn, combination, waivers, rushers } = asRun.call;
  return ok({
    level,
    spot,
    roles: playbook.roles,
    look: shown.value,
    ...parts.value,
    turn,
    combination,
    waivers,
    dictionary: playbook.dictionary,
    checkOut: asRun.row,
    rushers: rushers ?? (parts.value.second === null ? parts.value.first.rushers : null),
  });
}

/** A call after its check-out table; few calls have one, and only then it matters what the look is like. */
function asItIsRun(playbook: Playbook, call: Call, look: Look, spot: Place): CheckedOut {
  const { checkOuts, calls, team } = playbook;
  if (!checkOuts.some((table) => table.call === call.id)) return { call, row: null };
  return checkOut(call, checkOuts, calls, readLook(look, team.level, spot));
}

type Parts = Pick<Setup, 'front' | 'first' | 'second' | 'coverage' | 'secondCoverage'>;

/** What a call names, found in the playbook. */
function partsOf(playbook: Playbook, call: Call): Result<Parts, Refusal> {
  const front = find(playbook.fronts, call.front, 'call.front');
  if (!front.ok) return front;
  const first = find(playbook.pressures, call.first, 'call.first');
  if (!first.ok) return first;
  const second = call.second === null ? ok(null) : find(playbook.pressures, call.second, 'call.second');
  if (!second.ok) return second;
  const coverage = find(playbook.coverages, call.coverage ?? first.value.coverage, 'call.coverage');
  if (!coverage.ok) return coverage;
  const own = second.value === null ? null : (call.coverage ?? second.value.coverage);
  const secondCoverage = own === null ? ok(null) : find(playbook.coverages, own, 'call.coverage');
  if (!secondCoverage.ok) return secondCoverage;
  return ok({
    front: front.value,
    first: first.value,
    second: second.value,
    coverage: coverage.value,
    secondCoverage: secondCoverage.value,
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
