/**
 * One step of eggs, larvae and pupae. A cohort moves along the strain's clock, more slowly while its
 * larvae are crowded; those who end a stage are the conditional share 1 - S(x') / S(x) of the stage's
 * survivor function, which is the linear chain's answer whatever the temperature did.
 */
import { larvalDeathsAt, massRatioAt } from './crowding.ts';
import type { Cup } from './cup.ts';
import { levels, pointsPerLevel, pointsPerUnit } from './stage-tables.ts';

export interface ImmatureStep {
  /** Progress on the clock where nothing slows it. */
  progress: number;
  /** Larval progress over that, 0 to 1. */
  larvalSpeed: number;
  /** Mean crowding during the step. */
  crowding: number;
  /** Larvae that live through half the step: on a slowed clock, and on one that is not. */
  halfKeep: number;
  freeHalfKeep: number;
  /** Share of all stages that heat leaves. */
  heatKeep: number;
}

/** Fewer than this are no animals any more. */
const nobody = 1e-3;
/** Below this survivor value a stage is over for everybody. */
const stageOver = 1e-4;
const lastPlace = pointsPerLevel - 2;
/** Squared CV over the strain's own, less one, in eighths, to the table's level. */
const levelByVariance = Uint8Array.from({ length: 96 }, (_, i) =>
  Math.min(levels - 1, Math.round((0.5 * Math.log(1 + i / 8)) / Math.log(1.08))),
);

/** Moves all cohorts on; afterwards `cup` holds the step's emergence, stage counts and larval load. */
export function stepImmature(cup: Cup, step: ImmatureStep): void {
  advanceClocks(cup, step);
  emerge(cup, step);
  hatchAndPupate(cup, step);
  dropEmptyCohorts(cup);
}

/** Clocks before and after the step, crowding met and the spread that it brings. */
function advanceClocks(cup: Cup, step: ImmatureStep): void {
  const { clock, clockBefore, exposure, level, levelBefore, earlier, eggShare } = cup;
  const meanPupation = eggShare + cup.larvaShare;
  const { variance, larvaEnds } = cup.stages;
  // Before any spread lets a larva pupate, its cohort's spread does not matter.
  const firstPupation = larvaEnds[levels - 1] as number;
  const slowing = 1 - step.larvalSpeed;
  const crowdingMet = (step.crowding * step.larvalSpeed) / cup.larvaShare;
  for (let i = cup.first; i < cup.next; i += 1) {
    const x = clock[i] as number;
    let end = x + step.progress;
    levelBefore[i] = level[i] as number;
    const pupation = meanPupation - (earlier[i] as number);
    if (end > eggShare && x < pupation) {
      // The part of the step that the survivors' mean spends as larvae.
      const larval = (end < pupation ? end : pupation) - (x > eggShare ? x : eggShare);
      end -= larval * slowing;
      const met = (exposure[i] as number) + larval * crowdingMet;
      exposure[i] = met;
      if (end > firstPupation) {
        const wide = levelFor(cup, i, met);
        level[i] = wide;
        // Deaths leave those who pupate early: their gamma times, tilted by exp(-hazard), end that much sooner.
        earlier[i] = (variance[wide] as number) * larvalDeathsAt(cup.strain.crowding, met);
      }
    }
    clockBefore[i] = x;
    clock[i] = end;
  }
}

/** Flies leave their pupae: number, and sum of their mass over that of uncrowded ones. */
function emerge(cup: Cup, step: ImmatureStep): void {
  const { pupae, clock, clockBefore, level: levelBy, levelBefore, earlier, exposure } = cup;
  const meanPupation = cup.eggShare + cup.larvaShare;
  const { pupa: table, pupaEnds } = cup.stages;
  const { crowding } = cup.strain;
  const { heatKeep } = step;
  let alive = 0;
  let all = 0;
  let mass = 0;
  for (let i = cup.first; i < cup.next; i += 1) {
    let p = pupae[i] as number;
    // Cohorts are in order of age: the first that never had pupae ends the list.
    const end = clock[i] as number;
    if (p === 0 && end < meanPupation) break;
    if (p === 0) continue;
    const level = levelBy[i] as number;
    const early = earlier[i] as number;
    if (end + early > (pupaEnds[level] as number)) {
      const rowBefore = (levelBefore[i] as number) * pointsPerLevel;
      const before = (clockBefore[i] as number) + early;
      const emerged = p * leaving(table, rowBefore, level * pointsPerLevel, before, end + early);
      p -= emerged;
      all += emerged;
      mass += emerged * massRatioAt(crowding, exposure[i] as number);
    }
    p *= heatKeep;
    pupae[i] = p;
    alive += p;
  }
  const late = Math.sqrt(heatKeep);
  cup.emerged = all * late;
  cup.emergedMass = mass * late;
  cup.pupaeAlive = alive;
}

/** Eggs become larvae, larvae pupae; larvae die half of the step's deaths before and half after. */
function hatchAndPupate(cup: Cup, step: ImmatureStep): void {
  const { eggs, larvae, pupae, clock, clockBefore, level: levelBy, levelBefore } = cup;
  const { egg: eggTable, larva: larvaTable, appetite, eggEnds, larvaEnds } = cup.stages;
  const { heatKeep } = step;
  const { earlier, eggShare } = cup;
  const meanPupation = eggShare + cup.larvaShare;
  let eggsAll = 0;
  let larvaeAll = 0;
  let pupated = 0;
  let load = 0;
  for (let i = firstYoung(cup); i < cup.next; i += 1) {
    let e = eggs[i] as number;
    let l = larvae[i] as number;
    const end = clock[i] as number;
    const level = levelBy[i] as number;
    const row = level * pointsPerLevel;
    const rowBefore = (levelBefore[i] as number) * pointsPerLevel;
    // The first and the last larvae of a cohort, whose clock is not slowed, die as fast as it runs.
    const slowed = end > eggShare && (clockBefore[i] as number) < meanPupation - (earlier[i] as number);
    const halfKeep = slowed ? step.halfKeep : step.freeHalfKeep;
    l *= halfKeep;
    if (l > 0 && end > (larvaEnds[level] as number)) {
      const done = l * leaving(larvaTable, rowBefore, row, clockBefore[i] as number, end);
      l -= done;
      pupated += done;
      pupae[i] = (pupae[i] as number) + done * heatKeep;
    }
    if (e > 0) {
      const hatched =
        end > (eggEnds[level] as number) ? e * leaving(eggTable, rowBefore, row, clockBefore[i] as number, end) : 0;
      e = (e - hatched) * heatKeep;
      l += hatched;
      eggs[i] = e;
      eggsAll += e;
    }
    l *= halfKeep * heatKeep;
    larvae[i] = l;
    larvaeAll += l;
    const place = end * pointsPerUnit + 0.5;
    load += l * (appetite[row + (place < lastPlace ? place | 0 : lastPlace)] as number);
  }
  cup.eggsAlive = eggsAll;
  cup.larvaeAlive = larvaeAll;
  cup.pupaeAlive += pupated * heatKeep;
  cup.load = load;
}

/** The oldest cohort that has eggs or larvae still; older ones have none, and will have none. */
function firstYoung(cup: Cup): number {
  let i = Math.max(cup.first, cup.firstYoung);
  while (i < cup.next && (cup.eggs[i] as number) + (cup.larvae[i] as number) === 0) i += 1;
  cup.firstYoung = i;
  return i;
}

/** Adds the eggs laid during the step; `midway` is the clock of their mean at its end. */
export function addEggs(cup: Cup, count: number, midway: number, windowWidth: number): void {
  if (count < nobody) return;
  const i = cup.next;
  cup.eggs[i] = count;
  cup.larvae[i] = 0;
  cup.pupae[i] = 0;
  cup.clock[i] = midway;
  cup.exposure[i] = 0;
  cup.earlier[i] = 0;
  // Eggs laid evenly over a step spread by its width's variance.
  cup.window[i] = ((windowWidth * windowWidth) / 12) * cup.inverseVariance;
  cup.level[i] = levelFor(cup, i, 0);
  cup.levelBefore[i] = cup.level[i] as number;
  cup.eggsAlive += count;
  cup.next += 1;
}

/** The table's level for a cohort's spread: the strain's own, its laying window, and crowding met. */
function levelFor(cup: Cup, i: number, met: number): number {
  const spread = (cup.window[i] as number) + (cup.crowdedVariance * met) / (met + 1);
  return levelByVariance[spread > 95 ? 95 : (spread + 0.5) | 0] as number;
}

/**
 * Share of those in a stage at clock `x` who have left it at `end`. Their tables begin at `rowBefore` and
 * `row`: when crowding has widened their spread, those whose end has so come to lie behind leave at once.
 */
function leaving(table: Float64Array, rowBefore: number, row: number, x: number, end: number): number {
  let place = x * pointsPerUnit;
  if (place > lastPlace) place = lastPlace;
  let endPlace = end * pointsPerUnit;
  if (endPlace > lastPlace) endPlace = lastPlace;
  const from = place | 0;
  const to = endPlace | 0;
  const b = table[row + to] as number;
  const after = b + (endPlace - to) * ((table[row + to + 1] as number) - b);
  if (after < stageOver) return 1;
  const a = table[rowBefore + from] as number;
  const before = a + (place - from) * ((table[rowBefore + from + 1] as number) - a);
  return after < before ? 1 - after / before : 0;
}

function dropEmptyCohorts(cup: Cup): void {
  while (cup.first < cup.next) {
    const i = cup.first;
    if ((cup.eggs[i] as number) + (cup.larvae[i] as number) + (cup.pupae[i] as number) > nobody) return;
    cup.first += 1;
  }
}
