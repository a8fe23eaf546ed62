/** The normal distribution, as the statistics library computes it. */
import cdf from '@stdlib/stats-base-dists-normal-cdf';
import quantile from '@stdlib/stats-base-dists-normal-quantile';

/** Chance that a standard normal is at most `z`. */
export function normalCdf(z: number): number {
  return cdf(z, 0, 1);
}

/** The `p` quantile of the standard normal, p in (0, 1). */
export function normalQuantile(p: number): number {
  return quantile(p, 0, 1);
}
