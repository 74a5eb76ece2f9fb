import type { Comparison } from '../vocabulary.ts';
import type { LookTest } from '../types/index.ts';
import { findSide, type NameContext } from './names.ts';

function compares(found: number, compare: Comparison, count: number): boolean {
  switch (compare) {
    case 'at-least':
      return found >= count;
    case 'at-most':
      return found <= count;
    case 'exactly':
      return found === count;
  }
}

/** Whether one condition holds. A condition about a side that does not exist here (a middle man's own) does not. */
function testHolds(test: LookTest, context: NameContext): boolean {
  if (test.kind === 'backs') return compares(context.facts.backs.length, test.compare, test.count);
  const side = findSide(test.side, context);
  if (!side.ok) return false;
  switch (test.kind) {
    case 'bodies':
      return compares(context.facts.surface[side.value].length - 1, test.compare, test.count);
    case 'receivers': {
      const count = context.facts.receivers.filter((each) => each.eligible && each.side === side.value).length;
      return compares(count, test.compare, test.count);
    }
    case 'field':
    case 'back':
      return context.facts.strengths[test.kind].side === side.value;
  }
}

/** Whether all conditions of a rule hold in this look; none means always. */
export function allHold(tests: readonly LookTest[], context: NameContext): boolean {
  return tests.every((test) => testHolds(test, context));
}
