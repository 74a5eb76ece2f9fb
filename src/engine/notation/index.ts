/** One-line notations for looks, jobs, calls and results, so that tests and bug reports are tables of football. */
export { parseCallLine, printCallLine, type CallLine } from './call.ts';
export { printAssignment, printEleven } from './eleven.ts';
export { parseJob, parseRuleJob, printJob, printRuleJob } from './job.ts';
export { parseLook, printLook, STANDARD_LINE } from './look.ts';
export type { NotationProblem } from './problem.ts';
