export { cross, type CrossInput, mostGenerations } from './cross.ts';
export type { CrossAnswer, CrossGeneration } from './cross-answer.ts';
export { kosambi, type MapDistance } from './layout.ts';
export { type Locus, unknownRecessive } from './locus.ts';
export { formatGenotype, type ParsedGenotype, parseGenotype, type Sex } from './notation.ts';
export type { ParentRule, Selection } from './selection.ts';
