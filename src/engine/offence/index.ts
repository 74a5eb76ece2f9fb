/** The offence's side by textbook rule: protections against a rush, run concepts with the gaps they make. */
export * from '../offenceVocabulary.ts';
export type * from '../types/protections.ts';
export type * from '../types/runs.ts';
export type { ProtectionInput, ProtectionResult, ProtectionScheme, Rusher, Threat } from './protections/types.ts';
export { protect } from './protections/protect.ts';
export type { OptionMan } from './runs/types.ts';
export { runConcept } from './runs/runConcept.ts';
export { findMan, readMan } from './runs/readMan.ts';
export { optionDuties } from './runs/optionDuties.ts';
