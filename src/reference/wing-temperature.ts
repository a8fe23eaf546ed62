/** How heat and food change the wings of flightless mutants that have not reverted (data/wing-temperature.csv). */
import text from '../../data/wing-temperature.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedWingEffect {
  symbol: string;
  condition: string;
  /** The range of the condition in `unit`; null when open. */
  low: number | null;
  high: number | null;
  unit: string;
  /** Share of flies that look winged; null where no source gives one. */
  wingedLookingShare: number | null;
  effect: string;
  source: string;
  status: string;
}

export const publishedWingEffects: readonly PublishedWingEffect[] = csvRows('wing-temperature', text).map((row) => ({
  symbol: row.text('symbol'),
  condition: row.text('condition'),
  low: row.numberOrNull('low'),
  high: row.numberOrNull('high'),
  unit: row.text('unit'),
  wingedLookingShare: row.numberOrNull('winged_looking_share'),
  effect: row.text('effect'),
  source: row.text('source'),
  status: row.text('status'),
}));
