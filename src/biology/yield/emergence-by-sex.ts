/** Emergence of females and males apart, and by the hour of the day: males take a little longer. */
import { valueAt } from '../curve.ts';
import type { CultureCourse, StrainLife } from '../culture.ts';
import { daysUntil, meanTemperatureC, type PaceTable } from '../life/pace.ts';

export interface EmergenceBySex {
  female: Float64Array;
  male: Float64Array;
}

/**
 * The course's emergence split by sex. Each day's flies are moved: females forward and males back by
 * half of the difference in development time at the temperature they grew up in; none are lost but
 * those moved past the last day, which stay on it.
 */
export function emergenceBySex(
  strain: StrainLife,
  pace: PaceTable,
  startDay: number,
  course: CultureCourse,
): EmergenceBySex {
  const female = new Float64Array(course.days);
  const male = new Float64Array(course.days);
  const { maleShare } = strain.adult;
  for (let day = 0; day < course.days; day += 1) {
    const flies = course.emerged[day] as number;
    if (flies === 0) continue;
    const from = Math.max(0, startDay + day - 10);
    const warmth = meanTemperatureC(pace, from, startDay + day + 1 - from);
    const wholeTime = Math.min(60, daysUntil(pace.development, from, 1));
    const late = (wholeTime * (valueAt(strain.maleTimeRatio, warmth) - 1)) / 2;
    shift(female, day, -late, flies * (1 - maleShare));
    shift(male, day, late, flies * maleShare);
  }
  return { female, male };
}

/** Adds `count` at `day + by`, shared between the two whole days around it. */
function shift(into: Float64Array, day: number, by: number, count: number): void {
  const place = Math.max(0, Math.min(into.length - 1, day + by));
  const low = Math.floor(place);
  const high = Math.min(into.length - 1, low + 1);
  into[low] = (into[low] as number) + count * (1 - (place - low));
  into[high] = (into[high] as number) + count * (place - low);
}

/** The gate of the daily clock: emergence is kept for the hours after dawn. */
export interface EmergenceGate {
  /** Hour of lights on, 0 to 23, and the gate's width in hours. */
  opensHour: number;
  widthHours: number;
}

/**
 * Flies by hour of the day when a day's `flies` emerge through a gate: 75 % within it, evenly, the rest
 * over the other hours (three quarters within six to eight hours of lights on: value from memory).
 */
export function emergenceByHour(flies: number, gate: EmergenceGate): Float64Array {
  const { opensHour, widthHours } = gate;
  if (!(widthHours >= 1 && widthHours <= 23)) {
    throw new RangeError(`emergenceByHour: widthHours is ${widthHours}, not 1 to 23`);
  }
  const width = Math.round(widthHours);
  const within = (0.75 * flies) / width;
  const outside = (0.25 * flies) / (24 - width);
  return Float64Array.from({ length: 24 }, (_, hour) => ((hour - opensHour + 24) % 24 < width ? within : outside));
}
