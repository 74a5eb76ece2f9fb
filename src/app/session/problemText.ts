import { assertNever } from '../../base/index.ts';
import { refusalText } from '../../document/index.ts';
import type { CommandProblem } from '../../store/index.ts';
import { shownName } from '../parts/shownName.ts';

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
      return `Not done: it is used by ${problem.by.map(shownName).join(', ')}`;
    case 'checked-to':
      return `Not done: the call ${problem.by} checks to this one`;
    case 'checks-to-itself':
      return 'Not done: a call cannot check to itself; pick another call';
    case 'reason-short':
      return `Not done: say why in at least ${problem.least} characters`;
    case 'no-longer':
      return 'Not done: this no longer fits, or it is so already';
    case 'last-step':
      return 'Not done: the call side needs at least one step';
    case 'not-savable':
      return `Not done: ${problem.refusals.map(refusalText).join('; ')}`;
    case 'one-needed':
      return `Not done: a look needs one ${problem.what}; make another man the ${problem.what} instead`;
    case 'twice':
      return 'Not done: it is in the list already';
    case 'not-eleven':
      return `Not done: a front has eleven men, and ${problem.found} are picked`;
    case 'plays-already':
      return 'Not done: he plays in this front already';
    case 'last-one':
      return `Not done: one ${problem.what} must stay`;
    case 'two-gaps-needed':
      return 'Not done: a man who two-gaps needs two gaps';
    case 'not-over-ball':
      return 'Not done: he has no side of his own, so a rule can only put him over the ball';
    case 'letter-length':
      return 'Not done: one or two letters, as drawn on the board';
    case 'group-told':
      return `Not done: ${problem.by.join(', ')} would speak of men nobody is one of any more`;
    case 'side-undecided':
      return `Not done: ${problem.whose} would not know his side in every look. The last step must always decide: left, right, or a man who has a side`;
    case 'side-circle':
      return `Not done: ${problem.whose} would wait for a man who waits for him`;
    case 'read-only':
      return 'Not done: this playbook is open in another tab, and only that one may change it';
    default:
      return assertNever(problem);
  }
}
