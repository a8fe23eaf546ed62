/** The habit to beat: the same number of cups on the same weekdays, every week, whatever is seen. */
import { feedFrom, generator, liveADay, newCup, type OtherCup, type OtherHousehold, roomC } from './other-world.ts';

export interface YearResult {
  shortDays: number;
  judgedDays: number;
  cups: number;
  sessions: number;
  bought: number;
}

const foundersPerCup = 50;
/** A year of `cupsEach` cups on each of the weekdays. */
export function habitYear(household: OtherHousehold, weekdays: number[], cupsEach: number): YearResult {
  const random = generator(household.seed);
  const { runUpDays, throwOutDays } = household.fly;
  const cups: OtherCup[] = [];
  const result: YearResult = { shortDays: 0, judgedDays: 0, cups: 0, sessions: 0, bought: 0 };
  for (let day = -runUpDays; day < household.weeks * 7; day++) {
    const temperatureC = roomC(household, day, random);
    for (const cup of cups) liveADay(cup, day, temperatureC);
    for (const cup of cups) if (day - cup.start > throwOutDays) cup.spentOn ??= day;
    if (weekdays.includes(((day % 7) + 7) % 7)) {
      const started = startCups(household, cups, day, cupsEach, random);
      if (day >= 0) {
        result.cups += started;
        result.sessions += 1;
      }
    }
    const given = feedFrom(cups, household.fliesADay);
    if (day >= 0) {
      result.judgedDays++;
      if (given < 0.95 * household.fliesADay) result.shortDays++;
    }
  }
  return result;
}

function startCups(
  household: OtherHousehold,
  cups: OtherCup[],
  day: number,
  wanted: number,
  random: () => number,
): number {
  const { runUpDays, bestFrom, bestUntil } = household.fly;
  let started = 0;
  for (let i = 0; i < wanted; i++) {
    // The run-up begins with founders from outside, as a household does.
    if (day >= -runUpDays + bestFrom + 1) {
      const givers = cups.filter((c) => day - c.start >= bestFrom && day - c.start <= bestUntil).reverse();
      if (feedFrom(givers, foundersPerCup) < 0.6 * foundersPerCup) break;
    }
    cups.push(newCup(household, `h${day}-${i}`, day, foundersPerCup, random));
    started++;
  }
  return started;
}

/** The smallest habit on the given number of weekdays, its best days, with at most `asked` short days a year. */
export function smallestHabit(household: OtherHousehold, howMany: 1 | 2, mostShortDays: number): YearResult | null {
  const days = household.workWeekdays;
  const choices = howMany === 1 ? days.map((d) => [d]) : days.flatMap((a, i) => days.slice(i + 1).map((b) => [a, b]));
  for (let cupsEach = 1; cupsEach <= 16; cupsEach++) {
    const years = choices.map((weekdays) => habitYear(household, weekdays, cupsEach));
    const best = years.sort((a, b) => a.shortDays - b.shortDays)[0];
    if (best && best.shortDays <= mostShortDays) return best;
  }
  return null;
}
