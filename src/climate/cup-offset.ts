/**
 * How much warmer the inside of a cup is than the shelf beside it, from readings taken at one moment in
 * both. Normal prior and normal errors: closed form.
 */

export interface CupPair {
  cupC: number;
  shelfC: number;
}

export interface CupOffset {
  /** Cup minus shelf, C, and its standard deviation. */
  meanC: number;
  sdC: number;
  pairs: number;
}

/** How far the keeper's own number, or none, is off, C: chosen, no source. */
export const offsetPriorSdC = 1;
/** Scatter of one pair about the place's mean, C: two thermometers, and cups of different age. Chosen. */
export const pairSdC = 0.7;
/** What all pairs share, C: two thermometers that never agree quite. Chosen. */
export const thermometersSdC = 0.3;

/**
 * Posterior of the offset, C. With n pairs of mean d: precision 1/sp^2 + n/(s^2), mean weighted by
 * precisions; the thermometers' own difference is added, as no number of pairs takes it away.
 *
 * @param keeperC what the keeper set; 0 when nothing was.
 * @example cupOffset([], 1).meanC // => 1
 */
export function cupOffset(pairs: readonly CupPair[], keeperC: number): CupOffset {
  const precision = 1 / offsetPriorSdC ** 2 + pairs.length / pairSdC ** 2;
  const sum = pairs.reduce((total, { cupC, shelfC }) => total + cupC - shelfC, 0);
  const meanC = (keeperC / offsetPriorSdC ** 2 + sum / pairSdC ** 2) / precision;
  const shared = pairs.length > 0 ? thermometersSdC : 0;
  return { meanC, sdC: Math.hypot(Math.sqrt(1 / precision), shared), pairs: pairs.length };
}
