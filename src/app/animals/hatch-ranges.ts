/** How many young an egg case may give, by species, for the range that a keeper writes. */
import { publishedHatches, source, sourceLine } from '../../reference/index.ts';
import type { HatchRange } from './animal-answers.ts';

export function hatchRanges(): HatchRange[] {
  return publishedHatches.map(({ species, name, youngLow, youngHigh, source: key, status, note }) => {
    const from = source(key);
    return { species, name, youngLow, youngHigh, source: from ? sourceLine(from) : key, status, note };
  });
}
