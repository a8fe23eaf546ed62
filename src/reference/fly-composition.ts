/** What flies are made of, by analysis (data/fly-composition.csv). */
import text from '../../data/fly-composition.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedFlyComposition {
  analysis: string;
  /** Dry matter, share of fresh mass. */
  dryShare: number;
  /** Shares of dry matter. */
  proteinOfDry: number;
  fatOfDry: number;
  ashOfDry: number;
  grossKjPerGDry: number | null;
  usableKjPerGDry: number | null;
  calciumOfDry: number | null;
  phosphorusOfDry: number | null;
  source: string;
  status: string;
  note: string;
}

export const publishedFlyCompositions: readonly PublishedFlyComposition[] = csvRows('fly-composition', text).map(
  (row) => ({
    analysis: row.text('analysis'),
    dryShare: row.number('dry_share'),
    proteinOfDry: row.number('protein_of_dry'),
    fatOfDry: row.number('fat_of_dry'),
    ashOfDry: row.number('ash_of_dry'),
    grossKjPerGDry: row.numberOrNull('gross_kj_per_g_dry'),
    usableKjPerGDry: row.numberOrNull('usable_kj_per_g_dry'),
    calciumOfDry: row.numberOrNull('calcium_of_dry'),
    phosphorusOfDry: row.numberOrNull('phosphorus_of_dry'),
    source: row.text('source'),
    status: row.text('status'),
    note: row.text('note'),
  }),
);
