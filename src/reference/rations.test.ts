import { describe, expect, it } from 'vitest';
import { publishedDustingFigures } from './dusting.ts';
import { publishedEnergyEquations } from './energy-equations.ts';
import { publishedFlyCompositions } from './fly-composition.ts';
import { publishedHatches } from './hatches.ts';
import { publishedRations } from './rations.ts';
import { source } from './source.ts';

describe('tables of animals', () => {
  it('name only sources that the bibliography has', () => {
    const tables = [publishedRations, publishedEnergyEquations, publishedFlyCompositions, publishedDustingFigures];
    for (const row of [...tables.flat(), ...publishedHatches]) expect(source(row.source), row.source).toBeDefined();
  });
  it('have ranges that run upwards', () => {
    for (const row of publishedRations) {
      expect(row.fliesLow, row.animal).toBeLessThanOrEqual(row.fliesHigh);
      expect(row.massLowG, row.animal).toBeLessThan(row.massHighG);
      expect(row.everyDaysLow, row.animal).toBeLessThanOrEqual(row.everyDaysHigh);
      expect((row.stageDaysLow ?? 0) <= (row.stageDaysHigh ?? 0), row.animal).toBe(true);
    }
    for (const row of publishedHatches) expect(row.youngLow).toBeLessThan(row.youngHigh);
  });
  it('lead from stage to stage, never in a circle', () => {
    for (const row of publishedRations) {
      let at: string = row.animal;
      for (let steps = 0; at !== '' && at !== 'larger-prey'; steps++) {
        const stage = publishedRations.find((one) => one.animal === at);
        expect(stage, at).toBeDefined();
        expect(steps).toBeLessThan(10);
        at = stage?.next ?? '';
      }
    }
  });
});
