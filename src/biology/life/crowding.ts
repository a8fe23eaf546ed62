/** How larvae hinder each other and use the medium up: slowing, deaths, size, food. */
import type { CrowdingLife } from '../culture.ts';
import type { Cup } from './cup.ts';

/** Share of the food at which the medium feeds about half as well as when it was fresh. */
const scarceFood = 0.4;
/** The least that a used or aged medium still carries, so that crowding stays finite. */
export const leastFed = 0.01;

/**
 * How well the medium feeds, 1 = fresh: `age` is the medium's clock (1 = worn to 1/e, falling steeply
 * around it), food left counts as it becomes scarce: what there is less the `eaten`.
 */
export function fedShare(cup: Cup, age: number, eaten: number): number {
  const food = cup.food - eaten;
  const left = food > 0 ? food / cup.foodAtStart : 0;
  const enough = ((1 + scarceFood) * left) / (left + scarceFood);
  const squared = age * age;
  const wear = squared * squared * squared;
  return enough * (wear < 1e-4 ? 1 - wear : Math.exp(-wear));
}

/** Larval speed on the clock at a crowding, 1 when alone. */
export function larvalSpeedAt(room: CrowdingLife, crowding: number): number {
  return 1 / (1 + room.delay * Math.log1p(crowding));
}

/** Hazard of a larva per whole larval stage at a crowding. */
export function larvalDeathsAt(room: CrowdingLife, crowding: number): number {
  return room.baseDeaths + room.crowdedDeaths * crowding;
}

/** Fresh mass of flies whose larvae met `crowding`, over that of uncrowded ones. */
export function massRatioAt(room: CrowdingLife, crowding: number): number {
  return Math.max(room.massFloor, 1 / Math.sqrt(1 + crowding / room.massHalf));
}

/**
 * Takes from the medium what the larvae ate in a step: by the mean of the loads at its ends, which are known,
 * and in its middle, which was looked ahead to and comes out a little high where larvae are many.
 */
export function eat(cup: Cup): void {
  const load = (cup.loadBefore + cup.loadHalfway + cup.load) / 3;
  cup.food = Math.max(0, cup.food - eaten(cup, load, cup.grown));
}

/** What a mean `load` of larvae, of the last size, eats while they grow by `grown` on the clock. */
export function eaten(cup: Cup, load: number, grown: number): number {
  return (load * grown * cup.size) / cup.larvaShare;
}
