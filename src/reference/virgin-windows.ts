/** Hours after emergence in which females are still virgins, by temperature (data/virgin-windows.csv). */
import text from '../../data/virgin-windows.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedVirginWindow {
  species: string;
  temperatureC: number;
  hoursLow: number;
  hoursHigh: number;
  source: string;
  status: string;
  note: string;
}

export const publishedVirginWindows: readonly PublishedVirginWindow[] = csvRows('virgin-windows', text).map((row) => ({
  species: row.text('species'),
  temperatureC: row.number('temperature_c'),
  hoursLow: row.number('hours_low'),
  hoursHigh: row.number('hours_high'),
  source: row.text('source'),
  status: row.text('status'),
  note: row.text('note'),
}));
