/**
 * Flies wanted per day and strain by all groups together: the mean, its day-by-day spread, and one
 * log-normal factor that stands for that spread where a planner can carry only one.
 */
import { type DayNumber, weekdayIndex, weekdays } from '../foundation/index.ts';
import { checkGroup, type FeedingGroup, type FeedingPeriod, type HeldPeriod, heldPeriods } from './feeding-period.ts';

export interface WantedFliesInput {
  groups: FeedingGroup[];
  /** Day of index 0. */
  fromDay: DayNumber;
  /** Days counted, at least 0. */
  days: number;
}

export interface StrainNeed {
  /** Mean flies wanted on each day, length `days`. */
  flies: Float64Array;
  /** Standard deviation of each day's need: 0 where arrivals are certain. */
  sd: Float64Array;
  /** Sd of the log of one factor common to all days with the same relative spread overall; 0 when certain. */
  logSd: number;
}

/**
 * Need per strain, keyed by strain: count x flies per feeding on feeding weekdays of the period that
 * holds. An uncertain arrival comes on any day of its range alike and brings any number of its range
 * alike, so that E N = P(there) mean and Var N = P(there) E count^2 - (E N)^2 for that group; groups
 * are independent of each other. A strain that nobody wants in the span is left out.
 * Throws RangeError on a bad span, count or range.
 */
export function wantedFlies({ groups, fromDay, days }: WantedFliesInput): Map<string, StrainNeed> {
  if (!Number.isInteger(fromDay)) throw new RangeError(`wantedFlies: fromDay ${fromDay} is not a whole day`);
  if (!(Number.isInteger(days) && days >= 0)) throw new RangeError(`wantedFlies: days ${days} is not a whole number`);
  const needs = new Map<string, StrainNeed>();
  for (const group of groups) {
    checkGroup('wantedFlies', group);
    for (const held of heldPeriods(group)) addPeriod(needs, held, fromDay, days);
  }
  for (const need of needs.values()) finish(need);
  return needs;
}

function addPeriod(needs: Map<string, StrainNeed>, held: HeldPeriod, fromDay: DayNumber, days: number): void {
  const { period } = held;
  const begin = Math.max(0, held.first - fromDay);
  const end = Math.min(days - 1, held.last - fromDay);
  const animals = countMoments(period);
  if (animals.meanSquare === 0 || period.fliesPerFeeding === 0) return;
  const feeds = feedingDays(period);
  for (let i = begin; i <= end; i++) {
    if (!feeds[weekdayIndex(fromDay + i)]) continue;
    const there = chanceThere(period, fromDay + i);
    const need = needOf(needs, period.strain, days);
    const mean = there * animals.mean;
    need.flies[i] = (need.flies[i] as number) + mean * period.fliesPerFeeding;
    // `sd` holds variances until `finish`.
    const variance = (there * animals.meanSquare - mean * mean) * period.fliesPerFeeding ** 2;
    need.sd[i] = (need.sd[i] as number) + variance;
  }
}

function needOf(needs: Map<string, StrainNeed>, strain: string, days: number): StrainNeed {
  let need = needs.get(strain);
  if (!need) {
    need = { flies: new Float64Array(days), sd: new Float64Array(days), logSd: 0 };
    needs.set(strain, need);
  }
  return need;
}

/** Which weekdays feed, Monday first. */
export function feedingDays(period: FeedingPeriod): boolean[] {
  return weekdays.map((weekday) => period.feedingWeekdays.includes(weekday));
}

/** Chance that the group has arrived by `onDay`, its day being uniform over the range. */
function chanceThere({ arrival }: FeedingPeriod, onDay: DayNumber): number {
  if (!arrival) return 1;
  const span = arrival.latest - arrival.earliest + 1;
  return Math.min(1, Math.max(0, (onDay - arrival.earliest + 1) / span));
}

/** Mean and mean square of the number of animals; uniform over an uncertain range. */
function countMoments({ count, arrival }: FeedingPeriod): { mean: number; meanSquare: number } {
  if (!arrival) return { mean: count, meanSquare: count * count };
  const { countLow: a, countHigh: b } = arrival;
  return { mean: (a + b) / 2, meanSquare: (a * a + a * b + b * b) / 3 };
}

/** Turns variances into sds, and their sum into the common factor's log sd by its second moment. */
function finish(need: StrainNeed): void {
  let variance = 0;
  let square = 0;
  for (let i = 0; i < need.sd.length; i++) {
    // Rounding may leave a certain day a hair below 0.
    const v = Math.max(0, need.sd[i] as number);
    variance += v;
    square += (need.flies[i] as number) ** 2;
    need.sd[i] = Math.sqrt(v);
  }
  need.logSd = square > 0 ? Math.sqrt(Math.log1p(variance / square)) : 0;
}
