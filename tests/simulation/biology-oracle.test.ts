/**
 * The engine against the fly-by-fly simulation, 60 founders: 1 % in total and .05 day in mean emergence are
 * allowed, and three standard errors of the simulation's mean. What chance among few founders takes is held
 * against 4, 8 and 20 of them in the slow suite.
 */
import { describe, expect, test } from 'vitest';
import { quickCases } from './biology-cases.ts';
import { curveDistance, runEngine, runOracle } from './biology-oracle.ts';

const runs = 24;

describe('engine and individuals agree', () => {
  test.each(quickCases)('$name', (one) => {
    const flies = runOracle(one, runs, 1000, 'even');
    for (const steps of [1, 4]) {
      const engine = runEngine(one, steps);
      const say = `x${steps}: total ${engine.total.toFixed(1)} against ${flies.total.mean.toFixed(1)} +- ${flies.total.standardError.toFixed(1)}, mean day ${engine.meanDay.toFixed(3)} against ${flies.meanDay.mean.toFixed(3)} +- ${flies.meanDay.standardError.toFixed(3)}, mass ${(engine.meanMassMg / flies.meanMassMg).toFixed(3)}, curves ${curveDistance(engine.emergedByDay, flies.emergedByDay).toFixed(4)}`;
      console.log(one.name, say);
      expect(Math.abs(engine.total - flies.total.mean), say).toBeLessThan(
        0.01 * flies.total.mean + 3 * flies.total.standardError,
      );
      expect(Math.abs(engine.meanDay - flies.meanDay.mean), say).toBeLessThan(0.05 + 3 * flies.meanDay.standardError);
      expect(Math.abs(engine.meanMassMg / flies.meanMassMg - 1), say).toBeLessThan(0.04);
      expect(curveDistance(engine.emergedByDay, flies.emergedByDay), say).toBeLessThan(0.02);
    }
  });
});
