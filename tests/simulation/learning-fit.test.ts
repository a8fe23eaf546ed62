import { expect, it } from 'vitest';
import { learn, type LogFit, ordinaryPrior } from '../../src/learning/index.ts';
import { secondFlush } from './learning-distortions.ts';
import { ordinaryWorld, simulateWorld, type WorldOptions } from './learning-world.ts';

function fitOf(options: Partial<WorldOptions>, seed: number): LogFit {
  const { evidence } = simulateWorld({ ...ordinaryWorld, cups: 24, lookEvery: 3, ...options }, seed);
  const belief = learn({ seed, draws: 200, prior: ordinaryPrior, strains: [evidence] }).byStrain.get('melanogaster');
  if (!belief) throw new RangeError(`fitOf: no belief for seed ${seed}`);
  return belief.fit;
}

it('says of a world whose cups bloom twice that its log does not fit, and why', () => {
  const fit = fitOf({ distort: secondFlush }, 61_000);
  expect(fit.fits).toBe(false);
  expect(fit.misfits[0]?.what).toBe('shape');
  expect(fit.misfits[0]?.chance).toBeLessThan(0.001);
}, 60_000);

it('is silent about logs that the model wrote, and about a keeper who rounds to tens', () => {
  expect(fitOf({}, 62_000)).toMatchObject({ fits: true, misfits: [] });
  expect(fitOf({ writeCount: (flies) => Math.round(flies / 10) * 10 }, 62_001).fits).toBe(true);
}, 60_000);
