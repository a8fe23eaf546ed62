/** Two plans in the same worlds, held against each other world by world. */

export interface PairedDifference {
  mean: number;
  standardError: number;
}

/** Mean of `a` less `b` over the worlds, and its standard error. */
export function pairedDifference(a: Float64Array, b: Float64Array): PairedDifference {
  const differences = a.map((value, w) => value - (b[w] as number));
  const mean = differences.reduce((sum, x) => sum + x, 0) / Math.max(1, differences.length);
  const squares = differences.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const variance = squares / Math.max(1, differences.length - 1);
  return { mean, standardError: Math.sqrt(variance / Math.max(1, differences.length)) };
}

/** Whether `a` lies below `b` by more than two standard errors of the difference. */
export function isClearlyLess(a: Float64Array, b: Float64Array): boolean {
  const { mean, standardError } = pairedDifference(a, b);
  return mean < -2 * standardError;
}
