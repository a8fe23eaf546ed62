/**
 * Wall-clock time of one time zone against the instant, quick enough for a million readings: the zone's
 * offset is looked up once for each stretch between two clock changes. Instants are milliseconds since
 * 1970-01-01 UTC; wall times are the same count as the wall's own clock would make it.
 */
import { Temporal } from 'temporal-polyfill';
import { failed, ok, type Result } from '../../foundation/index.ts';

interface Stretch {
  from: number;
  /** First instant that is no longer in it. */
  until: number;
  offsetMs: number;
}

export interface WallInstant {
  instantMs: number;
  /** True for a wall time that the clock jumped over in spring. */
  jumpedOver: boolean;
}

const dayMs = 86_400_000;

export class ZoneClock {
  readonly timeZone: string;
  private readonly stretches: Stretch[] = [];
  private latest: Stretch;

  private constructor(timeZone: string) {
    this.timeZone = timeZone;
    this.latest = this.lookUp(0);
  }

  /** @param timeZone a name of the IANA database, such as Europe/Berlin, or an offset such as +01:00. */
  static of(timeZone: string, where = 'timeZone'): Result<ZoneClock> {
    try {
      return ok(new ZoneClock(timeZone));
    } catch {
      const expected = 'a zone of the IANA database such as Europe/Berlin, or an offset such as +01:00';
      return failed({ where, found: `"${timeZone.slice(0, 60)}"`, expected });
    }
  }

  /** Wall clock minus UTC at an instant, ms. */
  offsetMs(instantMs: number): number {
    if (instantMs < this.latest.from || instantMs >= this.latest.until) {
      const known = this.stretches.find((s) => s.from <= instantMs && instantMs < s.until);
      this.latest = known ?? this.lookUp(instantMs);
    }
    return this.latest.offsetMs;
  }

  /**
   * The instant of a wall time. An hour that happens twice in autumn is the first of the two, unless that
   * would be no later than `afterMs`, the reading before it. A time jumped over in spring is read with the
   * offset before the jump, as a clock shows it that nobody put forward.
   */
  instantOf(wallMs: number, afterMs: number): WallInstant {
    const before = this.offsetMs(wallMs - dayMs);
    const after = this.offsetMs(wallMs + dayMs);
    const first = wallMs - before;
    if (before === after) return { instantMs: first, jumpedOver: false };
    const second = wallMs - after;
    const firstHolds = this.offsetMs(first) === before;
    const secondHolds = this.offsetMs(second) === after;
    if (firstHolds && secondHolds) {
      return { instantMs: first <= afterMs && second > afterMs ? second : first, jumpedOver: false };
    }
    return { instantMs: secondHolds && !firstHolds ? second : first, jumpedOver: !firstHolds && !secondHolds };
  }

  private lookUp(instantMs: number): Stretch {
    const at = Temporal.Instant.fromEpochMilliseconds(Math.floor(instantMs)).toZonedDateTimeISO(this.timeZone);
    const next = at.getTimeZoneTransition('next')?.epochMilliseconds ?? Number.POSITIVE_INFINITY;
    // The change at or before the instant itself is `previous` of the moment after it.
    const last = at.add({ milliseconds: 1 }).getTimeZoneTransition('previous')?.epochMilliseconds;
    const stretch = {
      from: last ?? Number.NEGATIVE_INFINITY,
      until: next,
      offsetMs: Math.round(at.offsetNanoseconds / 1e6),
    };
    this.stretches.push(stretch);
    return stretch;
  }
}
