/** The logbook as a file: JSON Lines, one entry a line, in the order in which they were made. */
import type { Entry } from '../../../logbook/index.ts';

export function linesOfEntries(entries: readonly Entry[]): string {
  return [...entries]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((entry) => `${JSON.stringify(entry)}\n`)
    .join('');
}
