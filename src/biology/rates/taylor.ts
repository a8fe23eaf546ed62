/** Taylor's bell-shaped rate of development (Taylor 1981). */
export interface TaylorRate {
  /** Highest rate, per day, and where it lies. */
  maximum: number;
  bestC: number;
  /** Distance from the best temperature at which the rate is exp(-1/2) of it, C. */
  widthC: number;
}

/**
 * Development per day, r = maximum exp(-((T - best) / width)^2 / 2), at `temperatureC`. Source key
 * taylor1981; symmetric, so it falls too slowly above the best temperature.
 *
 * @example taylor({ maximum: 0.131, bestC: 30.2, widthC: 8.6 }, 25) // about 0.1091: 9.16 days
 */
export function taylor(p: TaylorRate, temperatureC: number): number {
  const z = (temperatureC - p.bestC) / p.widthC;
  return p.maximum * Math.exp(-0.5 * z * z);
}
