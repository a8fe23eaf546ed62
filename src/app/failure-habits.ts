/** When cups fail and when it is seen; how often is learned. */
import { type CultureConditions, failureCourse } from '../biology/index.ts';
import type { CultureFacts } from '../logbook/index.ts';
import { type HouseholdModel, paceOf, type StrainModel } from './household-model.ts';
import { cupLifeDays } from './nominal-cup.ts';

/** A keeper who feeds every day notices a dead cup within days: common practice, no source. */
export const failureNoticedDays = 3;

/**
 * Of the cups that fail before `spentAge`, the share that has failed before age 0, 1, 2 ... days, by the
 * hazard of mould, mites and the rest: 0 at 0, 1 from `spentAge` on.
 */
export function failingAges(
  model: HouseholdModel,
  strain: StrainModel,
  stays: CultureFacts['places'],
  startDay: number,
  conditions: CultureConditions,
  spentAge: number,
): Float64Array {
  const days = Math.max(1, Math.ceil(Math.min(spentAge, cupLifeDays)));
  const { standing } = failureCourse(
    strain.life,
    paceOf(model, strain, stays),
    startDay - model.firstDay,
    conditions,
    days,
  );
  const failed = 1 - (standing[days - 1] as number);
  return Float64Array.from({ length: days + 1 }, (_, age) =>
    age === 0 ? 0 : failed > 0 ? (1 - (standing[age - 1] as number)) / failed : age / days,
  );
}
