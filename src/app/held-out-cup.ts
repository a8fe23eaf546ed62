/** Last flies of a cup that ended, as the planner counts on them: nothing more emerges, and none are founders. */
import type { ExistingCup } from '../planner/index.ts';
import { heldOutDays } from './nominal-cup.ts';
import type { CupHistory } from './cup-history.ts';

/** A day or an age far beyond any plan. */
export const never = 1_000_000;

/** @param draws of the other cups; the flies are the same in each. */
export function heldOutCup(
  { culture, start, end }: CupHistory,
  today: number,
  flies: number,
  draws: number,
): ExistingCup {
  const same = (value: number) => new Float64Array(draws).fill(value);
  const spentAge = (end ?? today) - start + heldOutDays;
  return {
    id: culture.culture,
    bought: true,
    ageDays: today - start,
    curve: {
      emergedByAge: new Float32Array(spentAge + 1),
      founderFromAge: never,
      founderUntilAge: 0,
      spentAge,
    },
    foundersFromDay: never,
    draws: { logPace: same(0), logYield: same(0), endAge: same(Number.POSITIVE_INFINITY), fliesNow: same(flies) },
  };
}
