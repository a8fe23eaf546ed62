import { describe, expect, it } from 'vitest';
import { publishedFlyCompositions } from '../reference/index.ts';
import { dustLeftShare, dustMgFor, type FlyNutrients, foodQuality } from './food-quality.ts';

describe('food quality', () => {
  const analysis = publishedFlyCompositions.find((one) => one.analysis === 'bernard-allen');
  const flies = analysis as FlyNutrients;
  const carbonate = { supplement: 'calcium carbonate', calciumShare: 40.078 / 100.086, phosphorusShare: 0 };
  it('flies alone have a tenth as much calcium as phosphorus (Bernard and Allen 1997: 0.10 to 1.05 %)', () => {
    const week = foodQuality([{ flyMg: 95, dust: [] }], flies);
    expect(week.calciumToPhosphorus).toBeCloseTo(0.1 / 1.05, 12);
    expect(week.verdict).toBe('too little calcium');
    expect(week.proteinMg / week.dryMg).toBeCloseTo(0.701, 12);
  });
  it('0.67, 1.04 and 1.40 mg of calcium carbonate on 100 flies for 1, 1.5 and 2 to 1, by molar mass', () => {
    const mg = [1, 1.5, 2].map((target) => dustMgFor(95, target, flies, carbonate));
    [0.67, 1.04, 1.4].forEach((expected, i) => expect(mg[i]).toBeCloseTo(expected, 2));
    const dusted = foodQuality([{ flyMg: 95, dust: [{ supplement: carbonate, mg: mg[1] as number }] }], flies);
    expect(dusted.calciumToPhosphorus).toBeCloseTo(1.5, 9);
    expect(dusted.verdict).toBe('enough calcium');
  });
  it('a powder that brings phosphorus too may never get there', () => {
    expect(dustMgFor(95, 2, flies, { supplement: 'bone meal', calciumShare: 0.3, phosphorusShare: 0.15 })).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(dustMgFor(95, 0.05, flies, carbonate)).toBe(0);
    expect(foodQuality([], flies).verdict).toBe('nothing fed');
  });
  it('groomed off by halves', () => {
    expect(dustLeftShare(4, 2)).toBeCloseTo(0.25, 12);
    expect(() => dustLeftShare(-1, 2)).toThrow(/hours -1/);
    expect(() => dustMgFor(-1, 1, flies, carbonate)).toThrow(/flyMg -1/);
  });
});
