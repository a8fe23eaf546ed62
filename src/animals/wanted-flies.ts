/**
 * Flies wanted per day and strain by all groups together: the mean, its day-by-day spread, and one
 * log-normal factor that stands for that spread where a planner can carry only one.
 */
import { type DayNumber, weekdayIndex, weekdays } from '../foundation/index.ts';
import {
  beginning,
  checkGroup,
  type FeedingGroup,
  type FeedingPeriod,
  type HeldPeriod,
  heldPeriods,
} from './feeding-period.ts';

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
 * alike, so that E N = P(holds) mean and Var N = P(holds) E count^2 - (E N)^2 for that group; an uncertain
 * appetite is a log-normal factor of mean 1. Groups are independent of each other. A strain that nobody
 * wants in the span is left out.
 * Throws RangeError on a bad span, count or range.
 */
export function wantedFlies({ groups, fromDay, days }: WantedFliesInput): Map<string, StrainNeed> {
  if (!Number.isInteger(fromDay)) throw new RangeError(`wantedFlies: fromDay ${fromDay} is not a whole day`);
  if (!(Number.isInteger(days) && days >= 0)) throw new RangeError(`wantedFlies: days ${days} is not a whole number`);
  const needs = new Map<string, StrainNeed>();
  for (const group of groups) {
    checkGroup('wantedFlies', group);
    for (const [strain, own] of groupMoments(group, fromDay, days)) addMoments(needOf(needs, strain, days), own);
  }
  for (const need of needs.values()) finish(need);
  return needs;
}

/** First and second moment of one group's need by day. */
interface Moments {
  mean: Float64Array;
  square: Float64Array;
}

function groupMoments(group: FeedingGroup, fromDay: DayNumber, days: number): Map<string, Moments> {
  const byStrain = new Map<string, Moments>();
  const appetiteSquare = Math.exp((group.appetiteLogSd ?? 0) ** 2);
  for (const held of heldPeriods(group)) {
    const { period } = held;
    const animals = countMoments(period);
    if (animals.meanSquare === 0 || period.fliesPerFeeding === 0) continue;
    const own = byStrain.get(period.strain) ?? { mean: new Float64Array(days), square: new Float64Array(days) };
    addPeriod(own, held, animals, fromDay, days, appetiteSquare);
    if (own.mean.some((flies) => flies > 0)) byStrain.set(period.strain, own);
  }
  return byStrain;
}

function addPeriod(
  own: Moments,
  held: HeldPeriod,
  animals: { mean: number; meanSquare: number },
  fromDay: DayNumber,
  days: number,
  appetiteSquare: number,
): void {
  const { period, first, last } = held;
  const feeds = feedingDays(period);
  for (let i = Math.max(0, first - fromDay); i <= Math.min(days - 1, last - fromDay); i++) {
    if (!feeds[weekdayIndex(fromDay + i)]) continue;
    const holds = chanceHeld(held, fromDay + i);
    own.mean[i] = (own.mean[i] as number) + holds * animals.mean * period.fliesPerFeeding;
    own.square[i] =
      (own.square[i] as number) + holds * animals.meanSquare * period.fliesPerFeeding ** 2 * appetiteSquare;
  }
}

/** `sd` holds variances until `finish`. */
function addMoments(need: StrainNeed, { mean, square }: Moments): void {
  mean.forEach((flies, i) => {
    need.flies[i] = (need.flies[i] as number) + flies;
    need.sd[i] = (need.sd[i] as number) + (square[i] as number) - flies * flies;
  });
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

/** Chance that the period has begun and the next has not: early groups are early in both. */
function chanceHeld({ period, next }: HeldPeriod, onDay: DayNumber): number {
  return Math.max(0, chanceBegun(period, onDay) - (next ? chanceBegun(next, onDay) : 0));
}

/** Its day of beginning is uniform over the range. */
function chanceBegun(period: FeedingPeriod, onDay: DayNumber): number {
  const { earliest, latest } = beginning(period);
  return Math.min(1, Math.max(0, (onDay - earliest + 1) / (latest - earliest + 1)));
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
