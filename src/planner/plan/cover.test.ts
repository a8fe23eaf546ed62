import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../foundation/index.ts';
import { possibleLack } from './projection.ts';

describe('the cover of a lognormal supply', () => {
  // Newsvendor: stock that meets demand with chance p is the p fractile (Arrow, Harris, Marschak 1951,
  // Econometrica 19:250). For X lognormal with log mean m and log sd s, P(X >= exp(m - z s)) = Phi(z).
  it('is the newsvendor fractile: what is left is exceeded with chance Phi(z)', () => {
    for (const [logMean, logSd, z] of [
      [5, 0.3, 2.33],
      [6.2, 0.8, 1.2],
      [2, 0.05, 3],
    ] as const) {
      const mean = Math.exp(logMean + logSd ** 2 / 2);
      const variance = mean ** 2 * (Math.exp(logSd ** 2) - 1);
      const left = mean - possibleLack(mean, variance, z);
      expect(normalCdf((Math.log(left) - logMean) / logSd)).toBeCloseTo(normalCdf(-z), 10);
    }
  });
  it('is nothing without variance', () => expect(possibleLack(100, 0, 3)).toBeCloseTo(0, 12));
});
