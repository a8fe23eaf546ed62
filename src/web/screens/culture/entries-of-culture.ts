/** The entries that speak of one cup, newest first. */
import type { Entry } from '../../../logbook/index.ts';

export function entriesOfCulture(entries: Entry[], culture: string): Entry[] {
  return entries.filter((entry) => speaksOf(entry, culture)).sort(newestFirst);
}

function speaksOf(entry: Entry, culture: string): boolean {
  if ('culture' in entry && entry.culture === culture) return true;
  return 'fromCultures' in entry && (entry.fromCultures ?? []).includes(culture);
}

export function newestFirst(a: Entry, b: Entry): number {
  if (a.on !== b.on) return a.on < b.on ? 1 : -1;
  return a.id < b.id ? 1 : -1;
}
