export { cross, type CrossInput, mostGenerations } from './cross.ts';
export type { CrossAnswer, CrossGeneration } from './cross-answer.ts';
export { kosambi, type MapDistance } from './layout.ts';
export { type Locus, unknownRecessive } from './locus.ts';
export { formatGenotype, type ParsedGenotype, parseGenotype, type Sex } from './notation.ts';
export type { ParentRule, Selection } from './selection.ts';
export {
  type CleanChance,
  type CleanChanceInput,
  cleanChance,
  fliesToLookAt,
  noneSeenUpperShare,
} from './clean-chance.ts';
export { type ContaminationInput, contamination } from './contamination.ts';
export { type DriftAnswer, type DriftGeneration, type DriftInput, drift } from './drift.ts';
