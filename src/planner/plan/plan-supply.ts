/**
 * The plan: the policy tuned to the household, its jobs in the mean world, and what it promises in many
 * worlds in which it goes on deciding from what a keeper would see.
 */
import { grouped } from '../forecast/cup-groups.ts';
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import { quickLowerBound } from '../program/quick-lower-bound.ts';
import { cupsUnderCertainty } from './certain-plan.ts';
import type { PurchaseMode } from './buying.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import { type PlannedJob, planJobs } from './plan-jobs.ts';
import { startUpOf } from './start-up.ts';
import { type TuneOptions, tunePolicy } from './tune-policy.ts';
import { policyOf, type Verification, verifyPrepared } from './verify-policy.ts';

export interface PlanOptions {
  /** Worlds in which the plan is judged. */
  scenarios: number;
  /** Days whose jobs are firm; 14 unless given. */
  firmDays?: number;
  /** Parameters to use as they are, instead of tuning. */
  parameters?: PolicyParameters;
  tune?: TuneOptions;
  /** Which purchases are allowed; `any` unless given. */
  purchases?: PurchaseMode;
}

export interface PlanResult {
  seed: number;
  scenarios: number;
  jobs: PlannedJob[];
  /** Cups started at home over the horizon, mean over worlds. */
  culturesPlanned: number;
  boughtCultures: number;
  sessions: number;
  /** No policy can need fewer cups in these worlds; see program/quick-lower-bound.ts. */
  lowerBound: number;
  /** Cups, bought ones too, that the same rules would need were nothing uncertain; see certain-plan.ts. */
  cupsUnderCertainty: number | null;
  serviceByDay: { strain: string; service: Float64Array; meanMissingFlies: Float64Array }[];
  /** Worst judged day with its standard error; null when no day is judged. */
  worstDay: Verification['worstDay'];
  holds: boolean;
  expectedShortfallDays: number;
  chanceOfNoShortfall: number;
  noShortfall: Verification['noShortfall'];
  meanMissingShare: number;
  groups: Verification['groups'];
  shortfallRunDays: { mean: number; p95: number };
  homeGrownFromDay: { strain: string; day: number | null }[];
  parameters: PolicyParameters;
  /** World by world, the same worlds for every plan of one seed. */
  byWorld: Verification['byWorld'];
  sessionByDay: Float64Array;
}

/** Verification worlds use another seed than tuning. */
const verifyLabel = 0x2545f491;

/** Days whose jobs are firm, unless given. */
const usualFirmDays = 14;

/** The plan's jobs alone: what the policy does in the mean world, without judging it. */
export function policyJobs(problem: PlanningProblem, parameters: PolicyParameters): PlannedJob[] {
  // Jobs name the cups, so they are read off a household of single cups.
  return jobsOf(prepareHousehold(problem), parameters, 'any', usualFirmDays);
}

function jobsOf(household: PreparedHousehold, parameters: PolicyParameters, mode: PurchaseMode, firmDays: number) {
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const policy = policyOf({ kind: 'feedback', parameters }, mode, startUps);
  return planJobs(household, policy, parameters, startUps, firmDays);
}

export function planSupply(problem: PlanningProblem, options: PlanOptions): PlanResult {
  // Worlds are many, and take blocks of cups where there are very many.
  const household = prepareHousehold(problem);
  const inBlocks = grouped(problem);
  const judged = inBlocks === problem ? household : prepareHousehold(inBlocks);
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const purchases = options.purchases ?? 'any';
  const parameters = options.parameters ?? tunePolicy(problem, { purchases, ...options.tune }).parameters;
  const jobs = jobsOf(household, parameters, purchases, options.firmDays ?? usualFirmDays);
  const verified = verifyPrepared(
    judged,
    { kind: 'feedback', parameters },
    {
      seed: problem.seed ^ verifyLabel,
      scenarios: options.scenarios,
      purchases,
    },
  );
  return {
    seed: problem.seed,
    scenarios: options.scenarios,
    jobs,
    culturesPlanned: verified.cupsStarted,
    boughtCultures: verified.cupsBought,
    sessions: verified.sessions,
    lowerBound: quickLowerBound(household),
    cupsUnderCertainty: cupsUnderCertainty(problem, parameters, purchases),
    serviceByDay: household.strains.map((prepared, k) => ({
      strain: prepared.strain.strain,
      service: verified.serviceByDay[k] as Float64Array,
      meanMissingFlies: verified.meanMissingFlies[k] as Float64Array,
    })),
    worstDay: verified.worstDay,
    holds: verified.holds,
    expectedShortfallDays: verified.shortDays,
    chanceOfNoShortfall: verified.chanceOfNoShortfall,
    noShortfall: verified.noShortfall,
    meanMissingShare: verified.meanMissingShare,
    groups: verified.groups,
    shortfallRunDays: verified.shortfallRunDays,
    homeGrownFromDay: household.strains.map((prepared, k) => ({
      strain: prepared.strain.strain,
      day: startUps[k]?.homeGrownFromDay ?? null,
    })),
    parameters,
    byWorld: verified.byWorld,
    sessionByDay: verified.sessionByDay,
  };
}
