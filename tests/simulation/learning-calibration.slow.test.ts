import { describe, expect, it } from 'vitest';
import { ordinaryPrior } from '../../src/learning/index.ts';
import { chiSquaredOfTen, coverage, rankedQuantities, ranksOver } from './learning-ranks.ts';
import { ordinaryWorld } from './learning-world.ts';

const households = 300;
const world = { ...ordinaryWorld, recipes: ['A', 'B'] };
/** 99.9 % point of chi-squared with 9 degrees of freedom (R 4.2.2, qchisq(.999, 9)): level .001 a quantity. */
const critical = 27.877;

describe(`simulation-based calibration over ${households} households of 8 cups`, () => {
  // The discrepancies of the simulated world are the prior's own, the same in every household.
  const ranks = ranksOver(households, world, { ...ordinaryPrior, discrepancyLogSd: 0 }, 20_000);

  for (const quantity of rankedQuantities) {
    it(`${quantity}: ranks uniform at the .001 level, bands cover within 3 standard errors`, () => {
      const mine = ranks[quantity];
      const [fifty, ninety] = [coverage(mine, 0.5), coverage(mine, 0.9)];
      const chi = chiSquaredOfTen(mine);
      console.log(
        `${quantity}: chi2(9) ${chi.toFixed(1)}, 50 % ${fifty.toFixed(3)}, 90 % ${ninety.toFixed(3)}, n ${mine.length}`,
      );
      expect(mine.length).toBeGreaterThan(0.8 * households);
      expect(chi).toBeLessThan(critical);
      expect(Math.abs(fifty - 0.5)).toBeLessThan(3 * Math.sqrt(0.25 / mine.length));
      expect(Math.abs(ninety - 0.9)).toBeLessThan(3 * Math.sqrt(0.09 / mine.length));
    });
  }
}, 900_000);

it('sees a model that believes cups to be too alike (negative control)', () => {
  const alike = { ...ordinaryPrior, cupYieldSd: 0.06, sessionYieldSd: 0.02, householdYieldSd: 0.15 };
  const ranks = ranksOver(100, world, alike, 30_000);
  expect(coverage(ranks['household yield'], 0.9)).toBeLessThan(0.8);
  expect(chiSquaredOfTen(ranks['spread of cups'])).toBeGreaterThan(critical);
}, 900_000);
