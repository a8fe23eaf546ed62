/**
 * What one stranger among the founders of a line does to the generations after it, as means over
 * endlessly many such lines. A single line either loses the stranger's alleles or keeps them; how
 * often it does which is in drift.ts.
 */
import { failed, ok, type Result } from '../foundation/index.ts';
import { type CrossAnswer, describeGeneration } from './cross-answer.ts';
import { missingSex, symbolsOf } from './cross.ts';
import { layOut } from './layout.ts';
import type { Locus } from './locus.ts';
import { type ParsedGenotype, parseGenotype } from './notation.ts';
import { addGenotype, brood, emptyPopulation, type Population } from './population.ts';
import { checkParentRule, parentsOf, type Selection } from './selection.ts';

export interface ContaminationInput {
  /** Genotypes of the line's own females and males, e.g. `vg/vg` and `vg/vg`. */
  line: { female: string; male: string };
  /** Founders of the cup, the stranger included. */
  founders: { females: number; males: number };
  /** A mated female brings the sperm of a male like herself. */
  stranger: { kind: 'male' | 'virgin female' | 'mated female'; female: string; male: string };
  generations: number;
  loci: readonly Locus[];
  selection?: Selection | undefined;
  /** How much a winged fly counts as a parent beside a flightless one; 1 when not given. */
  wingedFitness?: number | undefined;
}

/**
 * Shares by generation after one stranger joined the founders. Problems: bad genotypes, fewer than one
 * founder of a sex, nothing left after culling.
 * @example one wild male among 25 + 25 of a recessive line: 4 % winged in generation 1, and staying
 */
export function contamination(input: ContaminationInput): Result<CrossAnswer> {
  checkParentRule('contamination', input);
  const { founders, stranger, loci, generations } = input;
  for (const sex of ['females', 'males'] as const) {
    if (!(Number.isInteger(founders[sex]) && founders[sex] >= 1))
      return failed({ where: `founders.${sex}`, found: `${founders[sex]}`, expected: 'a whole number of at least 1' });
  }
  const read = readAll(input.line, stranger, loci);
  if (!read.ok) return read;
  const layout = layOut(symbolsOf(Object.values(read.value)), loci);
  if (!layout.ok) return layout;
  const population = (rows: [keyof AllGenotypes, number][]) => {
    const made = emptyPopulation(layout.value);
    for (const [which, weight] of rows) addGenotype(layout.value, made, read.value[which], weight);
    return made;
  };
  const answer: CrossAnswer = { generations: [], exact: true };
  let born = firstBrood(founders, stranger.kind, population, (parents) =>
    brood(layout.value, parents.females, parents.males),
  );
  for (let n = 1; n <= generations; n++) {
    answer.generations.push(describeGeneration(layout.value, n, born));
    const next = parentsOf(layout.value, born, input);
    const missing = missingSex(next);
    if (n < generations && missing)
      return failed({
        where: `generation ${n}`,
        found: `no ${missing} left to breed from`,
        expected: 'a milder selection',
      });
    if (n < generations) born = brood(layout.value, next.females, next.males);
  }
  return ok(answer);
}

type AllGenotypes = Record<'lineFemale' | 'lineMale' | 'strangeFemale' | 'strangeMale', ParsedGenotype>;
type Mixture = (rows: [keyof AllGenotypes, number][]) => Population;

function readAll(
  line: ContaminationInput['line'],
  stranger: ContaminationInput['stranger'],
  loci: readonly Locus[],
): Result<AllGenotypes> {
  const lineFemale = parseGenotype(line.female, 'female', loci, 'line.female');
  const lineMale = parseGenotype(line.male, 'male', loci, 'line.male');
  const strangeFemale = parseGenotype(stranger.female, 'female', loci, 'stranger.female');
  const strangeMale = parseGenotype(stranger.male, 'male', loci, 'stranger.male');
  if (lineFemale.ok && lineMale.ok && strangeFemale.ok && strangeMale.ok)
    return ok({
      lineFemale: lineFemale.value,
      lineMale: lineMale.value,
      strangeFemale: strangeFemale.value,
      strangeMale: strangeMale.value,
    });
  return failed(...[lineFemale, lineMale, strangeFemale, strangeMale].flatMap((one) => (one.ok ? [] : one.problems)));
}

function firstBrood(
  { females, males }: { females: number; males: number },
  kind: ContaminationInput['stranger']['kind'],
  mixture: Mixture,
  breed: (parents: Population) => Population,
): Population {
  if (kind === 'male')
    return breed(
      mixture([
        ['lineFemale', females],
        ['lineMale', males - 1],
        ['strangeMale', 1],
      ]),
    );
  if (kind === 'virgin female')
    return breed(
      mixture([
        ['lineFemale', females - 1],
        ['strangeFemale', 1],
        ['lineMale', males],
      ]),
    );
  const hers = breed(
    mixture([
      ['strangeFemale', 1],
      ['strangeMale', 1],
    ]),
  );
  if (females === 1) return hers;
  const others = breed(
    mixture([
      ['lineFemale', 1],
      ['lineMale', 1],
    ]),
  );
  const blend = (a: Float64Array, b: Float64Array) =>
    a.map((share, i) => (share * (females - 1) + (b[i] as number)) / females);
  return { females: blend(others.females, hers.females), males: blend(others.males, hers.males) };
}
