/**
 * One step of eggs, larvae and pupae. A cohort has two clocks: one that crowding slows, on which its
 * larvae grow and pupate, and one that nothing slows, on which its pupae become flies. Those who end a
 * stage are the conditional share of the stage's survivor function, which is the linear chain's answer
 * whatever the temperature did.
 */
import { survivors, widening } from './cohort-spread.ts';
import { larvalDeathsAt, massRatioAt } from './crowding.ts';
import type { Cup } from './cup.ts';
import { levelAt } from './level.ts';
import { pointsPerLevel, pointsPerUnit } from './stage-tables.ts';

export interface ImmatureStep {
  /** Progress on the clock where nothing slows it. */
  progress: number;
  /** Larval progress over that, 0 to 1. */
  larvalSpeed: number;
  /** Mean crowding during the step, over the larval share of the clock. */
  crowding: number;
  /** Larvae that live through the step, three quarters and one quarter of it, heat over all of it. */
  keep: number;
  longKeep: number;
  shortKeep: number;
  /** Deaths of larvae per unit of the unslowed clock. */
  risk: number;
  /** Share of all stages that heat leaves in half the step, and in all of it. */
  halfHeatKeep: number;
  heatKeep: number;
}

/** Below this survivor value a stage is over for everybody. */
const stageOver = 1e-3;
const lastPlace = pointsPerLevel - 2;

/** Moves eggs and larvae on, after `emerge`; then `cup` holds the step's stage counts and larval load. */
export function stepImmature(cup: Cup, step: ImmatureStep): void {
  skipPupated(cup);
  moveYoung(cup, step);
  dropEmptyCohorts(cup);
}

/** Flies leave their pupae: number, and sum of their mass over that of uncrowded ones. */
export function emerge(cup: Cup, step: ImmatureStep): void {
  const { pupae, pupalClock, pupalLevel, pupaLeft, massRatio } = cup.cohorts;
  const { pupa: table, pupaEnds } = cup.stages;
  const { progress, heatKeep, halfHeatKeep } = step;
  let alive = 0;
  let all = 0;
  let mass = 0;
  for (let i = cup.first; i < cup.next; i += 1) {
    let p = pupae[i] as number;
    const before = pupalClock[i] as number;
    if (before > 0) {
      const end = before + progress;
      pupalClock[i] = end;
      const level = pupalLevel[i] as number;
      if (end > (pupaEnds[level] as number)) {
        const left = pupaLeft[i] as number;
        const now = survivors(table, level * pointsPerLevel, end);
        if (now < left) {
          const emerged = now < stageOver ? p : p * (1 - now / left);
          pupaLeft[i] = now;
          p -= emerged;
          all += emerged;
          mass += emerged * (massRatio[i] as number);
        }
      }
      // Cohorts are in order of age: the first that has neither pupae nor a clock for them ends the list.
    } else if (p === 0) break;
    p *= heatKeep;
    pupae[i] = p;
    alive += p;
  }
  cup.emerged = all * halfHeatKeep;
  cup.emergedMass = mass * halfHeatKeep;
  cup.pupaeAlive = alive;
}

/** Cohorts without eggs or larvae, always the oldest, have only pupae from then on. */
function skipPupated(cup: Cup): void {
  const { eggs, larvae } = cup.cohorts;
  let i = Math.max(cup.first, cup.firstYoung);
  while (i < cup.next && (eggs[i] as number) + (larvae[i] as number) === 0) i += 1;
  cup.firstYoung = i;
}

/**
 * When the mean of those who will live pupates, the cohort's pupal clock starts. Returns the share of the
 * cohort that is counted on: whoever hatches early pupates early, so that the two do not spread the time at
 * risk as the shares of a pooled cohort do, too many of which live, by exp(risk then x risk now x variance).
 */
function beginPupae(cup: Cup, step: ImmatureStep, i: number, end: number): number {
  const { cohorts, eggShare, larvaShare } = cup;
  const metByNow = cohorts.exposure[i] as number;
  const variance = (8 + widening(cup, metByNow)) / cup.inverseVariance;
  // Deaths leave those who pupate early: their gamma times, tilted by exp(-hazard), end that much sooner.
  const past = end - eggShare - larvaShare + variance * larvalDeathsAt(cup.strain.crowding, metByNow);
  if (past < 0) return 1;
  const met = Math.max(0, metByNow - past * step.crowding);
  const speed = step.larvalSpeed;
  cohorts.pupalClock[i] = eggShare + larvaShare + past / speed;
  cohorts.massRatio[i] = massRatioAt(cup.strain.crowding, met);
  // A larva that is late on the slowed clock is later by 1 / speed on the pupae's.
  const widened = larvaShare / (speed * speed) + 1 - eggShare - larvaShare;
  const spread = (8 + widening(cup, met)) * widened + 8 * (eggShare - 1);
  cohorts.pupalLevel[i] = levelAt(spread + (cohorts.window[i] as number));
  const tooMany = step.risk * (cohorts.lateBy[i] as number);
  const counted = tooMany < 1 ? 1 - tooMany * (1 - 0.5 * tooMany) : 0.5;
  cohorts.pupae[i] = counted * (cohorts.pupae[i] as number);
  return counted;
}

/**
 * The slowed clock, the crowding met on it and the spread that crowding brings; eggs become larvae, larvae
 * pupae; larvae die while they are larvae. One loop: cohorts are what costs.
 */
function moveYoung(cup: Cup, step: ImmatureStep): void {
  const { eggs, larvae, clock, exposure, window, pupalClock, level: levelBy, larvaLeft, lateBy } = cup.cohorts;
  const { eggShare, firstPupation, crowdedToPupation } = cup;
  const { larva: larvaTable, appetite, larvaEnds } = cup.stages;
  const { keep, progress, larvalSpeed, crowding } = step;
  const halfGrown = 0.5 * progress * larvalSpeed;
  // Late larvae had less time to die: of those alive, more are late, by the risk times the variance of hatching.
  const lateness = step.risk / cup.inverseVariance;
  // Days between the eggs' laying are fewer on the clock that is slowed.
  const windowToPupation = cup.windowToPupation * larvalSpeed * larvalSpeed;
  cup.eggsAlive = 0;
  let [larvaeAll, load, ahead] = [0, 0, 0];
  for (let i = cup.firstYoung; i < cup.next; i += 1) {
    let l = larvae[i] as number;
    const x = clock[i] as number;
    let end = x + progress;
    if (end > eggShare) {
      if (x <= eggShare) lateBy[i] = lateness * ((window[i] as number) + 8 * eggShare);
      const larval = (x > eggShare ? progress : end - eggShare) * larvalSpeed;
      end = (x > eggShare ? x : eggShare) + larval;
      const met = (exposure[i] as number) + larval * crowding;
      exposure[i] = met;
      if (end > firstPupation) {
        levelBy[i] = levelAt((window[i] as number) * windowToPupation + (crowdedToPupation * met) / (met + 1));
        if (pupalClock[i] === 0) l *= beginPupae(cup, step, i, end);
      }
    }
    clock[i] = end;
    const level = levelBy[i] as number;
    const row = level * pointsPerLevel;
    const firstEnd = larvaEnds[level] as number;
    l = l > 0 && end > firstEnd ? pupate(cup, step, i, end - halfGrown, end, l) : l * keep;
    if ((eggs[i] as number) > 0) l += hatch(cup, step, i);
    larvae[i] = l;
    larvaeAll += l;
    if (l === 0) continue;
    // The load now, and half a step on of those who will not have pupated by then.
    const place = (end - (lateBy[i] as number) * larvalSpeed) * pointsPerUnit + 0.5;
    load += l * (appetite[row + (place < lastPlace ? place | 0 : lastPlace)] as number);
    const later = place + halfGrown * pointsPerUnit;
    const point = row + (later < lastPlace ? later | 0 : lastPlace);
    const stays = end + halfGrown > firstEnd ? (larvaTable[point] as number) / (larvaLeft[i] as number) : 1;
    ahead += l * (appetite[point] as number) * (stays < 1 ? stays : 1);
  }
  cup.larvaeAlive = larvaeAll;
  cup.loadBefore = cup.load;
  cup.load = load;
  cup.loadAhead = ahead;
}

/**
 * Moves those of a cohort's `larvae` who pupate by clock `end` to its pupae: a part of them by `midway`, so
 * that they die for a quarter of the step, the others for three. Returns the larvae left at its end.
 */
function pupate(cup: Cup, step: ImmatureStep, i: number, midway: number, end: number, larvae: number): number {
  const { cohorts } = cup;
  const table = cup.stages.larva;
  const row = (cohorts.level[i] as number) * pointsPerLevel;
  const left = cohorts.larvaLeft[i] as number;
  const now = survivors(table, row, end);
  if (now >= left) return larvae * step.keep;
  const middle = table[row + halfwayPoint(midway)] as number;
  const late = middle < left ? middle : left;
  const stay = now < stageOver ? 0 : now;
  const each = larvae / left;
  const done = each * ((left - late) * step.shortKeep + (late - stay) * step.longKeep);
  cohorts.larvaLeft[i] = now;
  cohorts.pupae[i] = (cohorts.pupae[i] as number) + done;
  cup.pupaeAlive += done;
  return each * stay * step.keep;
}

/**
 * Larvae that hatch from a cohort's eggs in the step and live to its end: those who hatch in its first half die for
 * three quarters of it, the others for one. Nothing slows the eggs' clock. The eggs left are kept by heat.
 */
function hatch(cup: Cup, step: ImmatureStep, i: number): number {
  const { cohorts } = cup;
  const level = cohorts.eggLevel[i] as number;
  const from = cohorts.eggClock[i] as number;
  const end = from + step.progress;
  cohorts.eggClock[i] = end;
  let eggs = cohorts.eggs[i] as number;
  let hatched = 0;
  if (end > (cup.stages.eggEnds[level] as number)) {
    const table = cup.stages.egg;
    const row = level * pointsPerLevel;
    const left = cohorts.eggLeft[i] as number;
    const now = survivors(table, row, end);
    const middle = table[row + halfwayPoint(from + 0.5 * step.progress)] as number;
    const stay = now < stageOver ? 0 : now;
    cohorts.eggLeft[i] = now;
    const each = eggs / left;
    hatched = each * ((left - middle) * step.longKeep + (middle - stay) * step.shortKeep);
    eggs = each * stay;
  }
  eggs *= step.heatKeep;
  cohorts.eggs[i] = eggs;
  cup.eggsAlive += eggs;
  return hatched;
}

/** The tables' point nearest to a clock. */
function halfwayPoint(clock: number): number {
  const place = clock * pointsPerUnit + 0.5;
  return place < lastPlace ? place | 0 : lastPlace;
}

/** Adds the eggs laid during the step; `midway` is the clock of their mean at its end. */
export function addEggs(cup: Cup, count: number, midway: number, windowWidth: number): void {
  if (count < cup.nobody) return;
  const { cohorts } = cup;
  const i = cup.next;
  cohorts.eggs[i] = count;
  cohorts.larvae[i] = 0;
  cohorts.pupae[i] = 0;
  cohorts.clock[i] = midway;
  cohorts.eggClock[i] = midway;
  cohorts.lateBy[i] = 0;
  cohorts.pupalClock[i] = 0;
  cohorts.exposure[i] = 0;
  cohorts.eggLeft[i] = 1;
  cohorts.larvaLeft[i] = 1;
  cohorts.pupaLeft[i] = 1;
  // Eggs laid evenly over a step spread by its width's variance.
  const window = ((windowWidth * windowWidth) / 12) * cup.inverseVariance;
  cohorts.window[i] = window;
  cohorts.level[i] = levelAt(window * cup.windowToPupation);
  cohorts.eggLevel[i] = levelAt(window / cup.eggShare);
  cup.eggsAlive += count;
  cup.next += 1;
}

function dropEmptyCohorts(cup: Cup): void {
  const { eggs, larvae, pupae } = cup.cohorts;
  while (cup.first < cup.next) {
    const i = cup.first;
    if ((eggs[i] as number) + (larvae[i] as number) + (pupae[i] as number) > cup.nobody) return;
    cup.first += 1;
  }
}
