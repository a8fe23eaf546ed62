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
const nobody = 1e-5;
/** Below this survivor value a stage is over for everybody. */
const stageOver = 1e-6;
/** Squared CV over the strain's own, in eighths, to the table's level. */
const levelByVariance = Uint8Array.from({ length: 96 }, (_, i) =>
  Math.min(levels - 1, Math.round((0.5 * Math.log(1 + i / 8)) / Math.log(1.08))),
);

/** Moves all cohorts on; afterwards `cup` holds the step's emergence, stage counts and larval load. */
export function stepImmature(cup: Cup, step: ImmatureStep): void {
  const { eggs, larvae, pupae, clock, exposure, window, eggShare, larvaShare } = cup;
  const { egg: eggTable, larva: larvaTable, pupa: pupaTable } = cup.stages;
  const { crowding: room, developmentCv, crowdedCv } = cup.strain;
  const { progress, larvalSpeed, crowding, halfKeep, heatKeep } = step;
  const inverseVariance = 8 / (developmentCv * developmentCv);
  const crowdedVariance = crowdedCv * crowdedCv - developmentCv * developmentCv;
  const lateEmergence = Math.sqrt(heatKeep);
  const slowing = 1 - larvalSpeed;
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
    const larvalPart = l > 0 ? l / (e + l + p) : 0;
    const end = x + progress * (1 - larvalPart * slowing);
    clock[i] = end;
    let met = exposure[i] as number;
    if (larvalPart > 0) {
      met += (crowding * larvalPart * (end - x)) / larvaShare;
      exposure[i] = met;
    }
    const spread = ((window[i] as number) + (crowdedVariance * met) / (met + 1)) * inverseVariance;
    const level = (levelByVariance[spread > 95 ? 95 : spread | 0] as number) * pointsPerLevel;
    let place = x * pointsPerUnit;
    if (place > pointsPerLevel - 2) place = pointsPerLevel - 2;
    let endPlace = end * pointsPerUnit;
    if (endPlace > pointsPerLevel - 2) endPlace = pointsPerLevel - 2;
    const from = place | 0;
    const to = endPlace | 0;
    const part = place - from;
    const endPart = endPlace - to;
    let hatched = 0;
    let pupated = 0;
    if (e > 0) {
      hatched = e * leaving(eggTable, level + from, part, level + to, endPart);
      e -= hatched;
    }
    if (l > 0) {
      l *= halfKeep;
      pupated = l * leaving(larvaTable, level + from, part, level + to, endPart);
      l -= pupated;
    }
    if (p > 0) {
      const emerged = p * leaving(pupaTable, level + from, part, level + to, endPart);
      p -= emerged;
      emergedAll += emerged;
      const mass = 1 / Math.sqrt(1 + met / room.massHalf);
      emergedMass += emerged * (mass > room.massFloor ? mass : room.massFloor);
    }
    l = (l + hatched) * halfKeep * heatKeep;
    e *= heatKeep;
    p = (p + pupated) * heatKeep;
    eggs[i] = e;
    larvae[i] = l;
    pupae[i] = p;
    eggsAll += e;
    larvaeAll += l;
    pupaeAll += p;
    if (l > 0) {
      const grown = (end - eggShare) / larvaShare;
      load += grown >= 1 ? 3 * l : grown > 0 ? 3 * l * grown * grown : 0;
    }
  }
  cup.emerged = emergedAll * lateEmergence;
  cup.emergedMass = emergedMass * lateEmergence;
  cup.eggsAlive = eggsAll;
  cup.larvaeAlive = larvaeAll;
  cup.pupaeAlive = pupaeAll;
  cup.load = load;
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
  cup.window[i] = (windowWidth * windowWidth) / 12;
  cup.eggsAlive += count;
  cup.next += 1;
}

/** Share of those in a stage at one place of its table who have left it at another. */
function leaving(table: Float64Array, from: number, part: number, to: number, endPart: number): number {
  const a = table[from] as number;
  const before = a + part * ((table[from + 1] as number) - a);
  const b = table[to] as number;
  const after = b + endPart * ((table[to + 1] as number) - b);
  return after < stageOver ? 1 : 1 - after / before;
}

function dropEmptyCohorts(cup: Cup): void {
  while (cup.first < cup.next) {
    const i = cup.first;
    if ((cup.eggs[i] as number) + (cup.larvae[i] as number) + (cup.pupae[i] as number) > nobody) return;
    cup.first += 1;
  }
}
