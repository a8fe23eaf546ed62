import { describe, expect, it } from 'vitest';
import { problemText } from '../foundation/index.ts';
import { publishedEnergyEquations } from '../reference/index.ts';
import { checkAnimal } from './animal-check.ts';
import { type EnergyNeedInput, energyNeed, growthCostOfPrey, usualActivity } from './energy-need.ts';
import { type EnergyEquation, metabolicRateW } from './metabolic-rate.ts';
import { fliesForMg } from './ration.ts';
import { rangeOf } from './range.ts';

const equation = (key: string): EnergyEquation => {
  const found = publishedEnergyEquations.find((one) => one.equation === key);
  if (!found) throw new Error(`no ${key}`);
  return found;
};
const joulePerDay = (key: string, massG: number, temperatureC: number) =>
  86_400 * metabolicRateW(equation(key), massG, temperatureC);
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
  it('growth by share of prey: at 50 % a milligram gained takes two of flies', () => {
    const growthCost = growthCostOfPrey({ low: 0.5, high: 0.5 }, rangeOf(5, 5));
    const grown = need({ growthGPerDay: 0.001, growthCost, joulePerMg: rangeOf(5, 5) });
    const still = need({ joulePerMg: rangeOf(5, 5) });
    expect(grown.flyMgPerDay.low - still.flyMgPerDay.low).toBeCloseTo(2, 9);
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
