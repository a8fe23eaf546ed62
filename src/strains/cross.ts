/**
 * A cross and what follows from it under random mating, exactly: shares among endlessly many flies.
 * Small startings drift away from these shares; see drift.ts.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { type CrossAnswer, describeGeneration } from './cross-answer.ts';
import { type Layout, layOut, type MapDistance } from './layout.ts';
import type { Locus } from './locus.ts';
import { type ParsedGenotype, parseGenotype } from './notation.ts';
import { addGenotype, brood, emptyPopulation, type Population } from './population.ts';
import { checkParentRule, parentsOf, type Selection } from './selection.ts';

export interface CrossInput {
  /** Genotypes as text, see notation.ts. */
  female: string;
  male: string;
  /** Generations wanted, 1 to `mostGenerations`. */
  generations: number;
  /** Every locus that a genotype may name. */
  loci: readonly Locus[];
  /** Applied to each generation from the first on, before it becomes parents. */
  selection?: Selection | undefined;
  wingedFitness?: number | undefined;
  /** Distances that stand in for the table's positions. */
  distances?: readonly MapDistance[];
}

export const mostGenerations = 200;

/**
 * Shares in generations 1 to `generations` after crossing `female` with `male`. Foreseeable failures
 * (bad genotype, unknown locus, distance over 50, nothing left to breed from) come back as problems.
 * @example vg/vg by +/+ gives 1 winged in generation 1 and 0.75 in generation 2
 */
export function cross(input: CrossInput): Result<CrossAnswer> {
  checkParentRule('cross', input);
  const start = startCross(input);
  if (!start.ok) return start;
  const { layout, parents } = start.value;
  const answer: CrossAnswer = { generations: [], exact: true };
  let next = parents;
  for (let n = 1; n <= input.generations; n++) {
    const missing = missingSex(next);
    if (missing) return failed(nothingLeft(n - 1, missing));
    const born = brood(layout, next.females, next.males);
    if (born.lostShare >= 1)
      return failed({ where: `generation ${n}`, found: 'no living offspring', expected: 'parents that can have some' });
    answer.generations.push(describeGeneration(layout, n, born));
    next = parentsOf(layout, born, input);
  }
  return ok(answer);
}

/** The layout of a cross and its two parents, or what is wrong with them. */
export function startCross(input: CrossInput): Result<{ layout: Layout; parents: Population }> {
  const { generations } = input;
  if (!(Number.isInteger(generations) && generations >= 1 && generations <= mostGenerations))
    return failed({
      where: 'generations',
      found: `${generations}`,
      expected: `a whole number from 1 to ${mostGenerations}`,
    });
  const female = parseGenotype(input.female, 'female', input.loci);
  const male = parseGenotype(input.male, 'male', input.loci);
  if (!female.ok || !male.ok) return failed(...problemsOf(female), ...problemsOf(male));
  const layout = layOut(symbolsOf([female.value, male.value]), input.loci, input.distances);
  if (!layout.ok) return layout;
  const parents = emptyPopulation(layout.value);
  addGenotype(layout.value, parents, female.value, 1);
  addGenotype(layout.value, parents, male.value, 1);
  return ok({ layout: layout.value, parents });
}

function problemsOf(result: Result<unknown>) {
  return result.ok ? [] : result.problems;
}

/** Symbols in the order in which the genotypes first name them. */
export function symbolsOf(genotypes: readonly ParsedGenotype[]): string[] {
  return [...new Set(genotypes.flatMap((genotype) => genotype.alleles.map((allele) => allele.symbol)))];
}

/** The sex of which nobody is left, or null. */
export function missingSex(population: Population): string | null {
  if (!population.females.some((weight) => weight > 0)) return 'female';
  return population.males.some((weight) => weight > 0) ? null : 'male';
}

function nothingLeft(n: number, sex: string) {
  return {
    where: `generation ${n}`,
    found: `no ${sex} left to breed from after culling`,
    expected: 'a selection that leaves flies of both sexes',
  };
}
