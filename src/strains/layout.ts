/**
 * The loci of one question laid out along their chromosomes. A chromosome set from one parent is then
 * a whole number whose bit i says that locus i carries its mutant allele; a fly is two such numbers.
 */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import type { Locus } from './locus.ts';

export interface Layout {
  /** Along the chromosomes: X, 2, 3, 4, then each unknown by itself. */
  loci: Locus[];
  /** Indices of `loci` in the order in which the keeper named them. */
  displayOrder: number[];
  /** Share of a female's gametes in which loci i - 1 and i are parted; 0.5 where a linkage group begins. */
  recombination: Float64Array;
  /** First index of the linkage group of each locus. */
  groupStart: Int32Array;
  /** Bits of the loci on the X. */
  xMask: number;
  /** Number of possible chromosome sets, 2 to the number of loci. */
  haplotypes: number;
}

/** A recombination share that the keeper knows, in map units (1 = 1 % of a female's gametes). */
export interface MapDistance {
  loci: [string, string];
  mapUnits: number;
}

/** With more loci than this, exact reckoning would be slow (6 to that power steps a generation). */
export const mostLoci = 8;

/** The layout of the named loci. Problems: too many loci, a distance below 0 or over 50, not of neighbours. */
export function layOut(
  symbols: readonly string[],
  table: readonly Locus[],
  distances: readonly MapDistance[] = [],
): Result<Layout> {
  const named = [...new Set(symbols)];
  const problems = distances.flatMap((distance) => distanceProblems(distance, named));
  if (named.length > mostLoci)
    problems.push({ where: 'loci', found: `${named.length} loci`, expected: `at most ${mostLoci} in one cross` });
  if (problems.length > 0) return failed(...problems);
  const loci = placed(named, table, distances).sort(alongChromosomes(named));
  const layout = withRecombination(loci, named);
  const parted = distances.flatMap((distance) => applyDistance(layout, distance));
  return parted.length > 0 ? failed(...parted) : ok(layout);
}

function distanceProblems({ loci, mapUnits }: MapDistance, named: readonly string[]): Problem[] {
  const where = `distance ${loci.join('-')}`;
  const problems: Problem[] = [];
  if (!(mapUnits >= 0 && mapUnits <= 50))
    problems.push({
      where,
      found: `${mapUnits} map units`,
      expected: '0 to 50: more than half the gametes cannot be parted',
    });
  for (const symbol of loci)
    if (!named.includes(symbol))
      problems.push({ where, found: `${symbol}, which neither parent carries`, expected: 'loci of this cross' });
  if (loci[0] === loci[1]) problems.push({ where, found: `${loci[0]} twice`, expected: 'two different loci' });
  return problems;
}

/** The loci, an unknown one put beside the locus to which a distance ties it. */
function placed(named: readonly string[], table: readonly Locus[], distances: readonly MapDistance[]): Locus[] {
  const loci = named.map((symbol) => {
    const locus = table.find((one) => one.symbol === symbol);
    if (!locus) throw new RangeError(`layOut: ${symbol} is not in the table`);
    return { ...locus };
  });
  for (const { loci: pair, mapUnits } of distances) {
    const [a, b] = pair.map((symbol) => loci.find((one) => one.symbol === symbol)) as [Locus, Locus];
    const [known, unknown] = a.chromosome === null ? [b, a] : [a, b];
    if (unknown.chromosome !== null) continue;
    unknown.chromosome = known.chromosome;
    unknown.position = (known.position ?? 0) + mapUnits;
  }
  return loci;
}

const chromosomeOrder = ['X', '2', '3', '4'];

function alongChromosomes(named: readonly string[]): (a: Locus, b: Locus) => number {
  const rank = ({ chromosome }: Locus) => (chromosome === null ? 9 : chromosomeOrder.indexOf(chromosome));
  const place = ({ position }: Locus) => position ?? Number.MAX_VALUE;
  return (a, b) => rank(a) - rank(b) || place(a) - place(b) || named.indexOf(a.symbol) - named.indexOf(b.symbol);
}

function withRecombination(loci: Locus[], named: readonly string[]): Layout {
  const recombination = new Float64Array(loci.length).fill(0.5);
  const groupStart = new Int32Array(loci.length);
  let xMask = 0;
  loci.forEach((locus, i) => {
    const before = loci[i - 1];
    const share = before ? recombinationBetween(before, locus) : null;
    groupStart[i] = share === null ? i : (groupStart[i - 1] as number);
    if (share !== null) recombination[i] = share;
    if (locus.chromosome === 'X') xMask |= 1 << i;
  });
  const displayOrder = named.map((symbol) => loci.findIndex((locus) => locus.symbol === symbol));
  return { loci, displayOrder, recombination, groupStart, xMask, haplotypes: 1 << loci.length };
}

/** Null when the two are on different chromosomes. On one chromosome without a position: 0.5. */
function recombinationBetween(a: Locus, b: Locus): number | null {
  if (a.chromosome === null || a.chromosome !== b.chromosome) return null;
  if (a.position === null || b.position === null) return 0.5;
  return kosambi(Math.abs(b.position - a.position));
}

/**
 * Share of gametes in which two loci `mapUnits` apart are parted: 0.5 tanh(2 d), d in morgans; nearly
 * d itself for close loci, never over 0.5 (source key kosambi-1943).
 * @example kosambi(10) // => 0.09868766
 */
export function kosambi(mapUnits: number): number {
  if (!(mapUnits >= 0)) throw new RangeError(`kosambi: mapUnits ${mapUnits} is not 0 or more`);
  return 0.5 * Math.tanh((2 * mapUnits) / 100);
}

function applyDistance(layout: Layout, { loci: pair, mapUnits }: MapDistance): Problem[] {
  const at = pair.map((symbol) => layout.loci.findIndex((one) => one.symbol === symbol));
  const upper = Math.max(...at);
  const where = `distance ${pair.join('-')}`;
  if (upper - Math.min(...at) !== 1)
    return [{ where, found: 'loci with another between them', expected: 'distances between neighbours' }];
  const [a, b] = at.map((i) => layout.loci[i] as Locus) as [Locus, Locus];
  if (a.chromosome === null || a.chromosome !== b.chromosome)
    return [
      {
        where,
        found: `chromosomes ${a.chromosome ?? 'unknown'} and ${b.chromosome ?? 'unknown'}`,
        expected: 'two loci of one chromosome',
      },
    ];
  layout.recombination[upper] = mapUnits / 100;
  return [];
}
