/**
 * The engine against the fly-by-fly simulation, 60 founders. In cups sixteen times as large, stepped by
 * half an hour, totals agree within .3 %; allowed here are 1 % in total and .05 day in mean emergence
 * (.1 with daily steps, whose own error is up to .08), and three standard errors of the simulation's mean.
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
      expect(Math.abs(engine.meanDay - flies.meanDay.mean), say).toBeLessThan(
        (steps === 1 ? 0.1 : 0.05) + 3 * flies.meanDay.standardError,
      );
      expect(Math.abs(engine.meanMassMg / flies.meanMassMg - 1), say).toBeLessThan(0.04);
      expect(curveDistance(engine.emergedByDay, flies.emergedByDay), say).toBeLessThan(0.03);
    }
  });
});
