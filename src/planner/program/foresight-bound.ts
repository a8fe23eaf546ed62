/**
 * The least cups that any policy can need in these worlds: the mean, over draws of the household's luck, of
 * a linear program that knows that luck beforehand, at the best of a few prices of a short day (weak
 * duality: the price is taken back for the short days that are allowed). It keeps the death of held flies,
 * founders' flies, work days, session limits, deliveries and failures; it lets founders come from any cup
 * and counts parts of cups. The gap to a verified policy is the price of not knowing, of whole cups, of the
 * founder rule and of the search.
 */
import { prepareHousehold, type PreparedHousehold } from '../forecast/prepared-household.ts';
import { startUpOf } from '../plan/start-up.ts';
import type { PlanningProblem } from '../problem.ts';
import type { CountedCups } from './counted-cups.ts';
import { foresightModel } from './foresight-model.ts';

/**
 * What the caller lends: solves a CPLEX-LP text to its best bound (for a linear program, its optimum; Infinity
 * where it has no solution), and the best solution found on the way, if any.
 */
export type Solve = (model: string) => { bound: number; found: number | null };

export interface ForesightBoundOptions {
  worlds: number;
  seed: number;
  /** Chance of a short day that a policy may have; 1 - the service level asked unless given. */
  shortChance?: number;
  /** Prices of a short day tried, cups. */
  prices?: number[];
  /** What each cup counts, by strain; 1 unless given. */
  counted?: CountedCups[];
}

export interface ForesightBound {
  cups: number;
  /** Standard error over the worlds sampled. */
  standardError: number;
  /** Bound by strain, and the price at which it is best. */
  byStrain: { strain: string; cups: number; price: number }[];
}

export function foresightBound(problem: PlanningProblem, solve: Solve, options: ForesightBoundOptions): ForesightBound {
  const household = prepareHousehold(problem);
  const strains = household.strains.map((_, k) => strainBound(household, k, solve, options));
  return {
    cups: strains.reduce((sum, s) => sum + s.cups, 0),
    standardError: Math.hypot(...strains.map((s) => s.standardError)),
    byStrain: strains.map((s, k) => ({
      strain: household.strains[k]?.strain.strain ?? '',
      cups: s.cups,
      price: s.price,
    })),
  };
}

function strainBound(household: PreparedHousehold, k: number, solve: Solve, options: ForesightBoundOptions) {
  const prepared = household.strains[k];
  if (prepared === undefined) throw new RangeError(`foresightBound: there is no strain ${k}`);
  const { problem } = household;
  const judgedFrom = startUpOf(household, prepared).homeGrownFromDay ?? problem.days;
  const shortChance = options.shortChance ?? 1 - problem.serviceLevel;
  let judgedDays = 0;
  for (let t = judgedFrom; t < problem.days; t++) if ((prepared.need[t] as number) > 0) judgedDays++;
  let best = { cups: 0, standardError: 0, price: 0 };
  for (const price of options.prices ?? [0.1, 0.5]) {
    const values = Array.from({ length: options.worlds }, (_, world) => {
      const model = { seed: options.seed, world, shortDayPrice: price, judgedFrom, counted: options.counted?.[k] };
      return solve(foresightModel(household, prepared, model)).bound - price * shortChance * judgedDays;
    });
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    const variance = values.reduce((a, b) => a + (b - mean) ** 2, 0) / Math.max(1, values.length - 1);
    if (mean > best.cups) best = { cups: mean, standardError: Math.sqrt(variance / values.length), price };
  }
  return best;
}
