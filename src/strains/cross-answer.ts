/** A cross's answer as the doors give it: per generation the shares of what is seen and of genotypes. */
import type { Layout } from './layout.ts';
import type { Sex } from './notation.ts';
import { flies, type Population, shown } from './population.ts';

export interface CrossAnswer {
  generations: CrossGeneration[];
  /** True when the shares are exact; false when they are means of a simulation. */
  exact: boolean;
}

export interface CrossGeneration {
  /** 1 for the offspring of the two parents given (F1), 2 for theirs, and so on. */
  n: number;
  /** Share of the emerged flies, both sexes together, that can fly. */
  wingedShare: number;
  /** Largest share first; they sum to 1. */
  phenotypes: { phenotype: string; share: number }[];
  /** Without regard to which chromosome an allele lies on: the mutant is written first. */
  genotypes: { genotype: string; share: number }[];
}

export function describeGeneration(layout: Layout, n: number, population: Population): CrossGeneration {
  const phenotypes = new Map<string, number>();
  const genotypes = new Map<string, number>();
  let wingedShare = 0;
  forEachGenotype(layout, population, (sex, a, b, share) => {
    if (flies(layout, sex, a, b)) wingedShare += share;
    add(phenotypes, phenotypeText(layout, sex, a, b), share);
    add(genotypes, genotypeText(layout, sex, a, b), share);
  });
  return {
    n,
    wingedShare: atMostOne(wingedShare),
    phenotypes: sortedShares(phenotypes).map(([phenotype, share]) => ({ phenotype, share: atMostOne(share) })),
    genotypes: sortedShares(genotypes).map(([genotype, share]) => ({ genotype, share: atMostOne(share) })),
  };
}

/** Visits every genotype that is present. */
export function forEachGenotype(
  { haplotypes }: Layout,
  population: Population,
  visit: (sex: Sex, a: number, b: number, share: number) => void,
): void {
  for (const sex of ['female', 'male'] as const) {
    const shares = sex === 'female' ? population.females : population.males;
    shares.forEach((share, index) => {
      if (share > 0) visit(sex, Math.floor(index / haplotypes), index % haplotypes, share);
    });
  }
}

/** Share of all flies in the population that can fly. */
export function wingedShareOf(layout: Layout, population: Population): number {
  let winged = 0;
  forEachGenotype(layout, population, (sex, a, b, share) => {
    if (flies(layout, sex, a, b)) winged += share;
  });
  return atMostOne(winged);
}

/** Sums of shares may round to a hair above 1. */
function atMostOne(share: number): number {
  return Math.min(1, share);
}

function phenotypeText(layout: Layout, sex: Sex, a: number, b: number): string {
  const seen = shown(layout, sex, a, b);
  const grounded = seen.some((locus) => locus.effect === 'flightless');
  return [...(grounded ? [] : ['winged']), ...seen.map((locus) => locus.phenotype)].join(', ');
}

/** `vg/+; ap/+`, the mutant first; a male's X as `fli/Y`. With no locus at all, `+/+`. */
export function genotypeText({ loci, displayOrder, xMask }: Layout, sex: Sex, a: number, b: number): string {
  const slots = displayOrder.map((i) => {
    const bit = 1 << i;
    const symbol = loci[i]?.symbol ?? '';
    if (sex === 'male' && xMask & bit) return a & bit ? `${symbol}/Y` : '+/Y';
    const copies = (a & bit ? 1 : 0) + (b & bit ? 1 : 0);
    return ['+/+', `${symbol}/+`, `${symbol}/${symbol}`][copies] as string;
  });
  return slots.length > 0 ? slots.join('; ') : '+/+';
}

function add(sums: Map<string, number>, key: string, share: number): void {
  sums.set(key, (sums.get(key) ?? 0) + share);
}

function sortedShares(sums: Map<string, number>): [string, number][] {
  return [...sums].sort(([textA, a], [textB, b]) => (Math.abs(a - b) > 1e-12 ? b - a : textA < textB ? -1 : 1));
}
