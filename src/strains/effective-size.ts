/** Effective size of a line and the variation it loses, from the founders of its generations. */

export interface Founders {
  females: number;
  males: number;
}

/**
 * Effective size of one generation, 4 F M / (F + M): the size of an ideal population of half and half that
 * would lose variation as fast (source key wright-1931). 0 when a sex is missing.
 * @example effectiveSize({ females: 10, males: 30 }) // => 30
 */
export function effectiveSize({ females, males }: Founders): number {
  for (const [sex, count] of Object.entries({ females, males }))
    if (!(count >= 0 && Number.isFinite(count)))
      throw new RangeError(`effectiveSize: ${sex} ${count} is not 0 or more`);
  return females + males === 0 ? 0 : (4 * females * males) / (females + males);
}

/**
 * Effective size over several generations: the harmonic mean, which the smallest rules.
 * @example effectiveSizeOver([10, 1000]) // => 19.8
 */
export function effectiveSizeOver(sizes: readonly number[]): number {
  if (sizes.length === 0) throw new RangeError('effectiveSizeOver: there are no generations');
  return sizes.length / sizes.reduce((sum, size) => sum + 1 / size, 0);
}

/**
 * Share of the first generation's heterozygosity that is gone after generations of these effective
 * sizes: 1 - product of (1 - 1/(2 Ne)); the same number is the mean inbreeding coefficient.
 */
export function lossOfVariation(sizes: readonly number[]): number {
  return 1 - sizes.reduce((kept, size) => kept * (1 - 1 / (2 * Math.max(size, 0.5))), 1);
}

/**
 * Generations at effective size `size` until the share `share` is lost; Infinity for endless size.
 * @example generationsUntilLoss(50, 0.1) // => 10.5
 */
export function generationsUntilLoss(size: number, share: number): number {
  if (!(size >= 1)) throw new RangeError(`generationsUntilLoss: size ${size} is not 1 or more`);
  if (!(share > 0 && share < 1)) throw new RangeError(`generationsUntilLoss: share ${share} is not between 0 and 1`);
  return Math.log(1 - share) / Math.log(1 - 1 / (2 * size));
}
