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
export { type DegreeDayRate, degreeDay } from './rates/degree-day.ts';
export { logistic, type LogisticRate } from './rates/logistic.ts';
export { developmentDays } from './rates/rate-summation.ts';
export { type Schoolfield6, schoolfield6 } from './rates/schoolfield-6.ts';
export { type SharpeDeMichele, sharpeDeMichele } from './rates/sharpe-demichele.ts';
export { taylor, type TaylorRate } from './rates/taylor.ts';
export { daysUntil, meanTemperatureC, type PaceTable, paceTable } from './life/pace.ts';
export { cultureCourse } from './life/course.ts';
export { expectedCourse } from './life/expected-course.ts';
export { adultSurvival, eggsPerFemaleDay } from './life/adult-tables.ts';
export { cultureDates, throwOutAge } from './yield/dates.ts';
export { ordinaryFounderAge } from './yield/founder-age.ts';
export { heldDailySurvival } from './yield/held-survival.ts';
export { type BestFounders, bestFounders } from './yield/best-founders.ts';
export { type TotalBand, totalBand } from './yield/chance.ts';
export {
  type EmergenceBySex,
  type EmergenceGate,
  emergenceByHour,
  emergenceBySex,
} from './yield/emergence-by-sex.ts';
export { type FailureCourse, failureCourse, miteTroubleAge, ordinaryFailure } from './yield/failure-hazard.ts';
export { fliesByWeight, flyMassMg, type Sex } from './yield/fly-mass.ts';
export { type GrowthRate, growthRate, rateOfIncrease } from './yield/growth-rate.ts';
export { scaledStrain, type StrainScale } from './scaled-strain.ts';
