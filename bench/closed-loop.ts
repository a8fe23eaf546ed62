/**
 * The whole tool in worlds that it does not know: a keeper follows it for weeks, against the smallest
 * habits that are as safe. FLYLARDER_HOUSEHOLDS and FLYLARDER_WEEKS make it longer.
 */
import { performance } from 'node:perf_hooks';
import { smallestHabit } from '../tests/simulation/closed-loop/habit.ts';
import { otherHousehold } from '../tests/simulation/closed-loop/other-world.ts';
import { keeperYear } from '../tests/simulation/closed-loop/virtual-keeper.ts';
import type { BenchResult } from './bench-result.ts';

export async function run(): Promise<BenchResult> {
  const households = Number(process.env.FLYLARDER_HOUSEHOLDS ?? 3);
  const weeks = Number(process.env.FLYLARDER_WEEKS ?? 16);
  const rows: BenchResult['rows'] = [];
  const sums = { cups: 0, habit: 0, short: 0, days: 0 };
  for (let seed = 1; seed <= households; seed++) {
    const household = otherHousehold(seed, weeks);
    const began = performance.now();
    const year = keeperYear(household);
    const seconds = (performance.now() - began) / 1000;
    const mostShort = Math.floor(0.01 * year.judgedDays);
    const two = smallestHabit(household, 2, mostShort);
    const one = smallestHabit(household, 1, mostShort);
    const cups = year.cups + year.bought;
    rows.push({
      what: `household ${seed}: ${household.fliesADay} flies a day, ${weeks} weeks, ${(seconds / year.decisions).toFixed(1)} s a decision`,
      figure: `${year.cups} cups + ${year.bought} bought, ${year.sessions} sessions, ${year.shortDays} short days`,
      baseline: `two weekdays ${two?.cups ?? 'none holds'}, one weekday ${one?.cups ?? 'none holds'}`,
      ratio: two ? (cups / two.cups).toFixed(2) : '-',
      target: '0.80',
    });
    if (two) {
      sums.cups += cups;
      sums.habit += two.cups;
    }
    sums.short += year.shortDays;
    sums.days += year.judgedDays;
  }
  rows.push({
    what: 'all households',
    figure: `${sums.cups} cups, short on ${((100 * sums.short) / sums.days).toFixed(2)} % of days`,
    baseline: `two weekdays: ${sums.habit} cups, at most 1 % short`,
    ratio: (sums.cups / sums.habit).toFixed(2),
    target: '0.80',
  });
  return { title: 'Closed loop: a keeper who follows the plan, weekly, in an unknown world', rows };
}
