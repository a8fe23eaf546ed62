/** The whole grid of cups, and what chance does with few founders; see biology-oracle.test.ts. */
import { describe, expect, test } from 'vitest';
import { totalBand } from '../../src/biology/index.ts';
import { fewFounders, slowCases } from './biology-cases.ts';
import { curveDistance, runEngine, runExpected, runOracle } from './biology-oracle.ts';

describe('engine and individuals agree over temperature, founders, medium, harvest and strain', () => {
  test.each(slowCases)('$name', (one) => {
    const flies = runOracle(one, 150, 5000, 'even');
    const engine = runEngine(one, 1);
    const distance = curveDistance(engine.emergedByDay, flies.emergedByDay);
    console.log(
      `${one.name}: total ${(100 * (engine.total / flies.total.mean - 1)).toFixed(2)} % (+- ${((100 * flies.total.standardError) / flies.total.mean).toFixed(2)}), ` +
        `mean day ${(engine.meanDay - flies.meanDay.mean).toFixed(3)} (+- ${flies.meanDay.standardError.toFixed(3)}), ` +
        `mass ${(engine.meanMassMg / flies.meanMassMg).toFixed(3)}, harvested ${(engine.harvested / flies.harvested).toFixed(3)}, curves ${distance.toFixed(4)}`,
    );
    expect(Math.abs(engine.total - flies.total.mean)).toBeLessThan(
      0.01 * flies.total.mean + 3 * flies.total.standardError,
    );
    expect(Math.abs(engine.meanDay - flies.meanDay.mean)).toBeLessThan(0.05 + 3 * flies.meanDay.standardError);
    expect(distance).toBeLessThan(0.02);
  });
});

describe('few founders: chance is part of the band', () => {
  test.each([4, 8, 20])('%i founders', (founders) => {
    const one = fewFounders(founders);
    const flies = runOracle(one, 400, 9000, 'chance');
    const expected = runExpected(one);
    const yieldOf = (n: number) => runEngine({ ...one, conditions: { ...one.conditions, founders: n } }, 1).total || 0;
    const band = totalBand(yieldOf, founders, 0);
    const log = Math.log(1 + flies.total.sd / flies.total.mean);
    const off = expected.total - flies.total.mean;
    console.log(
      `${founders} founders: expected ${expected.total.toFixed(0)} (${((100 * off) / flies.total.mean).toFixed(2)} % +- ${((100 * flies.total.standardError) / flies.total.mean).toFixed(2)}), mean day ${(expected.meanDay - flies.meanDay.mean).toFixed(3)}, individuals ${flies.total.mean.toFixed(0)} sd ${flies.total.sd.toFixed(0)}, engine ${band.p50.toFixed(0)}, band ${band.p05.toFixed(0)} to ${band.p95.toFixed(0)}`,
    );
    expect(Math.abs(off)).toBeLessThan(0.01 * flies.total.mean + 3 * flies.total.standardError);
    // The course of the mean founders lies above the mean of their chances: it is the middle, not the mean.
    expect(band.p50).toBeGreaterThan(expected.total);
    expect(band.p50).toBeLessThan(1.25 * flies.total.mean);
    // The band is as wide as the individuals' spread asks: lower half at least one sd, and finite.
    expect(band.p50 - band.p05).toBeGreaterThan(flies.total.mean * log);
    expect(band.p95).toBeGreaterThan(flies.total.mean + 0.5 * flies.total.sd);
    expect(band.p95).toBeLessThan(flies.total.mean + 3.5 * flies.total.sd);
  });
});
