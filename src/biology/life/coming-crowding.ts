/**
 * Crowding in the middle of the coming step. Larvae grow into it and die of it at once, so that it is the
 * root of an equation, not a look back at the load that was.
 */
import { eaten, larvalDeathsAt, leastFed } from './crowding.ts';
import type { Cup } from './cup.ts';

/** Corrects the load that the last step looked ahead to where this one, growing by `grown`, is longer or shorter. */
export function lookAhead(cup: Cup, grown: number): void {
  const { load, loadAhead, grown: expected } = cup;
  if (load <= 0 || expected <= 0 || loadAhead <= 0) return;
  const ratio = grown / expected;
  if (ratio < 0.999 || ratio > 1.001) cup.loadAhead = load * (loadAhead / load) ** ratio;
}

/**
 * Multiples of the medium's capacity in the middle of a step in which larvae grow by `grown` on their
 * clock, `fed` the share that the medium feeds then, which is also noted as the load in the middle: X = A exp(-k X) / capacity, A the load half of the
 * step ahead if only the base deaths took of it, k half of the step's deaths per multiple.
 */
export function comingCrowding(cup: Cup, grown: number, fed: number): number {
  const { crowding: room } = cup.strain;
  const part = (0.5 * grown) / cup.larvaShare;
  // A step's base deaths are few: 1 - h is exp(-h) here to h^2 / 2, 1e-4 at most.
  const load = cup.loadAhead * (1 - room.baseDeaths * part);
  const carried = cup.capacity * Math.max(leastFed, fed);
  const alone = load / carried;
  const perMultiple = room.crowdedDeaths * part;
  const crowding = perMultiple > 0 ? lambertW(alone * perMultiple) / perMultiple : alone;
  cup.loadHalfway = crowding * carried;
  return crowding;
}

/** What larvae will have eaten in the middle of the step, dying until then as in the last step. */
export function eatenHalfway(cup: Cup, grown: number): number {
  const deaths = (0.5 * grown * larvalDeathsAt(cup.strain.crowding, cup.crowding)) / cup.larvaShare;
  const halfway = cup.loadAhead * Math.max(0, 1 - deaths);
  return eaten(cup, 0.5 * (cup.load + halfway), 0.5 * grown);
}

/** Table of w with w e^w = z for z from 0 to 8, by Newton's steps. */
const pointsPerZ = 128;
const lastZ = 8;
const roots = Float64Array.from({ length: lastZ * pointsPerZ + 2 }, (_, i) => root(i / pointsPerZ));

/** Lambert's W for z >= 0, to about 1e-5. */
function lambertW(z: number): number {
  if (z >= lastZ) return root(z);
  const place = z * pointsPerZ;
  const i = place | 0;
  const low = roots[i] as number;
  return low + (place - i) * ((roots[i + 1] as number) - low);
}

function root(z: number): number {
  let w = Math.log1p(z);
  for (let i = 0; i < 20; i += 1) {
    const e = Math.exp(w);
    w -= (w * e - z) / (e * (w + 1));
  }
  return w;
}
