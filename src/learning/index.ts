export type {
  Beliefs,
  CupBelief,
  CupEvidence,
  CupLook,
  CupSigns,
  DoubtfulNote,
  LearningInput,
  LearningPrior,
  LevelBelief,
  LogFit,
  Misfit,
  OffCourse,
  StrainBelief,
  StrainEvidence,
} from './evidence.ts';
export { learn } from './learn.ts';
export { type FullPrior, fullPrior, ordinaryPrior, wordBeginsAtFlies } from './priors.ts';
export { type KeptTable, TableMemory } from './table-memory.ts';
export { emergedBetween, runningTotal, warpedEmergence } from './warped-emergence.ts';
export { type Lesson, type LessonTopic, type LevelNames, whatTheLogTaught } from './lessons.ts';
export { clearAt, cupsUntilClear, type Difference, differenceOf } from './trial.ts';
