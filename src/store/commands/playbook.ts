import { ok, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import type { CommandProblem } from '../problems.ts';
import { keptName } from './names.ts';

/** Gives the playbook another name: the team's. */
export function renamePlaybook(playbook: Playbook, args: { readonly name: string }): Result<Playbook, CommandProblem> {
  const name = keptName(args.name);
  return name.ok ? ok({ ...playbook, team: { ...playbook.team, name: name.value } }) : name;
}
