/**
 * What a place's own readings say of its season: how far its ordinary temperature is from the one the
 * keeper expected, as a level and a yearly wave, with what stays unsure of it. Bayesian regression on
 * readings whose errors are AR(1) by days; closed form.
 *
 * y(d) = b0 + b1 cos w(d) + b2 sin w(d) + a(d), y a reading less the expected mean, a the anomaly of
 * standard deviation s and day-to-day correlation rho. b ~ N(0, diag(levelSd^2, waveSd^2, waveSd^2)).
 */
import type { DayNumber } from '../foundation/index.ts';
import { roomAnomalySdC, roomPersistence } from './anomaly.ts';

/** How far a keeper's own number is off, C, level and yearly wave: chosen, no source. */
export const keeperLevelSdC = 1;
export const keeperWaveSdC = 0.7;
/** Readings that the usual spread of anomalies counts for: chosen, no source. */
const spreadWeight = 10;
const yearDays = 365.25;

type Vector = [number, number, number];
type Matrix = [Vector, Vector, Vector];

export interface LearnedSeason {
  mean: Vector;
  covariance: Matrix;
  /** Standard deviation of the anomaly about the learned season, C. */
  anomalySdC: number;
}

export interface DeviationOnDay {
  day: DayNumber;
  /** Reading less the expected mean, C. */
  deviationC: number;
}

/** @param deviations one a day, in order of days. */
export function learnedSeason(deviations: readonly DeviationOnDay[]): LearnedSeason {
  const learner = new SeasonLearner();
  for (const deviation of deviations) learner.add(deviation);
  return learner.learned();
}

/** The season as it is learned reading by reading: sums of the regression's rows are all that is kept. */
export class SeasonLearner {
  /** Sums over whitened rows of unit deviation: x x', x z and z z. */
  private readonly xx: Matrix = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  private readonly xz: Vector = [0, 0, 0];
  private zz = 0;
  private count = 0;
  private last: DeviationOnDay | null = null;

  /** The next day's deviation; days come in order. */
  add(deviation: DeviationOnDay): void {
    const { x, z } = whitened(deviation, this.last);
    for (let i = 0; i < 3; i += 1) {
      this.xz[i] = (this.xz[i] as number) + (x[i] as number) * z;
      const row = this.xx[i] as Vector;
      for (let j = 0; j < 3; j += 1) row[j] = (row[j] as number) + (x[i] as number) * (x[j] as number);
    }
    this.zz += z * z;
    this.count += 1;
    this.last = deviation;
  }

  learned(): LearnedSeason {
    const usual = this.regression(roomAnomalySdC);
    if (this.count === 0) return { ...usual, anomalySdC: roomAnomalySdC };
    const fitted = this.xx.map((row) => dot(row, usual.mean)) as Vector;
    const squares = Math.max(0, this.zz - 2 * dot(usual.mean, this.xz) + dot(usual.mean, fitted));
    const usualSquares = spreadWeight * roomAnomalySdC ** 2;
    const anomalySdC = Math.sqrt((usualSquares + squares) / (spreadWeight + this.count));
    return { ...this.regression(anomalySdC), anomalySdC };
  }

  private regression(sdC: number): { mean: Vector; covariance: Matrix } {
    const prior = [keeperLevelSdC ** -2, keeperWaveSdC ** -2, keeperWaveSdC ** -2];
    const precision = this.xx.map((row, i) =>
      row.map((sum, j) => sum / sdC ** 2 + (i === j ? (prior[i] as number) : 0)),
    ) as Matrix;
    const covariance = inverse(precision);
    const right = this.xz.map((sum) => sum / sdC ** 2) as Vector;
    return { covariance, mean: covariance.map((row) => dot(row, right)) as Vector };
  }
}

/** Learned season less the keeper's on a day, C. */
export function seasonShiftC({ mean }: LearnedSeason, day: DayNumber): number {
  return dot(seasonOf(day), mean);
}

/** What is unsure of the season in a weighted sum of days, C squared; weights need not sum to 1. */
export function seasonVariance({ covariance }: LearnedSeason, days: { day: DayNumber; weight: number }[]): number {
  const x: Vector = [0, 0, 0];
  for (const { day, weight } of days) seasonOf(day).forEach((v, i) => (x[i] = (x[i] as number) + weight * v));
  return covariance.reduce((sum, row, i) => sum + (x[i] as number) * dot(row, x), 0);
}

function seasonOf(day: DayNumber): Vector {
  const angle = (2 * Math.PI * day) / yearDays;
  return [1, Math.cos(angle), Math.sin(angle)];
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** A reading less what its forerunner foretells, in units of the whole anomaly's standard deviation. */
function whitened({ day, deviationC }: DeviationOnDay, before: DeviationOnDay | null): { x: Vector; z: number } {
  const kept = before ? roomPersistence ** (day - before.day) : 0;
  const scale = 1 / Math.sqrt(1 - kept * kept);
  const last = before ? seasonOf(before.day) : ([0, 0, 0] as Vector);
  const x = seasonOf(day).map((v, k) => scale * (v - kept * (last[k] as number))) as Vector;
  return { x, z: scale * (deviationC - kept * (before?.deviationC ?? 0)) };
}

/** Of a symmetric positive definite matrix, by cofactors. */
function inverse([[a, b, c], [, d, e], [, , f]]: Matrix): Matrix {
  const A = d * f - e * e;
  const B = c * e - b * f;
  const C = b * e - c * d;
  const det = a * A + b * B + c * C;
  const D = (a * f - c * c) / det;
  const E = (b * c - a * e) / det;
  return [
    [A / det, B / det, C / det],
    [B / det, D, E],
    [C / det, E, (a * d - b * b) / det],
  ];
}
