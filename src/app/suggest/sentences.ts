import { assertNever } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import { describeEdit, type Edit } from '../../engine/index.ts';
import { fill, type Lexicon } from '../../report/index.ts';
import { capital } from '../parts/capital.ts';

/** A suggestion as the coach reads it. */
export interface Sentence {
  /** "In Weir tell N another job: slant to the A gap right". */
  readonly text: string;
  /** What else it changes: "changes Weir for every call that uses it (7)". */
  readonly reach: string;
}

/** A suggested edit in words, and how far it reaches. */
export function sentenceOf(edit: Edit, lexicon: Lexicon, playbook: Playbook): Sentence {
  const { text, because } = fill(describeEdit(edit), lexicon);
  const more = because.map((each) => lowered(each.text)).join('; ');
  return { text: capital(more === '' ? text : `${text}: ${more}`), reach: reachOf(edit, lexicon, playbook) };
}

function reachOf(edit: Edit, lexicon: Lexicon, { calls, pressures }: Playbook): string {
  switch (edit.kind) {
    case 'turn':
    case 'swap':
    case 'coverage':
    case 'rushers':
      return 'changes this call only';
    case 'stand':
      return 'in this look only, for every call out of this front';
    case 'duty': {
      const by = new Set(pressures.filter(({ coverage }) => coverage === edit.coverage.id).map(({ id }) => id));
      const using = calls.filter((call) =>
        call.coverage === null
          ? [call.first, call.second].some((id) => id !== null && by.has(id))
          : call.coverage === edit.coverage.id,
      );
      return `changes the coverage ${edit.coverage.name} for every call that plays it${counted(using.length)}`;
    }
    case 'job':
    case 'untell':
    case 'surface':
    case 'leave-out':
    case 'tie-break': {
      const using = calls.filter(({ first, second }) => first === edit.pressure || second === edit.pressure);
      const name = lexicon.pressure(edit.which);
      return `changes the pressure ${name} for every call that uses it${counted(using.length)}`;
    }
    default:
      return assertNever(edit);
  }
}

function counted(calls: number): string {
  return calls === 0 ? '' : ` (${calls} kept)`;
}

/** The start of a sentence inside another; a letter that stands alone, as of a gap, stays. */
function lowered(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.slice(0, 1).toLowerCase() + text.slice(1) : text;
}
