/**
 * Whether a log can be read with this model at all. Notes are turned into normal scores at several joint
 * draws of the posterior, and each check asks for one way in which a world can differ. A check's p-values
 * over the draws are joined as twice their mean, which is a valid p-value however they hang together
 * (L. Rueschendorf 1982, Adv. Appl. Prob. 14:623), and the checks by Bonferroni: a log that the model
 * wrote is said not to fit in at most one household in a hundred.
 */
import gammaCdf from '@stdlib/stats-base-dists-gamma-cdf';
import type { RandomStream } from '../foundation/index.ts';
import type { ChainSnapshot } from './chain-snapshot.ts';
import type { TableContext } from './cup-table.ts';
import { doubtfulNotes } from './doubtful-notes.ts';
import type { CupEvidence, LogFit, Misfit } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { drawStrays, type LearnedStrays } from './learned-strays.ts';
import { quickCdf } from './normal-quick.ts';
import { type NoteScore, noteScores, type StageScore, stageScores } from './note-scores.ts';
import { sightingsOf } from './sightings.ts';
import { stockEvents } from './stock-events.ts';

/** A log that the model wrote fails with at most this chance. */
export const fitLevel = 0.01;
/** Fewer notes than this show nothing. */
const leastScores = 8;
/** Parts of a cup's life as multiples of the age of the first flies: coming, in bloom, over. */
const partsBegin = [0, 1.25, 1.6];

export interface FitInput {
  cups: readonly CupEvidence[];
  context: TableContext;
  /** The setting that is likeliest. */
  setting: KeeperSetting;
  believedOf: (i: number) => { logPace: number; logYield: number };
  snapshots: readonly ChainSnapshot[];
  strays: LearnedStrays;
  random: RandomStream;
}

/** Counts doubtful notes and makes all checks. */
export function logFit(input: FitInput): LogFit {
  const { cups, context } = input;
  const notes = cups.reduce((sum, c) => sum + sightingsOf(c).length + stockEvents(c, context.taps).length, 0);
  const doubted = cups.reduce(
    (sum, c, i) => sum + doubtfulNotes(c, context, input.setting, input.believedOf(i)).length,
    0,
  );
  const chances = joinedChances(input);
  chances.set('wrong notes', chanceOfAsMany(notes, doubted, context.prior.wrongEntryShare));
  const misfits = [...chances]
    .map(([what, chance]) => ({ what, chance: Math.min(1, chance * chances.size) }))
    .filter((misfit) => misfit.chance < fitLevel)
    .sort((a, b) => a.chance - b.chance);
  return { notes, doubted, fits: misfits.length === 0, misfits };
}

/** Twice the mean of each check's p-values over the snapshots. */
function joinedChances(input: FitInput): Map<Misfit['what'], number> {
  const sums = new Map<Misfit['what'], number>();
  for (const snapshot of input.snapshots) {
    for (const [what, chance] of checksAt(input, snapshot)) sums.set(what, (sums.get(what) ?? 0) + chance);
  }
  return new Map([...sums].map(([what, sum]) => [what, Math.min(1, (2 * sum) / input.snapshots.length)]));
}

function checksAt(input: FitInput, snapshot: ChainSnapshot): [Misfit['what'], number][] {
  const { cups, context, random } = input;
  const strays = drawStrays(input.strays, random);
  const byCup = cups.map((cup, i) => noteScores(cup, i, context, snapshot, strays, random));
  const stages = cups.flatMap((cup, i) =>
    stageScores(cup, snapshot.cupPace[i] as number, context.prior.wrongEntryShare, random),
  );
  return [
    ['scatter', scatterChance(byCup.flat())],
    ['shape', shapeChance(byCup.flat())],
    ['runs', runChance(byCup)],
    ['stages', stageChance(stages)],
    ['drift', driftChance(cups, snapshot.yieldScore)],
  ];
}

/** Notes stray further than their forecasts' bands: the sum of squares is chi-squared. */
function scatterChance(scores: readonly NoteScore[]): number {
  if (scores.length < leastScores) return 1;
  return chiSquaredTail(
    scores.reduce((sum, { score }) => sum + score * score, 0),
    scores.length,
  );
}

/** Flies come at other ages than the curve says: mean scores of early, blooming and old cups. */
function shapeChance(scores: readonly NoteScore[]): number {
  const parts = partsBegin.map((from, k) =>
    scores.filter((s) => s.relativeAge >= from && s.relativeAge < (partsBegin[k + 1] ?? Infinity)),
  );
  return meansChance(parts.map((part) => part.map((s) => s.score)));
}

/** Larvae, pupae or flies show systematically earlier or later than one pace can explain. */
function stageChance(scores: readonly StageScore[]): number {
  return meansChance(
    (['larvae', 'pupae', 'adults'] as const).map((stage) =>
      scores.filter((s) => s.stage === stage).map((s) => s.score),
    ),
  );
}

/** Whether any group's mean differs from 0: sum of n x mean squared, chi-squared with a degree a group. */
function meansChance(groups: number[][]): number {
  const large = groups.filter((group) => group.length >= leastScores / 2);
  if (large.length === 0) return 1;
  const squares = large.map((group) => group.reduce((a, b) => a + b, 0) ** 2 / group.length);
  return chiSquaredTail(
    squares.reduce((a, b) => a + b, 0),
    large.length,
  );
}

/** What one note missed, the next misses too: products of neighbours, normal with variance their number. */
function runChance(byCup: readonly NoteScore[][]): number {
  const products = byCup.flatMap((scores) =>
    scores.slice(1).map(({ score }, i) => clipped(score) * clipped((scores[i] as NoteScore).score)),
  );
  return products.length < leastScores ? 1 : twoSided(products, clippedVariance);
}

/** Single wild notes say nothing about runs. */
function clipped(score: number): number {
  return Math.min(2, Math.max(-2, score));
}

/** Variance of a product of two standard normals, each clipped to +-2: (0.921)^2 of the unclipped. */
const clippedVariance = 0.921 ** 2;

/** Cups give more or less and less as time goes by: scores against the order of starting. */
function driftChance(cups: readonly CupEvidence[], scores: Float64Array): number {
  const order = cups.map((cup, i) => ({ session: cup.session, i })).sort((a, b) => a.session - b.session || a.i - b.i);
  const n = order.length;
  if (n < leastScores) return 1;
  const sd = Math.sqrt((n * n - 1) / 12);
  return twoSided(
    order.map(({ i }, place) => (scores[i] as number) * ((place - (n - 1) / 2) / sd)),
    1,
  );
}

/** Two-sided chance of a sum as far from 0, of terms of this variance. */
function twoSided(terms: readonly number[], variance: number): number {
  const sum = terms.reduce((a, b) => a + b, 0);
  return 2 * (1 - quickCdf(Math.abs(sum) / Math.sqrt(variance * terms.length)));
}

function chiSquaredTail(value: number, degrees: number): number {
  return 1 - gammaCdf(value / 2, degrees / 2, 1);
}

/** Chance of at least `doubted` wrong notes among `notes` (normal approximation with half a note off). */
function chanceOfAsMany(notes: number, doubted: number, share: number): number {
  if (doubted <= 1) return 1;
  const mean = notes * share;
  return 1 - quickCdf((doubted - 0.5 - mean) / Math.sqrt(mean * (1 - share) + 0.25));
}
