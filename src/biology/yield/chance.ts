/**
 * What chance alone does to a cup: how many founders are females, which of them die first. Small beside
 * the differences between households and cups, but not with few founders.
 */
import { founderLayingVariance } from '../life/founder-chance.ts';

export interface TotalBand {
  p05: number;
  p50: number;
  p95: number;
}

const z95 = 1.6449;

/**
 * 5, 50 and 95 % of the flies that emerge from a cup with `founders`, lognormal to either side. Two
 * causes are joined: demographic chance, which makes the founders lay like more or fewer of them (their
 * yield is `yieldOf` that number, so that a full cup hardly feels it), and the log sd of yields between
 * cups and households. The lower end is 0 when having no female at all is likelier than 5 %.
 */
export function totalBand(yieldOf: (founders: number) => number, founders: number, yieldLogSd: number): TotalBand {
  const middle = yieldOf(founders);
  if (!(founders > 0) || middle <= 0) return { p05: 0, p50: 0, p95: 0 };
  const spread = z95 * Math.sqrt(founderLayingVariance(founders));
  const few = yieldOf(Math.max(0, founders * (1 - spread)));
  const many = yieldOf(founders * (1 + spread));
  const down = few > 0 ? Math.log(middle / few) : Number.POSITIVE_INFINITY;
  const up = Math.max(0, Math.log(many / middle));
  const between = z95 * yieldLogSd;
  return {
    p05: middle * Math.exp(-Math.hypot(Math.max(0, down), between)),
    p50: middle,
    p95: middle * Math.exp(Math.hypot(up, between)),
  };
}
