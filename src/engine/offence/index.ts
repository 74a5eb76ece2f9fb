/** The offence's side by textbook rule: protections against a rush, run concepts with the gaps they make. */
export {
  BACK_JOBS,
  PROTECTION_SCHEMES,
  PROTECTIONS,
  TIGHT_END_JOBS,
  type BackJob,
  type Protection,
  type ProtectionId,
  type ProtectionSchemeName,
  type TightEndJob,
} from './protections/vocabulary.ts';
export type {
  Block,
  BlockBy,
  Hot,
  IdleBlocker,
  Mismatch,
  PassOff,
  ProtectionInput,
  ProtectionPicture,
  ProtectionResult,
  ProtectionScheme,
  Rusher,
  Threat,
  UnblockedRusher,
} from './protections/types.ts';
export { protect } from './protections/protect.ts';
export {
  FLOATING_KINDS,
  OPTION_PHASES,
  READ_REACTIONS,
  RUN_CONCEPT_WORDS,
  RUN_CONCEPTS,
  type FloatingKind,
  type OptionPhase,
  type ReadReaction,
  type RunConcept,
} from './runs/vocabulary.ts';
export type {
  FloatingGap,
  Lead,
  ManRule,
  OptionDuties,
  OptionMan,
  OptionRule,
  Puller,
  ReadOutcome,
  RunPicture,
} from './runs/types.ts';
export { runConcept } from './runs/runConcept.ts';
export { findMan, readMan } from './runs/readMan.ts';
export { optionDuties } from './runs/optionDuties.ts';
