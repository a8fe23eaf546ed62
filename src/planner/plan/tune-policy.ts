/**
 * Tunes the few numbers of the policy to one household, on common random numbers: for each choice of
 * batching and founder line, the safety factor of each strain is moved until its worst week is as safe
 * as asked (and a little more), then the cheapest choice is taken. Limited by a count of worlds.
 */
import { normalQuantile } from '../../foundation/index.ts';
import { grouped } from '../forecast/cup-groups.ts';
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PurchaseMode } from './buying.ts';
import { feedbackPolicy, phaseOf, phasesOf, type PolicyParameters } from './feedback-policy.ts';
import { usualRescue, withFirstParcel } from './first-parcel.ts';
import { bestParcelDays } from './parcel-days.ts';
import { costOf, unsafePenalty } from './policy-cost.ts';
import { forEachMean, steadyDays } from './risk-by-day.ts';
import { rhythmsOf } from './rhythm.ts';
import { runWorlds } from './run-worlds.ts';
import { startUpOf } from './start-up.ts';
import type { ShortSpell } from './short-spells.ts';
import { steadied } from './steadied.ts';
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
  /** Purchases allowed in the worlds of the comparison; `any` unless given. */
  purchases?: PurchaseMode;
  /** Choices of batching and founder line to compare. */
  choices?: { coverDays: number; founderCups: number }[];
}

export interface TunedPolicy {
  parameters: PolicyParameters;
  /** Cost per world at the tuned parameters, in the household's weights. */
  cost: number;
  /** Worlds simulated. */
  worldsUsed: number;
  /** Days ahead that can't be made as safe as asked, whatever is bought. */
  shortSpells: ShortSpell[];
}

const quickChoices = [
  { coverDays: 0, founderCups: 2 },
  { coverDays: 0, founderCups: 1 },
  { coverDays: 3, founderCups: 2 },
];

/** Share of the allowed risk that is planned for: .99 asked is planned to .996. */
const riskShare = 0.4;
const leastSafety = 0.8;
const mostSafety = 6;
/** Most by which a phase may be less safe than the next. */
const mostFall = 0.7;

/**
 * Tuned on what is believed in round figures, so that a note that confirms it changes nothing; what is bought
 * today is then searched for on what is really believed.
 */
export function tunePolicy(problem: PlanningProblem, options: TuneOptions = {}): TunedPolicy {
  const inBlocks = grouped(problem);
  const tuned = tunePrepared(prepareHousehold(steadied(inBlocks)), options);
  return { ...tuned, ...withFirstParcel(inBlocks, tuned.parameters, options.purchases ?? 'any') };
}

export function tunePrepared(
  household: PreparedHousehold,
  options: TuneOptions = {},
): Omit<TunedPolicy, 'shortSpells'> {
  const { worlds = 120, finalWorlds = 600, finalRounds = 2, choices = quickChoices } = options;
  const seed = options.seed ?? household.problem.seed ^ 0x5f3759df;
  const trial = makeTrial(household, seed, options.purchases ?? 'any');
  const phases = phasesOf(household.problem.days);
  let safety = household.strains.map(() => new Array<number>(phases).fill(2));
  const rescueSafety = usualRescue;
  let parameters: PolicyParameters = { safety, coverDays: 0, founderCups: 2, rescueSafety };
  const parcelDays = bestParcelDays(household, parameters, options.purchases ?? 'any');
  const parcels = parcelDays > 0 ? { parcelDays } : {};
  let cost = Number.POSITIVE_INFINITY;
  for (const choice of choices) {
    const first = trial({ ...choice, ...parcels, rescueSafety, safety }, worlds);
    if (isHopeless(first, cost)) continue;
    const run = trial({ ...choice, ...parcels, rescueSafety, safety: first.correctedSafety }, worlds);
    safety = run.correctedSafety;
    if (run.cost >= cost) continue;
    cost = run.cost;
    parameters = { ...choice, ...parcels, rescueSafety, safety };
  }
  parameters = bestRhythm(household, trial, { parameters, cost }, worlds);
  for (let round = 0; round < finalRounds; round++) {
    // The last round sets the factors; those before it only bring them near.
    const share = round === finalRounds - 1 ? 1 : 0.5;
    const run = trial(parameters, Math.round(share * finalWorlds), round * finalWorlds);
    parameters = { ...parameters, safety: run.correctedSafety };
    cost = run.cost;
  }
  return { parameters, cost, worldsUsed: trial.used() };
}

/** The parameters with the rhythm of the week that makes them cheapest. */
function bestRhythm(
  household: PreparedHousehold,
  trial: (parameters: PolicyParameters, worlds: number) => Trial,
  every: { parameters: PolicyParameters; cost: number },
  worlds: number,
): PolicyParameters {
  let best = every;
  for (const rhythm of rhythmsOf(household)) {
    const first = trial({ ...every.parameters, rhythm }, worlds);
    if (isHopeless(first, best.cost)) continue;
    const run = trial({ ...every.parameters, rhythm, safety: first.correctedSafety }, worlds);
    if (run.cost >= best.cost) continue;
    const parameters = { ...every.parameters, rhythm, safety: run.correctedSafety };
    best = { parameters, cost: run.cost };
  }
  return best.parameters;
}

/** Corrections of the safety factors seldom save more than this share of the cost. */
const mostSaved = 0.1;

/** Whether a choice is so dear before its factors are corrected that correcting them is not worth a trial. */
function isHopeless({ bareCost }: Trial, best: number): boolean {
  return bareCost * (1 - mostSaved) > best;
}

interface Trial {
  cost: number;
  /** The cost without the penalty for days that are not safe. */
  bareCost: number;
  correctedSafety: number[][];
}

function makeTrial(household: PreparedHousehold, seed: number, purchases: PurchaseMode) {
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const judgedFrom = judgedDays(household, startUps);
  let used = 0;
  const trial = (parameters: PolicyParameters, worlds: number, firstWorld = 0): Trial => {
    used += worlds;
    const policy = feedbackPolicy(parameters, purchases, startUps);
    const tally = runWorlds(household, policy, { seed, worlds, judgedFrom, firstWorld });
    const bareCost = costOf(household, tally);
    return {
      bareCost,
      cost: bareCost * unsafePenalty(household, tally, judgedFrom),
      correctedSafety: correctPhases(household, tally, parameters.safety, judgedFrom),
    };
  };
  return Object.assign(trial, { used: () => used });
}

/** Moves the safety factor of each strain and phase towards the risk that is planned. */
export function correctPhases(
  household: PreparedHousehold,
  tally: Tally,
  safety: number[][],
  judgedFrom: number[],
): number[][] {
  return safety.map((row, k) => {
    const risks = worstByPhase(household, tally, k, judgedFrom[k] as number, row.length);
    let before = row[0] as number;
    const moved = row.map((z, phase) => {
      const risk = risks[phase] as number;
      // A phase without judged days goes on as the one before it.
      if (risk >= 0) before = correctSafety(z, risk, tally.worlds, household.problem.serviceLevel);
      return before;
    });
    // What is short in one phase was often not started in the one before.
    for (let phase = moved.length - 2; phase >= 0; phase--) {
      moved[phase] = Math.max(moved[phase] as number, (moved[phase + 1] as number) - mostFall);
    }
    return moved;
  });
}

/** Largest chance of a shortfall in each phase, as a mean over some days: steadier than a single worst day. */
function worstByPhase(
  household: PreparedHousehold,
  tally: Tally,
  k: number,
  from: number,
  phases: number,
  days = steadyDays,
): number[] {
  const worst = new Array<number>(phases).fill(-1);
  forEachMean(household, tally, k, from, days, (t, risk) => {
    const phase = phaseOf(t, from, phases);
    worst[phase] = Math.max(worst[phase] as number, risk);
  });
  return worst;
}

/** Moves a safety factor by the distance on the normal scale between the risk seen and the risk planned. */
function correctSafety(z: number, risk: number, worlds: number, serviceLevel: number, most = mostSafety): number {
  const planned = (1 - serviceLevel) * riskShare;
  const seen = Math.min(0.5, Math.max(0.5 / worlds, risk));
  const step = normalQuantile(1 - planned) - normalQuantile(1 - seen);
  return Math.min(most, Math.max(leastSafety, z + Math.min(1, Math.max(-0.6, 0.9 * step))));
}
