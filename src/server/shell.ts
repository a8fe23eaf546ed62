/** The clock and the source of ids that the process hands to its server. */
import type { Day } from '../foundation/index.ts';

export interface Shell {
  /** The calendar day now in a time zone of the IANA database; UTC when it does not know the zone. */
  todayIn(timeZone: string): Day;
  /** The instant now, ISO 8601 in UTC. */
  now(): string;
  newEntryId(): string;
}
