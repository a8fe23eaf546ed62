/** Named mutations of wings and flight, and a few markers: where they lie and what they do (data/mutations.csv). */
import text from '../../data/mutations.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedMutation {
  symbol: string;
  name: string;
  /** Null when unknown. */
  chromosome: 'X' | '2' | '3' | '4' | null;
  /** Map units; null when unknown. */
  position: number | null;
  dominance: 'recessive' | 'dominant';
  lethalHomozygous: boolean;
  suppressesCrossing: boolean;
  effect: 'flightless' | 'marker';
  phenotype: string;
  source: string;
  status: string;
  note: string;
}

export const publishedMutations: readonly PublishedMutation[] = csvRows('mutations', text).map((row) => {
  const chromosome = row.oneOf('chromosome', ['X', '2', '3', '4', '']);
  return {
    symbol: row.text('symbol'),
    name: row.text('name'),
    chromosome: chromosome === '' ? null : chromosome,
    position: row.numberOrNull('position'),
    dominance: row.oneOf('dominance', ['recessive', 'dominant']),
    lethalHomozygous: row.oneOf('lethal_homozygous', ['yes', 'no']) === 'yes',
    suppressesCrossing: row.oneOf('suppresses_crossing', ['yes', 'no']) === 'yes',
    effect: row.oneOf('effect', ['flightless', 'marker']),
    phenotype: row.text('phenotype'),
    source: row.text('source'),
    status: row.text('status'),
    note: row.text('note'),
  };
});
