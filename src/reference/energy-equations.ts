/** Metabolic rate by taxon, mass and temperature: published coefficients (data/energy-equations.csv). */
import text from '../../data/energy-equations.csv?raw';
import { csvRows } from './csv-rows.ts';
import { rationTaxa } from './rations.ts';

export interface PublishedEnergyEquation {
  equation: string;
  taxon: (typeof rationTaxa)[number];
  name: string;
  /** `resting`: activity and growth come on top. `field`: activity is in it. */
  kind: 'resting' | 'field';
  form: 'arrhenius' | 'power' | 'oxygen';
  a: number;
  b: number | null;
  exponent: number;
  /** For `power`, whose `a` holds at 25 C. */
  q10: number | null;
  temperatureLowC: number;
  temperatureHighC: number;
  massLowG: number;
  massHighG: number;
  source: string;
  status: string;
  note: string;
}

export const publishedEnergyEquations: readonly PublishedEnergyEquation[] = csvRows('energy-equations', text).map(
  (row) => ({
    equation: row.text('equation'),
    taxon: row.oneOf('taxon', rationTaxa),
    name: row.text('name'),
    kind: row.oneOf('kind', ['resting', 'field']),
    form: row.oneOf('form', ['arrhenius', 'power', 'oxygen']),
    a: row.number('a'),
    b: row.numberOrNull('b'),
    exponent: row.number('exponent'),
    q10: row.numberOrNull('q10'),
    temperatureLowC: row.number('temperature_low_c'),
    temperatureHighC: row.number('temperature_high_c'),
    massLowG: row.number('mass_low_g'),
    massHighG: row.number('mass_high_g'),
    source: row.text('source'),
    status: row.text('status'),
    note: row.text('note'),
  }),
);
