/**
 * Crowding in the middle of the coming step. Larvae grow into it and die of it at once, so that it is the
 * root of an equation, not a look back at the load that was.
 */
import { leastFed } from './crowding.ts';
import type { Cup } from './cup.ts';

/**
 * Multiples of the medium's capacity in the middle of a step in which larvae grow by `grown` on their
 * clock, `fed` the share that the medium still feeds: X = A exp(-k X) / capacity, A the load half of the
 * step ahead if only the base deaths took of it, k half of the step's deaths per multiple.
 */
export function comingCrowding(cup: Cup, grown: number, fed: number): number {
  const { crowding: room } = cup.strain;
  const part = (0.5 * grown) / cup.larvaShare;
  // A step's base deaths are few: 1 - h is exp(-h) here to h^2 / 2, 1e-4 at most.
  const load = loadHalfway(cup, grown) * (1 - room.baseDeaths * part);
  const alone = load / (cup.capacity * Math.max(leastFed, fed));
  const perMultiple = room.crowdedDeaths * part;
  return perMultiple > 0 ? lambertW(alone * perMultiple) / perMultiple : alone;
}

/** The load that the last step looked ahead to; where this one is longer or shorter, grown in proportion. */
function loadHalfway(cup: Cup, grown: number): number {
  const { load, loadAhead, grown: expected } = cup;
  if (load <= 0 || expected <= 0 || loadAhead <= 0) return loadAhead;
  const ratio = grown / expected;
  return ratio > 0.999 && ratio < 1.001 ? loadAhead : load * (loadAhead / load) ** ratio;
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
