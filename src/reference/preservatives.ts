/** Preservatives with usual, warned and harmful doses of the finished medium (data/preservatives.csv). */
import text from '../../data/preservatives.csv?raw';
import { csvRows } from './csv-rows.ts';

export interface PublishedPreservative {
  preservative: string;
  name: string;
  basis: 'w/v' | 'v/v';
  usualLowPercent: number;
  usualHighPercent: number;
  warnAbovePercent: number;
  harmPercent: number | null;
  harm: string;
  /** Share of its mass that acts, e.g. propionic acid in calcium propionate. */
  activeShare: number;
  source: string;
  harmSource: string;
  status: string;
}

export const publishedPreservatives: readonly PublishedPreservative[] = csvRows('preservatives', text).map((row) => ({
  preservative: row.text('preservative'),
  name: row.text('name'),
  basis: row.oneOf('basis', ['w/v', 'v/v']),
  usualLowPercent: row.number('usual_low_percent'),
  usualHighPercent: row.number('usual_high_percent'),
  warnAbovePercent: row.number('warn_above_percent'),
  harmPercent: row.numberOrNull('harm_percent'),
  harm: row.text('harm'),
  activeShare: row.number('active_share'),
  source: row.text('source'),
  harmSource: row.text('harm_source'),
  status: row.text('status'),
}));
