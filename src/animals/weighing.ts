/** Weighing the animals, the check on every ration: a growth line and an early flag. */
import { type DayNumber, type Said, said } from '../foundation/index.ts';

export interface Weighing {
  onDay: DayNumber;
  massG: number;
  /** Share of the group that was weighed, above 0 to 1; 1 when left out. */
  share?: number;
  /** Animals weighed; 1 when left out. */
  animals?: number;
}

export type WeightVerdict = 'too few weighings' | 'enough' | 'watch' | 'too little' | 'too much';

export interface WeightCheck {
  verdict: WeightVerdict;
  /** Change of mass a day, share of the mass; null with fewer than three weighings. */
  changePerDay: number | null;
  standardError: number | null;
  /** Share lost at once against the best of the weighings before, above a tenth; else null. */
  suddenLoss: number | null;
  /** The line's mass on the last day of weighing, g; null without a line. */
  lineMassG: number | null;
  why: Said;
}

export interface WeightExpectation {
  /** Change a day that a well fed one shows, share of its mass: e.g. 0.01 while growing, 0 when grown. */
  changePerDay: number;
  /** Relative error of a weighing by scale, gut and bladder; 0.03 when not given. */
  weighingError?: number;
}

const sureZ = 1.645;
/** A loss of a tenth against the best of the last weighings is a warning whatever the line says (common practice). */
const alarmingLoss = 0.1;
/** Animals of one group differ by this (a value from memory): a sample of them is not the group. */
const animalsDiffer = 0.15;

/**
 * The straight line through the logarithms of the weighings, against what is expected: `too little` when the
 * animal surely loses (or lost a tenth at once), `watch` when it surely gains less than half of what is
 * expected, `too much` when a grown one surely gains over 0.3 % a day. Throws RangeError on a mass not above 0.
 */
export function weightCheck(weighings: readonly Weighing[], expected: WeightExpectation): WeightCheck {
  for (const { massG } of weighings)
    if (!(massG > 0)) throw new RangeError(`weightCheck: massG ${massG} is not above 0`);
  const sorted = [...weighings].sort((a, b) => a.onDay - b.onDay);
  const fitted = line(sorted, expected);
  const drop = lossAtOnce(sorted, expected);
  if (drop !== null)
    return {
      ...fitted,
      suddenLoss: drop,
      verdict: 'too little',
      why: said`It lost ${Math.round(100 * drop)} % against its best recent weight: weigh again, feed, and ask a vet.`,
    };
  const { changePerDay, standardError } = fitted;
  if (changePerDay === null || standardError === null)
    return {
      ...fitted,
      suddenLoss: null,
      verdict: 'too few weighings',
      why: said`Three weighings on different days give a first line.`,
    };
  return { ...fitted, suddenLoss: null, ...judged(changePerDay, standardError, expected.changePerDay) };
}

/** Relative error of a weighing for the group's mean: the scale's, and that of weighing only some of them. */
function errorOf({ share = 1, animals = 1 }: Weighing, { weighingError = 0.03 }: WeightExpectation): number {
  return Math.hypot(weighingError, (animalsDiffer / Math.sqrt(animals)) * Math.sqrt(1 - share));
}

/** Above a tenth, and more than the two weighings' errors explain; null when not. */
function lossAtOnce(sorted: readonly Weighing[], expected: WeightExpectation): number | null {
  const last = sorted.at(-1);
  const best = sorted
    .slice(-4, -1)
    .reduce<Weighing | null>((most, one) => (most && most.massG >= one.massG ? most : one), null);
  if (!last || !best) return null;
  const drop = 1 - last.massG / best.massG;
  const unsure = sureZ * Math.hypot(errorOf(last, expected), errorOf(best, expected));
  return drop > Math.max(alarmingLoss, unsure) ? drop : null;
}

/** Slope of ln mass by day and its standard error by least squares, each weighing weighted by its known error. */
function line(sorted: readonly Weighing[], expected: WeightExpectation) {
  const none = { changePerDay: null, standardError: null, lineMassG: null };
  if (sorted.length < 3) return none;
  const weights = sorted.map((one) => errorOf(one, expected) ** -2);
  const mean = (of: (one: Weighing) => number) =>
    sorted.reduce((sum, one, i) => sum + (weights[i] as number) * of(one), 0) / weights.reduce((a, b) => a + b, 0);
  const [meanDay, meanLog] = [mean(({ onDay }) => onDay), mean(({ massG }) => Math.log(massG))];
  const sum = (of: (one: Weighing) => number) =>
    sorted.reduce((total, one, i) => total + (weights[i] as number) * of(one), 0);
  const spread = sum(({ onDay }) => (onDay - meanDay) ** 2);
  if (spread === 0) return none;
  const slope = sum(({ onDay, massG }) => (onDay - meanDay) * (Math.log(massG) - meanLog)) / spread;
  const lastDay = (sorted.at(-1) as Weighing).onDay;
  return {
    changePerDay: slope,
    standardError: 1 / Math.sqrt(spread),
    lineMassG: Math.exp(meanLog + slope * (lastDay - meanDay)),
  };
}

function judged(slope: number, error: number, expected: number): Pick<WeightCheck, 'verdict' | 'why'> {
  const percent = Math.round(10_000 * slope) / 100;
  if (slope + sureZ * error < 0)
    return { verdict: 'too little', why: said`It loses mass, ${-percent} % a day: feed more and ask a vet.` };
  if (expected > 0 && slope + sureZ * error < expected / 2)
    return {
      verdict: 'watch',
      why: said`It changes by ${percent} % a day, less than half of what is expected: feed more, weigh again, and ask a vet if it goes on.`,
    };
  if (expected === 0 && slope - sureZ * error > 0.003)
    return {
      verdict: 'too much',
      why: said`A grown animal gains ${percent} % a day: feed less, unless it carries eggs.`,
    };
  return { verdict: 'enough', why: said`It changes by ${percent} % a day, as it should.` };
}
