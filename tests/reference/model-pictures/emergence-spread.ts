/** How widely flies of one day's eggs emerge, alone and crowded, females and males; Bonnier's means beside them. */
import { cultureCourse, emergenceBySex, paceTable, type StrainLife } from '../../../src/biology/index.ts';
import { publishedRows, strainLife } from '../../../src/reference/index.ts';
import type { Plot } from './plot.ts';
import { blue, constant, green, grey, red } from './series.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;

/** Founders settle for a day, lay for one, and are taken out: laid, in the mean, at day 1.5. */
export function emergenceSpread(): Plot {
  const pace = paceTable(melanogaster, constant(25, 30));
  const one = (founders: number) => {
    const conditions = { founders, founderAgeDays: 6, mediumMassG: 60, surfaceCm2: 30 };
    return cultureCourse(melanogaster, pace, 0, conditions, { everyDays: 1, share: 1, fromAgeDays: 1 }, 24);
  };
  const alone = one(1);
  const { female, male } = emergenceBySex(melanogaster, pace, 0, alone);
  const shares = (byDay: Float64Array) => {
    const all = byDay.reduce((sum, flies) => sum + flies, 0);
    return Array.from(byDay, (flies, day) => [day - 1, flies / all] as [number, number]);
  };
  const means = (sex: string) =>
    publishedRows('bonnier-1926')
      .filter((row) => row.temperatureC === 25 && row.sex === sex)
      .map((row) => [((row.eggToPupaHours as number) + (row.pupaHours as number)) / 24, 0.02] as [number, number]);
  return {
    title: "Emergence of one day's eggs, D. melanogaster, 25 C",
    x: { label: 'days from laying', low: 7, high: 17, step: 1 },
    y: { label: 'share of them a day', low: 0, high: 0.7, step: 0.1 },
    series: [
      { name: 'females, alone', colour: red, kind: 'line', points: shares(female) },
      { name: 'males, alone', colour: blue, kind: 'line', points: shares(male) },
      { name: 'both, badly crowded', colour: green, kind: 'line', points: shares(one(400).emerged) },
      { name: 'mean of females as measured (Bonnier 1926)', colour: red, kind: 'dots', points: means('female') },
      { name: 'mean of males as measured', colour: grey, kind: 'crosses', points: means('male') },
    ],
  };
}
