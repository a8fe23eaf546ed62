export type {
  AwaitedCups,
  CupCurve,
  CupUncertainty,
  ExistingCup,
  NeedGroup,
  PlanningProblem,
  PurchaseTerms,
  StrainProblem,
} from './problem.ts';
export {
  type BandsByDay,
  type ForecastOptions,
  type ForecastResult,
  forecastSupply,
  type StrainForecast,
} from './forecast/forecast-supply.ts';
export type { PurchaseMode } from './plan/buying.ts';
export type { PolicyParameters } from './plan/feedback-policy.ts';
export type { Habit } from './plan/habit-policy.ts';
export { type HabitOptions, type HabitPlan, habitPlan } from './plan/habit-plan.ts';
export { cupsUnderCertainty } from './plan/certain-plan.ts';
export {
  type Carrying,
  type ChosenMove,
  chooseMoves,
  type Lack,
  lacksAhead,
  movesThatPay,
  withCarried,
} from './plan/choose-moves.ts';
export { movesPricedDays } from './plan/move-trial.ts';
export type { PlannedJob, PlannedJobKind } from './plan/plan-jobs.ts';
export { type PlanOptions, type PlanResult, planSupply, policyJobs } from './plan/plan-supply.ts';
export { type Reason, type ReasonCode } from './plan/reason.ts';
export type { ShortSpell } from './plan/short-spells.ts';
export { type TunedPolicy, type TuneOptions, tunePolicy } from './plan/tune-policy.ts';
export { type PolicyChoice, type Verification, type VerifyOptions, verifyPolicy } from './plan/verify-policy.ts';
export {
  type ForesightBound,
  type ForesightBoundOptions,
  foresightBound,
  type Solve,
} from './program/foresight-bound.ts';
export { type GapSplit, type GapSplitOptions, gapSplit } from './program/gap-split.ts';
export { type LotSizing, leastLotCost, lotSizingModel } from './program/lot-sizing.ts';
