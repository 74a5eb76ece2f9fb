export type * from './analysis.ts';
export type * from './because.ts';
export type * from './defence.ts';
export type * from './facts.ts';
export * from './ids.ts';
export type * from './job.ts';
export type * from './look.ts';
export type * from './pressure.ts';
export type * from './setup.ts';
