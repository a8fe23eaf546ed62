/** Entries as a list for a terminal: the day, the sentence, and the id beneath. */
import type { Entry } from '../../logbook/index.ts';
import { wrapped } from './layout.ts';

/** @param amended ids of entries that a later one takes back or corrects. */
export function logbookText(
  entries: readonly Entry[],
  said: (entry: Entry) => string,
  amended: ReadonlySet<string>,
): string[] {
  return entries.flatMap((entry) => [
    ...wrapped(`${amended.has(entry.id) ? '(amended) ' : ''}${said(entry)}`, `${entry.on}  `),
    `${' '.repeat(12)}${entry.id}  ${entry.by}`,
  ]);
}
