/**
 * The state of one culture between two steps: egg cohorts on the strain's clock, adult cohorts on the
 * adults' clock, food left and the larvae's load on it. The arrays are kept and used again, so that a
 * course costs one allocation.
 */
import type { CultureConditions, StrainLife } from '../culture.ts';
import { type AdultTables, adultTables } from './adult-tables.ts';
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
  /** Eaten in the last step. */
  eaten: number;
  /** Adults at which laying is halved. */
  halfAdults: number;
  /** Larval load (grown larvae) at the last step's end and the one before, and the step's crowding. */
  load: number;
  loadBefore: number;
  crowding: number;
  /** Immature cohorts, oldest at `first`, free from `next` on. */
  first: number;
  next: number;
  eggs: Float64Array;
  larvae: Float64Array;
  pupae: Float64Array;
  clock: Float64Array;
  clockBefore: Float64Array;
  /** Crowding met over the larval stage, and the laying window's share of the spread (see below). */
  exposure: Float64Array;
  window: Float64Array;
  /** How much sooner on the clock than the mean the survivors of larval deaths pupate. */
  earlier: Float64Array;
  /** Level of the stage tables that a cohort's spread asks for. */
  level: Float64Array;
  levelBefore: Float64Array;
  /** Eight over the strain's squared CV, and what crowding adds to the square, in such eighths. */
  inverseVariance: number;
  crowdedVariance: number;
  /** Adult cohorts; founders are cohort 0. */
  adultFirst: number;
  adultNext: number;
  adults: Float64Array;
  bornAt: Float64Array;
  /** Adults after the last step, and the share of each cohort left by the last harvest. */
  adultsAlive: number;
  keptByHarvest: number;
  /** Flies and their mass ratio that the last step brought. */
  emerged: number;
  emergedMass: number;
  eggsAlive: number;
  larvaeAlive: number;
  pupaeAlive: number;
  eggsLaid: number;
}

const arrays = 12;
let scratch = new Float64Array(0);

/** A cup as its founders go in, with room for a cohort a step. */
export function openCup(strain: StrainLife, conditions: CultureConditions, days: number, stepsPerDay: number): Cup {
  const size = days * stepsPerDay + 2;
  if (scratch.length < arrays * size) scratch = new Float64Array(arrays * size * 2);
  const part = (i: number) => scratch.subarray(i * size, (i + 1) * size);
  const foodAtStart = conditions.mediumMassG * strain.medium.fliesPerG;
  const cup: Cup = {
    strain,
    stages: stageTables(strain),
    adultsBy: adultTables(strain, stepsPerDay),
    eggShare: strain.stageShares.egg,
    larvaShare: strain.stageShares.larva,
    capacity: larvalCapacity(strain, conditions),
    foodAtStart,
    food: foodAtStart,
    eaten: 0,
    halfAdults: strain.laying.halfAdultsPerCm2 * conditions.surfaceCm2,
    load: 0,
    loadBefore: 0,
    crowding: 0,
    first: 0,
    next: 0,
    eggs: part(0),
    larvae: part(1),
    pupae: part(2),
    clock: part(3),
    clockBefore: part(9),
    exposure: part(4),
    window: part(5),
    earlier: part(11),
    level: part(8),
    levelBefore: part(10),
    inverseVariance: 8 / strain.developmentCv ** 2,
    crowdedVariance: 8 * ((strain.crowdedCv / strain.developmentCv) ** 2 - 1),
    adultFirst: 1,
    adultNext: 1,
    adults: part(6),
    bornAt: part(7),
    adultsAlive: conditions.founders,
    keptByHarvest: 1,
    emerged: 0,
    emergedMass: 0,
    eggsAlive: 0,
    larvaeAlive: 0,
    pupaeAlive: 0,
    eggsLaid: 0,
  };
  cup.adults[0] = conditions.founders;
  return cup;
}

/** Grown larvae that the medium carries at once: its surface, as far as it is deep enough to work in. */
export function larvalCapacity(strain: StrainLife, conditions: CultureConditions): number {
  // Cooked medium weighs about as much as water (1.05 g/ml).
  const depthCm = conditions.mediumMassG / 1.05 / conditions.surfaceCm2;
  const { larvaePerCm2, feedingDepthCm } = strain.crowding;
  return larvaePerCm2 * conditions.surfaceCm2 * -Math.expm1(-depthCm / feedingDepthCm);
}
