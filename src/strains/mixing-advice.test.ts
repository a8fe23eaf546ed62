import { describe, expect, it } from 'vitest';
import { problemText, type Said } from '../foundation/index.ts';
import { unknownRecessive } from './locus.ts';
import { type MixingInput, mixingAdvice } from './mixing-advice.ts';
import { mixture } from './mixture.ts';

const loci = [
  { ...unknownRecessive('vg'), chromosome: '2' as const, position: 67 },
  { ...unknownRecessive('ap'), chromosome: '2' as const, position: 55.2 },
  { ...unknownRecessive('Cy'), chromosome: '2' as const, dominance: 'dominant' as const, lethalHomozygous: true },
];
const advice = (first: string, second: string, more: Partial<MixingInput> = {}) => {
  const result = mixingAdvice({
    first: { strain: 'A', species: 'melanogaster', locus: first },
    second: { strain: 'B', species: 'melanogaster', locus: second },
    generations: 3,
    loci,
    ...more,
  });
  if (!result.ok) throw new Error(result.problems.map(problemText).join('; '));
  return result.value;
};

describe('may these two be mixed?', () => {
  it('the same mutation: yes', () => {
    expect(advice('vg', 'vg').verdict).toBe('breeds true');
    expect(advice('vg', 'vg').outlooks).toEqual([{ assumption: 'as named', wingedShare: [0, 0, 0] }]);
  });
  it('two mutations poured half and half: half the offspring fly (2 p q = 1/2)', () => {
    const { verdict, outlooks, why } = advice('vg', 'ap');
    expect(verdict).toBe('fliers');
    expect(outlooks[0]?.wingedShare[0]).toBeCloseTo(0.5, 12);
    const worst = Math.max(...(outlooks[0]?.wingedShare ?? []));
    expect(worst).toBeGreaterThan(0.5);
    expect((why.values[2] as Said).values).toEqual([Math.round(100 * worst)]);
  });
  it('one in twenty of another: 2 x 0.05 x 0.95 fly', () =>
    expect(advice('vg', 'ap', { firstShare: 0.05 }).outlooks[0]?.wingedShare[0]).toBeCloseTo(0.095, 12));
  it('an unknown one is answered for each thing that may be true', () => {
    const { verdict, outlooks } = advice('vg', 'unknown');
    expect(verdict).toBe('depends');
    expect(outlooks.map((outlook) => (outlook.wingedShare[0] as number) > 0)).toEqual([false, true, true]);
    // Poured half and half, the X's sons of the mutant mother by the autosomal father stay on the ground: 3/8.
    expect(outlooks[1]?.wingedShare[0]).toBeCloseTo(1 / 2, 12);
    expect(outlooks[2]?.wingedShare[0]).toBeCloseTo(3 / 8, 12);
    expect(advice('unknown', 'unknown').outlooks.map((outlook) => outlook.wingedShare[0])).toEqual([0, 0.5, 0.375]);
  });
  it('a wild strain brings fliers whatever the mutation', () => {
    expect(advice('unknown', 'wild').verdict).toBe('fliers');
    expect(advice('unknown', 'wild').outlooks).toHaveLength(1);
  });
  it('two species are another matter', () => {
    const second = { strain: 'B', species: 'hydei', locus: 'unknown' };
    expect(advice('vg', 'unknown', { second }).verdict).toBe('two species');
  });
  it('a dominant never breeds true even with itself', () => expect(advice('Cy', 'Cy').verdict).toBe('fliers'));
  it('says which locus the table does not have', () => {
    const result = mixingAdvice({
      first: { strain: 'A', species: 'm', locus: 'zz' },
      second: { strain: 'B', species: 'm', locus: 'vg' },
      generations: 1,
      loci,
    });
    expect(!result.ok && problemText(result.problems[0] as never)).toMatch(/unknown locus zz/);
  });
  it('a mixture must be whole', () =>
    expect(() => mixture({ parts: [{ female: '+/+', male: '+/+', share: 0.5 }], generations: 1, loci })).toThrow(
      /0.5/,
    ));
});
