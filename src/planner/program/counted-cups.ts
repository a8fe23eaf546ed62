/**
 * How cups are counted when a plan is held against a bound: one where at least half of its flies come within
 * the horizon, else none, so that the last weeks' cups, which feed days beyond it, are left out on both sides;
 * a bought cup, whenever it comes, as the whole number of started ones that its price would be. Counts are whole, so a program
 * of whole cups can round its bound up.
 */
import type { PreparedHousehold, PreparedStrain } from '../forecast/prepared-household.ts';
import type { CupWorth } from '../plan/certain-plan.ts';

/** What a cup counts, by the day on which it is started or comes. */
export interface CountedCups {
  started: Float64Array;
  producing: Float64Array;
  young: Float64Array;
}

const leastShare = 0.5;

export function countedCups({ problem }: PreparedHousehold, prepared: PreparedStrain): CountedCups {
  const { days, weights } = problem;
  const price = weights.perCup > 0 ? Math.max(1, Math.floor(weights.perBoughtCup / weights.perCup)) : 1;
  const byDay = (count: (t: number) => number) => Float64Array.from({ length: days }, (_, t) => count(t));
  return {
    started: byDay((t) => (shareWithin(prepared, t, days - t) >= leastShare ? 1 : 0)),
    producing: byDay(() => price),
    young: byDay(() => price),
  };
}

/** The share of a cup's expected flies that are out before age `age`. */
function shareWithin({ curves }: PreparedStrain, curve: number, age: number): number {
  const total = curves.totalExpected[curve] as number;
  const at = Math.min(curves.stride - 1, age);
  return total > 0 ? (curves.expectedBefore[curve * curves.stride + at] as number) / total : 0;
}

/** The same counts by strain, as simulated worlds ask for them. */
export function worthOf(counted: CountedCups[]): CupWorth {
  return {
    started: (k, t) => counted[k]?.started[t] ?? 0,
    bought: (k, arrival, kind) => counted[k]?.[kind][arrival] ?? 0,
  };
}
