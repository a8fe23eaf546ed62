/**
 * A locus as crosses need it: where it lies and what its mutant allele does. Every locus here has two
 * alleles, the wild `+` and the mutant, which is written with the locus's own symbol. Tables of named
 * mutations come in as arguments; a keeper's own strain may be an unknown recessive.
 */
export interface Locus {
  /** As written in genotypes: a letter, then letters, digits, `-`, `(`, `)`, `_` or `.`. */
  symbol: string;
  name: string;
  /** `X`, `2`, `3`, `4`; null when nobody knows, and then it is taken to assort from all others. */
  chromosome: 'X' | '2' | '3' | '4' | null;
  /** Place on its chromosome in map units; null when unknown: then unlinked to its chromosome's others. */
  position: number | null;
  dominance: 'recessive' | 'dominant';
  /** True when flies without a wild allele die before they emerge. */
  lethalHomozygous: boolean;
  /** True when it rides on an inversion: a female with one copy has no crossing-over on that chromosome. */
  suppressesCrossing: boolean;
  /** `flightless` when flies that show it cannot fly; `marker` when it shows but they fly. */
  effect: 'flightless' | 'marker';
  /** What is seen, e.g. `vestigial wings`. */
  phenotype: string;
}

/** A recessive flightless locus of which nothing else is known, under the symbol given. */
export function unknownRecessive(symbol: string, name = 'unknown recessive'): Locus {
  return {
    symbol,
    name,
    chromosome: null,
    position: null,
    dominance: 'recessive',
    lethalHomozygous: false,
    suppressesCrossing: false,
    effect: 'flightless',
    phenotype: `flightless (${symbol})`,
  };
}
