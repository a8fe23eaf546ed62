/** The strain and cup of parameters.csv as the engine takes them. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { briere2, constantCurve, type CultureConditions, type StrainLife } from '../../../src/biology/index.ts';
import { strainLife } from '../../../src/reference/index.ts';

const here = new URL('.', import.meta.url).pathname;
const rows = parse(readFileSync(`${here}parameters.csv`, 'utf8'), { columns: true }) as Record<string, string>[];
export const chain = Object.fromEntries(rows.map((row) => [row.name, Number(row.value)])) as Record<string, number>;

/** A parameter by name; RangeError when the file lacks it. */
export function parameter(name: string): number {
  const value = chain[name];
  if (value === undefined) throw new RangeError(`parameter: ${name} is not in parameters.csv`);
  return value;
}

/** A strain with nothing in it but what the chain has; 1 cm2 of deep medium is the whole capacity. */
export function chainStrain(crowded: boolean): StrainLife {
  const base = strainLife('melanogaster') as StrainLife;
  const [egg, larva, pupa] = ['eggSubstages', 'larvaSubstages', 'pupaSubstages'].map(parameter) as [
    number,
    number,
    number,
  ];
  const k = egg + larva + pupa;
  const rate = {
    a: parameter('briereA'),
    lowerC: parameter('briereLowerC'),
    upperC: parameter('briereUpperC'),
    m: parameter('briereM'),
  };
  return {
    ...base,
    key: `chain-${crowded}`,
    developmentRate: (temperatureC) => briere2(rate, temperatureC),
    stageShares: { egg: egg / k, larva: larva / k, pupa: pupa / k },
    developmentCv: 1 / Math.sqrt(k),
    crowdedCv: 1 / Math.sqrt(k),
    viability: constantCurve(1),
    heatDeathPerDay: constantCurve(0),
    laying: {
      ...base.laying,
      cupShare: 1,
      peakEggsPerDay: 2 * parameter('eggsPerFounderDay'),
      halfAgeDays: 1e6,
      byTemperature: constantCurve(1),
      maleFertility: constantCurve(1),
      halfAdultsPerCm2: 1e12,
    },
    // No ageing: deaths of the cup only, at the same pace whatever the temperature.
    adult: {
      gompertz: { temperatureC: [25], a: [1e-9], b: [1e-3] },
      cupDeathPerDay: parameter('founderDeathPerDay'),
      maleShare: 0.5,
    },
    crowding: {
      ...base.crowding,
      larvaePerCm2: parameter('capacity'),
      feedingDepthCm: 1e-3,
      baseDeaths: parameter('baseDeaths'),
      crowdedDeaths: crowded ? parameter('crowdedDeaths') : 0,
      delay: crowded ? parameter('delay') : 0,
      massHalf: parameter('massHalf'),
    },
    medium: { fliesPerG: crowded ? parameter('food') : 1e12, lifeDays: constantCurve(1e9) },
    founders: { ...base.founders, settlingDays: 0 },
  };
}

export const chainConditions: CultureConditions = {
  founders: parameter('founders'),
  founderAgeDays: 60,
  mediumMassG: 1,
  surfaceCm2: 1,
};
