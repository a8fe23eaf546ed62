/** The straight line of degree-days: nothing below a threshold, in proportion above it. */
export interface DegreeDayRate {
  thresholdC: number;
  /** Sum of degrees above the threshold that completes development, C days. */
  degreeDays: number;
}

/**
 * Development per day, r = (T - threshold) / degreeDays, at `temperatureC`; 0 below the threshold.
 * Holds about between 15 and 28 C for melanogaster; above, the true rate falls behind.
 *
 * @example degreeDay({ thresholdC: 9.8, degreeDays: 144 }, 25) // about 0.1056: 9.47 days
 */
export function degreeDay(p: DegreeDayRate, temperatureC: number): number {
  return Math.max(0, (temperatureC - p.thresholdC) / p.degreeDays);
}
