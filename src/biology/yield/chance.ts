/**
 * What chance alone does to a cup: which founders die first, how many larvae make it. Small beside the
 * differences between households and cups, but not with few founders.
 */
import { counterNormal } from '../../foundation/index.ts';

/**
 * Squared coefficient of variation of a cup's total that chance alone brings. Flies compete for one
 * medium, so that a lucky start is mostly made up for: `perFounder` / founders for the laying, and
 * 1 / flies for deaths. The 0.14 is fitted to this project's individual-based simulation.
 */
export function demographicVariance(founders: number, flies: number): number {
  if (founders <= 0 || flies <= 0) return 0;
  return perFounder / founders + 1 / flies;
}

const perFounder = 0.14;

/** Band of a cup's total: its middle is the mean course's, its width chance and the other log sds given. */
export interface TotalBand {
  p05: number;
  p50: number;
  p95: number;
}

/**
 * 5, 50 and 95 % of the flies that emerge from a cup, lognormal around `flies`: demographic chance of so
 * few `founders` together with the log sd of yields between cups and households. With one pair or few
 * flies, the chance that no female or no male is among the founders pulls the lower end to 0.
 */
export function totalBand(flies: number, founders: number, yieldLogSd: number): TotalBand {
  const sd = Math.sqrt(Math.log1p(demographicVariance(founders, flies)) + yieldLogSd * yieldLogSd);
  const at = (z: number) => flies * Math.exp(z * sd);
  const barren = founders > 0 ? Math.min(1, 2 * 0.5 ** founders) : 1;
  return { p05: barren > 0.05 ? 0 : at(-1.6449), p50: barren > 0.5 ? 0 : at(0), p95: at(1.6449) };
}

/** The factor by which cup number `cup` of scenario `scenario` deviates by chance alone; mean 1. */
export function chanceFactor(seed: number, scenario: number, cup: number, variance: number): number {
  const logVariance = Math.log1p(variance);
  return Math.exp(Math.sqrt(logVariance) * counterNormal(seed, scenario, cup) - 0.5 * logVariance);
}
