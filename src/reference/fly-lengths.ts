/** Body lengths of the flies that are fed (data/fly-length.csv). */
import text from '../../data/fly-length.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedFlyLength {
  species: string;
  lengthMm: number;
  lowMm: number;
  highMm: number;
  source: string;
  status: string;
  note: string;
}

export const publishedFlyLengths: readonly PublishedFlyLength[] = csvRows('fly-length', text).map((row) => ({
  species: row.text('species'),
  lengthMm: row.number('length_mm'),
  lowMm: row.number('low_mm'),
  highMm: row.number('high_mm'),
  source: row.text('source'),
  status: row.text('status'),
  note: row.text('note'),
}));
