import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problemText } from '../foundation/index.ts';
import { type Locus, unknownRecessive } from './locus.ts';
import { formatGenotype, parseGenotype, type Sex } from './notation.ts';

const loci: Locus[] = [
  { ...unknownRecessive('vg'), chromosome: '2', position: 67 },
  { ...unknownRecessive('ap'), chromosome: '2', position: 55.2 },
  { ...unknownRecessive('fli'), chromosome: 'X' },
  { ...unknownRecessive('Cy'), chromosome: '2', position: 6.1, dominance: 'dominant', lethalHomozygous: true },
];
const wrong = (text: string, sex: Sex = 'female') => {
  const result = parseGenotype(text, sex, loci);
  return result.ok ? 'accepted' : result.problems.map(problemText).join('\n');
};
const alleles = (text: string, sex: Sex = 'female') => {
  const result = parseGenotype(text, sex, loci);
  if (!result.ok) throw new Error(wrong(text, sex));
  return result.value.alleles;
};

describe('reading genotypes', () => {
  it('reads one locus', () => expect(alleles('vg/vg')).toEqual([{ symbol: 'vg', left: true, right: true }]));
  it('keeps which chromosome an allele lies on', () =>
    expect(alleles(' vg/+ ;+/ap')).toEqual([
      { symbol: 'vg', left: true, right: false },
      { symbol: 'ap', left: false, right: true },
    ]));
  it('reads whole chromosomes alike', () => {
    expect(alleles('vg ap/+ +')).toEqual(alleles('vg/+; ap/+'));
    expect(alleles('vg +/+ ap')).toEqual(alleles('vg/+; +/ap'));
  });
  it('reads wild type and the one X of a male', () => {
    expect(alleles('+/+')).toEqual([]);
    expect(alleles('+/Y', 'male')).toEqual([]);
    expect(alleles('fli/Y', 'male')).toEqual([{ symbol: 'fli', left: true, right: false }]);
  });
  it('gives back what it wrote', () => {
    const slot = fc.constantFrom('', '/', '+', 'both');
    const text = (symbol: string, kind: string) =>
      kind === 'both' ? `${symbol}/${symbol}` : kind === '/' ? `+/${symbol}` : `${symbol}/+`;
    fc.assert(
      fc.property(slot, slot, (vg, ap) => {
        const written = [vg && text('vg', vg), ap && text('ap', ap)].filter((part) => part !== '').join('; ') || '+/+';
        const read = parseGenotype(written, 'female', loci);
        return read.ok && formatGenotype(read.value, loci) === written;
      }),
    );
    const male = parseGenotype('vg/+; fli/Y', 'male', loci);
    expect(male.ok && formatGenotype(male.value, loci)).toBe('vg/+; fli/Y');
  });
});

describe('what is refused, and how', () => {
  it('names what is not a genotype', () => {
    for (const text of ['', 'vg', 'vg/', '/vg', 'vg/vg/vg', 'vg/+;', 'vg ap/+', '7/+', 'vg//vg'])
      expect(wrong(text), text).toMatch(/female: found .*expected/);
  });
  it('lists the known loci', () => expect(wrong('xx/xx')).toMatch(/unknown locus xx.*vg, ap, fli, Cy/));
  it('minds capitals', () => expect(wrong('cy/+')).toMatch(/Cy \(capitals count\)/));
  it('wants one locus in a pair', () => expect(wrong('vg/ap')).toMatch(/vg\/\+; \+\/ap/));
  it('wants each locus once', () => expect(wrong('vg/+; vg/vg')).toMatch(/vg twice/));
  it('knows the sexes', () => {
    expect(wrong('fli/Y')).toMatch(/female.*two X/);
    expect(wrong('fli/fli', 'male')).toMatch(/one X and a Y/);
    expect(wrong('fli/+', 'male')).toMatch(/one X and a Y/);
    expect(wrong('vg/Y', 'male')).toMatch(/not on the X/);
    expect(wrong('Y/fli', 'male')).toMatch(/Y on the right/);
  });
  it('refuses a parent that cannot live', () => expect(wrong('Cy/Cy')).toMatch(/dies before it emerges.*Cy\/\+/));
});
