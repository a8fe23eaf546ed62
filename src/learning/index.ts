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
  StrayNote,
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
export type { Comparison, Lesson, LessonTopic } from './lesson.ts';
export { type LevelNames, whatTheLogTaught } from './lessons.ts';
export { comparison } from './trial-lesson.ts';
export { misfitSaid } from './misfit-said.ts';
export { clearAt, cupsUntilClear, type Difference, differenceOf } from './trial.ts';
export { bookOutlook, type CupOutlook, foretoldNotes, foretoldSights, type LaterTakes } from './foretell.ts';
export { crps, logScore, rankAmong } from './scores.ts';
export { foundersUntilShare, type Sighting, sightingsOf } from './sightings.ts';
