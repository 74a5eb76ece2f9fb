import { refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import type { CallId, Waiver } from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { withCall } from './calls.ts';

/** The shortest reason that is one, in characters without the blanks around it. */
export const LEAST_REASON = 10;

/** What a waiver is about: the same rule, look and evidence are the same finding. */
export type Waived = Pick<Waiver, 'rule' | 'look' | 'evidence'>;

/** Lives with a finding on that kept call, for that reason. A reason given before is replaced. */
export function waive(
  playbook: Playbook,
  args: { readonly call: CallId; readonly about: Waived; readonly reason: string },
): Result<Playbook, CommandProblem> {
  const reason = args.reason.trim();
  if (reason.length < LEAST_REASON) return refused({ kind: 'reason-short', least: LEAST_REASON });
  const { rule, look, evidence } = args.about;
  return withCall(playbook, args.call, (call) => ({
    ...call,
    waivers: [...call.waivers.filter((each) => !isAbout(each, args.about)), { rule, look, evidence, reason }],
  }));
}

/** No longer lives with it; refused when he did not. */
export function takeBack(
  playbook: Playbook,
  args: { readonly call: CallId; readonly about: Waived },
): Result<Playbook, CommandProblem> {
  const waived = playbook.calls.find(({ id }) => id === args.call)?.waivers ?? [];
  if (!waived.some((each) => isAbout(each, args.about))) return refused({ kind: 'not-there', what: 'reason' });
  return withCall(playbook, args.call, (call) => ({
    ...call,
    waivers: call.waivers.filter((each) => !isAbout(each, args.about)),
  }));
}

function isAbout(waiver: Waived, about: Waived): boolean {
  return waiver.rule === about.rule && waiver.look === about.look && waiver.evidence === about.evidence;
}
