/** Household measures and their exact content (data/measures.csv). */
import text from '../../data/measures.csv?raw';
import { csvRows } from './csv-rows.ts';

const systems = ['us', 'metric', 'australian', 'imperial', 'us-label'] as const;

export interface PublishedMeasure {
  measure: string;
  name: string;
  system: (typeof systems)[number];
  quantity: 'ml' | 'g';
  amount: number;
  source: string;
  status: string;
}

export const publishedMeasures: readonly PublishedMeasure[] = csvRows('measures', text).map((row) => ({
  measure: row.text('measure'),
  name: row.text('name'),
  system: row.oneOf('system', systems),
  quantity: row.oneOf('quantity', ['ml', 'g']),
  amount: row.number('amount'),
  source: row.text('source'),
  status: row.text('status'),
}));
