import { describe, expect, it } from 'vitest';
import { comparedPairs, cupsUntilClear, differenceOf } from './trial.ts';

describe('a comparison of recipes as a trial', () => {
  it('has the two-sample size when nothing was known before', () => {
    // n a side = 2 (z sd / difference)^2 (any textbook of trials); z of one-sided 5 % = 1.6449.
    const eachSide = 2 * ((1.6449 * 0.3) / 0.2) ** 2;
    expect(cupsUntilClear({ mean: 0.2, sd: 1000 }, 0.3)).toBe(2 * Math.ceil(eachSide));
  });

  it('needs fewer cups the more is known, and none once it is clear', () => {
    const vague = cupsUntilClear({ mean: 0.2, sd: 0.3 }, 0.3) as number;
    const better = cupsUntilClear({ mean: 0.2, sd: 0.15 }, 0.3) as number;
    expect(better).toBeLessThan(vague);
    expect(better).toBeGreaterThan(0);
    expect(cupsUntilClear({ mean: 0.2, sd: 0.1 }, 0.3)).toBe(0);
  });

  it('is never sized for a difference below 10 %', () => {
    expect(cupsUntilClear({ mean: 0.001, sd: 0.15 }, 0.3)).toBe(cupsUntilClear({ mean: 0.09, sd: 0.15 }, 0.3));
    expect(cupsUntilClear({ mean: 0.001, sd: 10 }, 2)).toBeNull();
  });

  it('reads the difference off joint draws', () => {
    const d = differenceOf([1, 2, 3, 4, 5], [1, 1, 1, 1, 6]);
    expect(d.mean).toBeCloseTo(1, 12);
    expect(d.chanceMore).toBeCloseTo(3 / 5, 12);
  });

  it('sets each level against the one with most cups', () => {
    const level = (key: string, cups: number) => ({
      key,
      cups,
      draws: { logPace: new Float64Array(1), logYield: new Float64Array(1) },
    });
    const pairs = comparedPairs([level('a', 3), level('b', 9), level('c', 1)]);
    expect(pairs.map(([x, y]) => x.key + y.key)).toEqual(['ab', 'cb']);
    expect(comparedPairs([])).toEqual([]);
  });
});
