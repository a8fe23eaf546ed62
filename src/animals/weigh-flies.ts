/** Flies by weight: a pot before and after, and how many flies that is, with its spread. */
import { type Band, normalQuantile } from '../foundation/index.ts';

export interface FlyMassSpread {
  /** Mean fresh mass of a fly, mg, and the sd between single flies. */
  meanMg: number;
  sdMg: number;
  /** Sd of the mean itself: how far these flies' mean may be from the one believed. */
  meanSdMg: number;
}

/** Mass of flies of both sexes together from each sex's mean and sd. */
export function mixedFlyMass(
  female: { meanMg: number; sdMg: number },
  male: { meanMg: number; sdMg: number },
  maleShare = 0.5,
): { meanMg: number; sdMg: number } {
  const meanMg = (1 - maleShare) * female.meanMg + maleShare * male.meanMg;
  const square =
    (1 - maleShare) * (female.sdMg ** 2 + female.meanMg ** 2) + maleShare * (male.sdMg ** 2 + male.meanMg ** 2);
  return { meanMg, sdMg: Math.sqrt(square - meanMg ** 2) };
}

export interface WeighedFlies {
  flies: number;
  sd: number;
  /** 5, 50 and 95 %; not below 0. */
  band: Band;
  /** What makes most of the spread. */
  mainDoubt: 'the scale' | 'the mean mass of a fly' | 'the single flies';
}

/**
 * Flies in a pot that weighs `fullMg` with them and `emptyMg` without, on a scale whose single readings
 * err by `scaleSdMg`. Variance: two readings over the fly's mass squared, the count times the mass's
 * relative doubt squared, and the count times the flies' own relative variance.
 * Throws RangeError when the pot got heavier or a mass is not above 0.
 */
export function fliesInPot(fullMg: number, emptyMg: number, scaleSdMg: number, fly: FlyMassSpread): WeighedFlies {
  if (!(emptyMg >= 0 && fullMg >= emptyMg))
    throw new RangeError(`fliesInPot: ${fullMg} mg with flies is not above ${emptyMg} mg without`);
  if (!(fly.meanMg > 0 && fly.sdMg >= 0 && fly.meanSdMg >= 0 && scaleSdMg >= 0))
    throw new RangeError('fliesInPot: a mass or its sd is not above 0');
  const flies = (fullMg - emptyMg) / fly.meanMg;
  const variances = [
    ['the scale', (2 * scaleSdMg ** 2) / fly.meanMg ** 2],
    ['the mean mass of a fly', (flies * (fly.meanSdMg / fly.meanMg)) ** 2],
    ['the single flies', flies * (fly.sdMg / fly.meanMg) ** 2],
  ] as const;
  const sd = Math.sqrt(variances.reduce((sum, [, variance]) => sum + variance, 0));
  const at = (p: number) => Math.max(0, flies + sd * normalQuantile(p));
  const [mainDoubt] = variances.reduce((most, one) => (one[1] > most[1] ? one : most));
  return { flies, sd, band: { p05: at(0.05), p50: at(0.5), p95: at(0.95) }, mainDoubt };
}
