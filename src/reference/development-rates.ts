/** Published and fitted rate curves, read from data/development-rates.csv. */
import text from '../../data/development-rates.csv?raw';
import { numberIn, tableRows } from './csv-table.ts';

const file = 'development-rates.csv';
const columns = ['equation', 'set', 'stage', 'parameter', 'value', 'unit', 'lowC', 'highC', 'source'] as const;

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

/** All rate curves of the table. */
export function rateSets(): RateSet[] {
  return sets;
}

/** The curve `set`, whose equation must be `equation`. Throws RangeError when there is none. */
export function rateSet(equation: string, set: string): RateSet {
  const found = sets.find((candidate) => candidate.set === set && candidate.equation === equation);
  if (!found) throw new RangeError(`rateSet: there is no ${equation} set ${set} in ${file}`);
  return found;
}

function readSets(): RateSet[] {
  const made = new Map<string, RateSet>();
  for (const row of tableRows(file, text, columns)) {
    const key = `${row.equation} ${row.set}`;
    const set = made.get(key) ?? {
      set: row.set,
      equation: row.equation,
      stage: row.stage,
      per: 'day',
      lowC: numberIn(file, 'lowC', row.lowC),
      highC: numberIn(file, 'highC', row.highC),
      source: row.source,
      parameters: {},
    };
    if (row.unit.startsWith('per hour')) set.per = 'hour';
    set.parameters[row.parameter] = numberIn(file, row.parameter, row.value);
    made.set(key, set);
  }
  return [...made.values()];
}
