/**
 * A population as shares of genotypes in either sex, and the step from parents to the flies that
 * emerge: random union of eggs and sperm, then death of those without a living combination.
 */
import { eggs, sperm } from './gametes.ts';
import type { Layout } from './layout.ts';
import type { Locus } from './locus.ts';
import type { ParsedGenotype, Sex } from './notation.ts';

/** Weights by `a * haplotypes + b`, a the mother's chromosome set, b the father's. */
export interface Population {
  females: Float64Array;
  males: Float64Array;
}

export interface Brood extends Population {
  /** Share of the fertilised eggs that die for want of a wild allele at a lethal locus. */
  lostShare: number;
}

export function emptyPopulation({ haplotypes }: Layout): Population {
  return { females: new Float64Array(haplotypes ** 2), males: new Float64Array(haplotypes ** 2) };
}

/** Adds `weight` of a genotype to the sex it is of. */
export function addGenotype(layout: Layout, population: Population, genotype: ParsedGenotype, weight: number): void {
  let a = 0;
  let b = 0;
  for (const { symbol, left, right } of genotype.alleles) {
    const bit = 1 << layout.loci.findIndex((locus) => locus.symbol === symbol);
    if (left) a |= bit;
    if (right) b |= bit;
  }
  const side = genotype.sex === 'female' ? population.females : population.males;
  const index = a * layout.haplotypes + b;
  side[index] = (side[index] as number) + weight;
}

/**
 * The flies that emerge when `mothers` mate at random with `fathers`, as shares of all that emerge
 * (both sexes together sum to 1). Throws RangeError when either sex is missing.
 */
export function brood(layout: Layout, mothers: Float64Array, fathers: Float64Array): Brood {
  const egg = scaled(eggs(layout, mothers), 1 / total(mothers, 'mothers'));
  const seed = sperm(layout, fathers);
  const perFather = 1 / total(fathers, 'fathers');
  const next = emptyPopulation(layout);
  const living =
    unite(layout, 'female', egg, scaled(seed.x, perFather), next.females) +
    unite(layout, 'male', egg, scaled(seed.y, perFather), next.males);
  // Nobody lives when every combination is lethal; then there is nothing to share out.
  const scale = living > 0 ? 1 / living : 0;
  return { females: scaled(next.females, scale), males: scaled(next.males, scale), lostShare: 1 - living };
}

function total(weights: Float64Array, what: string): number {
  const sum = weights.reduce((so, weight) => so + weight, 0);
  if (!(sum > 0)) throw new RangeError(`brood: there are no ${what}`);
  return sum;
}

function scaled(values: Float64Array, factor: number): Float64Array {
  return values.map((value) => value * factor);
}

/** Fills the genotypes of one sex and returns their summed share. */
function unite(layout: Layout, sex: Sex, egg: Float64Array, seed: Float64Array, into: Float64Array): number {
  const { haplotypes } = layout;
  let living = 0;
  for (let a = 0; a < haplotypes; a++) {
    if (egg[a] === 0) continue;
    for (let b = 0; b < haplotypes; b++) {
      const share = (egg[a] as number) * (seed[b] as number);
      if (share === 0 || !lives(layout, sex, a, b)) continue;
      into[a * haplotypes + b] = share;
      living += share;
    }
  }
  return living;
}

function lives(layout: Layout, sex: Sex, a: number, b: number): boolean {
  return layout.loci.every((locus, i) => !(locus.lethalHomozygous && mutantOnly(layout, sex, a, b, i)));
}

/** True when the fly has no wild allele at locus `i`; a male has one X. */
function mutantOnly({ xMask }: Layout, sex: Sex, a: number, b: number, i: number): boolean {
  const bit = 1 << i;
  const oneCopy = sex === 'male' && (xMask & bit) !== 0;
  return (a & bit) !== 0 && (oneCopy || (b & bit) !== 0);
}

/** Loci whose mutant shows in the fly. */
export function shown(layout: Layout, sex: Sex, a: number, b: number): Locus[] {
  return layout.loci.filter((locus, i) =>
    locus.dominance === 'dominant' ? ((a | b) & (1 << i)) !== 0 : mutantOnly(layout, sex, a, b, i),
  );
}

/** True when nothing that shows keeps the fly from flying. */
export function flies(layout: Layout, sex: Sex, a: number, b: number): boolean {
  return shown(layout, sex, a, b).every((locus) => locus.effect !== 'flightless');
}
