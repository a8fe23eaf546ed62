/** Ranks of the truth among posterior draws over simulated households (simulation-based calibration). */
import { randomStream } from '../../src/foundation/index.ts';
import { fullPrior, type LearningPrior, learn } from '../../src/learning/index.ts';
import { simulateWorld, type WorldOptions } from './learning-world.ts';

export const rankedQuantities = [
  'household pace',
  'household yield',
  'spread of cups',
  'failure',
  'cup pace',
  'cup yield',
  'flies now',
  'recipe difference',
] as const;
export type Ranked = Record<(typeof rankedQuantities)[number], number[]>;

/**
 * Ranks on (0, 1) of every quantity, one per household (cups: the youngest with flies to come).
 * Talts, Betancourt, Simpson, Vehtari and Gelman 2018, arXiv 1804.06788: uniform when world and model agree.
 */
export function ranksOver(households: number, options: WorldOptions, prior: LearningPrior, seed: number): Ranked {
  const ranked = Object.fromEntries(rankedQuantities.map((q) => [q, [] as number[]])) as Ranked;
  for (let n = 0; n < households; n++) rankOne(simulateWorld(options, seed + n), prior, seed + n, ranked);
  return ranked;
}

function rankOne(world: ReturnType<typeof simulateWorld>, prior: LearningPrior, seed: number, ranked: Ranked): void {
  const beliefs = learn({ seed, draws: 200, prior, strains: [world.evidence] });
  const random = randomStream(seed, 'ranks');
  const { discrepancySd, paceDiscrepancySd } = fullPrior(prior);
  const strain = beliefs.byStrain.get('melanogaster');
  if (!strain) throw new RangeError(`rankOne: no belief for seed ${seed}`);
  const rank = (of: keyof Ranked, draws: ArrayLike<number>, truth: number) => {
    const below = Array.from(draws).filter((d) => d < truth).length;
    const equal = Array.from(draws).filter((d) => d === truth).length;
    ranked[of].push((below + random.uniform() * (equal + 1)) / (draws.length + 1));
  };
  rank('household pace', strain.draws.logPace, world.truth.nextPace);
  rank('household yield', strain.draws.logYield, world.truth.nextYield);
  rank('spread of cups', strain.draws.cupYieldSd, world.truth.cupYieldSd);
  rank('failure', strain.draws.failureChance, world.truth.failureChance);
  const [a, b] = strain.recipes;
  if (a && b) {
    const difference = a.draws.logYield.map((v, s) => v - (b.draws.logYield[s] as number));
    const [ta, tb] = [world.truth.recipeYield.get(a.key) as number, world.truth.recipeYield.get(b.key) as number];
    rank('recipe difference', difference, ta - tb);
  }
  const young = world.evidence.cups.filter((c) => c.ended === null && c.ageDays > 13).at(-1);
  if (!young) return;
  const { draws } = beliefs.cups.get(young.id) ?? {};
  const truth = world.truth.cups.get(young.id);
  if (!draws || !truth) return;
  rank('cup pace', draws.logPace, truth.logPace + paceDiscrepancySd * random.normal());
  rank('cup yield', draws.logYield, truth.logYield + discrepancySd * random.normal());
  rank('flies now', draws.fliesNow.map(Math.round), Math.round(truth.fliesNow));
}

/** Chi-squared of ranks in 10 bins against uniform: 9 degrees of freedom. */
export function chiSquaredOfTen(ranks: readonly number[]): number {
  const bins = new Float64Array(10);
  for (const u of ranks) {
    const bin = Math.min(9, Math.floor(10 * u));
    bins[bin] = (bins[bin] as number) + 1;
  }
  const expected = ranks.length / 10;
  return bins.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
}

/** Share of ranks in the middle `width` of (0, 1): the coverage of that band. */
export function coverage(ranks: readonly number[], width: number): number {
  return ranks.filter((u) => Math.abs(u - 0.5) < width / 2).length / ranks.length;
}
