import { assertNever } from '../../base/index.ts';
import { refusalText } from '../../document/index.ts';
import type { CommandProblem } from '../../store/index.ts';

/** Why a change was not made, as the coach reads it. */
export function problemText(problem: CommandProblem): string {
  switch (problem.kind) {
    case 'not-there':
      return `Not done: that ${problem.what} is not in this playbook`;
    case 'name-empty':
      return 'Not done: a name is needed';
    case 'name-taken':
      return `Not done: there is already a ${problem.what} named ${problem.name}`;
    case 'in-use':
      return `Not done: it is used by ${problem.by.map((name) => (name === '' ? '(no name)' : name)).join(', ')}`;
    case 'checked-to':
      return `Not done: the call ${problem.by} checks to this one`;
    case 'reason-short':
      return `Not done: say why in at least ${problem.least} characters`;
    case 'no-longer':
      return 'Not done: this no longer fits, or it is so already';
    case 'not-savable':
      return `Not done: ${problem.refusals.map(refusalText).join('; ')}`;
    case 'read-only':
      return 'Not done: this playbook is open in another tab, and only that one may change it';
    default:
      return assertNever(problem);
  }
}
