/**
 * A group's appetite learned from left-overs: how many flies it would eat at a feeding, as a belief over a
 * grid, sifted by each feeding's word. Nothing left says only "at least so many".
 */
import { normalCdf } from '../foundation/index.ts';

export type LeftOverWord = 'none' | 'few' | 'some' | 'plenty' | 'swarming';

export interface FeedingSeen {
  /** Flies given, to the whole group. */
  flies: number;
  leftOver: LeftOverWord;
}

export interface Appetite {
  /** Flies eaten at a feeding: middle and 5 to 95 %. */
  p05: number;
  p50: number;
  p95: number;
}

/** Share of the given flies that is left, from and to, that each word stands for: a convention. */
export const leftOverShares: Record<LeftOverWord, readonly [number, number]> = {
  none: [Number.NEGATIVE_INFINITY, 0.02],
  few: [0.02, 0.15],
  some: [0.15, 0.4],
  plenty: [0.4, 0.7],
  swarming: [0.7, 1],
};

const gridPoints = 241;
/** How far a ration is from the appetite before anything was seen: a third either way, a convention. */
export const priorLogSd = 0.35;
const dayLogSd = 0.25;
/** A word is a slip with this chance: one odd feeding must not rule out the truth. */
const slip = 0.02;

/**
 * Belief about the appetite after the feedings, beginning from the ration as planned (log sd 0.35); appetite
 * differs from day to day by a log sd of 0.25. Throws RangeError when the plan or a feeding is not above 0.
 */
export function learnedAppetite(plannedFlies: number, feedings: readonly FeedingSeen[]): Appetite {
  if (!(plannedFlies > 0)) throw new RangeError(`learnedAppetite: plannedFlies ${plannedFlies} is not above 0`);
  const logs = Array.from(
    { length: gridPoints },
    (_, i) => Math.log(plannedFlies) + (i / (gridPoints - 1) - 0.5) * 8 * priorLogSd,
  );
  const logWeights = logs.map((log) => -0.5 * ((log - Math.log(plannedFlies)) / priorLogSd) ** 2);
  for (const feeding of feedings) {
    if (!(feeding.flies > 0)) throw new RangeError(`learnedAppetite: flies ${feeding.flies} is not above 0`);
    logs.forEach((log, i) => {
      logWeights[i] = (logWeights[i] as number) + Math.log(chanceOfWord(log, feeding));
    });
  }
  return quantiles(logs, logWeights);
}

/** Chance of the word when the appetite's logarithm is `log`: what is eaten is the appetite, up to all. */
function chanceOfWord(log: number, { flies, leftOver }: FeedingSeen): number {
  const [from, to] = leftOverShares[leftOver];
  const below = (eatenShare: number) =>
    eatenShare <= 0
      ? 0
      : eatenShare === Number.POSITIVE_INFINITY
        ? 1
        : normalCdf((Math.log(flies * eatenShare) - log) / dayLogSd);
  return (1 - slip) * (below(1 - from) - below(1 - to)) + slip / 5;
}

function quantiles(logs: number[], logWeights: number[]): Appetite {
  const most = Math.max(...logWeights);
  const weights = logWeights.map((weight) => Math.exp(weight - most));
  const total = weights.reduce((a, b) => a + b, 0);
  const at = (p: number) => {
    let sum = 0;
    const index = weights.findIndex((weight) => (sum += weight) >= p * total);
    return Math.exp(logs[index] as number);
  };
  return { p05: at(0.05), p50: at(0.5), p95: at(0.95) };
}
