import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import {
  editCoverage,
  editFront,
  editPressure,
  type CallId,
  type Edit,
  type Front,
  type FrontId,
} from '../../engine/index.ts';
import { partsOf, sameParts } from '../board.ts';
import type { CommandProblem } from '../problems.ts';
import type { AppState, CallParts } from '../types.ts';
import { withCall } from './calls.ts';
import { withEntry } from './lists.ts';
import { keptPoint } from './points.ts';

/** Edits of what is called; all others change a part that other calls may use too. */
export type CallEdit = Extract<Edit, { readonly kind: 'turn' | 'swap' | 'coverage' | 'rushers' }>;

/** Whether an edit changes what is called, and nothing else. */
export function isCallEdit(edit: Edit): edit is CallEdit {
  return edit.kind === 'turn' || edit.kind === 'swap' || edit.kind === 'coverage' || edit.kind === 'rushers';
}

/** What an edit of the call makes of its parts; nothing where there is no second to turn or to swap with. */
export function editedParts<Parts extends CallParts>(parts: Parts, edit: CallEdit): Parts {
  switch (edit.kind) {
    case 'turn':
      return { ...parts, turn: edit.turn };
    case 'swap':
      return parts.second === null ? parts : { ...parts, first: parts.second, second: parts.first };
    case 'coverage':
      return { ...parts, coverage: edit.coverage.id };
    case 'rushers':
      return { ...parts, rushers: edit.count };
  }
}

/**
 * Where suggested edits belong. A call that is not kept the way it is called stands in no playbook, so what they change of it
 * is changed on the board: `parts` are those of the board then, else null. The rest changes the playbook.
 */
export function shareEdits(
  { playbook, board }: Pick<AppState, 'playbook' | 'board'>,
  edits: readonly Edit[],
): { readonly parts: CallParts | null; readonly rest: readonly Edit[] } {
  const kept = playbook.calls.find(({ id }) => id === board.call);
  const ofCall = edits.filter(isCallEdit);
  if (ofCall.length === 0 || (kept !== undefined && sameParts(kept, board))) return { parts: null, rest: edits };
  return {
    parts: ofCall.reduce(editedParts<CallParts>, partsOf(board)),
    rest: edits.filter((edit) => !isCallEdit(edit)),
  };
}

/** Where an edit is made: in that kept call, if it is one of the call, and in that front, if it stands somebody somewhere. */
export interface EditPlace {
  readonly call: CallId | null;
  readonly front: FrontId;
}

/**
 * Makes a suggested edit in the playbook, as the engine makes it in one look: a pressure or a shell changes for every call
 * that uses it. Refused when what it changes is not there, or no longer as it was.
 */
export function applySuggestion(
  playbook: Playbook,
  args: EditPlace & { readonly edit: Edit },
): Result<Playbook, CommandProblem> {
  const { edit } = args;
  switch (edit.kind) {
    case 'turn':
    case 'swap':
    case 'coverage':
    case 'rushers':
      return inCall(playbook, args.call, edit);
    case 'stand':
      return standByHand(playbook, args.front, edit);
    case 'duty': {
      const coverages = withEntry(
        playbook.coverages,
        edit.coverage.id,
        (coverage) => fitting(editCoverage(coverage, edit)),
        { kind: 'not-there', what: 'coverage' },
      );
      return coverages.ok ? ok({ ...playbook, coverages: coverages.value }) : coverages;
    }
    default: {
      const pressures = withEntry(
        playbook.pressures,
        edit.pressure,
        (pressure) => fitting(editPressure(pressure, edit)),
        { kind: 'not-there', what: 'pressure' },
      );
      return pressures.ok ? ok({ ...playbook, pressures: pressures.value }) : pressures;
    }
  }
}

/** Several suggested edits as one change; refused when one of them is. */
export function applySuggestions(
  playbook: Playbook,
  args: EditPlace & { readonly edits: readonly Edit[] },
): Result<Playbook, CommandProblem> {
  const { edits, ...place } = args;
  return edits.reduce<Result<Playbook, CommandProblem>>(
    (done, edit) => (done.ok ? applySuggestion(done.value, { edit, ...place }) : done),
    ok(playbook),
  );
}

function inCall(playbook: Playbook, id: CallId | null, edit: CallEdit): Result<Playbook, CommandProblem> {
  const call = playbook.calls.find((each) => each.id === id);
  if (call === undefined) return refused({ kind: 'not-there', what: 'call' });
  const parts = editedParts<CallParts>(call, edit);
  const { first } = parts;
  if (first === null) return refused({ kind: 'not-there', what: 'pressure' });
  return withCall(playbook, call.id, (kept) => ({ ...kept, ...parts, front: kept.front, first }));
}

function standByHand(
  playbook: Playbook,
  front: FrontId,
  edit: Extract<Edit, { readonly kind: 'stand' }>,
): Result<Playbook, CommandProblem> {
  const fronts = withEntry(
    playbook.fronts,
    front,
    (each): Result<Front, CommandProblem> => fitting(editFront(each, { ...edit, ...keptPoint(edit) })),
    { kind: 'not-there', what: 'front' },
  );
  return fronts.ok ? ok({ ...playbook, fronts: fronts.value }) : fronts;
}

/** The engine's reason is about one look; to the coach it only matters that nothing was done. */
function fitting<Part>(edited: Result<Part, unknown>): Result<Part, CommandProblem> {
  return edited.ok ? edited : refused({ kind: 'no-longer' });
}
