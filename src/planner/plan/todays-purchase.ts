/**
 * The cheapest safe purchase today. Where the rule would order producing cups now, fewer are tried on simulated
 * look-ahead: one number in all worlds, the same worlds for every number, the rule deciding everything later.
 * Fewer are taken while that is cheaper by more than two standard errors of the paired difference and safe.
 */
import { prepareHousehold, type PreparedHousehold } from '../forecast/prepared-household.ts';
import { meanWorld } from '../forecast/strain-world.ts';
import type { PlanningProblem } from '../problem.ts';
import { feedbackPolicy, type PolicyParameters, type PurchaseMode } from './feedback-policy.ts';
import { makeHouseholdWorld, runWorld } from './household-world.ts';
import { worstMissedRisk } from './risk-by-day.ts';
import { runWorlds } from './run-worlds.ts';
import { type StartUp, startUpOf } from './start-up.ts';

/** Budget: worlds of a trial, and trials of a strain beside the rule's own number. */
const worlds = 400;
const mostTrials = 6;
/** Days over which a trial is priced and judged, and those simulated after them: a bought cup is spent by then. */
const pricedDays = 42;
const runOutDays = 14;
/** Share of the allowed risk that may be seen on the worst day in the trial's worlds. */
const riskShare = 0.6;
const trialLabel = 0x1b873593;

/** Orders placed now, by strain; every trial beyond the first is compared with the best so far. */
interface Trial {
  boughtNow: number[];
  cost: Float64Array;
  /** Largest chance of a missed ration on a day from the delivery on, of any strain. */
  risk: number;
}

/** The parameters with today's order where a smaller one is better; unchanged where the rule orders nothing. */
export function withTodaysPurchase(
  problem: PlanningProblem,
  parameters: PolicyParameters,
  mode: PurchaseMode,
): PolicyParameters {
  if (mode === 'none') return parameters;
  const days = Math.min(problem.days, pricedDays);
  const household = prepareHousehold({ ...problem, days, runOutDays: Math.min(problem.runOutDays, runOutDays) });
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const ordered = orderedToday(household, parameters, mode, startUps);
  if (ordered.every((cups) => cups === 0)) return parameters;
  const trial = (boughtNow: number[]) => tryOrder(household, { ...parameters, boughtNow }, mode, startUps, boughtNow);
  const rule = trial(ordered);
  const safe = Math.max(rule.risk, riskShare * (1 - problem.serviceLevel));
  const best = ordered.reduce((from, _, k) => fewerOf(from, k, safe, trial), rule);
  if (best === rule) return parameters;
  return { ...parameters, boughtNow: best.boughtNow.map((cups, k) => (cups === ordered[k] ? null : cups)) };
}

/** Fewer cups of strain `k`, step by step, as long as it pays and is safe. */
function fewerOf(from: Trial, k: number, safe: number, trial: (boughtNow: number[]) => Trial): Trial {
  const step = Math.max(1, Math.ceil((from.boughtNow[k] as number) / mostTrials));
  let best = from;
  while ((best.boughtNow[k] as number) > 0) {
    const fewer = trial(best.boughtNow.map((cups, j) => (j === k ? Math.max(0, cups - step) : cups)));
    if (fewer.risk > safe || !isCheaper(fewer.cost, best.cost)) break;
    best = fewer;
  }
  return best;
}

/** Cups that the rule orders today for a gap, as the plan's jobs have it. */
function orderedToday(
  household: PreparedHousehold,
  parameters: PolicyParameters,
  mode: PurchaseMode,
  startUps: StartUp[],
): number[] {
  const cups = household.strains.map(() => 0);
  const hw = makeHouseholdWorld(household, {
    day() {},
    started() {},
    ordered(k, t, _arrival, _kind, bought, purpose) {
      if (t === 0 && purpose === 'gap') cups[k] = (cups[k] as number) + bought;
    },
  });
  runWorld(hw, feedbackPolicy(parameters, mode, startUps), 0, meanWorld, 1);
  return cups;
}

function tryOrder(
  household: PreparedHousehold,
  parameters: PolicyParameters,
  mode: PurchaseMode,
  startUps: StartUp[],
  boughtNow: number[],
): Trial {
  const { problem, deliveryByOrderDay } = household;
  const arrival = deliveryByOrderDay[0] ?? 0;
  const seed = problem.seed ^ trialLabel;
  const policy = feedbackPolicy(parameters, mode, startUps);
  const tally = runWorlds(household, policy, { seed, worlds, judgedFrom: household.strains.map(() => arrival) });
  const { perCup, perBoughtCup, perSession } = problem.weights;
  const { started, bought, sessions } = tally.byWorld;
  const cost = started.map(
    (cups, w) => perCup * cups + perBoughtCup * (bought[w] as number) + perSession * (sessions[w] as number),
  );
  return {
    boughtNow,
    cost,
    risk: Math.max(...household.strains.map((_, k) => worstMissedRisk(household, tally, k, arrival))),
  };
}

/** Whether the mean of the differences lies more than two of its standard errors below nothing. */
function isCheaper(cost: Float64Array, than: Float64Array): boolean {
  const differences = cost.map((value, w) => value - (than[w] as number));
  const mean = differences.reduce((sum, x) => sum + x, 0) / differences.length;
  const squares = differences.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return mean < -2 * Math.sqrt(squares / Math.max(1, differences.length - 1) / differences.length);
}
