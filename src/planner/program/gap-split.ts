/**
 * Where a plan's cups go, as a row of bounds that grow with each rule that is kept: parts of cups on any day,
 * then founders, then the keeper's rules, then whole cups (all proved in the mean world by a solver); the
 * same policy in that world (what the search lost); the plan itself (what not knowing costs). Beside it the
 * bound with foresight, which holds for every policy in the uncertain worlds. All count cups alike.
 */
import { grouped } from '../forecast/cup-groups.ts';
import { type PreparedHousehold, prepareHousehold } from '../forecast/prepared-household.ts';
import { cupsUnderCertainty } from '../plan/certain-plan.ts';
import { countedPlan } from '../plan/counted-plan.ts';
import type { PurchaseMode } from '../plan/buying.ts';
import { feedbackPolicy, type PolicyParameters } from '../plan/feedback-policy.ts';
import { startUpOf } from '../plan/start-up.ts';
import { judgedDays } from '../plan/verify-policy.ts';
import type { PlanningProblem } from '../problem.ts';
import { type CoreRules, certainCore } from './certain-core.ts';
import { countedCups, worthOf } from './counted-cups.ts';
import { type ForesightBound, foresightBound, type Solve } from './foresight-bound.ts';

export interface GapSplitOptions {
  /** Worlds in which the plan's cups are counted, and those that the foresight bound looks at. */
  worlds: number;
  foresightWorlds: number;
  seed: number;
  purchases: PurchaseMode;
}

export interface GapSplit {
  /** Each at least the one before, in the mean world; null where no day can be fed in full under these rules. */
  parts: number | null;
  founders: number | null;
  keeper: number | null;
  /** Proved, and the fewest found; equal where the program was solved to the end. */
  whole: { atLeast: number; found: number | null } | null;
  /** The same policy in the mean world; null where it is short there. */
  certain: number | null;
  plan: { cups: number; standardError: number };
  foresight: ForesightBound;
}

const partsOnly: CoreRules = { wholeCups: false, founders: false, keeper: false };
const withFounders: CoreRules = { ...partsOnly, founders: true };
const withKeeper: CoreRules = { ...withFounders, keeper: true };
const withWholeCups: CoreRules = { ...withKeeper, wholeCups: true };

/** Prices of a short day at which the foresight bound is tried, cups. */
const foresightPrices = [0.3, 1];

export function gapSplit(
  problem: PlanningProblem,
  parameters: PolicyParameters,
  solve: Solve,
  options: GapSplitOptions,
): GapSplit {
  const { worlds, foresightWorlds, seed, purchases } = options;
  const inBlocks = grouped(problem);
  const household = prepareHousehold(inBlocks);
  const startUps = household.strains.map((strain) => startUpOf(household, strain));
  const counted = household.strains.map((strain) => countedCups(household, strain));
  const worth = worthOf(counted);
  const least = (rules: CoreRules) => leastCups(household, solve, rules);
  const [parts, founders, keeper, whole] = [partsOnly, withFounders, withKeeper, withWholeCups].map(least);
  return {
    parts: parts?.atLeast ?? null,
    founders: founders?.atLeast ?? null,
    keeper: keeper?.atLeast ?? null,
    whole: whole ?? null,
    certain: cupsUnderCertainty(inBlocks, parameters, purchases, worth),
    plan: countedPlan(household, feedbackPolicy(parameters, purchases, startUps), worth, { seed, worlds }),
    foresight: foresightBound(inBlocks, solve, { worlds: foresightWorlds, seed, prices: foresightPrices, counted }),
  };
}

/** Sum over strains, each alone: what they share only asks for more. */
function leastCups(household: PreparedHousehold, solve: Solve, rules: CoreRules): GapSplit['whole'] {
  const judgedFrom = judgedDays(
    household,
    household.strains.map((strain) => startUpOf(household, strain)),
  );
  let atLeast = 0;
  let found: number | null = 0;
  for (const [k, strain] of household.strains.entries()) {
    const counted = countedCups(household, strain);
    const solved = solve(certainCore(household, strain, counted, judgedFrom[k] as number, rules));
    if (!Number.isFinite(solved.bound)) return null;
    atLeast += rules.wholeCups ? Math.ceil(solved.bound - wholeTolerance) : solved.bound;
    found = found === null || solved.found === null ? null : found + solved.found;
  }
  return { atLeast, found };
}

/** A solver's whole numbers are whole to about a millionth. */
const wholeTolerance = 1e-4;
