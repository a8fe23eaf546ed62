/** The published measurements that models are held against, as rows of numbers and words. */
import consensusText from '../../data/egg-to-adult-consensus.csv?raw';
import stagesText from '../../data/stage-durations.csv?raw';
import linearText from '../../data/development-linear-fits.csv?raw';
import bonnierText from '../../data/bonnier-1926.csv?raw';
import lifespanText from '../../data/adult-lifespan.csv?raw';
import eggsText from '../../data/eggs-by-age.csv?raw';
import densityText from '../../data/founder-density.csv?raw';
import massText from '../../data/fly-mass.csv?raw';
import mitesText from '../../data/mite-growth.csv?raw';
import { csvRows } from './csv-rows.ts';

const texts = {
  'egg-to-adult-consensus': consensusText,
  'stage-durations': stagesText,
  'development-linear-fits': linearText,
  'bonnier-1926': bonnierText,
  'adult-lifespan': lifespanText,
  'eggs-by-age': eggsText,
  'founder-density': densityText,
  'fly-mass': massText,
  'mite-growth': mitesText,
};

export type PublishedTable = keyof typeof texts;
/** A row: cells that are numbers as numbers, others as text; an empty cell is null. */
export type PublishedRow = Record<string, number | string | null>;

/** The rows of a table in data/; every row has a `source` column, whose key `source` knows. */
export function publishedRows(table: PublishedTable): PublishedRow[] {
  return csvRows(`${table}.csv`, texts[table]).map(({ cells }) =>
    Object.fromEntries(Object.entries(cells).map(([column, text]) => [column, cell(text)])),
  );
}

function cell(text: string): number | string | null {
  if (text === '') return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : text;
}
