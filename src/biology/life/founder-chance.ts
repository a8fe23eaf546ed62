/** What chance does to the laying of founders: who of them is a female, and how long each lives. */

/**
 * Squared coefficient of variation of one founder's laying: 1 for the sex (half of them are females), .5 for
 * the life, as counted in the fly-by-fly simulation under tests/ over the twelve days until founders are
 * harvested with the first flies (1.47 and, with as many females as males, .48).
 */
const perFounder = 1.5;

/** Squared coefficient of variation of what `founders` lay together, which are more than 0. */
export function founderLayingVariance(founders: number): number {
  return perFounder / founders;
}
