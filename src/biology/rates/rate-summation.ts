/** Rate summation: development is the rate's integral over whatever the temperature did. */

/**
 * Days until `amount` (1 = complete) of development is reached under `hourlyC` (C, from the start on),
 * fractional within an hour; Infinity when the series ends before.
 */
export function developmentDays(
  rate: (temperatureC: number) => number,
  hourlyC: ArrayLike<number>,
  amount = 1,
): number {
  let done = 0;
  for (let hour = 0; hour < hourlyC.length; hour += 1) {
    const gain = rate(hourlyC[hour] as number) / 24;
    if (done + gain >= amount) return (hour + (amount - done) / gain) / 24;
    done += gain;
  }
  return Number.POSITIVE_INFINITY;
}
