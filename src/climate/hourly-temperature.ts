/**
 * The temperature inside the cups of a place, hour by hour: read, bridged between readings, expected. What
 * is expected is the keeper's season, moved by what the place's own readings have taught of it.
 */
import type { DayNumber } from '../foundation/index.ts';
import { type AnomalyByDay, anomalyByDay, roomPersistence } from './anomaly.ts';
import { fillDay } from './day-curve.ts';
import {
  type DeviationOnDay,
  type LearnedSeason,
  learnedSeason,
  seasonShiftC,
  seasonVariance,
} from './learned-season.ts';
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
  const { anomaly, expectedC } = outlook(place);
  for (let i = 0; i < place.days; i += 1) {
    const day = place.fromDay + i;
    const reading = readings.get(day);
    const meanC = reading?.meanC ?? expectedC(day) + (anomaly.meanC[i] as number);
    fillDay(hourly, 24 * i, meanC + place.cupOffsetC, rangeOf(reading) ?? place.dailyRangeC ?? ordinaryRangeC);
  }
  return hourly;
}

/** The room's mean on each day as its season alone has it: the keeper's, moved by what the readings taught, C. */
export function ordinaryMeanC(place: PlaceTemperature, days: readonly DayNumber[]): number[] {
  checkPlace(place);
  return days.map(outlook(place).expectedC);
}

/** Standard deviation of each day's mean temperature around that series, C; 0 where it was read. */
export function temperatureSdC(place: PlaceTemperature): Float64Array {
  checkPlace(place);
  const { anomaly, season, known } = outlook(place);
  return anomaly.sdC.map((sd, i) => (sd === 0 ? 0 : Math.hypot(sd, seasonSdC(season, known, place.fromDay + i))));
}

/**
 * Standard deviation of the mean temperature over `days` days from `fromDay` on, C, for days after the last
 * reading: neighbouring days are alike, so that it falls far more slowly than with the root of the days.
 */
export function meanTemperatureSdC(place: PlaceTemperature, fromDay: DayNumber, days: number): number {
  checkPlace(place);
  const { season, known } = outlook(place);
  const weights = lagsOf(known, fromDay, days).flatMap((lag, i) => seasonWeights(known, fromDay + i, lag, 1 / days));
  return Math.hypot(meanAnomalySdC(place, fromDay, days), Math.sqrt(seasonVariance(season, weights)));
}

/** The part of it that comes and goes, without what is unsure of the season itself. */
export function meanAnomalySdC(place: PlaceTemperature, fromDay: DayNumber, days: number): number {
  const { season, known } = outlook(place);
  const lags = lagsOf(known, fromDay, days);
  // Without a reading the days are of a stationary series; after one, what it foretells is taken off.
  const foretold = (a: number, b: number) => (known.length === 0 ? 0 : roomPersistence ** (a + b));
  let sum = 0;
  for (const a of lags) for (const b of lags) sum += roomPersistence ** Math.abs(a - b) - foretold(a, b);
  return (season.anomalySdC * Math.sqrt(Math.max(0, sum))) / days;
}

/** Days since the last reading; without one, since the first of the days. */
function lagsOf(known: { day: DayNumber }[], fromDay: DayNumber, days: number): number[] {
  const last = known.at(-1)?.day ?? fromDay;
  return Array.from({ length: days }, (_, i) => Math.max(0, fromDay + i - last));
}

/**
 * Mean and standard deviation of the room on one day after the last reading, C, under a season that was
 * learned of all readings.
 * @param lately deviations of the last week with readings, in order; the last is the last of all.
 */
export function dayAhead(
  place: Pick<PlaceTemperature, 'expected' | 'hemisphere'>,
  season: LearnedSeason,
  lately: readonly DeviationOnDay[],
  day: DayNumber,
): { meanC: number; sdC: number } {
  const known = lately.map((one) => ({ day: one.day, anomalyC: one.deviationC - seasonShiftC(season, one.day) }));
  const anomaly = anomalyByDay(day, 1, known, season.anomalySdC);
  const ordinaryC = expectedMeanC(place.expected, place.hemisphere, day) + seasonShiftC(season, day);
  return {
    meanC: ordinaryC + (anomaly.meanC[0] as number),
    sdC: Math.hypot(anomaly.sdC[0] as number, seasonSdC(season, known, day)),
  };
}

/** Readings less the keeper's expected mean, one a day, in order. */
export function deviationsOf({
  readings,
  expected,
  hemisphere,
}: Pick<PlaceTemperature, 'readings' | 'expected' | 'hemisphere'>): DeviationOnDay[] {
  const byDay = new Map(readings.map((reading) => [reading.day, reading.meanC]));
  return [...byDay]
    .map(([day, meanC]) => ({ day, deviationC: meanC - expectedMeanC(expected, hemisphere, day) }))
    .toSorted((a, b) => a.day - b.day);
}

interface Outlook {
  anomaly: AnomalyByDay;
  season: LearnedSeason;
  /** Days that were read, in order. */
  known: { day: DayNumber }[];
  expectedC(day: DayNumber): number;
}

function outlook(place: PlaceTemperature): Outlook {
  const deviations = deviationsOf(place);
  const season = learnedSeason(deviations);
  const known = deviations.map(({ day, deviationC }) => ({ day, anomalyC: deviationC - seasonShiftC(season, day) }));
  return {
    season,
    known,
    anomaly: anomalyByDay(place.fromDay, place.days, known, season.anomalySdC),
    expectedC: (day) => expectedMeanC(place.expected, place.hemisphere, day) + seasonShiftC(season, day),
  };
}

/** What is unsure of the season on a day outside the readings; between them the readings hold it fast. */
function seasonSdC(season: LearnedSeason, known: { day: DayNumber }[], day: DayNumber): number {
  const first = known[0]?.day ?? day;
  const last = known.at(-1)?.day ?? day;
  if (known.length > 0 && day > first && day < last) return 0;
  const lag = known.length === 0 ? 0 : Math.max(first - day, day - last);
  return Math.sqrt(seasonVariance(season, seasonWeights(known, day, lag, 1)));
}

/** A season that is off moves the last anomaly the other way, which fades: only the rest is unsure. */
function seasonWeights(known: { day: DayNumber }[], day: DayNumber, lag: number, weight: number) {
  const edge = day < (known[0]?.day ?? day) ? known[0] : known.at(-1);
  return edge
    ? [
        { day, weight },
        { day: edge.day, weight: -weight * roomPersistence ** lag },
      ]
    : [{ day, weight }];
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
