/**
 * How cups fail: not by one throw of a coin but at their time. Mould comes while larvae are still few,
 * mites late. No published rate for feeder cups exists; the shape is common practice, the height is
 * learned from a household's own logbook.
 */
import type { CultureConditions, StrainLife } from '../culture.ts';
import { daysUntil, type PaceTable } from '../life/pace.ts';

/** Failures expected of an ordinary cup over its life, as a cumulated hazard; common practice. */
export const ordinaryFailure = { mould: 0.04, other: 0.02, mites: 0.02 };
/** Ages at which mould takes half of those it takes, days at an ordinary 23 C. */
const mouldAgeDays = 7;

export interface FailureCourse {
  /** Chance that a cup still alive at the day's beginning fails on it, by cause. */
  mould: Float64Array;
  other: Float64Array;
  mites: Float64Array;
  /** Share of cups not failed by the day's end. */
  standing: Float64Array;
}

/**
 * Chance of failing by day of age over `days` days. Mould weighs three times as much with few founders
 * (they keep the surface clean and larvae work it) and on too wet medium; mites' hazard follows their
 * growth at the temperatures of `pace` from one mite in a hundred cups' keeping on the starting day.
 */
export function failureCourse(
  strain: StrainLife,
  pace: PaceTable,
  startDay: number,
  conditions: CultureConditions,
  days: number,
): FailureCourse {
  const course: FailureCourse = {
    mould: new Float64Array(days),
    other: new Float64Array(days),
    mites: new Float64Array(days),
    standing: new Float64Array(days),
  };
  const mould = ordinaryFailure.mould * fewFounders(conditions);
  let standing = 1;
  for (let day = 0; day < days; day += 1) {
    const wet = wetOn(conditions, day) ? 3 : 1;
    course.mould[day] = mould * wet * (mouldShare(day + 1) - mouldShare(day));
    course.other[day] = ordinaryFailure.other / 40;
    course.mites[day] = ordinaryFailure.mites * miteStep(strain, pace, startDay, day);
    const hazard = (course.mould[day] as number) + (course.other[day] as number) + (course.mites[day] as number);
    standing *= Math.exp(-hazard);
    course.standing[day] = standing;
  }
  return course;
}

/** Age in days at which mites, if there were any at the start, have become trouble; Infinity past the series. */
export function miteTroubleAge(strain: StrainLife, pace: PaceTable, startDay: number): number {
  return daysUntil(pace.mites, startDay, strain.mites.logGrowthToTrouble);
}

function fewFounders(conditions: CultureConditions): number {
  const perCm2 = conditions.founders / conditions.surfaceCm2;
  return 1 + 2 * Math.exp(-perCm2 / 0.2);
}

/** Cumulated share of mould failures by age: most in the first fortnight. */
function mouldShare(age: number): number {
  return 1 - Math.exp(-Math.LN2 * (age / mouldAgeDays) ** 1.5);
}

/** Mites' hazard rises with their number, and is 1 in all by the time that they are trouble. */
function miteStep(strain: StrainLife, pace: PaceTable, startDay: number, day: number): number {
  const last = pace.days * 24;
  const grown = (age: number) => {
    const hour = Math.min(last, (startDay + age) * 24);
    return Math.exp((pace.mites[hour] as number) - (pace.mites[startDay * 24] as number));
  };
  return (grown(day + 1) - grown(day)) / Math.exp(strain.mites.logGrowthToTrouble);
}

function wetOn(conditions: CultureConditions, day: number): boolean {
  return (conditions.moistureSpells ?? []).some(
    (spell) => spell.state === 'wet' && day >= spell.fromAgeDays && day <= spell.untilAgeDays,
  );
}
