/** What the books expect of one cup in its place, before anything was seen of it. */
import {
  type CultureConditions,
  type CultureCourse,
  type CultureDates,
  cultureDates,
  expectedCourse,
  type HarvestRule,
  ordinaryFounderAge,
} from '../biology/index.ts';
import { dayNumber } from '../foundation/index.ts';
import type { CultureFacts } from '../logbook/index.ts';
import type { CupCurve } from '../planner/index.ts';
import { type HouseholdModel, paceOf, type StrainModel } from './household-model.ts';
import { humidityOf } from './humidity.ts';
import { moistureSpells } from './moisture-spells.ts';

export interface NominalCup {
  course: CultureCourse;
  /** Ages in days. */
  dates: CultureDates;
}

/** Keepers feed daily from a cup that gives, leaving most flies to rest: a common way of harvesting. */
export const ordinaryHarvest: HarvestRule = { everyDays: 1, share: 0.5, fromAgeDays: null };
/** Days of a cup's life that are worked out; no strain is kept longer. */
export const cupLifeDays = 75;

export function nominalCup(model: HouseholdModel, strain: StrainModel, culture: CultureFacts): NominalCup {
  return nominalAt(model, strain, culture.places, dayNumber(culture.startedOn), conditionsOf(model, strain, culture));
}

/** How the cup was set up, and what is known of its medium since. */
export function conditionsOf(model: HouseholdModel, strain: StrainModel, culture: CultureFacts): CultureConditions {
  const humidityPercent = humidityOf(model, culture);
  return {
    founders: culture.founders,
    founderAgeDays: culture.founderAgeDays ?? ordinaryFounderAge(strain.life),
    mediumMassG: culture.mediumMassG,
    surfaceCm2: culture.surfaceCm2,
    moistureSpells: moistureSpells(culture),
    ...(culture.liveYeast && { liveYeast: culture.liveYeast }),
    ...(humidityPercent !== null && { humidityPercent }),
  };
}

/** @param startDay day number of the start; must lie in the model's series. */
export function nominalAt(
  model: HouseholdModel,
  strain: StrainModel,
  stays: CultureFacts['places'],
  startDay: number,
  conditions: CultureConditions,
): NominalCup {
  const pace = paceOf(model, strain, stays);
  const start = startDay - model.firstDay;
  const course = expectedCourse(strain.life, pace, start, conditions, ordinaryHarvest, cupLifeDays);
  return { course, dates: cultureDates(strain.life, pace, start, course) };
}

/**
 * Days for which the last flies of a cup that is thrown out can still be fed: keepers tap them out into a
 * clean holding cup (common practice, no source).
 */
export const heldOutDays = 7;

/** The planner's view of a cup: it gives until it is spent, and its last flies are fed a few days more. */
export function cupCurve({ course, dates }: NominalCup): CupCurve {
  const spent = Math.floor(dates.spent);
  return {
    emergedByAge: Float32Array.from(course.emerged, (flies, age) => (age <= spent ? flies : 0)),
    founderFromAge: Math.ceil(dates.founderFrom),
    founderUntilAge: Math.min(Math.floor(dates.founderUntil), spent - 1),
    spentAge: spent + heldOutDays,
  };
}
