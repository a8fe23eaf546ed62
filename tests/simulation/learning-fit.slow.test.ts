import { expect, it } from 'vitest';
import { learn, ordinaryPrior } from '../../src/learning/index.ts';
import { secondFlush } from './learning-distortions.ts';
import { ordinaryWorld, simulateWorld, type WorldOptions } from './learning-world.ts';

/** Share of households whose log is said not to fit. */
function shareMisfit(households: number, options: Partial<WorldOptions>, seed: number): number {
  let misfits = 0;
  for (let n = 0; n < households; n++) {
    const { evidence } = simulateWorld({ ...ordinaryWorld, ...options }, seed + n);
    const beliefs = learn({ seed: n, draws: 200, prior: ordinaryPrior, strains: [evidence] });
    if (!beliefs.byStrain.get('melanogaster')?.fit.fits) misfits++;
  }
  return misfits / households;
}

it('calls at most one log in a hundred that the model wrote a misfit (300 households, 3 standard errors)', () => {
  const share = shareMisfit(300, {}, 63_000);
  console.log(`logs that the model wrote and that are said not to fit: ${share.toFixed(3)}`);
  expect(share).toBeLessThan(0.01 + 3 * Math.sqrt((0.01 * 0.99) / 300));
}, 600_000);

it('finds out a world of two blooms in nine households of ten, once 24 cups were seen', () => {
  const share = shareMisfit(20, { cups: 24, distort: secondFlush }, 64_000);
  console.log(`worlds of two blooms that are found out: ${share.toFixed(2)}`);
  expect(share).toBeGreaterThanOrEqual(0.9);
}, 600_000);
