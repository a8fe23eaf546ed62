/** Figures about supplements dusted on flies (data/dusting.csv). */
import text from '../../data/dusting.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedDustingFigure {
  item: string;
  value: number;
  low: number | null;
  high: number | null;
  unit: string;
  source: string;
  status: string;
  note: string;
}

export const publishedDustingFigures: readonly PublishedDustingFigure[] = csvRows('dusting', text).map((row) => ({
  item: row.text('item'),
  value: row.number('value'),
  low: row.numberOrNull('low'),
  high: row.numberOrNull('high'),
  unit: row.text('unit'),
  source: row.text('source'),
  status: row.text('status'),
  note: row.text('note'),
}));
