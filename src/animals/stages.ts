/**
 * A group that passes through stages (instars, ages), each with a ration and a length of its own: when each
 * begins, with its range, how many live, and the feeding periods that follow from the middle dates.
 */
import type { DayNumber, Weekday } from '../foundation/index.ts';
import type { FeedingPeriod } from './feeding-period.ts';
import { q10Factor } from './metabolic-rate.ts';

export interface Stage {
  stage: string;
  /** Days that the stage lasts at the reference temperature; null for the last. */
  daysLow: number | null;
  daysHigh: number | null;
  /** Share of those that begin the stage that live to its end, 0 to 1. */
  survival: number;
  /** Flies for one animal at a feeding; 0 when it has outgrown flies. */
  fliesPerFeeding: number;
  strain: string;
  feedingWeekdays: Weekday[];
}

export interface StagePlan {
  stage: string;
  begins: { earliest: DayNumber; middle: DayNumber; latest: DayNumber };
  /** Animals alive at its beginning. */
  count: number;
  /** Days around the moult into this stage in which nothing is fed and left-overs are taken out; null for the first. */
  moult: { from: DayNumber; until: DayNumber } | null;
}

export interface StagesInput {
  stages: readonly Stage[];
  onDay: DayNumber;
  /** Days of the first stage that are over already. */
  daysInStage: number;
  count: number;
  /** Warmth against the stages' reference temperature, and the Q10 of their pace. */
  degreesWarmer: number;
  q10: number;
  /** Days without food before and after a moult (1 to 7 before in mantises and spiders, a value from memory). */
  moultPause: { before: number; after: number } | null;
}

/** The dated stages. Throws RangeError on a stage without length that is not the last. */
export function stagePlan(input: StagesInput): StagePlan[] {
  const pace = q10Factor(input.q10, input.degreesWarmer);
  const begins = { earliest: input.onDay, middle: input.onDay, latest: input.onDay };
  let count = input.count;
  return input.stages.map((stage, i) => {
    const first = i === 0;
    const plan: StagePlan = {
      stage: stage.stage,
      begins: {
        earliest: Math.floor(begins.earliest),
        middle: Math.round(begins.middle),
        latest: Math.ceil(begins.latest),
      },
      count,
      moult: first || !input.moultPause ? null : moultDays(begins, input.moultPause),
    };
    if (i < input.stages.length - 1) {
      const { low, high } = lengthOf(stage, pace, first ? input.daysInStage : 0);
      begins.earliest += low;
      begins.middle += (low + high) / 2;
      begins.latest += high;
      count *= stage.survival;
    }
    return plan;
  });
}

function lengthOf({ stage, daysLow, daysHigh }: Stage, pace: number, daysOver: number): { low: number; high: number } {
  if (daysLow === null || daysHigh === null || !(daysHigh >= daysLow))
    throw new RangeError(`stagePlan: ${stage} has no length, though a stage follows`);
  return { low: Math.max(0, daysLow / pace - daysOver), high: Math.max(0, daysHigh / pace - daysOver) };
}

function moultDays({ middle }: StagePlan['begins'], { before, after }: { before: number; after: number }) {
  return { from: Math.round(middle) - before, until: Math.round(middle) + after };
}

/** Feeding periods by the middle dates; animals that die leave evenly at each stage's end. */
export function stagePeriods(input: StagesInput): FeedingPeriod[] {
  return stagePlan(input).flatMap(({ begins, count, moult }, i) => {
    const stage = input.stages[i] as Stage;
    const { strain, feedingWeekdays, fliesPerFeeding } = stage;
    const fed = { until: null, count, fliesPerFeeding, strain, feedingWeekdays };
    if (!moult) return [{ ...fed, from: begins.middle }];
    const pause = { ...fed, from: moult.from, fliesPerFeeding: 0 };
    return [pause, { ...fed, from: moult.until + 1 }];
  });
}
