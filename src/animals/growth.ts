/** How an animal gains mass: the Gompertz curve from its first weight to its grown one. */
import { q10Factor } from './metabolic-rate.ts';

export interface GrowthCurve {
  startMassG: number;
  grownMassG: number;
  /** Per day: how fast the logarithm closes on the grown mass. */
  ratePerDay: number;
}

/**
 * The curve that reaches `share` of the grown mass after `days`. Throws RangeError when the masses do not
 * grow or the share is not between the start's and 1.
 * @example a froglet of 0.2 g that is to weigh 95 % of 2 g after 300 days
 */
export function growthCurve(startMassG: number, grownMassG: number, days: number, share = 0.95): GrowthCurve {
  if (!(startMassG > 0 && grownMassG > startMassG && Number.isFinite(grownMassG)))
    throw new RangeError(`growthCurve: ${startMassG} g to ${grownMassG} g is no growth`);
  if (!(days > 0)) throw new RangeError(`growthCurve: days ${days} is not above 0`);
  if (!(share > startMassG / grownMassG && share < 1))
    throw new RangeError(`growthCurve: share ${share} is out of range`);
  const ratePerDay = Math.log(Math.log(startMassG / grownMassG) / Math.log(share)) / days;
  return { startMassG, grownMassG, ratePerDay };
}

/** The same curve in other warmth: Q10 on its rate. */
export function atWarmth(curve: GrowthCurve, q10: number, degreesWarmer: number): GrowthCurve {
  return { ...curve, ratePerDay: curve.ratePerDay * q10Factor(q10, degreesWarmer) };
}

/** Mass in g after `days`; before day 0 the first weight. */
export function massAtG({ startMassG, grownMassG, ratePerDay }: GrowthCurve, days: number): number {
  return grownMassG * (startMassG / grownMassG) ** Math.exp(-ratePerDay * Math.max(0, days));
}

/** Gain in g a day after `days`: rate x mass x ln(grown / mass). */
export function gainGPerDay(curve: GrowthCurve, days: number): number {
  const mass = massAtG(curve, days);
  return curve.ratePerDay * mass * Math.log(curve.grownMassG / mass);
}
