/** Growth of mites by temperature beside the published rates; and how long a cup has until they are trouble. */
import { miteTroubleAge, paceTable, type StrainLife, valueAt } from '../../../src/biology/index.ts';
import { publishedRows, strainLife } from '../../../src/reference/index.ts';
import type { Plot } from './plot.ts';
import { blue, constant, green, grey, line, range, red } from './series.ts';

const melanogaster = strainLife('melanogaster') as StrainLife;

export function mites(): Plot {
  const { growthPerDay } = melanogaster.mites;
  const points = (species: string) =>
    publishedRows('mite-growth')
      .filter((row) => row.species === species)
      .map((row) => [row.temperatureC, 100 * (row.growthPerDay as number)] as [number, number]);
  const trouble = (t: number) => miteTroubleAge(melanogaster, paceTable(melanogaster, constant(t, 120)), 0);
  return {
    title: 'Mites by temperature: their growth, and the days until they are trouble',
    x: { label: 'temperature, C', low: 8, high: 32, step: 2 },
    y: { label: 'per cent a day; days', low: 0, high: 60, step: 10 },
    series: [
      line('growth, per cent a day', blue, range(8, 30, 0.25), (t) => 100 * valueAt(growthPerDay, t)),
      { name: 'T. similis, published', colour: blue, kind: 'dots', points: points('Tyrophagus similis') },
      {
        name: 'T. putrescentiae, published',
        colour: grey,
        kind: 'crosses',
        points: points('Tyrophagus putrescentiae'),
      },
      line('days until trouble', red, range(12, 30, 0.5), trouble),
      line(
        'throw-out age, days (common practice)',
        green,
        range(16, 28, 0.5),
        (t) => valueAt(melanogaster.founders.throwOutDays, t),
        'dashed',
      ),
    ],
  };
}
