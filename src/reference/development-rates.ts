/** Published and fitted rate curves, read from data/development-rates.csv. */
import text from '../../data/development-rates.csv?raw';
import { csvRows } from './csv-rows.ts';

const file = 'development-rates.csv';

export interface RateSet {
  /** Key of the set, such as davidson-egg. */
  set: string;
  equation: string;
  stage: string;
  /** Time unit of the rate. */
  per: 'day' | 'hour';
  /** Range of temperatures that the values come from, C. */
  lowC: number;
  highC: number;
  source: string;
  /** Parameter values by the names that the equation uses. */
  parameters: Record<string, number>;
}

const sets = readSets();

/** The curve `set`, whose equation must be `equation`. Throws RangeError when there is none. */
export function rateSet(equation: string, set: string): RateSet {
  const found = sets.find((candidate) => candidate.set === set && candidate.equation === equation);
  if (!found) throw new RangeError(`rateSet: there is no ${equation} set ${set} in ${file}`);
  return found;
}

function readSets(): RateSet[] {
  const made = new Map<string, RateSet>();
  for (const row of csvRows(file, text)) {
    const key = `${row.text('equation')} ${row.text('set')}`;
    const set = made.get(key) ?? {
      set: row.text('set'),
      equation: row.text('equation'),
      stage: row.text('stage'),
      per: 'day',
      lowC: row.number('lowC'),
      highC: row.number('highC'),
      source: row.text('source'),
      parameters: {},
    };
    if (row.text('unit').startsWith('per hour')) set.per = 'hour';
    set.parameters[row.text('parameter')] = row.number('value');
    made.set(key, set);
  }
  return [...made.values()];
}
