/** The questions put to a solver of boolean formulas (logic-solver, MIT, which is MiniSat inside). */
import Logic, { type Operand, type Solver } from 'logic-solver';
import type { Sharing, TwoTellings } from './questions.ts';

/** A solver with the rules that hold in every check already in it; what is asked comes as assumptions. */
export interface SatSolver {
  /** Whether all items can be shared out. */
  readonly allShared: (sharing: Sharing) => boolean;
  /** Whether one man can do all he is told. */
  readonly canDoAll: (man: TwoTellings) => boolean;
}

/** More places than any check has: eleven men, those with two gaps twice, and fourteen items. */
const [HANDS, ITEMS] = [22, 14];

/** Formulas stay in a solver for good, and it slows down: after so many questions a fresh one is taken. */
const QUESTIONS = 400;

const takes = (hand: number, item: number): string => `hand ${hand} takes ${item}`;

function freshSolver(): Solver {
  const solver = new Logic.Solver();
  for (let hand = 0; hand < HANDS; hand += 1) {
    solver.require(Logic.atMostOne(...Array.from({ length: ITEMS }, (_, item) => takes(hand, item))));
  }
  for (let item = 0; item < ITEMS; item += 1) {
    solver.require(Logic.atMostOne(...Array.from({ length: HANDS }, (_, hand) => takes(hand, item))));
  }
  return solver;
}

/** A solver of its own. */
export function createSat(): SatSolver {
  let solver = freshSolver();
  let asked = 0;
  const holds = (formulas: readonly Operand[]): boolean => {
    asked += 1;
    if (asked % QUESTIONS === 0) solver = freshSolver();
    return formulas.length === 0 || solver.solveAssuming(Logic.and(...formulas)) !== null;
  };
  return {
    allShared: ({ items, men }) => {
      const hands = men.flatMap(({ may, most }) => Array.from({ length: most }, () => may));
      if (hands.length > HANDS || items > ITEMS) throw new Error('More than there are places for');
      return holds(
        Array.from({ length: items }, (_, item) => {
          const who = hands.flatMap((may, hand) => (may.includes(item) ? [takes(hand, item)] : []));
          return who.length === 0 ? Logic.FALSE : Logic.or(...who);
        }),
      );
    },
    canDoAll: ({ told }) => {
      const gaps = [...new Set(told.flatMap((each) => each.gaps))];
      const duties = [...new Set(told.map(({ duty }) => duty))];
      const says = told.flatMap((each): readonly Operand[] => [
        ...gaps.map((gap) => (each.gaps.includes(gap) ? `his ${gap}` : `-his ${gap}`)),
        `does ${each.duty}`,
      ]);
      return holds([...says, Logic.atMostOne(...duties.map((duty) => `does ${duty}`))]);
    },
  };
}
