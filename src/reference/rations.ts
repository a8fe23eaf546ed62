/** Starter rations by plain trade names, from husbandry practice (data/rations.csv). */
import text from '../../data/rations.csv?raw';
import { csvRows } from './csv-rows.ts';

export const rationTaxa = ['amphibian', 'reptile', 'insect', 'spider', 'fish'] as const;

export interface PublishedRation {
  animal: string;
  name: string;
  taxon: (typeof rationTaxa)[number];
  massLowG: number;
  massHighG: number;
  /** Flies of the species `fly` that one animal is given at a feeding. */
  fliesLow: number;
  fliesHigh: number;
  fly: 'melanogaster' | 'hydei';
  /** Flies of the other species instead; null where it is not used. */
  otherFliesLow: number | null;
  otherFliesHigh: number | null;
  everyDaysLow: number;
  everyDaysHigh: number;
  canWaitDays: number;
  /** How long the stage lasts; null when it does not end. */
  stageDaysLow: number | null;
  stageDaysHigh: number | null;
  /** The next stage's key, `larger-prey`, or empty. */
  next: string;
  source: string;
  status: string;
  note: string;
}

export const publishedRations: readonly PublishedRation[] = csvRows('rations', text).map((row) => ({
  animal: row.text('animal'),
  name: row.text('name'),
  taxon: row.oneOf('taxon', rationTaxa),
  massLowG: row.number('mass_low_g'),
  massHighG: row.number('mass_high_g'),
  fliesLow: row.number('flies_low'),
  fliesHigh: row.number('flies_high'),
  fly: row.oneOf('fly', ['melanogaster', 'hydei']),
  otherFliesLow: row.numberOrNull('other_flies_low'),
  otherFliesHigh: row.numberOrNull('other_flies_high'),
  everyDaysLow: row.number('every_days_low'),
  everyDaysHigh: row.number('every_days_high'),
  canWaitDays: row.number('can_wait_days'),
  stageDaysLow: row.numberOrNull('stage_days_low'),
  stageDaysHigh: row.numberOrNull('stage_days_high'),
  next: row.text('next'),
  source: row.text('source'),
  status: row.text('status'),
  note: row.text('note'),
}));
