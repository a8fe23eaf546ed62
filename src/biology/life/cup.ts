/**
 * The state of one culture between two steps: egg cohorts on the strain's clock, adult cohorts on the
 * adults' clock, food left and the larvae's load on it. The arrays are kept and used again, so that a
 * course costs one allocation.
 */
import type { CultureConditions, StrainLife } from '../culture.ts';
import { type AdultTables, adultTables } from './adult-tables.ts';
import { levelAt } from './level.ts';
import { type StageTables, stageTables } from './stage-tables.ts';

export interface Cup {
  strain: StrainLife;
  stages: StageTables;
  adultsBy: AdultTables;
  eggShare: number;
  larvaShare: number;
  /** Larval load (in grown larvae) that the medium carries uncrowded. */
  capacity: number;
  /** Full-sized flies that the medium could feed at first, and what is left of that. */
  foodAtStart: number;
  food: number;
  /** Adults at which laying is halved. */
  halfAdults: number;
  /**
   * Larval load (grown larvae) at the last step's end, its middle and the one before's end; and half a
   * step ahead if nobody died.
   */
  load: number;
  loadHalfway: number;
  loadBefore: number;
  loadAhead: number;
  /** Larval growth on the clock in the last step, its speed, crowding, and the size flies reach in it. */
  grown: number;
  larvalSpeed: number;
  crowding: number;
  size: number;
  /** Clock before which no larva pupates, whatever its cohort's spread. */
  firstPupation: number;
  /** Fewer than this in a cohort are no animals any more. */
  nobody: number;
  /** Immature cohorts, oldest at `first`, free from `next` on. */
  first: number;
  firstYoung: number;
  next: number;
  cohorts: Cohorts;
  /** Eight over the strain's squared CV, and what crowding adds to the square, in such eighths. */
  inverseVariance: number;
  crowdedVariance: number;
  /** The same for the time to pupation, of which only the larval part widens; and what a laying window adds to it. */
  crowdedToPupation: number;
  windowToPupation: number;
  adultFirst: number;
  adultNext: number;
  /** Adults after the last step, and the share of each cohort left by the last harvest. */
  adultsAlive: number;
  keptByHarvest: number;
  /** Flies and their mass ratio that the last step brought. */
  emerged: number;
  emergedBefore: number;
  emergedMass: number;
  eggsAlive: number;
  larvaeAlive: number;
  pupaeAlive: number;
  eggsLaid: number;
}

/** Animals of a day's cohort that may be left out. */
const nobodyPerDay = 0.003;

/** One number a cohort, at the cohort's place; kept from course to course: no course interrupts another. */
export interface Cohorts {
  eggs: Float64Array;
  larvae: Float64Array;
  pupae: Float64Array;
  /** Eggs' clock; the one that crowding slows from the mean's hatching on; and the pupae's, 0 until the mean has pupated. */
  eggClock: Float64Array;
  clock: Float64Array;
  pupalClock: Float64Array;
  /** Crowding met over the larval stage, and the laying window's share of the spread (see below). */
  exposure: Float64Array;
  window: Float64Array;
  /** Level of the stage tables that a cohort's spread asks for, as eggs, larvae and pupae. */
  eggLevel: Uint8Array;
  level: Uint8Array;
  pupalLevel: Uint8Array;
  /** By how much the larvae alive hatched later than the cohort's mean, on the unslowed clock. */
  lateBy: Float64Array;
  /** Survivor functions reached: whoever of a cohort has left a stage does not come back into it. */
  eggLeft: Float64Array;
  larvaLeft: Float64Array;
  pupaLeft: Float64Array;
  /** Mass of the cohort's flies over that of uncrowded ones. */
  massRatio: Float64Array;
  /** Adult cohorts; founders are cohort 0. */
  adults: Float64Array;
  bornAt: Float64Array;
}

let cohorts = roomFor(0);

function cohortsFor(size: number): Cohorts {
  if (cohorts.eggs.length < size) cohorts = roomFor(2 * size);
  return cohorts;
}

function roomFor(size: number): Cohorts {
  const column = () => new Float64Array(size);
  return {
    eggs: column(),
    larvae: column(),
    pupae: column(),
    eggClock: column(),
    clock: column(),
    pupalClock: column(),
    exposure: column(),
    window: column(),
    eggLevel: new Uint8Array(size),
    level: new Uint8Array(size),
    pupalLevel: new Uint8Array(size),
    lateBy: column(),
    eggLeft: column(),
    larvaLeft: column(),
    pupaLeft: column(),
    massRatio: column(),
    adults: column(),
    bornAt: column(),
  };
}

/** A cup as its founders go in, with room for a cohort a step. */
export function openCup(strain: StrainLife, conditions: CultureConditions, days: number, stepsPerDay: number): Cup {
  const { egg, larva } = strain.stageShares;
  const crowdedVariance = 8 * ((strain.crowdedCv / strain.developmentCv) ** 2 - 1);
  const foodAtStart = conditions.mediumMassG * strain.medium.fliesPerG;
  const cup: Cup = {
    strain,
    stages: stageTables(strain),
    adultsBy: adultTables(strain, stepsPerDay),
    eggShare: egg,
    larvaShare: larva,
    capacity: larvalCapacity(strain, conditions),
    foodAtStart,
    food: foodAtStart,
    halfAdults: strain.laying.halfAdultsPerCm2 * conditions.surfaceCm2,
    load: 0,
    loadHalfway: 0,
    loadBefore: 0,
    loadAhead: 0,
    grown: 0,
    larvalSpeed: 1,
    crowding: 0,
    size: 1,
    firstPupation: 0,
    nobody: nobodyPerDay / stepsPerDay,
    first: 0,
    firstYoung: 0,
    next: 0,
    cohorts: cohortsFor(days * stepsPerDay + 2),
    inverseVariance: 8 / strain.developmentCv ** 2,
    crowdedVariance,
    crowdedToPupation: (crowdedVariance * larva) / (egg + larva),
    windowToPupation: 1 / (egg + larva),
    adultFirst: 1,
    adultNext: 1,
    adultsAlive: conditions.founders,
    keptByHarvest: 1,
    emerged: 0,
    emergedBefore: 0,
    emergedMass: 0,
    eggsAlive: 0,
    larvaeAlive: 0,
    pupaeAlive: 0,
    eggsLaid: 0,
  };
  cup.firstPupation = cup.stages.larvaEnds[levelAt(cup.crowdedVariance + 2)] as number;
  cup.cohorts.adults[0] = conditions.founders;
  return cup;
}

/** Grown larvae that the medium carries at once: its surface, as far as it is deep enough to work in. */
export function larvalCapacity(strain: StrainLife, conditions: CultureConditions): number {
  // Cooked medium weighs about as much as water (1.05 g/ml).
  const depthCm = conditions.mediumMassG / 1.05 / conditions.surfaceCm2;
  const { larvaePerCm2, feedingDepthCm } = strain.crowding;
  return larvaePerCm2 * conditions.surfaceCm2 * -Math.expm1(-depthCm / feedingDepthCm);
}
