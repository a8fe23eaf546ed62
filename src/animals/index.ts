export { type AnimalNumbers, animalLimits, checkAnimal } from './animal-check.ts';
export { type Appetite, type FeedingSeen, type LeftOverWord, learnedAppetite, leftOverShares } from './appetite.ts';
export { type DustedFeeding, type DustingRule, dustingPlan } from './dusting-plan.ts';
export {
  type EnergyNeed,
  type EnergyNeedInput,
  energyNeed,
  growthCostOfPrey,
  growthJoulePerG,
  usualActivity,
} from './energy-need.ts';
export type { FeedingGroup, FeedingPeriod, UncertainArrival } from './feeding-period.ts';
export { assimilatedShare, type FlyAnalysis, grossJoulePerMg, usableJoulePerMg } from './fly-energy.ts';
export {
  dustLeftShare,
  dustMgFor,
  type FlyNutrients,
  type FoodQuality,
  foodQuality,
  type QualityFeeding,
  type Supplement,
} from './food-quality.ts';
export { atWarmth, gainGPerDay, type GrowthCurve, growthCurve, massAtG } from './growth.ts';
export { type CountChange, countByDay, expectedHatch, type HatchInput } from './hatch.ts';
export { covers, type EnergyEquation, metabolicRateW, q10Factor } from './metabolic-rate.ts';
export { type LearnedRation, learnedBounds, learnedRation, type RecordedFeeding } from './learned-ration.ts';
export { needDraws, type NeedDrawsInput } from './need-draws.ts';
export { type FlySize, type PreyChoice, type PreyInput, preyFor } from './prey.ts';
export { type Range, rangeOf } from './range.ts';
export {
  compareRations,
  type FlyMass,
  fliesForMg,
  type PracticeRation,
  practiceReckoning,
  type RationComparison,
  type RationReckoning,
} from './ration.ts';
export { type Stage, type StagePlan, type StagesInput, stagePeriods, stagePlan } from './stages.ts';
export { type HungryGroup, type Stretch, type StretchShare, stretch } from './stretch.ts';
export { type StrainNeed, type WantedFliesInput, wantedFlies } from './wanted-flies.ts';
export { type FlyMassSpread, fliesInPot, mixedFlyMass, type WeighedFlies } from './weigh-flies.ts';
export {
  type WeightCheck,
  type WeightExpectation,
  type Weighing,
  weightCheck,
  type WeightVerdict,
} from './weighing.ts';
