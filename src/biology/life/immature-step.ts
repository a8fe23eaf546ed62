/**
 * One step of eggs, larvae and pupae. A cohort moves along the strain's clock, more slowly while its
 * larvae are crowded; those who end a stage are the conditional share 1 - S(x') / S(x) of the stage's
 * survivor function, which is the linear chain's answer whatever the temperature did.
 */
import type { Cup } from './cup.ts';
import { levels, pointsPerLevel, pointsPerUnit } from './stage-tables.ts';

export interface ImmatureStep {
  /** Progress on the clock where nothing slows it. */
  progress: number;
  /** Larval progress over that, 0 to 1. */
  larvalSpeed: number;
  /** Mean crowding during the step. */
  crowding: number;
  /** Larvae that live through half the step, and the share of all stages that heat leaves. */
  halfKeep: number;
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
  const { eggs, larvae, pupae, clock, exposure, eggShare, level: levelBy } = cup;
  const { egg: eggTable, larva: larvaTable, pupa: pupaTable, eggEnds, larvaEnds, pupaEnds } = cup.stages;
  const { massHalf, massFloor } = cup.strain.crowding;
  const { progress, halfKeep, heatKeep } = step;
  const slowing = 1 - step.larvalSpeed;
  const pupation = eggShare + cup.larvaShare;
  const keep = halfKeep * heatKeep;
  const perLarva = 1 / cup.larvaShare;
  const crowdingMet = step.crowding * step.larvalSpeed * perLarva;
  let emergedAll = 0;
  let emergedMass = 0;
  let eggsAll = 0;
  let larvaeAll = 0;
  let pupaeAll = 0;
  let load = 0;
  for (let i = cup.first; i < cup.next; i += 1) {
    let e = eggs[i] as number;
    let l = larvae[i] as number;
    let p = pupae[i] as number;
    const x = clock[i] as number;
    let end = x + progress;
    let met = exposure[i] as number;
    if (end > eggShare && x < pupation) {
      // The part of the step that the cohort's mean spends as larvae.
      const larval = (end < pupation ? end : pupation) - (x > eggShare ? x : eggShare);
      end -= larval * slowing;
      met += larval * crowdingMet;
      exposure[i] = met;
      levelBy[i] = levelFor(cup, i, met);
    }
    clock[i] = end;
    const level = levelBy[i] as number;
    const row = level * pointsPerLevel;
    let hatched = 0;
    let pupated = 0;
    if (e > 0) {
      if (end > (eggEnds[level] as number)) {
        hatched = e * leaving(eggTable, row, x, end);
        e -= hatched;
      }
      e *= heatKeep;
      eggs[i] = e;
      eggsAll += e;
    }
    if (p > 0) {
      if (end > (pupaEnds[level] as number)) {
        const emerged = p * leaving(pupaTable, row, x, end);
        p -= emerged;
        emergedAll += emerged;
        const mass = 1 / Math.sqrt(1 + met / massHalf);
        emergedMass += emerged * (mass > massFloor ? mass : massFloor);
      }
    }
    if (l > 0) {
      l *= halfKeep;
      if (end > (larvaEnds[level] as number)) {
        pupated = l * leaving(larvaTable, row, x, end);
        l -= pupated;
      }
    }
    l = (l + hatched) * keep;
    p = (p + pupated) * heatKeep;
    larvae[i] = l;
    pupae[i] = p;
    pupaeAll += p;
    if (l > 0) {
      larvaeAll += l;
      const grown = (end - eggShare) * perLarva;
      load += grown >= 1 ? l : grown > 0 ? l * grown * grown : 0;
    }
  }
  const late = Math.sqrt(heatKeep);
  cup.emerged = emergedAll * late;
  cup.emergedMass = emergedMass * late;
  cup.eggsAlive = eggsAll;
  cup.larvaeAlive = larvaeAll;
  cup.pupaeAlive = pupaeAll;
  cup.load = 3 * load;
  dropEmptyCohorts(cup);
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
  // Eggs laid evenly over a step spread by its width's variance.
  cup.window[i] = ((windowWidth * windowWidth) / 12) * cup.inverseVariance;
  cup.level[i] = levelFor(cup, i, 0);
  cup.eggsAlive += count;
  cup.next += 1;
}

/** The table's level for a cohort's spread: the strain's own, its laying window, and crowding met. */
function levelFor(cup: Cup, i: number, met: number): number {
  const spread = (cup.window[i] as number) + (cup.crowdedVariance * met) / (met + 1);
  return levelByVariance[spread > 95 ? 95 : (spread + 0.5) | 0] as number;
}

/** Share of those in a stage at clock `x` who have left it at `end`; `row` is where their table begins. */
function leaving(table: Float64Array, row: number, x: number, end: number): number {
  let place = x * pointsPerUnit;
  if (place > lastPlace) place = lastPlace;
  let endPlace = end * pointsPerUnit;
  if (endPlace > lastPlace) endPlace = lastPlace;
  const from = place | 0;
  const to = endPlace | 0;
  const b = table[row + to] as number;
  const after = b + (endPlace - to) * ((table[row + to + 1] as number) - b);
  if (after < stageOver) return 1;
  const a = table[row + from] as number;
  return 1 - after / (a + (place - from) * ((table[row + from + 1] as number) - a));
}

function dropEmptyCohorts(cup: Cup): void {
  while (cup.first < cup.next) {
    const i = cup.first;
    if ((cup.eggs[i] as number) + (cup.larvae[i] as number) + (cup.pupae[i] as number) > nobody) return;
    cup.first += 1;
  }
}
