/** How fast an uncrowded population would grow: the Euler-Lotka equation on a strain's own life table. */
import { valueAt } from '../curve.ts';
import type { StrainLife } from '../culture.ts';
import { adultSurvival, eggsPerFemaleDay } from '../life/adult-tables.ts';
import { adultClock } from '../life/pace.ts';

export interface GrowthRate {
  /** Intrinsic rate of increase, per day. */
  perDay: number;
  /** Daughters of a female over her life. */
  netReproduction: number;
  generationDays: number;
  doublingDays: number;
}

const lastAgeDays = 150;
const stepDays = 0.05;

/**
 * Rate r that solves sum of exp(-r a) l(a) m(a) = 1 at a constant temperature, uncrowded, in a roomy
 * vessel: viability and development time with their spread, then adult survival and daughters laid.
 * `foodShare` is the share of the laying plateau that the food allows. Throws RangeError where no egg
 * becomes adult.
 */
export function growthRate(strain: StrainLife, temperatureC: number, foodShare = 1): GrowthRate {
  const rate = strain.developmentRate(temperatureC);
  if (!(rate > 0)) throw new RangeError(`growthRate: nothing develops at ${temperatureC} C`);
  const daughters = daughtersByAge(strain, temperatureC, foodShare);
  const netReproduction = daughters.reduce((sum, m) => sum + m, 0);
  const shape = 1 / strain.developmentCv ** 2;
  // Laplace transform of the gamma development time at rate r.
  const immature = (r: number) => (1 + r / (shape * rate)) ** -shape;
  const ages = daughters.map((_, i) => (i + 0.5) * stepDays);
  const perDay = rateOfIncrease(ages, daughters, immature);
  return {
    perDay,
    netReproduction,
    generationDays: Math.log(netReproduction) / perDay,
    doublingDays: Math.LN2 / perDay,
  };
}

/**
 * The Euler-Lotka root: rate r, per unit of `ages`, at which sum of exp(-r age) daughters = 1, `daughters`
 * being those that a newborn female can expect to bear at each age (l(x) m(x)). Ages may be counted from
 * the end of a wait whose Laplace transform is `wait`. Looked for between -1/2 and 5.
 */
export function rateOfIncrease(
  ages: readonly number[],
  daughters: readonly number[],
  wait: (r: number) => number = () => 1,
): number {
  const born = (r: number) => daughters.reduce((sum, m, i) => sum + m * Math.exp(-r * (ages[i] as number)), 0);
  return root((r) => wait(r) * born(r) - 1, -0.5, 5);
}

/** Daughters laid per newborn egg in each step of adult age. */
function daughtersByAge(strain: StrainLife, temperatureC: number, foodShare: number): number[] {
  const pace = adultClock(strain, temperatureC);
  const warmth =
    valueAt(strain.laying.byTemperature, temperatureC) * valueAt(strain.laying.maleFertility, temperatureC);
  const born = valueAt(strain.viability, temperatureC) * Math.exp(-strain.crowding.baseDeaths) * 0.5;
  const laying = { ...strain.laying, cupShare: foodShare };
  return Array.from({ length: lastAgeDays / stepDays }, (_, i) => {
    const age = (i + 0.5) * stepDays;
    const eggs = eggsPerFemaleDay(laying, age * pace) * warmth;
    return born * adultSurvival(strain, temperatureC, age, true) * eggs * stepDays;
  });
}

/** Root of a falling function between two places, by halving. */
function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
