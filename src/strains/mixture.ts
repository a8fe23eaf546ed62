/** Several strains poured into one cup: random mating among all, as shares of endlessly many flies. */
import { failed, ok, type Result } from '../foundation/index.ts';
import { type CrossAnswer, describeGeneration } from './cross-answer.ts';
import { missingSex, symbolsOf } from './cross.ts';
import { layOut } from './layout.ts';
import type { Locus } from './locus.ts';
import { parseGenotype } from './notation.ts';
import { addGenotype, brood, emptyPopulation } from './population.ts';
import { checkParentRule, parentsOf, type Selection } from './selection.ts';

export interface MixtureInput {
  /** Genotypes of each strain's flies and its share of the founders; the shares sum to 1. */
  parts: { female: string; male: string; share: number }[];
  generations: number;
  loci: readonly Locus[];
  selection?: Selection | undefined;
}

/** Shares by generation, generation 1 being the offspring of the mixture. */
export function mixture(input: MixtureInput): Result<CrossAnswer> {
  checkParentRule('mixture', input);
  const total = input.parts.reduce((sum, part) => sum + part.share, 0);
  if (!(Math.abs(total - 1) < 1e-9)) throw new RangeError(`mixture: shares sum to ${total}, not to 1`);
  const read = input.parts.flatMap(({ female, male, share }, i) =>
    (['female', 'male'] as const).map((sex) => ({
      share,
      genotype: parseGenotype(sex === 'female' ? female : male, sex, input.loci, `part ${i + 1}, ${sex}`),
    })),
  );
  const problems = read.flatMap(({ genotype }) => (genotype.ok ? [] : genotype.problems));
  if (problems.length > 0) return failed(...problems);
  const genotypes = read.flatMap(({ genotype, share }) => (genotype.ok ? [{ genotype: genotype.value, share }] : []));
  const layout = layOut(symbolsOf(genotypes.map((one) => one.genotype)), input.loci);
  if (!layout.ok) return layout;
  let next = emptyPopulation(layout.value);
  for (const { genotype, share } of genotypes) addGenotype(layout.value, next, genotype, share);
  const answer: CrossAnswer = { generations: [], exact: true };
  for (let n = 1; n <= input.generations; n++) {
    const missing = missingSex(next);
    if (missing)
      return failed({ where: `generation ${n - 1}`, found: `no ${missing} left`, expected: 'a milder selection' });
    const born = brood(layout.value, next.females, next.males);
    answer.generations.push(describeGeneration(layout.value, n, born));
    next = parentsOf(layout.value, born, input);
  }
  return ok(answer);
}
