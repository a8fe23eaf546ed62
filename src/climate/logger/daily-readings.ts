/**
 * A series of readings as one line a day of the household's calendar: mean, lowest, highest. The day's mean
 * is the mean of its hours' means, so that an hour read every second weighs no more than one read once.
 */
import { type Day, dayFromNumber, type DayNumber } from '../../foundation/index.ts';
import type { Series } from './cleaned-series.ts';
import type { ZoneClock } from './zone-clock.ts';

export interface DailyReading {
  on: Day;
  meanC: number;
  /** Null on a day with fewer than three readings. */
  minC: number | null;
  maxC: number | null;
  /** Hours with a reading. */
  hours: number;
  /** Readings of the day that were left out as spikes, or from a stuck sensor. */
  leftOut: number;
}

export interface DailyReadings {
  days: DailyReading[];
  /** Days with too few hours to stand for the day; left out. */
  thinDays: Day[];
  /** Typical time from one reading to the next, hours. */
  stepHours: number;
}

const hourMs = 3_600_000;
/** A logger's day needs readings in so many hours: chosen, no source. */
export const leastHours = 12;
/** With a longer step readings are by hand, and one is a day's. */
const handStepHours = 2;

/** @param leftOutMs instants of readings that were taken out of the series. */
export function dailyReadings(series: Series, clock: ZoneClock, leftOutMs: readonly number[] = []): DailyReadings {
  const byDay = new Map<DayNumber, DayBins>();
  for (let i = 0; i < series.timesMs.length; i += 1) {
    const instant = series.timesMs[i] as number;
    const hour = Math.floor((instant + clock.offsetMs(instant)) / hourMs);
    const day = Math.floor(hour / 24);
    let bins = byDay.get(day);
    if (!bins) {
      bins = new DayBins();
      byDay.set(day, bins);
    }
    bins.add(hour - 24 * day, series.valuesC[i] as number);
  }
  const stepHours = typicalStepHours(series.timesMs);
  const isThin = (bins: DayBins) => stepHours <= handStepHours && bins.hours < leastHours;
  const leftOut = countsByDay(leftOutMs, clock);
  const sorted = [...byDay].sort(([a], [b]) => a - b);
  return {
    days: sorted
      .filter(([, bins]) => !isThin(bins))
      .map(([day, bins]) => bins.reading(dayFromNumber(day), leftOut.get(day))),
    thinDays: sorted.filter(([, bins]) => isThin(bins)).map(([day]) => dayFromNumber(day)),
    stepHours,
  };
}

function countsByDay(instants: readonly number[], clock: ZoneClock): Map<DayNumber, number> {
  const counts = new Map<DayNumber, number>();
  for (const instant of instants) {
    const day = Math.floor((instant + clock.offsetMs(instant)) / (24 * hourMs));
    counts.set(day, (counts.get(day) ?? 0) + 1);
  }
  return counts;
}

export interface DayBinsState {
  sums: number[];
  counts: number[];
  /** Lowest and highest; null while it is empty. */
  range: [number, number] | null;
}

/** What a day's readings come to, hour by hour; 24 sums and counts, however many readings there are. */
export class DayBins {
  private readonly sums = new Float64Array(24);
  private readonly counts = new Uint32Array(24);
  private min = Number.POSITIVE_INFINITY;
  private max = Number.NEGATIVE_INFINITY;

  /** @param hour 0 to 23; in autumn the hour that comes twice is one. */
  add(hour: number, valueC: number): void {
    this.sums[hour] = (this.sums[hour] as number) + valueC;
    this.counts[hour] = (this.counts[hour] as number) + 1;
    if (valueC < this.min) this.min = valueC;
    if (valueC > this.max) this.max = valueC;
  }

  /** What it holds as plain data, for `DayBins.from`. */
  state(): DayBinsState {
    const { sums, counts, min, max } = this;
    // Endless numbers are none in JSON.
    return { sums: [...sums], counts: [...counts], range: min <= max ? [min, max] : null };
  }

  static from({ sums, counts, range }: DayBinsState): DayBins {
    const bins = new DayBins();
    bins.sums.set(sums);
    bins.counts.set(counts);
    if (range) [bins.min, bins.max] = range;
    return bins;
  }

  get hours(): number {
    return this.counts.reduce((n, count) => n + (count > 0 ? 1 : 0), 0);
  }

  get readings(): number {
    return this.counts.reduce((n, count) => n + count, 0);
  }

  /** Rounded to a hundredth of a degree, finer than a sensor is. */
  reading(on: Day, leftOut = 0): DailyReading {
    let mean = 0;
    for (let hour = 0; hour < 24; hour += 1) {
      if (this.counts[hour] !== 0) mean += (this.sums[hour] as number) / (this.counts[hour] as number);
    }
    const few = this.readings < 3;
    return {
      on,
      meanC: hundredth(mean / this.hours),
      minC: few ? null : hundredth(this.min),
      maxC: few ? null : hundredth(this.max),
      hours: this.hours,
      leftOut,
    };
  }
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}

function typicalStepHours(timesMs: Float64Array): number {
  const few = Math.min(timesMs.length, 10_001);
  if (few < 2) return 24;
  const steps = Float64Array.from({ length: few - 1 }, (_, i) => (timesMs[i + 1] as number) - (timesMs[i] as number));
  return (steps.sort()[steps.length >> 1] as number) / hourMs;
}
