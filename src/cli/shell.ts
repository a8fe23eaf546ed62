/** This process's clock, ids and user: the only place where the command line reads them. */
import { randomBytes } from 'node:crypto';
import { userInfo } from 'node:os';
import { type Day, day } from '../foundation/index.ts';
import { type Entry, type EntryDraft, entryIdMaker } from '../logbook/index.ts';

export const newEntryId = entryIdMaker({ now: () => Date.now(), randomBytes: (n) => randomBytes(n) });

export function now(): string {
  return new Date().toISOString();
}

/** The calendar day now in a time zone of the IANA database; in UTC when the zone is not known. */
export function todayIn(timeZone: string): Day {
  try {
    return day(new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' }).format(new Date()));
  } catch {
    return day(now().slice(0, 10));
  }
}

/** Completes what a person reported into an entry made here and now. */
export function entryMaker(by: string | undefined): (draft: EntryDraft) => Entry {
  const author = by ?? userName();
  return (draft) => ({ id: newEntryId(), recordedAt: now(), by: author, ...draft }) as Entry;
}

/** As `entryMaker`, as if each entry had been written down on the evening of its day. */
export function pastEntryMaker(by: string): (draft: EntryDraft) => Entry {
  return (draft) => ({ id: newEntryId(), recordedAt: `${draft.on}T20:00:00.000Z`, by, ...draft }) as Entry;
}

function userName(): string {
  try {
    return userInfo().username.slice(0, 80) || 'keeper';
  } catch {
    // A user id without a name, as in some containers.
    return 'keeper';
  }
}
