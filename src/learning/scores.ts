/**
 * Proper scores of forecasts given as draws: lower is better for both (Gneiting and Raftery 2007, J. Am.
 * Stat. Assoc. 102:359).
 */

/** Continuous ranked probability score of a sorted sample: mean |x - y| less half the mean |x - x'|. */
export function crps(sorted: ArrayLike<number>, truth: number): number {
  const n = sorted.length;
  let [off, between] = [0, 0];
  for (let i = 0; i < n; i++) {
    off += Math.abs((sorted[i] as number) - truth) / n;
    between += ((2 * i - n + 1) * (sorted[i] as number)) / (n * n);
  }
  return off - between;
}

/** Minus the log density of log(flies + 1) under the normal that the draws have. */
export function logScore(draws: ArrayLike<number>, truth: number): number {
  const logs = Float64Array.from(draws, (f) => Math.log(f + 1));
  const mean = logs.reduce((a, b) => a + b, 0) / logs.length;
  const variance = logs.reduce((a, b) => a + (b - mean) ** 2, 0) / logs.length + 0.01;
  return 0.5 * Math.log(2 * Math.PI * variance) + (Math.log(truth + 1) - mean) ** 2 / (2 * variance);
}

/**
 * Place of an interval among draws, on (0, 1): drawn evenly (`u`, uniform on (0, 1)) between what lies below
 * its beginning and below its end, so that places are even when forecasts are right. A count is the interval
 * of itself.
 */
export function rankAmong(draws: ArrayLike<number>, from: number, until: number, u: number): number {
  let [below, upTo] = [0, 0];
  for (let i = 0; i < draws.length; i++) {
    if ((draws[i] as number) < from) below++;
    if ((draws[i] as number) <= until) upTo++;
  }
  return (below + u * (upTo - below)) / draws.length;
}
