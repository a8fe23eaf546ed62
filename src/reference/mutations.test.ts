import { describe, expect, it } from 'vitest';
import { cross } from '../strains/index.ts';
import { publishedMutations } from './mutations.ts';
import { source } from './source.ts';
import { publishedVirginWindows } from './virgin-windows.ts';
import { publishedWingEffects } from './wing-temperature.ts';

describe('tables of mutations', () => {
  it('name only sources that the bibliography has', () => {
    for (const row of [...publishedMutations, ...publishedVirginWindows, ...publishedWingEffects])
      expect(source(row.source), row.source).toBeDefined();
  });
  it('serve crosses as they are, each symbol once', () => {
    const symbols = publishedMutations.map((row) => row.symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const { symbol, chromosome, dominance, lethalHomozygous } of publishedMutations) {
      const male = chromosome === 'X' ? `${symbol}/Y` : `${symbol}/${lethalHomozygous ? '+' : symbol}`;
      const result = cross({ female: '+/+', male, generations: 1, loci: publishedMutations });
      expect(result.ok && result.value.generations[0]?.wingedShare, symbol).toBe(dominance === 'dominant' ? 0.5 : 1);
    }
  });
});
