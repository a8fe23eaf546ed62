/** Laying and dying by an adult's age on the 25 C clock, tabulated for the engine. */
import { valueAt } from '../curve.ts';
import type { LayingLife, StrainLife } from '../culture.ts';

export const pointsPerAdultDay = 8;
const lastAgeDays = 400;

export interface AdultTables {
  /** Eggs per adult (both sexes) and day on a fertile, uncrowded medium in an ordinary cup. */
  laying: Float64Array;
  /** Deaths per day on the 25 C clock, cup deaths left out. */
  hazard: Float64Array;
}

const made = new WeakMap<StrainLife, Map<number, AdultTables>>();

/**
 * The tables of a strain; age in days at 25 C, `pointsPerAdultDay` to the day. A cohort that emerged
 * over one step and lays over another is of no single age: laying is its mean over both steps.
 */
export function adultTables(strain: StrainLife, stepsPerDay: number): AdultTables {
  const bySteps = made.get(strain) ?? new Map<number, AdultTables>();
  made.set(strain, bySteps);
  const known = bySteps.get(stepsPerDay);
  if (known) return known;
  const size = lastAgeDays * pointsPerAdultDay + 1;
  const age = (i: number) => i / pointsPerAdultDay;
  const { a, b } = gompertzAt(strain, 25);
  const females = 1 - strain.adult.maleShare;
  const tables = {
    laying: Float64Array.from(
      { length: size },
      (_, i) => females * layingAround(strain.laying, age(i), 1 / stepsPerDay),
    ),
    hazard: Float64Array.from({ length: size }, (_, i) => Math.min(20, a * Math.exp(b * age(i)))),
  };
  bySteps.set(stepsPerDay, tables);
  return tables;
}

/** Mean of the laying curve over a triangle of half-width `width` days around an age. */
function layingAround(laying: LayingLife, ageDays: number, width: number): number {
  const points = 8;
  let sum = 0;
  let weights = 0;
  for (let i = -points; i <= points; i += 1) {
    const weight = points + 0.5 - Math.abs(i);
    sum += weight * eggsPerFemaleDay(laying, ageDays + (i * width) / points);
    weights += weight;
  }
  return sum / weights;
}

/**
 * Eggs of a female per day at age `ageDays` (25 C): the plateau's share in a cup, a rise from the first
 * eggs on, a logistic decline. f = c F (1 - e^-(x - x0)) / (1 + e^((x - h) / s)); 0 before x0.
 */
export function eggsPerFemaleDay(laying: LayingLife, ageDays: number): number {
  const since = ageDays - laying.firstEggsDays;
  if (since <= 0) return 0;
  const decline = 1 + Math.exp((ageDays - laying.halfAgeDays) / laying.declineWidthDays);
  return (laying.cupShare * laying.peakEggsPerDay * -Math.expm1(-since)) / decline;
}

/** Gompertz parameters at a temperature: ln a and ln b by straight lines between those given. */
export function gompertzAt(strain: StrainLife, temperatureC: number): { a: number; b: number } {
  const { temperatureC: at, a, b } = strain.adult.gompertz;
  return {
    a: Math.exp(valueAt({ at, value: a.map(Math.log) }, temperatureC)),
    b: Math.exp(valueAt({ at, value: b.map(Math.log) }, temperatureC)),
  };
}

/**
 * Share of adults alive at `ageDays` at a constant temperature: Gompertz, and the deaths of a crowded
 * cup unless `roomy`.
 */
export function adultSurvival(strain: StrainLife, temperatureC: number, ageDays: number, roomy: boolean): number {
  const { a, b } = gompertzAt(strain, temperatureC);
  const cup = roomy ? 0 : strain.adult.cupDeathPerDay * ageDays;
  return Math.exp((-a / b) * Math.expm1(b * ageDays) - cup);
}
