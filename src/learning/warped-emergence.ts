/** A nominal emergence curve read at another pace. */

/**
 * Flies that emerge on each day of age 0..`days` when everything happens exp(`logPace`) times as fast:
 * the nominal total up to age a exp(logPace), less that up to (a - 1) exp(logPace). Beyond the curve's
 * end nothing more emerges. The total is the nominal one whatever the pace.
 * @example warpedEmergence([0, 0, 10, 10], 0, 3) // => Float64Array [0, 0, 10, 10]
 */
export function warpedEmergence(nominal: ArrayLike<number>, logPace: number, days: number): Float64Array {
  const pace = Math.exp(logPace);
  const cumulative = runningTotal(nominal);
  const out = new Float64Array(days + 1);
  let before = 0;
  for (let age = 0; age <= days; age++) {
    const upTo = readTotal(cumulative, age * pace);
    out[age] = upTo - before;
    before = upTo;
  }
  return out;
}

/**
 * Flies of a nominal curve that emerge after the end of day `from` and up to the end of day `until`, at
 * pace exp(`logPace`); `total` is the curve's `runningTotal`.
 */
export function emergedBetween(total: Float64Array, from: number, until: number, logPace: number): number {
  const pace = Math.exp(logPace);
  return readTotal(total, until * pace) - readTotal(total, from * pace);
}

/** `total[a]` = flies emerged by the end of day `a`. */
export function runningTotal(nominal: ArrayLike<number>): Float64Array {
  const total = new Float64Array(nominal.length);
  let sum = 0;
  for (let a = 0; a < nominal.length; a++) total[a] = sum += nominal[a] as number;
  return total;
}

function readTotal(total: Float64Array, age: number): number {
  const last = total.length - 1;
  // Before the starting day nothing has emerged.
  if (last < 0 || age < 0) return 0;
  if (age >= last) return total[last] as number;
  const below = Math.floor(age);
  const low = total[below] as number;
  return low + (age - below) * ((total[below + 1] as number) - low);
}
