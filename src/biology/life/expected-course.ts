/**
 * The course to expect of a cup with few founders. Which of them are females and how long they live is
 * chance, and a cup gives less than in proportion to what its founders lay: the mean over the chances lies
 * below the course of the mean. Where founders are many the two are the same.
 */
import type { CultureConditions, CultureCourse, HarvestRule, StrainLife } from '../culture.ts';
import { cultureCourse } from './course.ts';
import { founderLayingVariance } from './founder-chance.ts';
import type { PaceTable } from './pace.ts';

/** Founders from which chance takes less than half a per cent of a cup's flies. */
export const manyFounders = 50;

/**
 * As `cultureCourse`, but the mean over chance: with fewer than `manyFounders` founders the weighted mean of
 * three courses, whose founders lay like fewer, as many and more than there are, with the mean and variance
 * that chance gives their laying (and, from four founders on, the normal law's fourth moment).
 */
export function expectedCourse(
  strain: StrainLife,
  pace: PaceTable,
  startDay: number,
  conditions: CultureConditions,
  harvest: HarvestRule,
  days: number,
): CultureCourse {
  const { founders } = conditions;
  const courseOf = (n: number) => cultureCourse(strain, pace, startDay, { ...conditions, founders: n }, harvest, days);
  const middle = courseOf(founders);
  if (founders <= 0 || founders >= manyFounders) return middle;
  const variance = founderLayingVariance(founders);
  const aside = Math.min(1, Math.sqrt(3 * variance));
  const weight = Math.min(0.5, variance / (2 * aside * aside));
  const few = courseOf(founders * (1 - aside));
  return mixed([few, middle, courseOf(founders * (1 + aside))], [weight, 1 - 2 * weight, weight]);
}

const counts = [
  'eggsLaid',
  'eggs',
  'larvae',
  'pupae',
  'adults',
  'foundersAlive',
  'emerged',
  'harvested',
  'mediumLeft',
] as const;

/** The weighted mean of courses, day by day; mass by the flies that have it. Written into the middle one. */
function mixed(courses: [CultureCourse, CultureCourse, CultureCourse], weights: number[]): CultureCourse {
  const into = courses[1];
  const sumOf = (of: (course: CultureCourse) => number) =>
    courses.reduce((sum, course, i) => sum + (weights[i] as number) * of(course), 0);
  for (let day = 0; day < into.days; day += 1) {
    const mass = sumOf(({ emerged, emergedMassMg }) =>
      (emerged[day] as number) > 0 ? (emerged[day] as number) * (emergedMassMg[day] as number) : 0,
    );
    for (const key of counts) into[key][day] = sumOf((course) => course[key][day] as number);
    into.emergedMassMg[day] = mass / (into.emerged[day] as number);
  }
  return into;
}
