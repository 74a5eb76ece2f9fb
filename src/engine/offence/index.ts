/** The offence's side by textbook rule: protections against a rush, run concepts with the gaps they make. */
export {
  BACK_JOBS,
  PROTECTION_SCHEMES,
  PROTECTIONS,
  TIGHT_END_JOBS,
  type BackJob,
  type Block,
  type BlockBy,
  type Hot,
  type IdleBlocker,
  type Mismatch,
  type PassOff,
  type Protection,
  type ProtectionId,
  type ProtectionInput,
  type ProtectionPicture,
  type ProtectionResult,
  type ProtectionScheme,
  type ProtectionSchemeName,
  type Rusher,
  type Threat,
  type TightEndJob,
  type UnblockedRusher,
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
