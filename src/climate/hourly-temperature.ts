/** The temperature inside the cups of a place, hour by hour: read, bridged between readings, expected. */
import type { DayNumber } from '../foundation/index.ts';
import { type AnomalyByDay, anomalyByDay } from './anomaly.ts';
import { fillDay } from './day-curve.ts';
import { type ExpectedTemperature, expectedMeanC, type Hemisphere } from './expected-temperature.ts';

export interface TemperatureReading {
  day: DayNumber;
  meanC: number;
  minC: number | null;
  maxC: number | null;
}

export interface PlaceTemperature {
  /** First day of the series. */
  fromDay: DayNumber;
  days: number;
  expected: ExpectedTemperature;
  hemisphere: Hemisphere;
  /** Daily readings of the room in any order; the last of a day counts. */
  readings: TemperatureReading[];
  /** Cup minus room, C. */
  cupOffsetC: number;
  /** Highest minus lowest of an ordinary day where no reading says, C. */
  dailyRangeC?: number;
}

const ordinaryRangeC = 2;

/**
 * Temperatures inside a cup, C, 24 x `days` hourly means: a reading's day as read (a cosine between its
 * lowest and highest, its mean kept); elsewhere the expected curve plus the anomaly bridged between
 * readings and fading out before the first and after the last.
 */
export function hourlyTemperatureC(place: PlaceTemperature): Float64Array {
  checkPlace(place);
  const hourly = new Float64Array(24 * place.days);
  const readings = new Map(place.readings.map((reading) => [reading.day, reading]));
  const anomaly = placeAnomaly(place);
  for (let i = 0; i < place.days; i += 1) {
    const day = place.fromDay + i;
    const reading = readings.get(day);
    const meanC = reading?.meanC ?? expectedMeanC(place.expected, place.hemisphere, day) + (anomaly.meanC[i] as number);
    fillDay(hourly, 24 * i, meanC + place.cupOffsetC, rangeOf(reading) ?? place.dailyRangeC ?? ordinaryRangeC);
  }
  return hourly;
}

/** Standard deviation of each day's mean temperature around that series, C; 0 where it was read. */
export function temperatureSdC(place: PlaceTemperature): Float64Array {
  checkPlace(place);
  return placeAnomaly(place).sdC;
}

function placeAnomaly(place: PlaceTemperature): AnomalyByDay {
  const byDay = new Map(place.readings.map((reading) => [reading.day, reading.meanC]));
  const known = [...byDay].map(([day, meanC]) => ({
    day,
    anomalyC: meanC - expectedMeanC(place.expected, place.hemisphere, day),
  }));
  return anomalyByDay(place.fromDay, place.days, known);
}

function rangeOf(reading: TemperatureReading | undefined): number | null {
  if (!reading || reading.minC === null || reading.maxC === null) return null;
  return reading.maxC - reading.minC;
}

function checkPlace(place: PlaceTemperature): void {
  if (!(Number.isInteger(place.days) && place.days >= 1)) {
    throw new RangeError(`hourlyTemperatureC: days is ${place.days}, not a whole number of at least 1`);
  }
  const range = place.dailyRangeC ?? ordinaryRangeC;
  if (!(range >= 0 && range <= 40)) throw new RangeError(`hourlyTemperatureC: dailyRangeC is ${range}, not 0 to 40`);
}
