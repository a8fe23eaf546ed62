import { describe, expect, it } from 'vitest';
import { cross } from './cross.ts';
import { type DriftInput, drift } from './drift.ts';
import { unknownRecessive } from './locus.ts';

const loci = [unknownRecessive('vg'), { ...unknownRecessive('fli'), chromosome: 'X' as const }];
const input = (more: Partial<DriftInput> = {}): DriftInput => ({
  female: 'vg/+',
  male: 'vg/+',
  generations: 8,
  loci,
  founders: { females: 5, males: 5 },
  replicas: 3000,
  seed: 5,
  ...more,
});
const drifted = (more: Partial<DriftInput> = {}) => {
  const result = drift(input(more));
  if (!result.ok) throw new Error('failed');
  return result.value;
};

describe('drift, against the moments of Wright and Fisher', () => {
  it('heterozygotes decline by 1 - 1/(2 Ne + 1) a generation with separate sexes (Wright 1931)', () => {
    // With equal sexes and random union, H(t+2) = H(t+1) (1 - 1/N) + H(t) / (2 N), N founders in all.
    const answer = drifted();
    const expected = [0.5, 0.5];
    const people = 10;
    while (expected.length < 8) {
      const [a, b] = expected.slice(-2) as [number, number];
      expected.push(b * (1 - 1 / people) + a / (2 * people));
    }
    answer.generations.forEach((row, i) => {
      const share = row.genotypes.find(({ genotype }) => genotype === 'vg/+')?.share ?? 0;
      // The share of heterozygotes in one line is between 0 and 1: its sd is at most a half.
      expect(Math.abs(share - (expected[i] as number))).toBeLessThan((5 * 0.25) / Math.sqrt(3000));
    });
  });
  it('states the standard error of the mean: that of 3000 shares between 0 and 1', () => {
    for (const { n, wingedShare } of drifted().spread.slice(1)) {
      const { p05, p95 } = wingedShare.band;
      // The sd is between a tenth and a half of the 5 to 95 % range for any share that spreads this far.
      const sd = wingedShare.standardError * Math.sqrt(3000);
      expect(sd / (p95 - p05), `${n}`).toBeGreaterThan(0.1);
      expect(sd / (p95 - p05), `${n}`).toBeLessThanOrEqual(0.5);
    }
  });
  it('the mean frequency of a neutral allele stays', () => {
    for (const row of drifted().generations) {
      const copies = row.genotypes.reduce(
        (sum, { genotype, share }) => sum + share * (genotype.split('vg').length - 1),
        0,
      );
      expect(Math.abs(copies / 2 - 0.5)).toBeLessThan((5 * 0.5) / Math.sqrt(3000));
    }
  });
  it('large startings stay near the exact shares, within their stated error', () => {
    const exact = cross(input({ female: 'vg/vg', male: 'fli/Y' }));
    const large = drifted({ female: 'vg/vg', male: 'fli/Y', founders: { females: 400, males: 400 }, replicas: 60 });
    if (!exact.ok) throw new Error('failed');
    large.spread.forEach(({ wingedShare }, i) => {
      const off = Math.abs(wingedShare.mean - (exact.value.generations[i]?.wingedShare ?? 0));
      // Beside the standard error, the heterozygosity lost in few large steps: below 1/(2 Ne) each.
      expect(off).toBeLessThan(5 * wingedShare.standardError + i / 1600 + 1e-12);
    });
  });
  it('says that it is not exact, and is the same for the same seed', () => {
    const a = drifted({ replicas: 20 });
    expect(a.exact).toBe(false);
    expect(drifted({ replicas: 20 })).toEqual(a);
    expect(drifted({ replicas: 20, seed: 6 })).not.toEqual(a);
  });
  it('an allele is lost in the end with the chance of its rarity', () => {
    const { spread } = drifted({
      female: 'vg/vg',
      male: 'vg/+',
      generations: 100,
      founders: { females: 2, males: 2 },
      replicas: 1500,
    });
    // One + among four alleles: fixed in a quarter of lines (Kimura 1962), lost in three quarters.
    const last = spread[99];
    expect(Math.abs((last?.allWingedShare ?? 0) - 0.25)).toBeLessThan(5 * Math.sqrt((0.25 * 0.75) / 1500));
    expect((last?.allWingedShare ?? 0) + (last?.allFlightlessShare ?? 0)).toBeCloseTo(1, 2);
  });
  it('counts the lines that a selection ends', () => {
    // Of heterozygous parents a quarter of the sons are +/+; one such father leaves no flightless fly to keep.
    const { spread } = drifted({
      founders: { females: 1, males: 1 },
      generations: 3,
      selection: { keep: 'flightless', of: 'mated' },
    });
    expect(spread.slice(0, 2).map((row) => row.lostLinesShare)).toEqual([0, 0]);
    expect(Math.abs((spread[2]?.lostLinesShare ?? 0) - 0.25)).toBeLessThan(5 * Math.sqrt(0.1875 / 3000));
  });
  it('refuses nonsense', () => {
    expect(() => drifted({ replicas: 1 })).toThrow(/replicas 1/);
    expect(() => drifted({ founders: { females: 0, males: 1 } })).toThrow(/founders.females 0/);
  });
});
