/**
 * Planned feeding that nobody wrote down, presumed of the oldest cups that hold flies. How many they hold is
 * walked through the days with the books' emergence times one factor for all of the strain's cups: with the
 * books alone, a household whose cups give more would be taken to empty one cup after another each day, every cup
 * asked for nearly the whole ration, and what was seen in them then would speak for still richer cups.
 */
import { type DayNumber, dayNumber } from '../foundation/index.ts';
import { ordinaryPrior, wordBeginsAtFlies } from '../learning/index.ts';
import type { StrainModel } from './household-model.ts';
import type { CupHistory, Take } from './cup-history.ts';

/** @property wanted flies of each day from `from` to the day before `today`. */
interface Days {
  from: DayNumber;
  today: DayNumber;
  wanted: Float64Array;
}

/** Flies seen on a day in a cup. */
interface Seen {
  flies: number;
  day: DayNumber;
}

interface Walk {
  takes: { cup: CupHistory; take: Take }[];
  /** Of each look, log of the flies seen against those the walk has there. */
  strays: number[];
}

/** Factors on the books that are tried: a tenth apart on the log, as far to either side as learning believes yields. */
const factors = Array.from({ length: 41 }, (_, i) => Math.exp((i - 20) * 0.1));
/** One look strays by so much (log): cups differ, counts and words err. */
const lookStray = 0.6;

/** Adds presumed takes to the cups, oldest first. */
export function presumeFeedings(strain: StrainModel, cups: CupHistory[], days: Days): void {
  const looks = cups.map(fliesSeen);
  const walks = looks.some((seen) => seen.length > 0) ? factors : [1];
  let best: { walk: Walk; misfit: number } | null = null;
  for (const factor of walks) {
    const walk = walkThrough(strain, cups, looks, days, factor);
    const misfit =
      walk.strays.reduce((sum, stray) => sum + Math.abs(stray), 0) / lookStray +
      0.5 * (Math.log(factor) / ordinaryPrior.householdYieldSd) ** 2;
    if (!best || misfit < best.misfit) best = { walk, misfit };
  }
  for (const { cup, take } of best?.walk.takes ?? []) cup.takes.push(take);
}

/** Counts and words of a cup's own flies; the founders alone are seen before. */
function fliesSeen({ culture, nominal, start }: CupHistory): Seen[] {
  return culture.seen.flatMap(({ on, count, amount }) => {
    const day = dayNumber(on);
    const flies = count ?? (amount && fliesOfWord[amount]);
    return flies === null || flies === undefined || day - start < nominal.dates.firstAdults ? [] : [{ flies, day }];
  });
}

/** Middles of what the words mean, on the log; the last has no upper end, and its middle is chosen. */
const { few, some, plenty, swarming } = wordBeginsAtFlies;
const fliesOfWord = {
  none: 0,
  few: Math.sqrt(few * some),
  some: Math.sqrt(some * plenty),
  plenty: Math.sqrt(plenty * swarming),
  swarming: swarming * 1.5,
};

function walkThrough(strain: StrainModel, cups: CupHistory[], looks: Seen[][], days: Days, factor: number): Walk {
  const stock = new Float64Array(cups.length);
  const walk: Walk = { takes: [], strays: [] };
  for (let day = days.from; day < days.today; day++) {
    let recorded = false;
    cups.forEach((cup, i) => {
      const alive = day >= cup.start && (cup.end === null || day < cup.end);
      const emerged = factor * (cup.nominal.course.emerged[day - cup.start] ?? 0);
      stock[i] = alive ? (stock[i] as number) * strain.adultDailySurvival + emerged : 0;
      const before = stock[i] as number;
      for (const take of cup.takes) {
        if (take.day !== day) continue;
        recorded ||= take.feeding;
        stock[i] = take.emptied ? 0 : Math.max(0, (stock[i] as number) - (take.flies ?? (stock[i] as number) / 2));
      }
      for (const seen of looks[i] as Seen[]) {
        if (seen.day === day && alive) walk.strays.push(Math.log((seen.flies + 1) / (before + 1)));
      }
    });
    if (!recorded) presumeOneDay(cups, stock, day, days.wanted[day - days.from] ?? 0, walk.takes);
  }
  return walk;
}

function presumeOneDay(
  cups: CupHistory[],
  stock: Float64Array,
  day: DayNumber,
  wanted: number,
  takes: Walk['takes'],
): void {
  let missing = wanted;
  cups.forEach((cup, i) => {
    if (missing <= 0) return;
    const flies = Math.min(missing, stock[i] as number);
    if (flies < 1) return;
    const take = { day, flies, taps: null, emptied: false, presumed: true, feeding: true, wanted: missing };
    takes.push({ cup, take });
    stock[i] = (stock[i] as number) - flies;
    missing -= flies;
  });
}
