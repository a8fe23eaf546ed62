/** Mean and standard deviation of draws. */
export function meanAndSd(values: ArrayLike<number>): { mean: number; sd: number } {
  const n = values.length;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] as number;
  const mean = sum / n;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += ((values[i] as number) - mean) ** 2;
  return { mean, sd: Math.sqrt(squares / Math.max(1, n - 1)) };
}
