/** Davidson's logistic rate of development (Davidson 1944): rises to a ceiling and knows no decline. */
export interface LogisticRate {
  /** Ceiling, in the rate's own time unit. */
  K: number;
  a: number;
  /** Per C, negative. */
  b: number;
}

/**
 * Development per unit of time, r = K / (1 + exp(a + b T)), at `temperatureC`. Source key davidson1944;
 * fitted to 15 to 32 C without the decline near the upper end, so do not trust it above about 30 C.
 *
 * @example logistic({ K: 0.3676, a: 4.435754, b: -0.20036 }, 25) // about 0.2351 a day: pupa, 4.25 d
 */
export function logistic(p: LogisticRate, temperatureC: number): number {
  return p.K / (1 + Math.exp(p.a + p.b * temperatureC));
}
