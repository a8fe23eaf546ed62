/** Quantiles of a sample, by linear interpolation (type 7 of Hyndman and Fan 1996, Am. Stat. 50:361). */

/**
 * The `p` quantile (0 to 1) of values sorted ascending.
 * Throws RangeError on an empty sample.
 * @example quantileSorted([1, 2, 3, 4], 0.5) // => 2.5
 */
export function quantileSorted(sorted: ArrayLike<number>, p: number): number {
  const n = sorted.length;
  if (n === 0) throw new RangeError('quantileSorted: the sample is empty');
  const at = (n - 1) * Math.min(1, Math.max(0, p));
  const below = Math.floor(at);
  const low = sorted[below] as number;
  return below + 1 < n ? low + (at - below) * ((sorted[below + 1] as number) - low) : low;
}

/** A value's middle and its 5 to 95 % band. */
export interface Band {
  p05: number;
  p50: number;
  p95: number;
}

/** The band of a sample in any order; the sample is not changed. */
export function bandOf(sample: ArrayLike<number>): Band {
  const sorted = Float64Array.from(sample).sort();
  return { p05: quantileSorted(sorted, 0.05), p50: quantileSorted(sorted, 0.5), p95: quantileSorted(sorted, 0.95) };
}
