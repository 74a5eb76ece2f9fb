/** The whole menu at once: every call, and every pair of pressures, against every look at every ball spot. */
export * from './types.ts';
export * from './filter.ts';
export * from './grid.ts';
export * from './cells.ts';
export { fitsFront } from './fitsFront.ts';
export * from './ranking.ts';
export { summarise, summaryText } from './summary.ts';
export { createMenuJudge, summaryOf, type MenuJudge } from './judge.ts';
export { keepSame } from './keepSame.ts';
export { createNumbers, keysOf, type KeyOf, type NumberOf } from './keys.ts';
export { shareLooks, type LookShares } from './shares.ts';
export { linesOf, type MenuLine } from './lines.ts';
export { createWorkOrder, type WorkOrder } from './workOrder.ts';
