/**
 * The whole tool in worlds that it does not know: a keeper follows it for weeks, against the smallest habits
 * that are as safe. FLYLARDER_HOUSEHOLDS=1-50 and FLYLARDER_WEEKS=52 make it a year of many; each household
 * is told on standard error when it is done.
 */
import { smallestHabit, type YearResult } from '../tests/simulation/closed-loop/habit.ts';
import { type OtherHousehold, otherHousehold } from '../tests/simulation/closed-loop/other-world.ts';
import { keeperYear } from '../tests/simulation/closed-loop/virtual-keeper.ts';
import { askedSeeds } from './asked-seeds.ts';
import type { BenchResult } from './bench-result.ts';

interface Compared {
  household: OtherHousehold;
  year: YearResult;
  cpuSecondsADecision: number;
  two: YearResult | null;
  one: YearResult | null;
}

export async function run(): Promise<BenchResult> {
  const weeks = Number(process.env.FLYLARDER_WEEKS ?? 16);
  const compared = askedSeeds(3).map((seed) => compare(otherHousehold(seed, weeks)));
  const title = `Closed loop: a keeper who follows the plan, weekly, ${weeks} weeks in an unknown world`;
  return { title, rows: [...compared.map(row), total(compared)] };
}

function compare(household: OtherHousehold): Compared {
  const began = process.cpuUsage();
  const year = keeperYear(household);
  const used = process.cpuUsage(began);
  const mostShort = Math.floor(0.01 * year.judgedDays);
  const result = {
    household,
    year,
    cpuSecondsADecision: (used.user + used.system) / 1e6 / year.decisions,
    two: smallestHabit(household, 2, mostShort),
    one: smallestHabit(household, 1, mostShort),
  };
  console.error(Object.values(row(result)).join(' | '));
  return result;
}

function row({ household, year, cpuSecondsADecision, two, one }: Compared): BenchResult['rows'][number] {
  const { seed, fly, meanC, fliesADay } = household;
  return {
    what: `${seed}: ${fly.strain}, ${meanC.toFixed(1)} C, ${fliesADay} flies a day, ${cpuSecondsADecision.toFixed(1)} s of CPU a decision`,
    figure: `${year.cups} cups + ${year.bought} bought, ${year.sessions} sessions, ${year.shortDays} short days`,
    baseline: `two weekdays ${two?.cups ?? 'none holds'}, one weekday ${one?.cups ?? 'none holds'}`,
    ratio: two ? ((year.cups + year.bought) / two.cups).toFixed(2) : '-',
    target: '0.80',
  };
}

/** Cups are compared over the households in which a habit on two weekdays holds. */
function total(compared: Compared[]): BenchResult['rows'][number] {
  const sum = (of: (each: Compared) => number) => compared.reduce((all, each) => all + of(each), 0);
  const cups = sum(({ year, two }) => (two ? year.cups + year.bought : 0));
  const habit = sum(({ two }) => two?.cups ?? 0);
  const held = compared.filter(({ year }) => year.shortDays <= 0.01 * year.judgedDays).length;
  return {
    what: `all ${compared.length}, ${held} of them short on at most 1 % of days`,
    figure: `${sum(({ year }) => year.cups)} cups + ${sum(({ year }) => year.bought)} bought, ${sum(({ year }) => year.sessions)} sessions, short on ${sum(({ year }) => year.shortDays)} of ${sum(({ year }) => year.judgedDays)} days`,
    baseline: `two weekdays, at most 1 % short: ${habit} cups, ${sum(({ two }) => two?.sessions ?? 0)} sessions`,
    ratio: (cups / habit).toFixed(2),
    target: '0.80',
  };
}
