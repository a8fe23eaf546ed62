import { expect, it } from 'vitest';
import { learn, ordinaryPrior } from '../../src/learning/index.ts';
import { scoreHouseholds } from './learning-scores.ts';
import { ordinaryWorld, simulateWorld } from './learning-world.ts';

/** Root mean square error of the household's pace and yield over simulated households. */
function errors(cups: number, households: number): { pace: number; yield: number; sd: number } {
  let [pace, yields, sd] = [0, 0, 0];
  for (let n = 0; n < households; n++) {
    const world = simulateWorld({ ...ordinaryWorld, cups, lookEvery: 4 }, 900 + n);
    const belief = learn({ seed: n, draws: 200, prior: ordinaryPrior, strains: [world.evidence] }).byStrain.get(
      'melanogaster',
    );
    pace += ((belief?.logPace.mean ?? 9) - world.truth.logPace) ** 2 / households;
    yields += ((belief?.logYield.mean ?? 9) - world.truth.logYield) ** 2 / households;
    sd += (belief?.logYield.sd ?? 9) / households;
  }
  return { pace: Math.sqrt(pace), yield: Math.sqrt(yields), sd };
}

it('finds the truth as the log grows', () => {
  const [few, many] = [errors(2, 10), errors(14, 8)];
  expect(many.pace).toBeLessThan(0.7 * few.pace);
  expect(many.yield).toBeLessThan(0.8 * few.yield);
  expect(many.sd).toBeLessThan(0.7 * few.sd);
  // Household spreads are .1 and .45: fourteen cups leave a fraction of them.
  expect(many.pace).toBeLessThan(0.04);
  expect(many.yield).toBeLessThan(0.2);
}, 120_000);

it('scores next week better than the books and than the last cup', () => {
  const { learned, books, lastCup } = scoreHouseholds(6, { ...ordinaryWorld, lookEvery: 4 }, 3);
  expect(learned.crps).toBeLessThan(0.85 * books.crps);
  expect(learned.crps).toBeLessThan(0.95 * lastCup.crps);
  expect(learned.logScore).toBeLessThan(books.logScore);
}, 120_000);
