import { describe, expect, it } from 'vitest';
import { effectiveSize, effectiveSizeOver, generationsUntilLoss, lossOfVariation } from './effective-size.ts';

describe('effective size (Wright 1931; Falconer, Quantitative Genetics, ch. 4)', () => {
  it('4 F M / (F + M)', () => {
    expect(effectiveSize({ females: 25, males: 25 })).toBe(50);
    expect(effectiveSize({ females: 10, males: 30 })).toBe(30);
    expect(effectiveSize({ females: 5, males: 0 })).toBe(0);
    expect(() => effectiveSize({ females: -1, males: 2 })).toThrow(/females -1/);
  });
  it('harmonic over generations: one narrow one rules', () => {
    expect(effectiveSizeOver([10, 1000])).toBeCloseTo(19.802, 3);
    expect(() => effectiveSizeOver([])).toThrow(/no generations/);
  });
  it('loses 1/(2 Ne) a generation: 1 % at 50, the rule of 50 (Franklin 1980)', () => {
    expect(lossOfVariation([50])).toBeCloseTo(0.01, 12);
    expect(lossOfVariation([50, 50, 50])).toBeCloseTo(1 - 0.99 ** 3, 12);
    expect(generationsUntilLoss(50, 0.1)).toBeCloseTo(10.48, 2);
  });
});
