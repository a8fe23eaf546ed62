/**
 * The course of one culture: founders lay, larvae crowd each other and eat the medium down, flies
 * emerge, lay in turn and are harvested. The fast engine that every forecast uses.
 */
import type { CultureConditions, CultureCourse, HarvestRule, StrainLife } from '../culture.ts';
import { valueAt } from '../curve.ts';
import { type Cup, openCup } from './cup.ts';
import { type Span, stepCup } from './cup-step.ts';
import { dailyCare } from './moisture.ts';
import { between, meanTemperatureC, type PaceTable } from './pace.ts';

/** Flies that must have emerged before a cup counts as producing. */
export const firstFlies = 5;

/**
 * A culture of `strain` started on day `startDay` of the series behind `pace` (0 = its first day),
 * followed for `days` days. Founders lay once they have settled (a strain's `settlingDays`). Harvests
 * are taken at a day's end. `stepsPerDay` (a divisor of 24) refines the computation; 1 is within about 1 % of
 * the fine limit. Throws RangeError when a number is impossible or the series is too short.
 */
export function cultureCourse(
  strain: StrainLife,
  pace: PaceTable,
  startDay: number,
  conditions: CultureConditions,
  harvest: HarvestRule,
  days: number,
  stepsPerDay = 1,
): CultureCourse {
  checkCourse(pace, startDay, conditions, harvest, days, stepsPerDay);
  const course = emptyCourse(days);
  const cup = openCup(strain, conditions, days, stepsPerDay);
  const care = dailyCare(conditions, days);
  const span: Span = { startHour: startDay * 24, from: 0, to: 0, day: 0 };
  putFoundersIn(cup, pace, span.startHour, conditions.founderAgeDays);
  let emergedSoFar = 0;
  let harvestFrom = harvest.fromAgeDays ?? days;
  for (let day = 0; day < days; day += 1) {
    span.day = day;
    for (let s = 0; s < stepsPerDay; s += 1) {
      span.from = span.startHour + day * 24 + (s * 24) / stepsPerDay;
      span.to = span.from + 24 / stepsPerDay;
      stepCup(cup, pace, span, care);
      noteStep(course, cup, day);
    }
    if (harvest.fromAgeDays === null && emergedSoFar < firstFlies) {
      emergedSoFar += course.emerged[day] as number;
      if (emergedSoFar >= firstFlies) harvestFrom = day + 2;
    }
    if (day >= harvestFrom && (day - harvestFrom) % harvest.everyDays === 0)
      takeHarvest(course, cup, day, harvest.share);
    closeDay(course, cup, day);
  }
  finishMass(course, strain, pace, startDay);
  return course;
}

function putFoundersIn(cup: Cup, pace: PaceTable, startHour: number, ageDays: number): void {
  const aDay = between(pace.adultAge, startHour, startHour + 24);
  cup.cohorts.bornAt[0] = (pace.adultAge[startHour] as number) - ageDays * aDay;
}

function noteStep(course: CultureCourse, cup: Cup, day: number): void {
  course.eggsLaid[day] = (course.eggsLaid[day] as number) + cup.eggsLaid;
  course.emerged[day] = (course.emerged[day] as number) + cup.emerged;
  course.emergedMassMg[day] = (course.emergedMassMg[day] as number) + cup.emergedMass;
}

function takeHarvest(course: CultureCourse, cup: Cup, day: number, share: number): void {
  course.harvested[day] = cup.adultsAlive * share;
  cup.adultsAlive *= 1 - share;
  cup.keptByHarvest = 1 - share;
}

function closeDay(course: CultureCourse, cup: Cup, day: number): void {
  course.eggs[day] = cup.eggsAlive;
  course.larvae[day] = cup.larvaeAlive;
  course.pupae[day] = cup.pupaeAlive;
  course.adults[day] = cup.adultsAlive;
  course.foundersAlive[day] = (cup.cohorts.adults[0] as number) * cup.keptByHarvest;
  course.mediumLeft[day] = cup.food / cup.foodAtStart;
}

/** Turns each day's sum of mass ratios into a mean mass, by the temperature its flies grew up in. */
function finishMass(course: CultureCourse, strain: StrainLife, pace: PaceTable, startDay: number): void {
  const { female, male } = strain.massMg;
  const mean = female * (1 - strain.adult.maleShare) + male * strain.adult.maleShare;
  for (let day = 0; day < course.days; day += 1) {
    const emerged = course.emerged[day] as number;
    if (emerged <= 0) {
      course.emergedMassMg[day] = Number.NaN;
      continue;
    }
    const reared = Math.min(day, 8);
    const warmth = reared > 0 ? meanTemperatureC(pace, startDay + day - reared, reared) : 25;
    const ratio = (course.emergedMassMg[day] as number) / emerged;
    course.emergedMassMg[day] = ratio * mean * valueAt(strain.massByTemperature, warmth);
  }
}

function emptyCourse(days: number): CultureCourse {
  const all = new ArrayBuffer(10 * 8 * days);
  const part = (i: number) => new Float64Array(all, 8 * i * days, days);
  return {
    days,
    eggsLaid: part(0),
    larvae: part(1),
    pupae: part(2),
    adults: part(3),
    foundersAlive: part(4),
    emerged: part(5),
    harvested: part(6),
    mediumLeft: part(7),
    emergedMassMg: part(8),
    eggs: part(9),
  };
}

function checkCourse(
  pace: PaceTable,
  startDay: number,
  conditions: CultureConditions,
  harvest: HarvestRule,
  days: number,
  stepsPerDay: number,
): void {
  const { founders, founderAgeDays, mediumMassG, surfaceCm2 } = conditions;
  requireThat(Number.isInteger(startDay) && startDay >= 0, 'startDay', startDay);
  requireThat(Number.isInteger(days) && days >= 1 && startDay + days <= pace.days, 'days', days);
  requireThat(founders >= 0 && founders < 1e6, 'founders', founders);
  requireThat(founderAgeDays >= 0 && founderAgeDays < 400, 'founderAgeDays', founderAgeDays);
  requireThat(mediumMassG > 0 && mediumMassG < 1e6, 'mediumMassG', mediumMassG);
  requireThat(surfaceCm2 > 0 && surfaceCm2 < 1e6, 'surfaceCm2', surfaceCm2);
  requireThat(Number.isInteger(harvest.everyDays) && harvest.everyDays >= 1, 'everyDays', harvest.everyDays);
  requireThat(harvest.share >= 0 && harvest.share <= 1, 'share', harvest.share);
  requireThat(stepsPerDay >= 1 && 24 % stepsPerDay === 0, 'stepsPerDay', stepsPerDay);
}

function requireThat(holds: boolean, argument: string, value: number): void {
  if (!holds) throw new RangeError(`cultureCourse: ${argument} is ${value}, which cannot be`);
}
