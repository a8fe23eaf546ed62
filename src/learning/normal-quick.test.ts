import { describe, expect, it } from 'vitest';
import { normalCdf } from '../foundation/index.ts';
import { quickCdf, truncate } from './normal-quick.ts';

describe('the quick normal distribution', () => {
  it('is within 1e-7 of the statistics library (26.2.17 in Abramowitz and Stegun states 7.5e-8)', () => {
    for (let z = -8; z <= 8; z += 0.01) expect(Math.abs(quickCdf(z) - normalCdf(z))).toBeLessThan(1e-7);
    expect(quickCdf(Infinity)).toBe(1);
    expect(quickCdf(-Infinity)).toBe(0);
  });

  it('cuts a half-normal to its published mean and variance', () => {
    // Half-normal: mean sqrt(2/pi), variance 1 - 2/pi (any handbook of distributions).
    const half = truncate(0, 1, 0, Infinity, { mass: 0, mean: 0, variance: 0 });
    expect(half.mass).toBeCloseTo(0.5, 6);
    expect(half.mean).toBeCloseTo(Math.sqrt(2 / Math.PI), 6);
    expect(half.variance).toBeCloseTo(1 - 2 / Math.PI, 6);
  });

  it('cuts as numerical integration does, on either side and between', () => {
    for (const [low, high] of [
      [-Infinity, 1.2],
      [0.3, 2.5],
      [2, Infinity],
      [-3, -2],
    ] as const) {
      const cut = truncate(0.5, 0.8, low, high, { mass: 0, mean: 0, variance: 0 });
      const exact = integrate(0.5, 0.8, Math.max(low, -6), Math.min(high, 7));
      expect(cut.mass).toBeCloseTo(exact.mass, 5);
      expect(cut.mean).toBeCloseTo(exact.mean, 3);
      expect(Math.abs(cut.variance / exact.variance - 1)).toBeLessThan(0.02);
    }
  });
});

function integrate(mean: number, sd: number, low: number, high: number) {
  const n = 20_000;
  const step = (high - low) / n;
  let [mass, first, second] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const x = low + (i + 0.5) * step;
    const w = (Math.exp(-0.5 * ((x - mean) / sd) ** 2) / (sd * Math.sqrt(2 * Math.PI))) * step;
    mass += w;
    first += w * x;
    second += w * x * x;
  }
  return { mass, mean: first / mass, variance: second / mass - (first / mass) ** 2 };
}
