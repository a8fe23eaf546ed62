/**
 * Degree-days of one day from its lowest and highest temperature, by the three methods in general use.
 * Above the upper threshold development goes on at the upper threshold's pace (a horizontal cutoff).
 * Source: zalom1983. Any unit of temperature gives degree-days of that unit.
 */

export const degreeDayMethods = ['simpleAverage', 'singleTriangle', 'singleSine'] as const;
export type DegreeDayMethod = (typeof degreeDayMethods)[number];

export interface DegreeDayThresholds {
  lower: number;
  /** Infinity when there is none. */
  upper: number;
}

/**
 * Degree-days between the thresholds: what lies above the lower one less what lies above the upper one,
 * as a mean over the day. Throws RangeError when min is above max or lower is not below upper.
 *
 * @example degreeDays('simpleAverage', 58, 70, { lower: 53, upper: Infinity }) // => 11
 */
export function degreeDays(
  method: DegreeDayMethod,
  min: number,
  max: number,
  { lower, upper }: DegreeDayThresholds,
): number {
  if (!(min <= max)) throw new RangeError(`degreeDays: min is ${min}, not at most max, ${max}`);
  if (!(lower < upper)) throw new RangeError(`degreeDays: lower is ${lower}, not below upper, ${upper}`);
  const above = degreesAbove[method];
  return above(lower, min, max) - (upper >= max ? 0 : above(upper, min, max));
}

/** Mean over the day of how far the temperature is above a threshold. */
const degreesAbove: Record<DegreeDayMethod, (threshold: number, min: number, max: number) => number> = {
  simpleAverage: (threshold, min, max) => Math.max(0, (min + max) / 2 - threshold),
  singleTriangle: (threshold, min, max) => {
    if (threshold <= min) return (min + max) / 2 - threshold;
    return threshold >= max ? 0 : (max - threshold) ** 2 / (2 * (max - min));
  },
  singleSine: (threshold, min, max) => {
    const mean = (min + max) / 2;
    if (threshold <= min) return mean - threshold;
    if (threshold >= max) return 0;
    const half = (max - min) / 2;
    const angle = Math.asin((threshold - mean) / half);
    return ((mean - threshold) * (Math.PI / 2 - angle) + half * Math.cos(angle)) / Math.PI;
  },
};
