/** The only door of the engine. Everything behind it is pure: readonly in, readonly out, the same input the same bytes. */
export * from './vocabulary.ts';
export * from './types/index.ts';
export { analyse } from './analyse.ts';
export * from './brief/index.ts';
export { because, datum, fact } from './because.ts';
export { standardChecks } from './checks/standardChecks.ts';
export type { Check } from './checks/defineCheck.ts';
export { ruleAt } from './align/ruleAt.ts';
export { checkOut, type CheckedOut } from './checkOut.ts';
export { formationClasses } from './facts/formationClass.ts';
export * from './edits/index.ts';
export { evidenceOf } from './waivers.ts';
export { fieldAt, type FieldMarks } from './facts/field.ts';
export {
  DEFENCE_DEPTHS,
  defenceLandmarks,
  LINE_SPLIT,
  OFFENCE_DEPTHS,
  offenceLandmarks,
  type Landmark,
  type Mate,
  type OffencePlace,
  type StandingMate,
} from './facts/landmarks.ts';
export { techniqueAt } from './align/technique.ts';
export { readLook } from './facts/readLook.ts';
export * from './offence/index.ts';
export { gapKey, gapsEqual } from './gaps.ts';
export * from './formations/index.ts';
export * from './move/index.ts';
export { mirrorLook, mirrorPlace, mirrorSetup, mirrorSide, mirrorX } from './mirror.ts';
export { gapNames, manNames, namingFor, receiverNames, zoneSideNames, type NamingContext } from './naming.ts';
export * from './notation/index.ts';
export * from './walkThrough/index.ts';
