/** What chance does to the laying of founders: who of them is a female, and how long each lives. */

/**
 * Squared coefficient of variation of one founder's laying: 1 for the sex (half of them are females), .3 for
 * the life, as counted in the fly-by-fly simulation under tests/ (1.26 within six days, 1.3 to 1.35 within ten).
 */
const perFounder = 1.3;

/** Squared coefficient of variation of what `founders` lay together, which are more than 0. */
export function founderLayingVariance(founders: number): number {
  return perFounder / founders;
}
