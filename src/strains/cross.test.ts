import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { problemText } from '../foundation/index.ts';
import { type CrossInput, cross } from './cross.ts';
import { type Locus, unknownRecessive } from './locus.ts';
import { kosambi } from './layout.ts';

const recessive = (symbol: string, chromosome: Locus['chromosome'], position: number | null, phenotype = symbol) => ({
  ...unknownRecessive(symbol),
  chromosome,
  position,
  phenotype,
});
const marker = (locus: Locus): Locus => ({ ...locus, effect: 'marker' });
// Map positions of Lindsley and Zimm (1992), The Genome of Drosophila melanogaster.
const loci: Locus[] = [
  recessive('vg', '2', 67.0, 'vestigial wings'),
  recessive('ap', '2', 55.2, 'no wings'),
  recessive('fli', 'X', null, 'no flight'),
  marker(recessive('b', '2', 48.5, 'black body')),
  marker(recessive('e', '3', 70.7, 'ebony body')),
  marker(recessive('w', 'X', 1.5, 'white eyes')),
  recessive('u', null, null),
  recessive('u2', null, null),
  {
    ...recessive('Cy', '2', 6.1, 'curly wings'),
    dominance: 'dominant',
    lethalHomozygous: true,
    suppressesCrossing: true,
  },
];
const bred = (female: string, male: string, generations = 2, more: Partial<CrossInput> = {}) => {
  const result = cross({ female, male, generations, loci, ...more });
  if (!result.ok) throw new Error(result.problems.map(problemText).join('; '));
  return result.value.generations;
};
const shares = (rows: { share: number }[]) => rows.map(({ share }) => share);
const phenotypes = (female: string, male: string, generations = 2, more: Partial<CrossInput> = {}) =>
  Object.fromEntries(
    bred(female, male, generations, more)[generations - 1]?.phenotypes.map((row) => [row.phenotype, row.share]) ?? [],
  );
const winged = (female: string, male: string, generations = 2, more: Partial<CrossInput> = {}) =>
  bred(female, male, generations, more).map((row) => row.wingedShare);
const wrong = (more: Partial<CrossInput>) => {
  const result = cross({ female: 'vg/vg', male: 'ap/ap', generations: 2, loci, ...more });
  return result.ok ? 'accepted' : result.problems.map(problemText).join('\n');
};

describe('textbook ratios (Mendel; e.g. Griffiths et al., Introduction to Genetic Analysis)', () => {
  it('recessive by wild: all winged, then 3 : 1', () => expect(winged('vg/vg', '+/+')).toEqual([1, 0.75]));
  it('writes the genotypes of the second generation 1 : 2 : 1', () =>
    expect(bred('vg/vg', '+/+')[1]?.genotypes).toEqual([
      { genotype: 'vg/+', share: 0.5 },
      { genotype: '+/+', share: 0.25 },
      { genotype: 'vg/vg', share: 0.25 },
    ]));
  it('two loci on two chromosomes: 9 : 3 : 3 : 1', () =>
    expect(phenotypes('b/b; e/e', '+/+')).toEqual({
      winged: 9 / 16,
      'winged, black body': 3 / 16,
      'winged, ebony body': 3 / 16,
      'winged, black body, ebony body': 1 / 16,
    }));
  it('two flightless recessives on two chromosomes: 9 winged to 7', () =>
    expect(winged('vg/vg', 'u/u')).toEqual([1, 9 / 16]));
  it('the same recessive twice: nobody flies', () => expect(winged('vg/vg', 'vg/vg', 3)).toEqual([0, 0, 0]));
  it('dominant and lethal when homozygous: 2 : 1', () => {
    const [first] = bred('Cy/+', 'Cy/+', 1);
    expect(first?.wingedShare).toBeCloseTo(1 / 3, 14);
    expect(first?.genotypes.map((row) => row.genotype)).toEqual(['Cy/+', '+/+']);
  });
  it('dominant by recessive of the same chromosome: half and half', () =>
    expect(winged('Cy/+', 'vg/vg', 1)).toEqual([0.5]));
});

describe('the X (Morgan 1910, Science 32:120, and its reciprocal)', () => {
  it('white-eyed male by red female: all red, then 3 : 1 with white eyes in males only', () => {
    expect(phenotypes('+/+', 'w/Y', 1)).toEqual({ winged: 1 });
    expect(phenotypes('+/+', 'w/Y')).toEqual({ winged: 0.75, 'winged, white eyes': 0.25 });
    const second = bred('+/+', 'w/Y')[1]?.genotypes.filter((row) => row.genotype.startsWith('w/'));
    expect(second?.map((row) => row.genotype).sort()).toEqual(['w/+', 'w/Y']);
  });
  it('white-eyed female by red male: crosswise, then half and half', () => {
    expect(bred('w/w', '+/Y')[0]?.genotypes).toEqual([
      { genotype: 'w/+', share: 0.5 },
      { genotype: 'w/Y', share: 0.5 },
    ]);
    expect(phenotypes('w/w', '+/Y')).toEqual({ winged: 0.5, 'winged, white eyes': 0.5 });
  });
  it('flightless on the X by flightless elsewhere: half winged then 3/8; reciprocal all winged then 9/16', () => {
    expect(winged('fli/fli', 'vg/vg')).toEqual([0.5, 3 / 8]);
    expect(winged('vg/vg', 'fli/Y')).toEqual([1, 9 / 16]);
  });
  it('frequencies in the sexes swing to a third of the way: p_f = (p_f + p_m) / 2, p_m = p_f', () => {
    // Textbook (Li 1955, Population Genetics): the mean (2 p_f + p_m) / 3 stays.
    const white = winged('fli/fli', '+/Y', 14).map((share) => 1 - share);
    let [female, male] = [0.5, 1];
    for (let n = 1; n < 14; n++) {
      const eggs = female;
      const x = male;
      expect(white[n]).toBeCloseTo((eggs * x + eggs) / 2, 12);
      [female, male] = [(eggs + x) / 2, eggs];
    }
    expect(female).toBeCloseTo(2 / 3, 4);
  });
});

describe('linkage, with no crossing-over in males', () => {
  it('two recessives of one chromosome give exactly 2 : 1 : 1 whatever the distance', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (mapUnits) => {
        const seen = phenotypes('vg/vg', 'ap/ap', 2, { distances: [{ loci: ['vg', 'ap'], mapUnits }] });
        expect(Object.keys(seen).sort()).toEqual(['no wings', 'vestigial wings', 'winged']);
        expect(seen.winged).toBeCloseTo(0.5, 12);
        expect(seen['no wings']).toBeCloseTo(0.25, 12);
      }),
    );
  });
  it('black vestigial: a doubly heterozygous male parts nothing, a female about 17 % (Morgan 1912, Bridges)', () => {
    const parted = (rows: Record<string, number>) => (rows['winged, black body'] ?? 0) + (rows['vestigial wings'] ?? 0);
    expect(phenotypes('vg/vg; b/b', 'vg/+; b/+', 1)).toEqual({ winged: 0.5, 'black body, vestigial wings': 0.5 });
    const female = parted(phenotypes('vg/+; b/+', 'vg/vg; b/b', 1));
    expect(female).toBeGreaterThan(0.17);
    expect(female).toBeLessThan(0.185);
  });
  it('back-crosses by hand at 11.8 map units: coupling and repulsion', () => {
    const distances = [{ loci: ['vg', 'ap'] as [string, string], mapUnits: 11.8 }];
    const r = 0.118;
    expect(winged('vg/+; ap/+', 'vg/vg; ap/ap', 1, { distances })[0]).toBeCloseTo((1 - r) / 2, 12);
    expect(winged('vg/+; +/ap', 'vg/vg; ap/ap', 1, { distances })[0]).toBeCloseTo(r / 2, 12);
    expect(winged('vg/vg; ap/ap', 'vg/+; +/ap', 1, { distances })[0]).toBe(0);
  });
  it('coupling F2 by hand: winged 1/2 + (1 - r)/4, doubles (1 - r)/4', () => {
    const r = 0.116;
    const seen = phenotypes('vg/vg; ap/ap', '+/+', 2, { distances: [{ loci: ['ap', 'vg'], mapUnits: 11.6 }] });
    expect(seen.winged).toBeCloseTo(0.5 + (1 - r) / 4, 12);
    expect(seen['no wings, vestigial wings']).toBeCloseTo((1 - r) / 4, 12);
  });
  it('comes to 9 : 7 only slowly: mean association decays by 1 - r/2 a generation', () => {
    // The textbook's D(t+1) = (1 - r) D(t), worked by sex: only eggs lose association, sperm keep it.
    const r = 0.2;
    const rows = bred('vg/vg', 'ap/ap', 12, { distances: [{ loci: ['vg', 'ap'], mapUnits: 100 * r }] });
    let inEggs = r / 2 - 1 / 4;
    let inSperm = -1 / 4;
    for (let n = 2; n <= 12; n++) {
      const double = rows[n - 1]?.genotypes.find((row) => row.genotype === 'vg/vg; ap/ap')?.share ?? 0;
      expect(double).toBeCloseTo((1 / 4 + inEggs) * (1 / 4 + inSperm), 12);
      const mean = (inEggs + inSperm) / 2;
      [inEggs, inSperm] = [(1 - r) * mean, mean];
    }
  });
  it('a balancer keeps the chromosome whole', () => {
    // Cy on the one chromosome, b and vg on the other: a female parts b from vg in no gamete.
    const rows = bred('Cy/+; +/b; +/vg', 'b/b; vg/vg', 1)[0]?.genotypes ?? [];
    expect(rows.map((row) => row.share)).toEqual([0.5, 0.5]);
  });
});

describe('map functions', () => {
  it('Kosambi (1944): 10 units give 0.0987, 30 give 0.2685, never over a half', () => {
    expect(kosambi(10)).toBeCloseTo(0.0987, 4);
    expect(kosambi(30)).toBeCloseTo(0.2685, 4);
    expect(kosambi(1000)).toBeLessThanOrEqual(0.5);
  });
});

describe('selection by eye, against closed forms', () => {
  it('culling the recessive every generation: q(n) = q0 / (1 + n q0) (Falconer, Quantitative Genetics, ch. 2)', () => {
    const rows = bred('vg/vg', '+/+', 12, { selection: { keep: 'winged', of: 'virgins' } });
    for (let n = 2; n <= 12; n++) {
      const q = 0.5 / (1 + (n - 2) * 0.5);
      const flightless = 1 - (rows[n - 1]?.wingedShare ?? 0);
      expect(flightless).toBeCloseTo(q * q, 12);
    }
  });
  it('culling all winged virgins clears a recessive flightless line in one generation', () =>
    expect(winged('vg/vg', 'vg/+', 3, { selection: { keep: 'flightless', of: 'virgins' } })).toEqual([0.5, 0, 0]));
  it('culling mated flies halves the winged share instead: the sperm is already there', () => {
    const seen = winged('vg/vg', 'vg/+', 5, { selection: { keep: 'flightless', of: 'mated' } });
    // Mothers are pure, sperm carries + at the males' frequency: share of + males p, then p/2, p/4.
    expect(seen).toEqual([0.5, 0.25, 0.125, 0.0625, 0.03125]);
  });
  it('an eye that misses some leaves some', () => {
    const seen = winged('vg/vg', 'vg/+', 2, { selection: { keep: 'flightless', of: 'virgins', missedShare: 0.1 } });
    const carriers = (0.5 * 0.1) / (0.5 + 0.5 * 0.1);
    expect(seen[1]).toBeCloseTo(1 - (1 - carriers / 2) ** 2, 12);
  });
  it('a dominant kept by eye never breeds true', () => {
    const seen = winged('Cy/+', 'Cy/+', 4, { selection: { keep: 'flightless', of: 'virgins' } });
    for (const share of seen) expect(share).toBeCloseTo(1 / 3, 12);
  });
  it('without selection genotype shares stay as they are from the second generation on (Hardy, Weinberg 1908)', () => {
    const rows = bred('vg/vg; e/+', 'u/u; e/e', 6);
    const later = rows.slice(1).map((row) => row.genotypes.filter(({ genotype }) => genotype.includes('e/e')));
    const e = 0.75;
    for (const rowsOfOne of later) expect(shares(rowsOfOne).reduce((a, b) => a + b)).toBeCloseTo(e * e, 12);
  });
});

describe('what every answer keeps', () => {
  it('shares sum to 1 and phenotypes agree with the winged share', () => {
    const slot = fc.constantFrom('vg/vg', 'vg/+; +/ap', 'ap/ap', 'u/+; vg/+', 'Cy/+', 'e/e; b/+', '+/+');
    fc.assert(
      fc.property(slot, slot, fc.constantFrom('', '; fli/Y'), (female, male, x) => {
        for (const row of bred(female, male + x, 3)) {
          expect(shares(row.phenotypes).reduce((a, b) => a + b)).toBeCloseTo(1, 12);
          expect(shares(row.genotypes).reduce((a, b) => a + b)).toBeCloseTo(1, 12);
          const fliers = row.phenotypes.filter(({ phenotype }) => phenotype.startsWith('winged'));
          expect(shares(fliers).reduce((a, b) => a + b, 0)).toBeCloseTo(row.wingedShare, 12);
        }
      }),
      { numRuns: 40 },
    );
  });
  it('takes eight loci', () => {
    const many = 'abcdefgh'.split('').map((symbol) => unknownRecessive(symbol));
    const female = many.map(({ symbol }) => `${symbol}/${symbol}`).join('; ');
    const result = cross({ female, male: '+/+', generations: 2, loci: many });
    expect(result.ok && result.value.generations[1]?.wingedShare).toBeCloseTo(0.75 ** 8, 12);
  });
});

describe('what is refused', () => {
  it('distances over 50, below 0, of strangers, across chromosomes', () => {
    expect(wrong({ distances: [{ loci: ['vg', 'ap'], mapUnits: 50.1 }] })).toMatch(
      /distance vg-ap: found 50.1.*0 to 50/,
    );
    expect(wrong({ distances: [{ loci: ['vg', 'ap'], mapUnits: -1 }] })).toMatch(/-1 map units/);
    expect(wrong({ distances: [{ loci: ['vg', 'b'], mapUnits: 5 }] })).toMatch(/neither parent carries/);
    expect(wrong({ male: 'e/e', distances: [{ loci: ['vg', 'e'], mapUnits: 5 }] })).toMatch(/one chromosome/);
    expect(wrong({ female: 'u/u', male: 'u2/u2', distances: [{ loci: ['u', 'u2'], mapUnits: 5 }] })).toMatch(
      /chromosomes unknown and unknown/,
    );
    expect(wrong({ male: 'ap/ap; b/b', distances: [{ loci: ['vg', 'b'], mapUnits: 5 }] })).toMatch(/neighbours/);
  });
  it('ties an unknown locus to a chromosome when its distance is given', () => {
    const seen = phenotypes('vg/vg', 'u/u', 2, { distances: [{ loci: ['u', 'vg'], mapUnits: 20 }] });
    expect(seen.winged).toBeCloseTo(0.5, 12);
  });
  it('generations that are none', () => {
    for (const generations of [0, 1.5, 201, Number.NaN]) expect(wrong({ generations })).toMatch(/generations: found/);
  });
  it('both parents at once', () => expect(wrong({ female: 'q/q', male: 'r/r' })).toMatch(/female.*\n.*male/));
  it('a selection that leaves nobody', () =>
    expect(wrong({ selection: { keep: 'flightless', of: 'virgins' } })).toMatch(/generation 1: found no female left/));
  it('a caller who passes nonsense', () =>
    expect(() => wrong({ selection: { keep: 'winged', of: 'mated', missedShare: 2 } })).toThrow(/missedShare 2/));
  it('nine loci', () => {
    const many = 'abcdefghi'.split('').map((symbol) => unknownRecessive(symbol));
    const female = many.map(({ symbol }) => `${symbol}/${symbol}`).join('; ');
    const result = cross({ female, male: '+/+', generations: 2, loci: many });
    expect(!result.ok && problemText(result.problems[0] as never)).toMatch(/9 loci.*at most 8/);
  });
});
