/** How many young an egg case may give, by species (data/hatches.csv). */
import text from '../../data/hatches.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedHatch {
  species: string;
  name: string;
  youngLow: number;
  youngHigh: number;
  source: string;
  status: string;
  note: string;
}

export const publishedHatches: readonly PublishedHatch[] = csvRows('hatches', text).map((row) => ({
  species: row.text('species'),
  name: row.text('name'),
  youngLow: row.number('young_low'),
  youngHigh: row.number('young_high'),
  source: row.text('source'),
  status: row.text('status'),
  note: row.text('note'),
}));
