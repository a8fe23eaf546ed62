import { describe, expect, it } from 'vitest';
import { atWarmth, gainGPerDay, growthCurve, massAtG } from './growth.ts';

describe('growth', () => {
  const curve = growthCurve(0.2, 2, 300);
  it('begins and ends as asked', () => {
    expect(massAtG(curve, 0)).toBeCloseTo(0.2, 12);
    expect(massAtG(curve, 300)).toBeCloseTo(0.95 * 2, 12);
    expect(massAtG(curve, 1e6)).toBeCloseTo(2, 9);
  });
  it('its gain is the slope of its mass', () => {
    const slope = (massAtG(curve, 100.001) - massAtG(curve, 99.999)) / 0.002;
    expect(gainGPerDay(curve, 100)).toBeCloseTo(slope, 8);
  });
  it('gains most at 1/e of the grown mass (Gompertz)', () => {
    const days = Array.from({ length: 300 }, (_, d) => d);
    const best = days.reduce((a, b) => (gainGPerDay(curve, b) > gainGPerDay(curve, a) ? b : a));
    expect(massAtG(curve, best) / 2).toBeCloseTo(1 / Math.E, 2);
  });
  it('runs twice as fast ten degrees warmer at Q10 2', () =>
    expect(massAtG(atWarmth(curve, 2, 10), 50)).toBeCloseTo(massAtG(curve, 100), 12));
  it('refuses shrinking', () => {
    expect(() => growthCurve(2, 1, 10)).toThrow(/no growth/);
    expect(() => growthCurve(1, 2, 0)).toThrow(/days 0/);
    expect(() => growthCurve(1, 2, 10, 0.4)).toThrow(/share 0.4/);
  });
});
