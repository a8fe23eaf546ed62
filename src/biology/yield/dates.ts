/** Ages read off a course: when each stage is first seen, when flies are at their best, when it ends. */
import type { CultureCourse, CultureDates, StrainLife } from '../culture.ts';
import { adultClock, daysUntil, meanTemperatureC, type PaceTable } from '../life/pace.ts';
import { firstFlies } from '../life/course.ts';
import { valueAt } from '../curve.ts';

/** Larvae and pupae that a keeper can make out through the side of a cup. */
const visibleLarvae = 20;
const visiblePupae = 3;
/** A cup has given what it has when less than this share of its flies is still to come. */
const littleToCome = 0.03;

/**
 * Ages in days, fractional, of the culture's events. Where the course never shows an event (too short,
 * too cold, no founders), the date comes from the clock alone: the time a lone egg would need; where even
 * the temperature series ends before, its last day stands for "not before then".
 */
export function cultureDates(
  strain: StrainLife,
  pace: PaceTable,
  startDay: number,
  course: CultureCourse,
): CultureDates {
  const { egg, larva } = strain.stageShares;
  const byClock = (share: number) => Math.min(daysUntil(pace.development, startDay, share), pace.days - startDay);
  const firstLarvae = firstReached(course.larvae, visibleLarvae) ?? byClock(egg);
  const firstPupae = firstReached(course.pupae, visiblePupae) ?? byClock(egg + larva);
  const firstAdults = firstReached(running(course.emerged), firstFlies) ?? byClock(1);
  const thrownOut = throwOutAge(strain, pace, startDay);
  const spent = spentAge(course, firstAdults, thrownOut);
  const ready = readyDays(strain, pace, startDay, firstAdults);
  const founderFrom = Math.min(spent, firstAdults + ready);
  const warmth = warmthOf(pace, startDay, firstAdults);
  return {
    firstLarvae,
    firstPupae,
    firstAdults,
    peak: peakAge(course, firstAdults, spent),
    founderFrom,
    founderUntil: Math.max(founderFrom, Math.min(spent, founderFrom + valueAt(strain.founders.windowDays, warmth))),
    spent,
  };
}

/** Age at which the strain's cups are thrown out at these temperatures, days. */
export function throwOutAge(strain: StrainLife, pace: PaceTable, startDay: number): number {
  const age = daysUntil(pace.throwOut, startDay, 1);
  if (Number.isFinite(age)) return age;
  // The series ends first: the rest at its last temperature.
  const lastDay = pace.days - 1;
  const done = (pace.throwOut[pace.days * 24] as number) - (pace.throwOut[startDay * 24] as number);
  const rest = (1 - done) * valueAt(strain.founders.throwOutDays, meanTemperatureC(pace, lastDay, 1));
  return pace.days - startDay + rest;
}

/** Age (fractional) at which a daily series, value at the day's end, first reaches `amount`. */
function firstReached(byDay: Float64Array, amount: number): number | null {
  let before = 0;
  for (let day = 0; day < byDay.length; day += 1) {
    const value = byDay[day] as number;
    if (value >= amount) return day + (amount - before) / (value - before);
    before = value;
  }
  return null;
}

function running(byDay: Float64Array): Float64Array {
  let sum = 0;
  return byDay.map((value) => {
    sum += value;
    return sum;
  });
}

/** Middle of the three days with most flies emerging. */
function peakAge(course: CultureCourse, firstAdults: number, spent: number): number {
  const { emerged } = course;
  let best = -1;
  let bestDay = firstAdults;
  for (let day = 1; day < Math.min(course.days - 1, spent); day += 1) {
    const three = (emerged[day - 1] as number) + (emerged[day] as number) + (emerged[day + 1] as number);
    if (three > best) {
      best = three;
      bestDay = day + 0.5;
    }
  }
  return best > 0 ? Math.max(bestDay, firstAdults) : firstAdults;
}

/** Thrown out by age, or earlier when next to nothing is still to come. */
function spentAge(course: CultureCourse, firstAdults: number, thrownOut: number): number {
  const last = Math.min(course.days, Math.floor(thrownOut));
  let total = 0;
  for (let day = 0; day < last; day += 1) total += course.emerged[day] as number;
  if (total <= 0) return Math.max(thrownOut, Math.min(firstAdults, thrownOut));
  let toCome = 0;
  for (let day = last - 1; day > firstAdults; day -= 1) {
    toCome += course.emerged[day] as number;
    if (toCome > littleToCome * total) return Math.min(thrownOut, day + 3);
  }
  return thrownOut;
}

function readyDays(strain: StrainLife, pace: PaceTable, startDay: number, firstAdults: number): number {
  return strain.founders.readyDays / adultClock(strain, warmthOf(pace, startDay, firstAdults));
}

/** Mean temperature of the week around an age, as far as the series goes, C. */
function warmthOf(pace: PaceTable, startDay: number, age: number): number {
  const from = Math.max(0, Math.min(pace.days - 1, startDay + Math.floor(Number.isFinite(age) ? age : 0)));
  return meanTemperatureC(pace, from, Math.min(7, pace.days - from));
}
