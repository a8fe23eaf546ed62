import { describe, expect, it } from 'vitest';
import { publishedEnergyEquations } from '../reference/index.ts';
import { covers, type EnergyEquation, metabolicRateW, q10Factor } from './metabolic-rate.ts';

const equation = (key: string): EnergyEquation => {
  const found = publishedEnergyEquations.find((one) => one.equation === key);
  if (!found) throw new Error(`no ${key}`);
  return found;
};
const joulePerDay = (key: string, massG: number, temperatureC: number) =>
  86_400 * metabolicRateW(equation(key), massG, temperatureC);

describe('metabolic rates, against worked examples', () => {
  it('a reptile of 100 g at 30 C: 0.06373466 W (documentation of the R package TrenchR, after Gillooly et al. 2001)', () =>
    expect(metabolicRateW(equation('gillooly-reptile'), 100, 30)).toBeCloseTo(0.06373466, 8));
  it('the smallest reptile of Nagy (2005), a gecko of 0.23 kJ a day, comes out at little over a gram', () => {
    expect(joulePerDay('nagy-reptile', 1.2, 25)).toBeGreaterThan(225);
    expect(joulePerDay('nagy-reptile', 1.2, 25)).toBeLessThan(235);
  });
  it('a frog of 1 g at 24 C: 96.4 J a day, by hand from the published coefficients', () =>
    expect(joulePerDay('gillooly-amphibian', 1, 24)).toBeCloseTo((Math.exp(16.68 - 5760 / 297.15) / 60) * 86_400, 6));
  it('a lizard of 1 g at 28 C: 0.013 x 10^(0.038 x 28) ml of oxygen an hour is 73 J a day', () =>
    expect(joulePerDay('andrews-pough', 1, 28)).toBeCloseTo(0.013 * 10 ** (0.038 * 28) * 20.1 * 24, 9));
  it('Q10 as published forms imply: 1.91 amphibians, 2.69 reptiles, 2.80 invertebrates, 2.40 lizards', () => {
    const q10 = (key: string) => metabolicRateW(equation(key), 1, 30) / metabolicRateW(equation(key), 1, 20);
    expect(q10('gillooly-amphibian')).toBeCloseTo(1.91, 2);
    expect(q10('gillooly-reptile')).toBeCloseTo(2.69, 2);
    expect(q10('gillooly-invertebrate')).toBeCloseTo(2.8, 2);
    expect(q10('andrews-pough')).toBeCloseTo(2.4, 2);
  });
  it('Q10 arithmetic: 2.2 over 3 degrees is a quarter more', () => {
    expect(q10Factor(2.2, 3)).toBeCloseTo(1.267, 3);
    expect(
      metabolicRateW(equation('animaltraits-spiders'), 1, 35) / metabolicRateW(equation('animaltraits-spiders'), 1, 25),
    ).toBeCloseTo(2, 12);
  });
  it('twice the mass at exponent 0.75 needs 1.68 times as much', () =>
    expect(joulePerDay('gillooly-amphibian', 2, 24) / joulePerDay('gillooly-amphibian', 1, 24)).toBeCloseTo(1.68, 2));
  it('knows what it was made for', () => {
    expect(covers(equation('animaltraits-spiders'), 0.003, 24)).toBe(true);
    expect(covers(equation('animaltraits-spiders'), 50, 24)).toBe(false);
    expect(covers(equation('animaltraits-spiders'), 0.003, 2)).toBe(false);
  });
  it('refuses weightless animals and broken equations', () => {
    expect(() => joulePerDay('nagy-reptile', 0, 25)).toThrow(/massG 0/);
    expect(() => metabolicRateW({ ...equation('nagy-reptile'), q10: null }, 1, 25)).toThrow(/has no q10/);
  });
});
