import { printRuleJob, type LookTest, type PreSnap, type TellCase, type Who } from '../../../src/engine/index.ts';
import type { Edit, JobChange } from '../../../src/engine/edits/index.ts';

/** `end-call` or `@N`, as a test writes it. */
const whoText = (who: Who): string => (who.kind === 'role' ? `@${who.role}` : `${who.group}-${who.side}`);

function testText(test: LookTest): string {
  switch (test.kind) {
    case 'backs':
      return `backs ${test.compare} ${test.count}`;
    case 'bodies':
    case 'receivers':
      return `${test.kind} ${test.side} ${test.compare} ${test.count}`;
    case 'field':
    case 'back':
      return `${test.kind} ${test.side}`;
  }
}

const caseText = ({ when, basis, job }: TellCase): string =>
  `${when.length === 0 ? '' : `if ${when.map(testText).join(' and ')}: `}${basis} ${printRuleJob(job)}`;

function changeText(to: JobChange): string {
  if (to.kind === 'other') return `as the other: ${to.cases.map(caseText).join(' / ')}`;
  const at = to.at === null ? '' : `case ${to.at}: `;
  const { basis, job, preSnap } = to.told;
  return `${at}${basis} ${printRuleJob(job)}${preSnapText(preSnap)}`;
}

const preSnapText = (preSnap: PreSnap | null): string => {
  if (preSnap === null) return '';
  return preSnap.kind === 'heels' ? `, on the heels of ${whoText(preSnap.of)}` : `, ${preSnap.depth} deep`;
};

/** An edit in one line: what a row of a test table says. Everything an edit changes is in its line. */
export function printEdit(edit: Edit): string {
  switch (edit.kind) {
    case 'turn':
      return `turn ${edit.turn}`;
    case 'swap':
      return 'swap';
    case 'coverage':
      return `play ${edit.coverage.id}`;
    case 'rushers':
      return `${edit.count} come`;
    case 'leave-out':
      return `leave ${edit.pressure} out against ${edit.look.id}`;
    case 'tie-break':
      return edit.step.kind === 'fixed'
        ? `${edit.pressure} else ${edit.step.side}`
        : `${edit.pressure} else ${edit.step.toward} ${edit.step.kind === 'role' ? edit.step.role : edit.step.by}`;
    case 'duty':
      return `${edit.coverage.id} ${whoText(edit.who)}: ${printRuleJob(edit.job)}`;
    case 'stand':
      return `stand ${edit.role} at ${edit.x},${edit.y} against ${edit.look.id}`;
    case 'untell':
      return `${edit.pressure} ${whoText(edit.who)}: nothing`;
    case 'job':
      return `${edit.pressure} ${whoText(edit.who)}: ${changeText(edit.to)}`;
    case 'surface': {
      const { surface, told } = edit;
      const where = `${surface.compare} ${surface.count} ${surface.side}`;
      const job = told === null ? 'nothing' : `${told.basis} ${printRuleJob(told.job)}`;
      return `${edit.pressure} ${whoText(edit.who)} on ${where}: ${job}`;
    }
  }
}
