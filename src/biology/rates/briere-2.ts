/**
 * Briere-2 rate of development (Briere et al. 1999, Environ Entomol 28:22, second form): a curve with
 * a lower and an upper limit and a steep fall near the upper one.
 */
export interface Briere2 {
  /** Scale, per day and C^(2 + 1/m). */
  a: number;
  lowerC: number;
  upperC: number;
  m: number;
}

/**
 * Development per day, r = a T (T - lower) (upper - T)^(1/m), at `temperatureC`; 0 at and beyond the
 * limits. Source key briere1999; the parameters carry their own.
 *
 * @example briere2({ a: 1.6205e-4, lowerC: 9.207, upperC: 33, m: 3.853 }, 25) // about 0.1098
 */
export function briere2(p: Briere2, temperatureC: number): number {
  if (temperatureC <= p.lowerC || temperatureC >= p.upperC || temperatureC <= 0) return 0;
  return p.a * temperatureC * (temperatureC - p.lowerC) * (p.upperC - temperatureC) ** (1 / p.m);
}
