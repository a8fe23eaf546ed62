/**
 * Tunes the few numbers of the policy to one household, on common random numbers: for each choice of
 * batching and founder line, the safety factor of each strain is moved until its worst week is as safe
 * as asked (and a little more), then the cheapest choice is taken. Limited by a count of worlds.
 */
import { normalQuantile } from '../../foundation/index.ts';
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import { feedbackPolicy, type PolicyParameters } from './feedback-policy.ts';
import { runWorlds } from './run-worlds.ts';
import { startUpOf } from './start-up.ts';
import type { Tally } from './tally.ts';
import { judgedDays } from './verify-policy.ts';

export interface TuneOptions {
  /** Worlds of one comparison. */
  worlds?: number;
  /** Worlds of the last correction of the safety factors. */
  finalWorlds?: number;
  /** Corrections of the safety factors at the end. */
  finalRounds?: number;
  seed?: number;
  /** Choices of batching and founder line to compare. */
  choices?: { coverDays: number; founderCups: number }[];
}

export interface TunedPolicy {
  parameters: PolicyParameters;
  /** Cost per world at the tuned parameters, in the household's weights. */
  cost: number;
  /** Worlds simulated. */
  worldsUsed: number;
}

const quickChoices = [
  { coverDays: 0, founderCups: 2 },
  { coverDays: 0, founderCups: 1 },
  { coverDays: 3, founderCups: 2 },
];

/** Share of the allowed risk that is planned for: .99 asked is planned to .992. */
const riskShare = 0.8;

export function tunePolicy(problem: PlanningProblem, options: TuneOptions = {}): TunedPolicy {
  return tunePrepared(prepareHousehold(problem), options);
}

export function tunePrepared(household: PreparedHousehold, options: TuneOptions = {}): TunedPolicy {
  const { worlds = 200, finalWorlds = 800, finalRounds = 1, choices = quickChoices } = options;
  const seed = options.seed ?? household.problem.seed ^ 0x5f3759df;
  const trial = makeTrial(household, seed);
  let best: { parameters: PolicyParameters; cost: number } | null = null;
  let safety = household.strains.map(() => 2);
  for (const choice of choices) {
    let run = trial({ ...choice, safety }, worlds);
    const corrected = run.correctedSafety;
    run = trial({ ...choice, safety: corrected }, worlds);
    // Cost at equal safety: what is left to correct is priced at the slope just seen.
    const parameters = { ...choice, safety: run.correctedSafety };
    if (best === null || run.cost < best.cost) best = { parameters, cost: run.cost };
    safety = run.correctedSafety;
  }
  let parameters = (best as { parameters: PolicyParameters }).parameters;
  let cost = (best as { cost: number }).cost;
  for (let round = 0; round < finalRounds; round++) {
    const run = trial(parameters, finalWorlds);
    parameters = { ...parameters, safety: run.correctedSafety };
    cost = run.cost;
  }
  return { parameters, cost, worldsUsed: trial.used() };
}

interface Trial {
  cost: number;
  correctedSafety: number[];
}

function makeTrial(household: PreparedHousehold, seed: number) {
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const judgedFrom = judgedDays(household, startUps);
  let used = 0;
  const trial = (parameters: PolicyParameters, worlds: number): Trial => {
    used += worlds;
    const tally = runWorlds(household, feedbackPolicy(parameters, 'bridge', startUps), { seed, worlds, judgedFrom });
    const correctedSafety = parameters.safety.map((z, k) =>
      correctSafety(z, worstWeek(household, tally, k, judgedFrom[k] as number), worlds, household.problem.serviceLevel),
    );
    return { cost: costOf(household, tally), correctedSafety };
  };
  return Object.assign(trial, { used: () => used });
}

/** Weighted cost of a world, mean over the tally. */
export function costOf(household: PreparedHousehold, tally: Tally): number {
  const { perCup, perSession, perBoughtCup } = household.problem.weights;
  const started = tally.cupsStarted.reduce((a, b) => a + b, 0);
  const bought = tally.cupsBought.reduce((a, b) => a + b, 0);
  return (perCup * started + perBoughtCup * bought + perSession * tally.sessions) / Math.max(1, tally.worlds);
}

/** Largest chance of a shortfall, as a mean over five days: steadier than a single worst day. */
export function worstWeek(household: PreparedHousehold, tally: Tally, k: number, from: number): number {
  const short = tally.shortWorlds[k] as Float64Array;
  const need = household.strains[k]?.need as Float64Array;
  const window: number[] = [];
  let worst = 0;
  for (let t = from; t < short.length; t++) {
    if ((need[t] as number) <= 0) continue;
    window.push((short[t] as number) / tally.worlds);
    if (window.length > 5) window.shift();
    if (window.length === 5) worst = Math.max(worst, window.reduce((a, b) => a + b, 0) / 5);
  }
  return worst;
}

/** Moves a safety factor by the distance on the normal scale between the risk seen and the risk planned. */
function correctSafety(z: number, risk: number, worlds: number, serviceLevel: number): number {
  const planned = (1 - serviceLevel) * riskShare;
  const seen = Math.min(0.5, Math.max(0.5 / worlds, risk));
  const step = normalQuantile(1 - planned) - normalQuantile(1 - seen);
  return Math.min(5, Math.max(0.2, z + Math.min(1, Math.max(-0.6, 0.9 * step))));
}
