/**
 * A line kept from few founders: each replica draws its founders by chance from the generation before,
 * and goes its own way. The founders' offspring are many, so only the draw of founders is by chance
 * (Wright 1931, Fisher 1930).
 */
import { bandOf, type Band, ok, randomStream, type RandomStream, type Result } from '../foundation/index.ts';
import { type CrossInput, missingSex, startCross } from './cross.ts';
import { type CrossAnswer, type CrossGeneration, describeGeneration, wingedShareOf } from './cross-answer.ts';
import type { Layout } from './layout.ts';
import { brood, type Population } from './population.ts';
import { checkParentRule, parentsOf } from './selection.ts';

export interface DriftInput extends CrossInput {
  /** Founders drawn for each new generation. */
  founders: { females: number; males: number };
  /** Lines simulated, at least 2. */
  replicas: number;
  seed: number;
}

export interface DriftAnswer extends CrossAnswer {
  spread: DriftGeneration[];
}

export interface DriftGeneration {
  n: number;
  /** Over the lines that still live: mean winged share, its standard error, and 5 to 95 % of lines. */
  wingedShare: { mean: number; standardError: number; band: Band };
  /** Share of the living lines in which nobody can fly any more, and in which everybody can. */
  allFlightlessShare: number;
  allWingedShare: number;
  /** Share of lines that ended for want of founders that the selection allows. */
  lostLinesShare: number;
}

/**
 * Means and spread by generation over `replicas` simulated lines, `exact` false. The first generation
 * comes from the two parents given; later ones from founders drawn after selection.
 * Throws RangeError on bad founders or replicas; foreseeable failures as in `cross`.
 */
export function drift(input: DriftInput): Result<DriftAnswer> {
  checkDrift(input);
  const start = startCross(input);
  if (!start.ok) return start;
  const { layout, parents } = start.value;
  const lines = Array.from({ length: input.replicas }, (_, i) => ({
    born: brood(layout, parents.females, parents.males) as Population | null,
    stream: randomStream(input.seed, 'drift', i),
  }));
  const answer: DriftAnswer = { generations: [], exact: false, spread: [] };
  for (let n = 1; n <= input.generations; n++) {
    if (n > 1) for (const line of lines) line.born = line.born && nextLine(layout, line.born, input, line.stream);
    const living = lines.flatMap((line) => line.born ?? []);
    if (living.length === 0) break;
    answer.generations.push(meanGeneration(layout, n, living));
    answer.spread.push(spreadOf(layout, n, living, lines.length));
  }
  return ok(answer);
}

function checkDrift(input: DriftInput): void {
  checkParentRule('drift', input);
  for (const sex of ['females', 'males'] as const)
    if (!(Number.isInteger(input.founders[sex]) && input.founders[sex] >= 1))
      throw new RangeError(`drift: founders.${sex} ${input.founders[sex]} is not a whole number of at least 1`);
  if (!(Number.isInteger(input.replicas) && input.replicas >= 2))
    throw new RangeError(`drift: replicas ${input.replicas} is not a whole number of at least 2`);
}

/** The next generation of one line, or null when the selection leaves a sex empty. */
function nextLine(layout: Layout, born: Population, input: DriftInput, stream: RandomStream): Population | null {
  const able = parentsOf(layout, born, input);
  if (missingSex(able)) return null;
  const mothers = drawn(able.females, input.founders.females, stream);
  const fathers = drawn(able.males, input.founders.males, stream);
  const next = brood(layout, mothers, fathers);
  return next.lostShare < 1 ? next : null;
}

/** Counts of `founders` draws with the given weights. */
function drawn(weights: Float64Array, founders: number, stream: RandomStream): Float64Array {
  const sum = weights.reduce((so, weight) => so + weight, 0);
  const counts = new Float64Array(weights.length);
  const last = weights.findLastIndex((weight) => weight > 0);
  for (let k = 0; k < founders; k++) {
    let rest = stream.uniform() * sum;
    let index = 0;
    while (index < last && rest >= (weights[index] as number)) rest -= weights[index++] as number;
    counts[index] = (counts[index] as number) + 1;
  }
  return counts;
}

function meanGeneration(layout: Layout, n: number, living: Population[]): CrossGeneration {
  const mean = (of: (line: Population) => Float64Array) => {
    const sums = new Float64Array(layout.haplotypes ** 2);
    for (const line of living) of(line).forEach((share, i) => (sums[i] = (sums[i] as number) + share / living.length));
    return sums;
  };
  return describeGeneration(layout, n, { females: mean((line) => line.females), males: mean((line) => line.males) });
}

function spreadOf(layout: Layout, n: number, living: Population[], lines: number): DriftGeneration {
  const winged = living.map((line) => wingedShareOf(layout, line));
  const count = winged.length;
  const mean = winged.reduce((a, b) => a + b, 0) / count;
  const variance = winged.reduce((a, b) => a + (b - mean) ** 2, 0) / Math.max(1, count - 1);
  const share = (test: (x: number) => boolean) => winged.filter(test).length / count;
  return {
    n,
    wingedShare: { mean, standardError: Math.sqrt(variance / count), band: bandOf(winged) },
    allFlightlessShare: share((x) => x < 1e-12),
    allWingedShare: share((x) => x > 1 - 1e-12),
    lostLinesShare: 1 - count / lines,
  };
}
