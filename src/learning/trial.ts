/** Recipes, places and strains compared as a trial: what is known of a difference, and how many cups make it clear. */
import { normalQuantile } from '../foundation/index.ts';
import type { LevelBelief } from './evidence.ts';
import { meanAndSd } from './summary.ts';

/** Log yield (or pace) of one level less that of another. */
export interface Difference {
  mean: number;
  sd: number;
  /** 5 and 95 % points. */
  low: number;
  high: number;
  /** Chance that the first has more. */
  chanceMore: number;
}

/** A difference is called clear at this chance. */
export const clearAt = 0.95;
/** Differences smaller than this (log) are of no use to a keeper, and no trial is sized for them. */
export const leastUsefulDifference = Math.log(1.1);
/** No trial is planned with more cups than this. */
const mostCups = 1000;

/** The difference `first` - `second` over joint draws. */
export function differenceOf(first: ArrayLike<number>, second: ArrayLike<number>): Difference {
  const draws = Float64Array.from(first, (v, s) => v - (second[s] as number)).sort();
  const { mean, sd } = meanAndSd(draws);
  const at = (p: number) => draws[Math.round(p * (draws.length - 1))] as number;
  return { mean, sd, low: at(0.05), high: at(0.95), chanceMore: draws.filter((d) => d > 0).length / draws.length };
}

/**
 * Further cups, half of them of each level and started together, until a true difference as large as
 * the one believed now (but no smaller than 10 %) is clear: the present sd shrinks with n more cups a
 * side as 1 / sqrt(1/sd^2 + n / (2 cupSd^2)). 0 when it is clear already; null beyond 1,000 cups.
 * With nothing known before this is the two-sample size n = 2 (z cupSd / difference)^2 a side.
 * @param cupSd log sd between two cups of one level in one session, with the error of its notes.
 */
export function cupsUntilClear(difference: { mean: number; sd: number }, cupSd: number): number | null {
  const z = normalQuantile(clearAt);
  const size = Math.abs(difference.mean);
  if (size >= z * difference.sd) return 0;
  const wantedSd = Math.max(size, leastUsefulDifference) / z;
  const missing = 1 / wantedSd ** 2 - 1 / difference.sd ** 2;
  const eachSide = Math.max(1, Math.ceil(2 * cupSd ** 2 * missing - 1e-9));
  return 2 * eachSide > mostCups ? null : 2 * eachSide;
}

/** Pairs to compare: each level with the one that has most cups. */
export function comparedPairs(levels: readonly LevelBelief[]): [LevelBelief, LevelBelief][] {
  const usual = levels.reduce<LevelBelief | null>((a, b) => (a === null || b.cups > a.cups ? b : a), null);
  return levels.flatMap((level): [LevelBelief, LevelBelief][] =>
    usual === null || level === usual ? [] : [[level, usual]],
  );
}
