/** What a playbook is written with, and the one a coach starts his own from. Pure: values of the engine's own types. */
export * from './words.ts';
export * from './coverages/parts.ts';
export { DEEP_FOUR, QUARTERS, twoUnder } from './coverages/fourDeep.ts';
export { free, nobodyFree } from './coverages/man.ts';
export { byRole, HOOK, rolled, THREE_UNDER } from './coverages/threeDeep.ts';
export { bear, endsOutside, even, odd } from './fronts/fronts.ts';
export * from './fronts/spots.ts';
export { heavy } from './looks/heavy.ts';
export * from './looks/men.ts';
export { spread } from './looks/spread.ts';
export * from './pressures/menu.ts';
export { START_FRONTS, START_SIDES, startRoles, type StartFront, type StartSides } from './roles.ts';
export { startPlaybook, type StartAnswers, type StartProblem } from './startPlaybook.ts';
