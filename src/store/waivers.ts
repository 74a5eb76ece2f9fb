import { evidenceOf, type Analysis, type Call, type Finding, type Waiver } from '../engine/index.ts';
import { sameParts } from './board.ts';
import type { Waived } from './commands/waivers.ts';
import type { AppState } from './types.ts';

/** Where a reason to live with a finding of the board is kept, or why there is no such place. */
export type WaiverHome =
  | { readonly kind: 'call'; readonly call: Call }
  /** What is on the board is no kept call. */
  | { readonly kind: 'not-kept' }
  /** It was one, but has been changed since: its findings are not those of the kept call. */
  | { readonly kind: 'changed'; readonly call: Call };

/** The kept call that is run in this look: the board's, or the one that it is checked to. */
export function waiverHome({ playbook, board }: AppState, { setup }: Analysis): WaiverHome {
  const action = setup.checkOut?.action;
  const id = action?.kind === 'check-to' ? action.call : board.call;
  const call = playbook.calls.find((each) => each.id === id);
  if (call === undefined) return { kind: 'not-kept' };
  return call.id !== board.call || sameParts(call, board) ? { kind: 'call', call } : { kind: 'changed', call };
}

/** What a waiver of this finding would be about. */
export function aboutOf({ setup }: Analysis, finding: Pick<Finding, 'rule' | 'who' | 'gaps' | 'players'>): Waived {
  return { rule: finding.rule, look: setup.look.id, evidence: evidenceOf(finding) };
}

/** What the coach lives with in this look though nothing is found of it any more: its evidence has changed. */
export function lapsedWaivers({ setup, findings }: Analysis): readonly Waiver[] {
  return setup.waivers.filter(
    ({ rule, look, evidence }) =>
      look === setup.look.id && !findings.some((finding) => finding.rule === rule && evidenceOf(finding) === evidence),
  );
}
