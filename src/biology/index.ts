export type {
  AdultLife,
  CrowdingLife,
  CultureConditions,
  CultureCourse,
  CultureDates,
  FounderLife,
  HarvestRule,
  LayingLife,
  MediumLife,
  MiteLife,
  MoistureSpell,
  StrainLife,
} from './culture.ts';
export { constantCurve, type Curve, valueAt } from './curve.ts';
export { type Briere2, briere2 } from './rates/briere-2.ts';
export { daysUntil, meanTemperatureC, type PaceTable, paceTable } from './life/pace.ts';
export { cultureCourse } from './life/course.ts';
export { adultSurvival, eggsPerFemaleDay } from './life/adult-tables.ts';
export { cultureDates, throwOutAge } from './yield/dates.ts';
export { heldDailySurvival } from './yield/held-survival.ts';
export { type BestFounders, bestFounders } from './yield/best-founders.ts';
export { scaledStrain, type StrainScale } from './scaled-strain.ts';
