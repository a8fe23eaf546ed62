/**
 * One step of a whole cup: flies emerge, adults die and lay, larvae grow, crowd each other and eat. Every
 * rate is taken in the middle of the step, so that a step of a day errs by its square, not by itself.
 */
import { addAdults, stepAdults } from './adult-step.ts';
import { comingCrowding, eatenHalfway, lookAhead } from './coming-crowding.ts';
import { eat, fedShare, larvalDeathsAt, larvalSpeedAt, massRatioAt } from './crowding.ts';
import type { Cup } from './cup.ts';
import { decay } from './decay.ts';
import { addEggs, emerge, type ImmatureStep, stepImmature } from './immature-step.ts';
import type { DailyCare } from './moisture.ts';
import { between, type PaceTable } from './pace.ts';

/** A step in hours of the series, and the day of age it belongs to. */
export interface Span {
  startHour: number;
  from: number;
  to: number;
  day: number;
}

const step: ImmatureStep = {
  progress: 0,
  larvalSpeed: 1,
  crowding: 0,
  keep: 1,
  longKeep: 1,
  shortKeep: 1,
  risk: 0,
  halfHeatKeep: 1,
  heatKeep: 1,
};

export function stepCup(cup: Cup, pace: PaceTable, span: Span, care: DailyCare): void {
  const { startHour, from, to, day } = span;
  const progress = between(pace.development, from, to);
  const heat = between(pace.heatDeath, from, to);
  step.progress = progress;
  step.halfHeatKeep = decay(0.5 * heat);
  step.heatKeep = step.halfHeatKeep * step.halfHeatKeep;
  emerge(cup, step);
  const growth = progress * cup.larvalSpeed * (care.larvalSpeed[day] as number);
  const mediumAge = between(pace.mediumAge, startHour, (from + to) >> 1);
  lookAhead(cup, growth);
  const fed = fedShare(cup, mediumAge, eatenHalfway(cup, growth));
  const laid = adultsOf(cup, pace, span, care) * fed;
  prepareLarvae(cup, comingCrowding(cup, growth, fed), care, day, (to - from) / 24);
  stepImmature(cup, step);
  eat(cup);
  const settled = day < 2 ? settledShare(span, cup.strain.founders.settlingDays) : 1;
  cup.eggsLaid = laid * settled;
  // Eggs are half of the laying time old at the step's end, and heat has taken its share of them.
  const kept = 1 - settled * (1 - step.halfHeatKeep);
  addEggs(cup, cup.eggsLaid * kept, progress * 0.5 * settled, progress * settled);
}

/** Moves the adults on and adds the step's flies; the eggs that all lay on a medium that feeds fully. */
function adultsOf(cup: Cup, pace: PaceTable, { from, to, day }: Span, care: DailyCare): number {
  const aged = between(pace.adultAge, from, to);
  const clock = pace.adultAge[to] as number;
  const cupDeaths = cup.strain.adult.cupDeathPerDay * (care.adultDeaths[day] as number);
  const before = cup.adultsAlive;
  const rate = stepAdults(cup, clock, aged, cupDeaths);
  const old = 0.5 * (before + cup.adultsAlive);
  const crowd = old + addAdults(cup, cup.emerged, clock, aged, cupDeaths);
  return (rate * between(pace.laying, from, to) * (care.laying[day] as number)) / (1 + crowd / cup.halfAdults);
}

/** Share of a step in which the founders have got over the move and lay. */
function settledShare(span: Span, settlingDays: number): number {
  return Math.max(0, Math.min(1, (span.to - span.startHour - 24 * settlingDays) / (span.to - span.from)));
}

/** What larvae meet in a step of `days` days in whose middle they are crowded by `crowding`. */
function prepareLarvae(cup: Cup, crowding: number, care: DailyCare, day: number, days: number): void {
  const room = cup.strain.crowding;
  cup.larvalSpeed = larvalSpeedAt(room, crowding);
  cup.crowding = crowding;
  cup.size = massRatioAt(room, crowding);
  const larvalSpeed = cup.larvalSpeed * (care.larvalSpeed[day] as number);
  cup.grown = step.progress * larvalSpeed;
  const deaths =
    (larvalDeathsAt(room, crowding) * cup.grown) / cup.larvaShare + (care.larvalDeaths[day] as number) * days;
  step.larvalSpeed = larvalSpeed;
  step.crowding = crowding / cup.larvaShare;
  const quarterKeep = decay(0.25 * deaths);
  const halfKeep = quarterKeep * quarterKeep;
  step.shortKeep = quarterKeep * step.heatKeep;
  step.longKeep = halfKeep * step.shortKeep;
  step.keep = halfKeep * halfKeep * step.heatKeep;
  step.risk = step.progress > 0 ? deaths / step.progress : 0;
}
