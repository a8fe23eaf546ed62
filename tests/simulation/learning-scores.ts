/**
 * Forecasts of the coming week's flies of living cups, scored against what then emerged: the learned
 * bands, the books alone, and the habit of expecting what the last cup gave at that age. Scores are
 * proper (Gneiting and Raftery 2007, J. Am. Stat. Assoc. 102:359): the continuous ranked probability
 * score in flies, and the log score of log(flies + 1); lower is better for both as written here. Every
 * forecast is a mean with chance births (Poisson) on top.
 */
import { type RandomStream, randomStream } from '../../src/foundation/index.ts';
import { crps, fullPrior, learn, logScore, ordinaryPrior, warpedEmergence } from '../../src/learning/index.ts';
import { simulateWorld, type World, type WorldOptions } from './learning-world.ts';

export const weekDays = 7;
const draws = 400;

export interface Scores {
  crps: number;
  logScore: number;
  /** Share of weeks inside the 5 to 95 % and the 25 to 75 % band. */
  inside90: number;
  inside50: number;
  weeks: number;
}

export interface ScoreTable {
  learned: Scores;
  books: Scores;
  lastCup: Scores;
  /** Share of households whose log is said to fit. */
  fits: number;
}

type Way = 'learned' | 'books' | 'lastCup';

/** Scores over `households` simulated households; the world's prior may differ from the model's. */
export function scoreHouseholds(households: number, options: WorldOptions, seed = 1): ScoreTable {
  const kept: Record<Way, Week[]> = { learned: [], books: [], lastCup: [] };
  let fits = 0;
  for (let n = 0; n < households; n++) {
    const world = simulateWorld(options, seed + n);
    const beliefs = learn({ seed: n, draws, prior: ordinaryPrior, strains: [world.evidence] });
    if (beliefs.byStrain.get('melanogaster')?.fit.fits) fits++;
    const random = randomStream(seed + n, 'scores');
    for (const [id, belief] of beliefs.cups) {
      const cup = world.evidence.cups.find((c) => c.id === id);
      if (!cup || cup.ageDays < 10 || cup.ageDays > 24) continue;
      const truth = weekOf(world.truth.cups.get(id)?.emerged ?? [], cup.ageDays);
      const known = beliefs.byStrain
        .get('melanogaster')
        ?.draws.logPace.map((_, s) =>
          weekAt(cup.emergedByAge, cup.ageDays, belief.draws.logPace[s] as number, belief.draws.logYield[s] as number),
        );
      const score = (forecast: Float64Array) =>
        week(
          forecast.map((mean) => random.poisson(mean)),
          truth,
          random,
        );
      kept.learned.push(score(known ?? new Float64Array(0)));
      kept.books.push(score(bookWeeks(cup.emergedByAge, cup.ageDays, random)));
      kept.lastCup.push(score(lastCupWeeks(world, id, cup.ageDays, random)));
    }
  }
  return {
    learned: scoresOf(kept.learned),
    books: scoresOf(kept.books),
    lastCup: scoresOf(kept.lastCup),
    fits: fits / households,
  };
}

interface Week {
  crps: number;
  logScore: number;
  inside90: boolean;
  inside50: boolean;
}

/** Flies of the week after `age` at this pace and yield. */
function weekAt(curve: Float32Array, age: number, logPace: number, logYield: number): number {
  return Math.exp(logYield) * weekOf(warpedEmergence(curve, logPace, age + weekDays), age);
}

function weekOf(emerged: ArrayLike<number>, age: number): number {
  let sum = 0;
  for (let a = age + 1; a <= age + weekDays; a++) sum += emerged[a] ?? 0;
  return sum;
}

/** What the books say, with the prior's spread. */
function bookWeeks(curve: Float32Array, age: number, random: RandomStream): Float64Array {
  const p = fullPrior(ordinaryPrior);
  return Float64Array.from({ length: draws }, () =>
    weekAt(
      curve,
      age,
      Math.hypot(p.householdPaceSd, p.cupPaceSd) * random.normal(),
      Math.hypot(p.householdYieldSd, p.cupYieldSd, p.sessionYieldSd) * random.normal(),
    ),
  );
}

/**
 * The flies that an older cup really gave at that age, spread as two cups differ (generous: the habit
 * knows the other cup's flies exactly). Without an older cup: the books.
 */
function lastCupWeeks(world: World, id: string, age: number, random: RandomStream): Float64Array {
  const session = world.evidence.cups.find((c) => c.id === id)?.session ?? 0;
  const older = world.evidence.cups
    .filter((c) => c.session < session && c.ageDays >= age + weekDays)
    .sort((a, b) => b.session - a.session)[0];
  if (!older) return bookWeeks(world.evidence.cups[0]?.emergedByAge ?? new Float32Array(0), age, random);
  const flies = weekOf(world.truth.cups.get(older.id)?.emerged ?? [], age);
  const p = fullPrior(ordinaryPrior);
  const sd = Math.SQRT2 * Math.hypot(p.cupYieldSd, p.sessionYieldSd, 5 * p.cupPaceSd);
  return Float64Array.from({ length: draws }, () => Math.max(0, (flies + 1) * Math.exp(sd * random.normal()) - 1));
}

/** Whole flies tie, so that the rank among equals is drawn. */
function week(forecast: Float64Array, truth: number, random: RandomStream): Week {
  const sorted = Float64Array.from(forecast).sort();
  const below = sorted.filter((f) => f < truth).length;
  const equal = sorted.filter((f) => f === truth).length;
  const rank = (below + random.uniform() * (equal + 1)) / (sorted.length + 1);
  return {
    crps: crps(sorted, truth),
    logScore: logScore(sorted, truth),
    inside90: rank >= 0.05 && rank <= 0.95,
    inside50: rank >= 0.25 && rank <= 0.75,
  };
}

function scoresOf(weeks: Week[]): Scores {
  const mean = (of: (w: Week) => number) => weeks.reduce((sum, w) => sum + of(w), 0) / weeks.length;
  return {
    crps: mean((w) => w.crps),
    logScore: mean((w) => w.logScore),
    inside90: mean((w) => Number(w.inside90)),
    inside50: mean((w) => Number(w.inside50)),
    weeks: weeks.length,
  };
}
