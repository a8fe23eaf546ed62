/** The logbook as it was known on a past day. */
import { type Day, dayNumber } from '../../foundation/index.ts';
import { type Entry, type Facts, fold } from '../../logbook/index.ts';

export type KnownBy = 'recorded' | 'happened';

/** A log of which so large a part was written so long after the day says little by when it was written. */
const lateDays = 7;
const lateShare = 0.5;

/**
 * By what the past is known: when entries were recorded, or, where most of the cups' notes were written long
 * after the day (a log typed in later, or brought in from elsewhere), when they happened.
 */
export function knownByOf(entries: readonly Entry[]): KnownBy {
  const notes = entries.filter(({ kind }) => kind === 'seen' || kind === 'harvested' || kind === 'started');
  const late = notes.filter((e) => daysLate(e) > lateDays).length;
  return notes.length > 0 && late > lateShare * notes.length ? 'happened' : 'recorded';
}

function daysLate({ on, recordedAt }: Entry): number {
  return dayNumber(recordedAt.slice(0, 10) as Day) - dayNumber(on as Day);
}

/** Facts of the entries known by the end of `day`; nothing that happened after it. */
export function factsThen(entries: readonly Entry[], knownBy: KnownBy, day: Day): Facts {
  if (knownBy === 'happened') return fold(entries, { until: day });
  return fold(
    entries.filter((entry) => entry.recordedAt.slice(0, 10) <= day),
    { until: day },
  );
}
