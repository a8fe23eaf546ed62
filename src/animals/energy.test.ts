import { describe, expect, it } from 'vitest';
import { problemText } from '../foundation/index.ts';
import { publishedEnergyEquations, publishedFlyCompositions } from '../reference/index.ts';
import { checkAnimal } from './animal-check.ts';
import { type EnergyNeedInput, energyNeed, usualActivity } from './energy-need.ts';
import { assimilatedShare, grossJoulePerMg, usableJoulePerMg } from './fly-energy.ts';
import { covers, type EnergyEquation, metabolicRateW, q10Factor } from './metabolic-rate.ts';
import { compareRations, fliesForMg, practiceReckoning } from './ration.ts';
import { dividedBy, rangeOf } from './range.ts';

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

describe('a fly as food (Bernard and Allen 1997; Hand-Rearing Birds, table 41.1)', () => {
  it('a fly of 0.95 mg has 6.0 J gross, 5.4 J usable by the second table', () => {
    expect(0.95 * grossJoulePerMg(publishedFlyCompositions).middle).toBeCloseTo(6.0, 1);
    expect(0.95 * usableJoulePerMg(publishedFlyCompositions, assimilatedShare.amphibian).high).toBeCloseTo(5.4, 1);
  });
  it('usable energy spans what frogs take up: 0.811 - 0.038 of gross at least', () =>
    expect(usableJoulePerMg(publishedFlyCompositions, assimilatedShare.amphibian).low).toBeCloseTo(
      0.296 * 21.4 * 0.773,
      9,
    ));
  it('wants an analysis with energy', () => expect(() => grossJoulePerMg([])).toThrow(/no analysis/));
});

const frog = (more: Partial<EnergyNeedInput> = {}): EnergyNeedInput => ({
  massG: 1,
  temperatureC: 24,
  equations: [equation('gillooly-amphibian')],
  activity: usualActivity,
  growthGPerDay: 0,
  flyShare: 1,
  joulePerMg: rangeOf(6.02 / 0.95, 6.02 / 0.95),
  ...more,
});
const need = (more: Partial<EnergyNeedInput> = {}) => {
  const result = energyNeed(frog(more));
  if (!result.ok) throw new Error(result.problems.map(problemText).join('; '));
  return result.value;
};

describe('need from energy', () => {
  it('a frog of 1 g at 24 C: 24 to 32 flies of 0.95 mg a day, gross, at 1.5 to 2 times rest', () => {
    const flies = fliesForMg(need().flyMgPerDay, rangeOf(0.95, 0.95));
    expect(flies.low).toBeCloseTo(24, 0);
    expect(flies.high).toBeCloseTo(32, 0);
  });
  it('growth comes on top, the flies share of the diet takes its part', () => {
    expect(need({ growthGPerDay: 0.01 }).joulePerDay.low - need().joulePerDay.low).toBeCloseTo(60, 9);
    expect(need({ flyShare: 0.5 }).flyMgPerDay.high).toBeCloseTo(need().flyMgPerDay.high / 2, 9);
  });
  it('takes the field equation as it is, and spans all equations', () => {
    const { byEquation, joulePerDay } = need({
      temperatureC: 25,
      equations: publishedEnergyEquations.filter(({ taxon }) => taxon === 'reptile'),
    });
    expect(byEquation).toHaveLength(4);
    const field = byEquation.find(({ kind }) => kind === 'field')?.joulePerDay ?? 0;
    expect(field).toBeCloseTo(196, 0);
    expect(joulePerDay.low).toBeLessThanOrEqual(field);
    expect(joulePerDay.high).toBeGreaterThanOrEqual(field);
  });
  it('does not add activity to a field rate', () => {
    const { joulePerDay } = need({ temperatureC: 25, equations: [equation('nagy-reptile')] });
    expect(joulePerDay.low).toBeCloseTo(196, 0);
    expect(joulePerDay.high).toBe(joulePerDay.low);
  });
  it('a mantis of 12 mg at 24 C rests on 2.2 J a day (invertebrates, Gillooly et al. 2001)', () =>
    expect(joulePerDay('gillooly-invertebrate', 0.012, 24)).toBeCloseTo(2.2, 1));
  it('refuses with reasons', () => {
    const wrong = (more: Partial<EnergyNeedInput>) => {
      const result = energyNeed(frog(more));
      return result.ok ? 'accepted' : result.problems.map(problemText).join('\n');
    };
    expect(wrong({ massG: 0 })).toMatch(/massG: found 0; expected 0.0005 to 200 g: lighter/);
    expect(wrong({ massG: 10_000 })).toMatch(/massG: found 10000/);
    expect(wrong({ temperatureC: -5 })).toMatch(/temperatureC: found -5; expected 5 to 40 C/);
    expect(wrong({ massG: Number.NaN })).toMatch(/massG/);
    expect(wrong({ equations: [] })).toMatch(/none for 1 g at 24 C/);
    expect(() => energyNeed(frog({ flyShare: 0 }))).toThrow(/flyShare 0/);
    const crowd = checkAnimal({ count: 1e9 });
    expect(!crowd.ok && problemText(crowd.problems[0] as never)).toMatch(/count: found 1000000000.*slip/);
  });
});

describe('practice beside energy', () => {
  const thumbnail = { fliesLow: 10, fliesHigh: 20, everyDaysLow: 1, everyDaysHigh: 2 };
  const fly = { usualMg: 0.95, nowMg: rangeOf(0.95, 0.95) };
  it('practice runs from the small feeding seldom to the large one often', () => {
    const { fliesPerDay } = practiceReckoning(thumbnail, fly);
    expect(fliesPerDay.low).toBeCloseTo(5, 12);
    expect(fliesPerDay.high).toBeCloseTo(20, 12);
  });
  it('small flies of a crowded cup count for less', () => {
    const small = practiceReckoning(thumbnail, { ...fly, nowMg: rangeOf(0.6, 0.7) }).fliesPerDay;
    expect(small.high).toBeCloseTo((20 * 0.95) / 0.6, 12);
    expect(small.low).toBeCloseTo((5 * 0.95) / 0.7, 12);
  });
  it('says how the two agree', () => {
    const verdict = (low: number, high: number) => compareRations(thumbnail, rangeOf(low, high), fly).verdict;
    expect(verdict(10, 30)).toBe('they overlap');
    expect(verdict(30, 60)).toBe('energy asks for more');
    expect(verdict(1, 2)).toBe('energy asks for less');
    expect(compareRations(thumbnail, null, fly)).toMatchObject({
      energy: null,
      ratio: null,
      verdict: 'no energy reckoning',
    });
    expect(compareRations(thumbnail, rangeOf(19, 19), fly).ratio).toBeCloseTo(2, 12);
  });
  it('ranges run upwards', () => {
    expect(() => rangeOf(2, 1)).toThrow(/2 to 1/);
    expect(() => dividedBy(rangeOf(1, 2), rangeOf(0, 1))).toThrow(/divisor/);
    expect(rangeOf(0, 4).middle).toBe(2);
  });
});
