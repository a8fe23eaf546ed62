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
  firstYoung: number;
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
/** Columns of the state, kept from course to course: a course is never interrupted by another. */
let columns: Float64Array[] = [];

function columnsFor(size: number): Float64Array[] {
  if ((columns[0]?.length ?? 0) < size) columns = Array.from({ length: arrays }, () => new Float64Array(2 * size));
  return columns;
}

/** A cup as its founders go in, with room for a cohort a step. */
export function openCup(strain: StrainLife, conditions: CultureConditions, days: number, stepsPerDay: number): Cup {
  const column = columnsFor(days * stepsPerDay + 2);
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
    firstYoung: 0,
    next: 0,
    eggs: column[0] as Float64Array,
    larvae: column[1] as Float64Array,
    pupae: column[2] as Float64Array,
    clock: column[3] as Float64Array,
    clockBefore: column[9] as Float64Array,
    exposure: column[4] as Float64Array,
    window: column[5] as Float64Array,
    earlier: column[11] as Float64Array,
    level: column[8] as Float64Array,
    levelBefore: column[10] as Float64Array,
    inverseVariance: 8 / strain.developmentCv ** 2,
    crowdedVariance: 8 * ((strain.crowdedCv / strain.developmentCv) ** 2 - 1),
    adultFirst: 1,
    adultNext: 1,
    adults: column[6] as Float64Array,
    bornAt: column[7] as Float64Array,
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
