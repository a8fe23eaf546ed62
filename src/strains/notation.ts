/**
 * Genotypes as text. One locus is `vg/vg`, several are separated by `; `. The alleles left of the
 * slashes lie on the chromosomes from the mother, those on the right came from the father, so
 * `vg/+; ap/+` has both mutants on one chromosome 2 (coupling) and `vg/+; +/ap` has one on each
 * (repulsion). `vg ap/+ +` says the same as the first. A male's X is written `fli/Y`.
 */
import { failed, ok, type Problem, type Result } from '../foundation/index.ts';
import type { Locus } from './locus.ts';

export type Sex = 'female' | 'male';

/** The mutant alleles that one parent has, by locus symbol. Loci not named are wild. */
export interface ParsedGenotype {
  sex: Sex;
  /** In the order written. */
  alleles: { symbol: string; left: boolean; right: boolean }[];
}

const expectedForm = 'two alleles a locus such as vg/vg, vg/+ or +/+, loci separated by ";"';
const symbolForm = /^[A-Za-z][A-Za-z0-9()_.-]*$/;

/** Reads a genotype of one sex; `where` names the place in problems. Wild type is `+/+` (`+/Y` in a male). */
export function parseGenotype(
  text: string,
  sex: Sex,
  loci: readonly Locus[],
  where: string = sex,
): Result<ParsedGenotype> {
  const problems: Problem[] = [];
  const alleles: ParsedGenotype['alleles'] = [];
  const reject = (found: string, expected: string) => problems.push({ where, found, expected });
  for (const slot of text.split(';').map((part) => part.trim())) {
    const columns = columnsOf(slot);
    if (!columns) reject(slot === '' ? 'an empty place' : `"${slot}"`, expectedForm);
    for (const column of columns ?? []) {
      const read = readColumn(column, sex, loci);
      if ('found' in read) reject(read.found, read.expected);
      else if (read.symbol === null) continue;
      else if (alleles.some((one) => one.symbol === read.symbol)) reject(`${read.symbol} twice`, 'each locus once');
      else alleles.push({ symbol: read.symbol, left: read.left, right: read.right });
    }
  }
  return problems.length > 0 ? failed(...problems) : ok({ sex, alleles });
}

type Column = [string, string];
type Reading = { symbol: string | null; left: boolean; right: boolean } | { found: string; expected: string };

/** The pairs of alleles in `vg/+` or `vg ap/+ +`; null when there are not two sides of equal length. */
function columnsOf(slot: string): Column[] | null {
  const sides = slot.split('/').map((side) => side.trim().split(/\s+/));
  const [left, right] = sides;
  if (sides.length !== 2 || !left || !right || left[0] === '' || right[0] === '') return null;
  // One Y faces all the loci of the X.
  if (right.length === 1 && right[0] === 'Y') return left.map((allele) => [allele, 'Y']);
  return left.length === right.length ? left.map((allele, i) => [allele, right[i] as string]) : null;
}

function readColumn([left, right]: Column, sex: Sex, loci: readonly Locus[]): Reading {
  const written = `${left}/${right}`;
  for (const allele of [left, right]) {
    if (allele !== '+' && allele !== 'Y' && !symbolForm.test(allele))
      return { found: `"${allele}" in ${written}`, expected: expectedForm };
  }
  if (left === 'Y') return { found: written, expected: 'the Y on the right, as in fli/Y' };
  const symbol = left !== '+' ? left : right !== '+' && right !== 'Y' ? right : null;
  if (right !== '+' && right !== 'Y' && right !== symbol)
    return {
      found: written,
      expected: `one locus in each pair: ${left} and ${right} are two, as in ${left}/+; +/${right}`,
    };
  const locus = symbol === null ? null : loci.find((one) => one.symbol === symbol);
  if (locus === undefined) return unknownLocus(symbol as string, loci);
  return (
    checkSex(written, sex, locus) ?? {
      symbol,
      left: left === symbol && symbol !== null,
      right: right === symbol && symbol !== null,
    }
  );
}

function unknownLocus(symbol: string, loci: readonly Locus[]): Reading {
  const alike = loci.find((one) => one.symbol.toLowerCase() === symbol.toLowerCase());
  const known = alike ? `${alike.symbol} (capitals count)` : loci.map((one) => one.symbol).join(', ');
  return { found: `the unknown locus ${symbol}`, expected: `a locus of the table: ${known}` };
}

function checkSex(written: string, sex: Sex, locus: Locus | null): Reading | null {
  const hasY = written.endsWith('/Y');
  if (hasY && sex === 'female')
    return { found: `${written} in a female`, expected: 'two X chromosomes, as in fli/fli' };
  if (!locus) return null;
  const onX = locus.chromosome === 'X';
  if (hasY && !onX)
    return {
      found: written,
      expected: `two alleles: ${locus.symbol} is not on the X, as in ${locus.symbol}/${locus.symbol}`,
    };
  if (!hasY && onX && sex === 'male')
    return {
      found: `${written} in a male`,
      expected: `one X and a Y: ${locus.symbol} is on the X, as in ${locus.symbol}/Y`,
    };
  return lethal(written, hasY, locus);
}

function lethal(written: string, hasY: boolean, locus: Locus): Reading | null {
  const { symbol } = locus;
  const noWild = written === `${symbol}/${symbol}` || (hasY && written === `${symbol}/Y`);
  return noWild && locus.lethalHomozygous
    ? { found: `${written}, which dies before it emerges`, expected: `a living parent, as in ${symbol}/+` }
    : null;
}

/** The text that `parseGenotype` reads back to the same; wild type is `+/+`, or `+/Y` in a male. */
export function formatGenotype(genotype: ParsedGenotype, loci: readonly Locus[]): string {
  const onX = (symbol: string) => loci.find((locus) => locus.symbol === symbol)?.chromosome === 'X';
  const slots = genotype.alleles.map(({ symbol, left, right }) => {
    const other = genotype.sex === 'male' && onX(symbol) ? 'Y' : right ? symbol : '+';
    return `${left ? symbol : '+'}/${other}`;
  });
  return slots.length > 0 ? slots.join('; ') : '+/+';
}
