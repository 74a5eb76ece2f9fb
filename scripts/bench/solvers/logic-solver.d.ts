/** The part of logic-solver that is used here; the package brings no types. */
declare module 'logic-solver' {
  export interface Formula {
    readonly type?: string;
  }
  export type Operand = string | Formula;
  export interface Solution {
    readonly getTrueVars: () => readonly string[];
  }
  export class Solver {
    require(...formulas: readonly Operand[]): void;
    solveAssuming(assumption: Operand): Solution | null;
  }
  const Logic: {
    readonly Solver: typeof Solver;
    readonly and: (...operands: readonly Operand[]) => Formula;
    readonly or: (...operands: readonly Operand[]) => Formula;
    readonly atMostOne: (...operands: readonly Operand[]) => Formula;
    readonly exactlyOne: (...operands: readonly Operand[]) => Formula;
    readonly TRUE: string;
    readonly FALSE: string;
  };
  export default Logic;
}
