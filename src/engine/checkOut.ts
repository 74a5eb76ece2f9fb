import { formationClasses } from './facts/formationClass.ts';
import type { Call, CheckOut, CheckOutRow, LookFacts } from './types/index.ts';

/** A call after its check-out table: what is run against this formation, and the row that says so (null: as drawn). */
export interface CheckedOut {
  readonly call: Call;
  readonly row: CheckOutRow | null;
}

/**
 * What a call becomes against a look: the first of the look's classes that its table names decides. A call that checks to
 * another one is that other one as drawn; its own table is not asked, so tables cannot chase each other.
 */
export function checkOut(
  call: Call,
  tables: readonly CheckOut[],
  calls: readonly Call[],
  facts: LookFacts,
): CheckedOut {
  const rows = tables.find((table) => table.call === call.id)?.rows ?? [];
  for (const formation of formationClasses(facts)) {
    const row = rows.find((each) => each.formation === formation);
    if (row !== undefined) return { call: act(call, row, calls), row };
  }
  return { call, row: null };
}

function act(call: Call, { action }: CheckOutRow, calls: readonly Call[]): Call {
  switch (action.kind) {
    case 'run':
      return call;
    case 'turn':
      return { ...call, turn: call.turn === 'opposite' ? 'same' : 'opposite' };
    case 'swap':
      return call.second === null ? call : { ...call, first: call.second, second: call.first };
    case 'coverage':
      return { ...call, coverage: action.coverage };
    case 'check-to':
      return calls.find((each) => each.id === action.call) ?? call;
  }
}
