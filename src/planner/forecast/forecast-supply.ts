/**
 * The forecast: flies emerging and on hand by day with their bands, and the chance that every need is
 * met, in worlds where the planner's policy goes on deciding (or where nothing is started any more).
 */
import type { PurchaseMode } from '../plan/buying.ts';
import type { PolicyParameters } from '../plan/feedback-policy.ts';
import type { Policy } from '../plan/household-world.ts';
import { runWorlds, serviceByDay } from '../plan/run-worlds.ts';
import { startUpOf } from '../plan/start-up.ts';
import { bandByDay, type Tally } from '../plan/tally.ts';
import { tunePrepared } from '../plan/tune-policy.ts';
import { policyOf, serviceStandardError } from '../plan/verify-policy.ts';
import type { PlanningProblem } from '../problem.ts';
import { grouped } from './cup-groups.ts';
import { prepareHousehold } from './prepared-household.ts';

export interface ForecastOptions {
  scenarios: number;
  /** Weeks of the answer; the problem's own horizon unless given. */
  weeks?: number;
  /** `policy` (default): the planner goes on deciding. `nothing`: no cup is started or bought any more. */
  starts?: 'policy' | 'nothing';
  /** The policy's parameters, when they are known already; otherwise they are tuned here. */
  parameters?: PolicyParameters;
  purchases?: PurchaseMode;
  seed?: number;
}

export interface BandsByDay {
  p05: Float64Array;
  p50: Float64Array;
  p95: Float64Array;
}

export interface StrainForecast {
  strain: string;
  wantedFlies: Float64Array;
  emergingFlies: BandsByDay;
  /** On hand before feeding, after founders of that day were taken. */
  onHandFlies: BandsByDay;
  serviceLevel: Float64Array;
  /** Flies missing on the days that fall short, mean; 0 where none does. */
  meanShortfallFlies: Float64Array;
  /** First day whose service level is below what was asked; -1 when none. */
  firstRiskyDay: number;
  homeGrownFromDay: number | null;
}

export interface ForecastResult {
  scenarios: number;
  seed: number;
  days: number;
  strains: StrainForecast[];
  firstRiskyDay: number;
  /** Chance that no strain is short on any day. */
  chanceOfNoShortfall: number;
  /** Longest run of short days of the worlds that have any. */
  shortfallRunDays: { mean: number; p95: number };
  serviceLevelAsked: number;
  /** Standard error of a day's service level at the level asked. */
  serviceStandardError: number;
  parameters: PolicyParameters | null;
}

const noPolicy: Policy = {
  start(hw) {
    hw.wantedCups.fill(0);
  },
  buy() {},
};

export function forecastSupply(problem: PlanningProblem, options: ForecastOptions): ForecastResult {
  const horizon = problem.days;
  const days = Math.min(horizon, options.weeks === undefined ? horizon : options.weeks * 7);
  const shorter = days < horizon ? shortened(problem, days) : problem;
  const household = prepareHousehold(grouped(shorter));
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const goesOn = (options.starts ?? 'policy') === 'policy';
  const parameters = goesOn ? (options.parameters ?? tunePrepared(household).parameters) : null;
  const policy = parameters
    ? policyOf({ kind: 'feedback', parameters }, options.purchases ?? 'any', startUps)
    : noPolicy;
  const seed = options.seed ?? problem.seed;
  const tally = runWorlds(household, policy, {
    seed,
    worlds: options.scenarios,
    bands: true,
    judgedFrom: household.strains.map(() => 0),
  });
  const strains = household.strains.map((prepared, k) => strainForecast(tally, k, days, shorter, prepared.need));
  strains.forEach((forecast, k) => {
    forecast.homeGrownFromDay = startUps[k]?.homeGrownFromDay ?? null;
  });
  const risky = strains.map((s) => s.firstRiskyDay).filter((day) => day >= 0);
  return {
    scenarios: options.scenarios,
    seed,
    days,
    strains,
    firstRiskyDay: risky.length > 0 ? Math.min(...risky) : -1,
    chanceOfNoShortfall: tally.worldsWithoutShortfall / Math.max(1, tally.worlds),
    shortfallRunDays: runLengths(tally),
    serviceLevelAsked: problem.serviceLevel,
    serviceStandardError: serviceStandardError(problem.serviceLevel, options.scenarios),
    parameters,
  };
}

/** The same problem judged on fewer days; the rest becomes run-out, at most as long as before. */
function shortened(problem: PlanningProblem, days: number): PlanningProblem {
  const runOutDays = Math.min(problem.runOutDays, problem.days + problem.runOutDays - days);
  return { ...problem, days, runOutDays };
}

function strainForecast(
  tally: Tally,
  k: number,
  days: number,
  problem: PlanningProblem,
  need: Float64Array,
): StrainForecast {
  const serviceLevel = serviceByDay(tally, k);
  const short = tally.shortWorlds[k] as Float64Array;
  const missing = tally.missingFlies[k] as Float64Array;
  return {
    strain: problem.strains[k]?.strain ?? '',
    wantedFlies: need.slice(0, days),
    emergingFlies: bands(tally.emerging?.[k] as Float32Array, tally.worlds, days),
    onHandFlies: bands(tally.onHand?.[k] as Float32Array, tally.worlds, days),
    serviceLevel,
    meanShortfallFlies: missing.map((flies, t) => ((short[t] as number) > 0 ? flies / (short[t] as number) : 0)),
    firstRiskyDay: serviceLevel.findIndex((level) => level < problem.serviceLevel),
    homeGrownFromDay: null,
  };
}

function bands(samples: Float32Array, worlds: number, days: number): BandsByDay {
  const [p05, p50, p95] = bandByDay(samples, worlds, days, [0.05, 0.5, 0.95]) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  return { p05, p50, p95 };
}

function runLengths(tally: Tally): { mean: number; p95: number } {
  const runs = tally.longestRuns.toSorted((a, b) => a - b);
  if (runs.length === 0) return { mean: 0, p95: 0 };
  const mean = runs.reduce((a, b) => a + b, 0) / runs.length;
  return { mean, p95: runs[Math.min(runs.length - 1, Math.ceil(0.95 * runs.length) - 1)] as number };
}
