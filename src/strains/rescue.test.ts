import { describe, expect, it } from 'vitest';
import { cross } from './cross.ts';
import { unknownRecessive } from './locus.ts';
import { rescueFromStranger, type UnmixInput, unmix } from './rescue.ts';

const plan = {
  onDay: 20_000,
  generationDays: 11.2,
  virginWindowHours: 11.3,
  founders: { females: 15, males: 15 },
  fliesLookedAt: 100,
};

describe('rescue after a stranger', () => {
  it('dates its checks by whole generations', () =>
    expect(rescueFromStranger(plan).steps.map((step) => step.onDay - 20_000)).toEqual([0, 0, 12, 24]));
  it('is surer after each look, and after more flies', () => {
    const [first, second] = rescueFromStranger(plan).cleanAfterCheck as [number, number];
    expect(second).toBeGreaterThan(first);
    const [few] = rescueFromStranger({ ...plan, fliesLookedAt: 10 }).cleanAfterCheck as [number];
    expect(few).toBeLessThan(first);
    // By hand: prior 1 - 0.95^15, carriers 1 - (59/60)^2 of the flies, none in 100.
    const prior = 1 - 0.95 ** 15;
    const missed = (59 / 60) ** 200;
    expect(first).toBeCloseTo((1 - prior) / (1 - prior + prior * missed), 12);
  });
  it('names the hours of the temperature', () => expect(rescueFromStranger(plan).steps[1]?.act.values[0]).toBe(11));
  it('refuses nonsense', () => {
    expect(() => rescueFromStranger({ ...plan, generationDays: 0 })).toThrow(/generationDays 0/);
    expect(() => rescueFromStranger({ ...plan, fliesLookedAt: 0.5 })).toThrow(/fliesLookedAt/);
  });
});

describe('parting two mixed strains', () => {
  const input: UnmixInput = { ...plan, recombination: 0.5, sameChromosome: false, confidence: 0.95 };
  const carriersAmong = (symbols: [string, string], chromosome: '2' | null) => {
    const loci = symbols.map((symbol, i) => ({ ...unknownRecessive(symbol), chromosome, position: 10 * i }));
    const distances = chromosome ? [{ loci: symbols, mapUnits: 10 }] : [];
    const [a, b] = symbols;
    const result = cross({ female: `${a}/${a}`, male: `${b}/${b}`, generations: 2, loci, distances });
    const rows = result.ok ? (result.value.generations[1]?.genotypes ?? []) : [];
    const share = (text: string) => rows.find((row) => row.genotype === text)?.share ?? 0;
    const clean = share(`${a}/${a}; +/+`);
    return clean / (clean + share(`${a}/${a}; ${b}/+`));
  };
  it('takes the share of clean flies from the cross itself: a third apart, 1 - r together', () => {
    expect(unmix(input).cleanPairChance).toBeCloseTo(carriersAmong(['a', 'b'], null) ** 2, 12);
    const together = unmix({ ...input, recombination: 0.1, sameChromosome: true });
    expect(together.cleanPairChance).toBeCloseTo(carriersAmong(['a', 'b'], '2') ** 2, 12);
    expect(together.pairs).toBeLessThan(unmix(input).pairs);
  });
  it('sets up enough pairs: 26, for (8/9)^26 < 0.05 < (8/9)^25', () => expect(unmix(input).pairs).toBe(26));
  it('refuses a recombination over a half', () =>
    expect(() => unmix({ ...input, recombination: 0.6 })).toThrow(/recombination 0.6/));
});
