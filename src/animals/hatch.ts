/** Eggs that will hatch: the range of days and of numbers, as the forecast's uncertain arrival. */
import type { DayNumber } from '../foundation/index.ts';
import type { UncertainArrival } from './feeding-period.ts';

export interface HatchInput {
  /** Day on which the eggs were laid or the egg case was bought, with what it had behind it. */
  laidOn: DayNumber;
  incubationDaysLow: number;
  incubationDaysHigh: number;
  youngLow: number;
  youngHigh: number;
  /** Share of the young that live to be fed on flies; 1 and 1 when every hatchling counts. */
  survivalLow: number;
  survivalHigh: number;
}

/**
 * Any day of the range and any number of the range alike. Days that are past without a hatch are ruled
 * out by `today`; null when the whole range is past, which means that it will hardly hatch any more.
 */
export function expectedHatch(input: HatchInput, today: DayNumber): UncertainArrival | null {
  checkHatch(input);
  const earliest = input.laidOn + Math.floor(input.incubationDaysLow);
  const latest = input.laidOn + Math.ceil(input.incubationDaysHigh);
  if (latest < today) return null;
  return {
    earliest: Math.max(earliest, today),
    latest,
    countLow: Math.round(input.youngLow * input.survivalLow),
    countHigh: Math.round(input.youngHigh * input.survivalHigh),
  };
}

function checkHatch(input: HatchInput): void {
  const pairs: [string, number, number][] = [
    ['incubationDays', input.incubationDaysLow, input.incubationDaysHigh],
    ['young', input.youngLow, input.youngHigh],
    ['survival', input.survivalLow, input.survivalHigh],
  ];
  for (const [what, low, high] of pairs)
    if (!(low >= 0 && high >= low && Number.isFinite(high)))
      throw new RangeError(`expectedHatch: ${what} ${low} to ${high} is not a range from 0 up`);
  if (input.survivalHigh > 1) throw new RangeError(`expectedHatch: survivalHigh ${input.survivalHigh} is above 1`);
}

/** A change in the number of animals: a hatch, a purchase, a sale, a death. */
export interface CountChange {
  onDay: DayNumber;
  change: number;
}

/** Animals on each of `days` days from `fromDay`, never below 0; changes before it are in `start`. */
export function countByDay(
  start: number,
  changes: readonly CountChange[],
  fromDay: DayNumber,
  days: number,
): Float64Array {
  const counts = new Float64Array(days);
  let now = start;
  for (let i = 0; i < days; i++) {
    for (const { onDay, change } of changes) if (onDay === fromDay + i) now = Math.max(0, now + change);
    counts[i] = now;
  }
  return counts;
}
