/**
 * Bulk densities of ingredients (data/ingredient-densities.csv): each line is a published gram weight of
 * a household measure. The line marked `value` is taken; lines marked `range` widen the range.
 */
import text from '../../data/ingredient-densities.csv?raw';
import { type CsvRow, csvRows } from './csv-rows.ts';
import { publishedMeasures } from './measures.ts';

const kinds = ['dry', 'liquid', 'water', 'live-yeast', 'preservative'] as const;

export interface PublishedDensity {
  ingredient: string;
  name: string;
  kind: (typeof kinds)[number];
  gPerMl: number;
  /** Lightest and heaviest over the sources; 10 % either way for a powder with a single source. */
  lowGPerMl: number;
  highGPerMl: number;
  source: string;
  status: string;
}

const singleSourceSpread = 0.1;

export const publishedDensities: readonly PublishedDensity[] = densitiesOf(csvRows('ingredient-densities', text));

function densitiesOf(rows: CsvRow[]): PublishedDensity[] {
  const keys = [...new Set(rows.map((row) => row.text('ingredient')))];
  return keys.map((key) => densityOf(rows.filter((row) => row.text('ingredient') === key)));
}

function densityOf(rows: CsvRow[]): PublishedDensity {
  const values = rows.filter((row) => row.oneOf('use', ['value', 'range']) === 'value');
  const row = values[0];
  if (!row || values.length > 1) {
    throw new RangeError(
      `ingredient-densities, ${rows[0]?.text('ingredient')}: ${values.length} lines are marked value`,
    );
  }
  const all = rows.map(gPerMl);
  const kind = row.oneOf('kind', kinds);
  const isPowder = kind === 'dry' || kind === 'live-yeast';
  const spread = isPowder && rows.length === 1 ? singleSourceSpread : 0;
  return {
    ingredient: row.text('ingredient'),
    name: row.text('name'),
    kind,
    gPerMl: gPerMl(row),
    lowGPerMl: Math.min(...all) * (1 - spread),
    highGPerMl: Math.max(...all) * (1 + spread),
    source: row.text('source'),
    status: row.text('status'),
  };
}

function gPerMl(row: CsvRow): number {
  const measure = publishedMeasures.find((m) => m.measure === row.text('measure') && m.quantity === 'ml');
  if (!measure) throw new RangeError(`ingredient-densities: "${row.text('measure')}" is no measure of volume`);
  return row.number('grams') / (row.number('amount') * measure.amount);
}
