/** A day's temperatures hour by hour from its mean and its lowest and highest. */

/** Hour of the day at which a room is warmest. */
export const warmestHour = 15;

/**
 * Fills 24 values of `out` from `at` on: a cosine of range `rangeC`, highest around 15 h. The values are
 * means of the hours, so that their average is exactly `meanC`.
 */
export function fillDay(out: Float64Array, at: number, meanC: number, rangeC: number): void {
  for (let hour = 0; hour < 24; hour += 1) {
    out[at + hour] = meanC + 0.5 * rangeC * (dayShape[hour] as number);
  }
}

const dayShape = Float64Array.from({ length: 24 }, (_, hour) =>
  Math.cos((2 * Math.PI * (hour + 0.5 - warmestHour)) / 24),
);
