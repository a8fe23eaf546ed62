/**
 * Need as scenarios: in each, every group hatches, moults and eats in one of the ways that it may. The draws
 * are spread evenly over what may happen, so that few of them already have the right mean.
 */
import { type DayNumber, normalQuantile, type RandomStream, randomStream, weekdayIndex } from '../foundation/index.ts';
import { beginning, checkGroup, type FeedingGroup, type FeedingPeriod } from './feeding-period.ts';
import { feedingDays } from './wanted-flies.ts';

export interface NeedDrawsInput {
  groups: readonly FeedingGroup[];
  /** Day of index 0. */
  fromDay: DayNumber;
  days: number;
  draws: number;
  seed: number;
}

/**
 * Flies wanted on each day, one array of length `days` a draw, by strain; only strains of which some group's
 * need is uncertain. Draws of one number belong together across strains.
 */
export function needDraws({ groups, fromDay, days, draws, seed }: NeedDrawsInput): Map<string, Float32Array[]> {
  for (const group of groups) checkGroup('needDraws', group);
  const uncertain = new Set(groups.filter(isUncertain).flatMap(({ periods }) => periods.map(({ strain }) => strain)));
  const byStrain = new Map(
    [...uncertain].map((strain) => [strain, Array.from({ length: draws }, () => new Float32Array(days))]),
  );
  for (const group of groups.filter((one) => !isUncertain(one))) addCertain(byStrain, group, fromDay, days);
  for (const group of groups.filter(isUncertain)) {
    const chances = chancesOf(randomStream(seed, 'need', group.group), draws);
    for (let s = 0; s < draws; s++) addGroup(byStrain, group, chances(s), s, fromDay, days);
  }
  return byStrain;
}

function isUncertain({ periods, appetiteLogSd = 0 }: FeedingGroup): boolean {
  return appetiteLogSd > 0 || periods.some(({ arrival }) => arrival !== null && arrival !== undefined);
}

/** The same in all draws. */
function addCertain(
  byStrain: Map<string, Float32Array[]>,
  group: FeedingGroup,
  fromDay: DayNumber,
  days: number,
): void {
  for (const [strain, draws] of byStrain) {
    const own = new Map([[strain, [new Float32Array(days)]]]);
    addGroup(own, group, { time: 0.5, number: 0.5, appetite: 0.5 }, 0, fromDay, days);
    const flies = own.get(strain)?.[0] as Float32Array;
    for (const draw of draws) for (let i = 0; i < days; i++) draw[i] = (draw[i] as number) + (flies[i] as number);
  }
}

interface Chances {
  /** 0 early to 1 late. */
  time: number;
  /** 0 few to 1 many. */
  number: number;
  /** 0 sparing to 1 hungry. */
  appetite: number;
}

/** Each chance takes every one of `draws` even steps once, in an order of its own. */
function chancesOf(stream: RandomStream, draws: number): (draw: number) => Chances {
  const [time, number, appetite] = [0, 1, 2].map(() => shuffledSteps(stream, draws)) as [number[], number[], number[]];
  return (s) => ({ time: time[s] as number, number: number[s] as number, appetite: appetite[s] as number });
}

function shuffledSteps(stream: RandomStream, draws: number): number[] {
  const steps = Array.from({ length: draws }, (_, i) => (i + 0.5) / draws);
  for (let i = draws - 1; i > 0; i--) {
    const j = stream.below(i + 1);
    [steps[i], steps[j]] = [steps[j] as number, steps[i] as number];
  }
  return steps;
}

function addGroup(
  byStrain: Map<string, Float32Array[]>,
  { periods, appetiteLogSd = 0 }: FeedingGroup,
  chances: Chances,
  draw: number,
  fromDay: DayNumber,
  days: number,
): void {
  const factor = Math.exp(appetiteLogSd * normalQuantile(chances.appetite) - appetiteLogSd ** 2 / 2);
  periods.forEach((period, k) => {
    const flies = byStrain.get(period.strain)?.[draw];
    if (!flies) return;
    const next = periods[k + 1];
    const last = Math.min(period.until ?? Number.POSITIVE_INFINITY, next ? beginsOn(next, chances.time) - 1 : Infinity);
    const wanted = factor * period.fliesPerFeeding * countIn(period, chances.number);
    const feeds = feedingDays(period);
    const first = Math.max(0, beginsOn(period, chances.time) - fromDay);
    for (let i = first; i <= Math.min(days - 1, last - fromDay); i++)
      if (feeds[weekdayIndex(fromDay + i)]) flies[i] = (flies[i] as number) + wanted;
  });
}

function beginsOn(period: FeedingPeriod, time: number): DayNumber {
  const { earliest, latest } = beginning(period);
  return earliest + Math.floor(time * (latest - earliest + 1));
}

function countIn({ count, arrival }: FeedingPeriod, number: number): number {
  return arrival ? arrival.countLow + number * (arrival.countHigh - arrival.countLow) : count;
}
