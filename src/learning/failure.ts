/**
 * The chance that a cup fails before its time. A cup that ran its course is one trial without failure;
 * a living one counts for the part of its life that it has behind it (failing days are taken as even
 * over the life), so a shelf of young cups does not look like a row of successes.
 */
import type { RandomStream } from '../foundation/index.ts';
import type { CupEvidence } from './evidence.ts';
import { drawIndex } from './spread.ts';

const points = 400;

/** Posterior weights of the chance of failure at (k + 1/2) / 400: Beta prior times the cups. */
export function failureWeights(prior: { a: number; b: number }, cups: readonly CupEvidence[]): Float64Array {
  const logs = new Float64Array(points);
  for (let k = 0; k < points; k++) {
    const p = (k + 0.5) / points;
    let sum = (prior.a - 1) * Math.log(p) + (prior.b - 1) * Math.log(1 - p);
    for (const cup of cups) sum += cup.ended?.failed ? Math.log(p) : Math.log(1 - p * lifeBehind(cup));
    logs[k] = sum;
  }
  const greatest = Math.max(...logs);
  return logs.map((l) => Math.exp(l - greatest));
}

/** Share of its nominal life that a cup has lived, 0 to 1. */
export function lifeBehind(cup: CupEvidence): number {
  return Math.min(1, Math.max(0, cup.ageDays / cup.spentAge));
}

export function drawFailureChance(weights: Float64Array, random: RandomStream): number {
  return (drawIndex(weights, random.uniform()) + random.uniform()) / points;
}

/** Mean and 5 and 95 % points of the posterior. */
export function failureSummary(weights: Float64Array): { mean: number; p05: number; p95: number } {
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = weights.reduce((sum, w, k) => sum + (w * (k + 0.5)) / points, 0) / total;
  return { mean, p05: quantile(weights, 0.05 * total), p95: quantile(weights, 0.95 * total) };
}

function quantile(weights: Float64Array, mass: number): number {
  let left = mass;
  for (let k = 0; k < points; k++) {
    const w = weights[k] as number;
    if (left < w) return (k + left / w) / points;
    left -= w;
  }
  return 1;
}
