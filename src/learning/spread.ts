/** How much cups differ from one another, drawn given their deviations, on a grid even in the log. */
import type { RandomStream } from '../foundation/index.ts';

/**
 * Log sd of the prior of a spread around its centre: wide, as vials of one stock differ by .45 to .7 in their
 * flies (negative binomial k 2 to 5) and a careful keeper's cups by much less.
 */
export const spreadLogSd = 0.6;
const points = 31;
const reachSds = 3;

/**
 * A draw of the sd of `count` deviations with sum of squares `squares`: log-normal prior around
 * `centre`, normal deviations. With no deviations it is a draw of the prior.
 */
export function drawSpread(centre: number, count: number, squares: number, random: RandomStream): number {
  const logs = new Float64Array(points);
  let greatest = -Infinity;
  for (let k = 0; k < points; k++) {
    const u = stepSds(k);
    const sd = centre * Math.exp(spreadLogSd * u);
    logs[k] = -0.5 * u * u - count * Math.log(sd) - squares / (2 * sd * sd);
    greatest = Math.max(greatest, logs[k] as number);
  }
  const k = drawIndex(
    logs.map((l) => Math.exp(l - greatest)),
    random.uniform(),
  );
  const within = (random.uniform() - 0.5) * ((2 * reachSds) / (points - 1));
  return centre * Math.exp(spreadLogSd * (stepSds(k) + within));
}

function stepSds(k: number): number {
  return -reachSds + (2 * reachSds * k) / (points - 1);
}

/** Index drawn with chance proportional to `weights`, `u` uniform on [0, 1). */
export function drawIndex(weights: ArrayLike<number>, u: number): number {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i] as number;
  let left = u * total;
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i] as number;
    if (left < 0) return i;
  }
  return weights.length - 1;
}
