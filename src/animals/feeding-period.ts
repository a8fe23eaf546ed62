/**
 * A group of animals and the periods of its ration, in plain terms. Each period holds until the next
 * one of its group begins; days are whole days since 1970-01-01. A period whose beginning is not certain (a
 * hatch, a moult) may begin on any day of its range alike, and the whole group is early or late together.
 */
import type { DayNumber, Weekday } from '../foundation/index.ts';

export interface FeedingGroup {
  group: string;
  /** In order of `from`. A count of 0 ends the group. */
  periods: FeedingPeriod[];
  /** Sd of the log of how much it eats against its ration; 0 when left out. */
  appetiteLogSd?: number;
}

export interface FeedingPeriod {
  from: DayNumber;
  /** Last day of feeding; null when open. */
  until: DayNumber | null;
  /** Animals in the group. */
  count: number;
  /** Flies that one animal is given at one feeding. */
  fliesPerFeeding: number;
  strain: string;
  feedingWeekdays: Weekday[];
  /** Days by which a feeding can be put off; 0 when left out. */
  waitDays?: number;
  /** When hatch, arrival or moult is not certain: any day from earliest to latest, any number from low to high. */
  arrival?: UncertainArrival | null;
}

export interface UncertainArrival {
  earliest: DayNumber;
  latest: DayNumber;
  countLow: number;
  countHigh: number;
}

/** A period with the days on which it may hold, both included; `last` before `first` when it never does. */
export interface HeldPeriod {
  period: FeedingPeriod;
  first: DayNumber;
  last: DayNumber;
  /** The period that ends it, if one follows. */
  next: FeedingPeriod | null;
}

/** First and last day on which a period may begin. */
export function beginning({ arrival, from }: FeedingPeriod): { earliest: DayNumber; latest: DayNumber } {
  return arrival ?? { earliest: from, latest: from };
}

/** The days on which each period of a group may hold, before chance decides when it begins. */
export function heldPeriods(group: FeedingGroup): HeldPeriod[] {
  return group.periods.map((period, i) => {
    const next = group.periods[i + 1] ?? null;
    const last = Math.min(
      period.until ?? Number.POSITIVE_INFINITY,
      next ? beginning(next).latest - 1 : Number.POSITIVE_INFINITY,
    );
    return { period, first: beginning(period).earliest, last, next };
  });
}

/** Throws RangeError naming the group when a number is not finite, below 0, or a range runs backwards. */
export function checkGroup(caller: string, group: FeedingGroup): void {
  for (const { count, fliesPerFeeding, arrival } of group.periods) {
    requireAmount(caller, group.group, 'count', count);
    requireAmount(caller, group.group, 'fliesPerFeeding', fliesPerFeeding);
    if (!arrival) continue;
    requireAmount(caller, group.group, 'arrival.countLow', arrival.countLow);
    if (!(arrival.countHigh >= arrival.countLow && Number.isFinite(arrival.countHigh)))
      throw new RangeError(
        `${caller}: arrival.countHigh of ${group.group} is ${arrival.countHigh}, below countLow or not finite`,
      );
    if (!(arrival.latest >= arrival.earliest))
      throw new RangeError(`${caller}: arrival of ${group.group} is latest before it is earliest`);
  }
}

function requireAmount(caller: string, group: string, field: string, value: number): void {
  if (!(value >= 0 && Number.isFinite(value)))
    throw new RangeError(`${caller}: ${field} of ${group} is ${value}, not a number from 0 up`);
}
