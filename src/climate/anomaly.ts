/**
 * How far a place is from its expected temperature on each day: known where there are readings, bridged
 * between them, fading out after the last. A first-order autoregression by days, AR(1), so that both the
 * bridge and what is ahead have closed means and variances.
 */
import type { DayNumber } from '../foundation/index.ts';

/** Day-to-day correlation of a room's anomaly and its standard deviation, C: chosen, no source. */
export const roomPersistence = 0.93;
export const roomAnomalySdC = 1;

export interface AnomalyByDay {
  meanC: Float64Array;
  sdC: Float64Array;
}

/**
 * Mean and sd of the anomaly on each of `days` days from `fromDay`, given the known ones (by day, any
 * order). Ahead of the last known day k days: mean rho^k a, sd s sqrt(1 - rho^2k), s = `sdC`; a is a weighted mean
 * of the last week's anomalies, so that one odd reading does not tilt the outlook.
 */
export function anomalyByDay(
  fromDay: DayNumber,
  days: number,
  known: { day: DayNumber; anomalyC: number }[],
  sdC: number = roomAnomalySdC,
): AnomalyByDay {
  const sorted = known.toSorted((a, b) => a.day - b.day);
  const result = { meanC: new Float64Array(days), sdC: new Float64Array(days) };
  let next = 0;
  for (let i = 0; i < days; i += 1) {
    const day = fromDay + i;
    while (next < sorted.length && (sorted[next] as Known).day <= day) next += 1;
    const { mean, sd } = conditional(day, sorted, next);
    result.meanC[i] = mean;
    result.sdC[i] = sdC * sd;
  }
  return result;
}

type Known = { day: DayNumber; anomalyC: number };

/** The anomaly of `day` given its neighbours, its sd in units of the whole; `next`: the first known day after it. */
function conditional(day: DayNumber, known: Known[], next: number): { mean: number; sd: number } {
  const before = known[next - 1];
  const after = known[next];
  if (before?.day === day) return { mean: before.anomalyC, sd: 0 };
  if (before && after) return bridge(before, after, day);
  if (before) return fading(recentAnomaly(known, next), day - before.day);
  if (after) return fading(after.anomalyC, after.day - day);
  return { mean: 0, sd: 1 };
}

function fading(anomalyC: number, lag: number): { mean: number; sd: number } {
  const kept = roomPersistence ** lag;
  return { mean: kept * anomalyC, sd: Math.sqrt(1 - kept * kept) };
}

/** A stationary AR(1) between two known values: normal with these moments. */
function bridge(before: Known, after: Known, day: DayNumber): { mean: number; sd: number } {
  const a = roomPersistence ** (day - before.day);
  const b = roomPersistence ** (after.day - day);
  const whole = 1 - a * a * b * b;
  const mean = (before.anomalyC * a * (1 - b * b) + after.anomalyC * b * (1 - a * a)) / whole;
  return { mean, sd: Math.sqrt(((1 - a * a) * (1 - b * b)) / whole) };
}

/** Weighted mean of the anomalies of the week up to the last known day, weights halving each day. */
function recentAnomaly(known: Known[], next: number): number {
  const last = known[next - 1] as Known;
  let weights = 0;
  let sum = 0;
  for (let i = next - 1; i >= 0 && last.day - (known[i] as Known).day < 7; i -= 1) {
    const weight = 0.5 ** (last.day - (known[i] as Known).day);
    weights += weight;
    sum += weight * (known[i] as Known).anomalyC;
  }
  return sum / weights;
}
