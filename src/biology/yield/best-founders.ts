/** How many founders give most flies: too few leave medium unused, too many starve their larvae. */
import type { CultureConditions, HarvestRule, StrainLife } from '../culture.ts';
import { expectedCourse } from '../life/expected-course.ts';
import type { PaceTable } from '../life/pace.ts';
import { throwOutAge } from './dates.ts';

export interface BestFounders {
  founders: number;
  /** For each number tried: flies that emerge before the cup is thrown out, less the founders put in. */
  tried: { founders: number; netFlies: number }[];
}

const tries = [5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 300];

/**
 * The number of founders, among some between 5 and 300, after which more bring no more: the smallest
 * that gives at least 99 % of the best net yield. Other conditions as given.
 */
export function bestFounders(
  strain: StrainLife,
  pace: PaceTable,
  startDay: number,
  conditions: CultureConditions,
  harvest: HarvestRule,
): BestFounders {
  const days = Math.max(1, Math.min(pace.days - startDay, Math.floor(throwOutAge(strain, pace, startDay))));
  const tried = tries.map((founders) => {
    const course = expectedCourse(strain, pace, startDay, { ...conditions, founders }, harvest, days);
    return { founders, netFlies: course.emerged.reduce((sum, flies) => sum + flies, 0) - founders };
  });
  const best = Math.max(...tried.map((t) => t.netFlies));
  const enough = tried.find((t) => t.netFlies >= 0.99 * best) ?? tried[0];
  return { founders: enough?.founders ?? 0, tried };
}
