export {
  type CleanChance,
  type CleanChanceInput,
  cleanChance,
  fliesToLookAt,
  noneSeenUpperShare,
} from './clean-chance.ts';
export { type Contact, type ContactKind, contactsOf, type TracedCup } from './contacts.ts';
export { type ContaminationInput, contamination } from './contamination.ts';
export { cross, type CrossInput, mostGenerations } from './cross.ts';
export type { CrossAnswer, CrossGeneration } from './cross-answer.ts';
export { type DriftAnswer, type DriftGeneration, type DriftInput, drift } from './drift.ts';
export {
  effectiveSize,
  effectiveSizeOver,
  type Founders,
  generationsUntilLoss,
  lossOfVariation,
} from './effective-size.ts';
export { kosambi, type MapDistance, mostLoci } from './layout.ts';
export { type BackupAdvice, backupCups, leastRelatedPair, type RefreshAdvice, refreshAdvice } from './line-advice.ts';
export { type Locus, unknownRecessive } from './locus.ts';
export {
  type Assumption,
  type MixingAdvice,
  type MixingInput,
  mixingAdvice,
  type StrainToMix,
} from './mixing-advice.ts';
export { type MixtureInput, mixture } from './mixture.ts';
export { formatGenotype, type ParsedGenotype, parseGenotype, type Sex } from './notation.ts';
export { type Pedigree, type PedigreeCup, type PedigreeNode, pedigree } from './pedigree.ts';
export { type Quarantine, type QuarantineStep, quarantine } from './quarantine.ts';
export {
  type RescueInput,
  type RescuePlan,
  type RescueStep,
  rescueFromStranger,
  type UnmixInput,
  type UnmixPlan,
  unmix,
} from './rescue.ts';
export type { ParentRule, Selection } from './selection.ts';
export { type Competitor, type Takeover, takeover } from './takeover.ts';
export { type VirginWindowPoint, virginWindowHours } from './virgin-window.ts';
export { type WingCheck, type WingCheckInput, type WingEffect, wingCheck } from './wing-check.ts';
