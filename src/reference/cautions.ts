/** Where work can hurt: the fact behind each caution and its source (data/cautions.csv). */
import text from '../../data/cautions.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedCaution {
  caution: string;
  appliesTo: string[];
  fact: string;
  source: string;
  status: string;
}

export const publishedCautions: readonly PublishedCaution[] = csvRows('cautions', text).map((row) => ({
  caution: row.text('caution'),
  appliesTo: row.text('applies_to').split(';'),
  fact: row.text('fact'),
  source: row.text('source'),
  status: row.text('status'),
}));
