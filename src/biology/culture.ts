/**
 * One culture from founders to its end: what goes in and what comes out, in plain terms. The engine
 * that joins them is in life/; yield/ reads dates and numbers off the course.
 */

/** How one strain lives: everything the engine needs. Values come from data/ through reference/. */
export interface StrainLife {
  /** Key such as `melanogaster` or `hydei`. */
  key: string;
  name: string;
  species: string;
  /** Rate of development, egg to adult, per day at `temperatureC`; see rates/. */
  developmentRate: (temperatureC: number) => number;
  /** Shares of the egg-to-adult time, summing to 1. */
  stageShares: { egg: number; larva: number; pupa: number };
  /** Coefficient of variation of an individual's egg-to-adult time, uncrowded. */
  developmentCv: number;
  [more: string]: unknown;
}

/** What a culture is given at the start. */
export interface CultureConditions {
  founders: number;
  /** Mean age of the founders in days since they emerged. */
  founderAgeDays: number;
  mediumMassG: number;
  surfaceCm2: number;
}

/** When flies are taken out: every `everyDays` days from the first emergence on, that share of them. */
export interface HarvestRule {
  everyDays: number;
  share: number;
  /** First day of age on which flies are taken; null = two days after the first emerge. */
  fromAgeDays: number | null;
}

/** The course of one culture by whole days of age; index 0 is the starting day. */
export interface CultureCourse {
  days: number;
  eggsLaid: Float64Array;
  larvae: Float64Array;
  pupae: Float64Array;
  /** Adults in the cup at the end of the day, founders included. */
  adults: Float64Array;
  foundersAlive: Float64Array;
  emerged: Float64Array;
  harvested: Float64Array;
  /** Medium left, share of what it began with. */
  mediumLeft: Float64Array;
  /** Mean fresh mass of the flies that emerged that day, mg; NaN on a day without any. */
  emergedMassMg: Float64Array;
}

/** Ages in days (fractional) read off a course. */
export interface CultureDates {
  firstLarvae: number;
  firstPupae: number;
  firstAdults: number;
  peak: number;
  founderFrom: number;
  founderUntil: number;
  spent: number;
}
