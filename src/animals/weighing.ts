/** Weighing the animals, the check on every ration: a growth line and an early flag. */
import type { DayNumber } from '../foundation/index.ts';

export interface Weighing {
  onDay: DayNumber;
  massG: number;
}

export interface WeightCheck {
  verdict: 'too few weighings' | 'enough' | 'watch' | 'too little' | 'too much';
  /** Change of mass a day, share of the mass; null with fewer than three weighings. */
  changePerDay: number | null;
  standardError: number | null;
  why: string;
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

/**
 * The straight line through the logarithms of the weighings, against what is expected: `too little` when the
 * animal surely loses (or lost a tenth at once), `watch` when it surely gains less than half of what is
 * expected, `too much` when a grown one surely gains over 0.3 % a day. Throws RangeError on a mass not above 0.
 */
export function weightCheck(weighings: readonly Weighing[], expected: WeightExpectation): WeightCheck {
  for (const { massG } of weighings)
    if (!(massG > 0)) throw new RangeError(`weightCheck: massG ${massG} is not above 0`);
  const sorted = [...weighings].sort((a, b) => a.onDay - b.onDay);
  const drop = suddenLoss(sorted);
  if (drop > alarmingLoss)
    return {
      ...line(sorted, expected),
      verdict: 'too little',
      why: `It lost ${Math.round(100 * drop)} % against its best recent weight: weigh again, feed, and ask a vet.`,
    };
  const { changePerDay, standardError } = line(sorted, expected);
  if (changePerDay === null || standardError === null)
    return {
      verdict: 'too few weighings',
      changePerDay,
      standardError,
      why: 'Three weighings on different days give a first line.',
    };
  return { changePerDay, standardError, ...judged(changePerDay, standardError, expected.changePerDay) };
}

function suddenLoss(sorted: readonly Weighing[]): number {
  const last = sorted.at(-1);
  const before = sorted.slice(-4, -1).map(({ massG }) => massG);
  return last && before.length > 0 ? 1 - last.massG / Math.max(...before) : 0;
}

/** Slope of ln mass by day and its standard error, with the weighing error known. */
function line(sorted: readonly Weighing[], { weighingError = 0.03 }: WeightExpectation) {
  const n = sorted.length;
  const meanDay = sorted.reduce((sum, { onDay }) => sum + onDay, 0) / n;
  const spread = sorted.reduce((sum, { onDay }) => sum + (onDay - meanDay) ** 2, 0);
  if (n < 3 || spread === 0) return { changePerDay: null, standardError: null };
  const slope = sorted.reduce((sum, { onDay, massG }) => sum + (onDay - meanDay) * Math.log(massG), 0) / spread;
  return { changePerDay: slope, standardError: weighingError / Math.sqrt(spread) };
}

function judged(slope: number, error: number, expected: number): Pick<WeightCheck, 'verdict' | 'why'> {
  const text = `${(100 * slope).toFixed(2)} % a day`;
  if (slope + sureZ * error < 0)
    return { verdict: 'too little', why: `It loses mass, ${text}: feed more and ask a vet.` };
  if (expected > 0 && slope + sureZ * error < expected / 2)
    return {
      verdict: 'watch',
      why: `It gains ${text}, less than half of what is expected: feed more and weigh again.`,
    };
  if (expected === 0 && slope - sureZ * error > 0.003)
    return { verdict: 'too much', why: `A grown animal gains ${text}: feed less, unless it carries eggs.` };
  return { verdict: 'enough', why: `It changes by ${text}, as it should.` };
}
