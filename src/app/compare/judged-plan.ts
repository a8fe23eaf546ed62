/** A changed household's plan, tuned anew and judged in the same worlds as all others of the seed. */
import { type PlanOptions, type PlanResult, type PlanningProblem, planSupply } from '../../planner/index.ts';
import type { Difference } from './compare-answers.ts';
import type { Changed } from './changed-situation.ts';

export interface JudgedPlan {
  problem: PlanningProblem;
  result: PlanResult;
  /** Per world, same worlds for every plan. */
  cups: Float64Array;
  sessions: Float64Array;
  cost: Float64Array;
}

/** @param weights those that every plan of a comparison is priced with. */
export function judgedPlan(
  { problem, purchases }: Changed,
  weights: PlanningProblem['weights'],
  options: Omit<PlanOptions, 'purchases'>,
): JudgedPlan {
  const result = planSupply(problem, { ...options, purchases });
  const { started, bought, sessions } = result.byWorld;
  const { perCup, perSession, perBoughtCup } = weights;
  return {
    problem,
    result,
    cups: started.map((n, world) => n + (bought[world] as number)),
    sessions,
    cost: started.map(
      (n, world) => perCup * n + perBoughtCup * (bought[world] as number) + perSession * (sessions[world] as number),
    ),
  };
}

/** Mean difference `a` less `b` over worlds, and its standard error. */
export function differenceOf(a: Float64Array, b: Float64Array): Difference {
  return meanOf(a.map((value, world) => value - (b[world] as number)));
}

/** Mean of a sample and its standard error. */
export function meanOf(sample: ArrayLike<number>): Difference {
  const n = sample.length;
  const values = Array.from(sample);
  const mean = values.reduce((sum, x) => sum + x, 0) / Math.max(1, n);
  const squares = values.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return { mean, standardError: Math.sqrt(squares / Math.max(1, n - 1) / Math.max(1, n)) };
}
