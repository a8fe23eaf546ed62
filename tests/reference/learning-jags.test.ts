import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bandOf } from '../../src/foundation/index.ts';
import { type CupEvidence, learn, ordinaryPrior } from '../../src/learning/index.ts';

/**
 * A log of four cups held against JAGS (general-purpose Gibbs sampling, M. Plummer), which samples every
 * day's emergence where learning matches moments on a grid. `learning-jags/run.R` made `posterior.csv`.
 */
const folder = fileURLToPath(new URL('./learning-jags/', import.meta.url));
const rowsOf = (name: string) =>
  readFileSync(`${folder}${name}`, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));
const stages = ['larvae', 'pupae', 'adults'] as const;

function cups(): CupEvidence[] {
  const curve = Float32Array.from(rowsOf('curve.csv'), (row) => Number(row[1]));
  const notes = rowsOf('notes.csv');
  return [...new Set(notes.map((n) => n[0] as string))].map((id, session) => {
    const mine = notes.filter((n) => n[0] === id);
    return {
      id,
      session,
      ageDays: Number(mine.at(-1)?.[1]),
      recipe: null,
      place: 'shelf',
      generation: null,
      emergedByAge: curve,
      firstSeenAge: { larvae: 2.5, pupae: 8, adults: 13 },
      spentAge: 35,
      looks: mine.map((n) => ({
        ageDays: Number(n[1]),
        present: stages.filter((_, k) => n[2 + k] === '1'),
        absent: stages.filter((_, k) => n[2 + k] === '0'),
        amount: null,
        count: n[5] === '' ? null : Number(n[5]),
      })),
      takes: [],
      ended: null,
    };
  });
}

/** The values that model.jags is written with. */
const prior = { ...ordinaryPrior, householdYieldSd: 0.45, countSd: 0.3, wrongEntryShare: 0, discrepancyLogSd: 0 };
const beliefs = learn({
  seed: 1,
  draws: 20_000,
  prior,
  strains: [{ strain: 'melanogaster', adultDailySurvival: 0.92, cups: cups() }],
});
const strain = beliefs.byStrain.get('melanogaster');

/** JAGS's name of a quantity -> our draws. */
function drawsOf(quantity: string): ArrayLike<number> {
  const cup = beliefs.cups.get('abcd'[Number(quantity.match(/\d/)?.[0] ?? 1) - 1] as string);
  const all: Record<string, ArrayLike<number> | undefined> = {
    alpha: strain?.draws.logPace,
    beta: strain?.draws.logYield,
    su: strain?.draws.cupYieldSd,
    x: cup?.draws.logPace,
    y: cup?.draws.logYield,
    now: cup?.draws.fliesNow,
  };
  return all[quantity.split('[')[0] as string] ?? [];
}

function momentsOf(draws: ArrayLike<number>) {
  const values = Array.from(draws);
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return { mean, sd: Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length) };
}

describe('a small log against JAGS', () => {
  for (const [quantity = '', ...figures] of rowsOf('posterior.csv')) {
    it(quantity, () => {
      const [mean, sd, q05, q95] = figures.map(Number) as [number, number, number, number];
      const ours = momentsOf(drawsOf(quantity));
      // A cup's pace and yield are given for forecasts, with the structural discrepancies on top.
      const extra = { x: prior.paceDiscrepancySd, y: prior.discrepancySd }[quantity.charAt(0)] ?? 0;
      // Monte Carlo error is about .01 sd on JAGS's side and .03 on ours (draws hang together); the rest is
      // the grid (a cell is .25 sd wide at most) and the moments. A tenth of an sd moves no forecast.
      expect(Math.abs(ours.mean - mean) / sd).toBeLessThan(0.12);
      expect(Math.abs(Math.sqrt(ours.sd ** 2 - extra ** 2) / sd - 1)).toBeLessThan(0.08);
      if (extra > 0) return;
      const band = bandOf(drawsOf(quantity));
      expect(Math.abs(band.p05 - q05) / sd).toBeLessThan(0.15);
      expect(Math.abs(band.p95 - q95) / sd).toBeLessThan(0.15);
    });
  }
});
