/** What a keeper sees of a world: counts that err, cup by cup. */
import { meanWorld, type StrainWorld } from './strain-world.ts';
import { sightNormal } from './world-draws.ts';

/** The factor by which a judgement of one block errs; 1 in the mean world. */
export function sightFactor(sw: StrainWorld, day: number): number {
  if (sw.world === meanWorld) return 1;
  return Math.exp(sw.prepared.strain.uncertainty.countLogSd * sightNormal(sw.key, sw.prepared.dayZero + day, 1));
}

/** Flies on hand as the keeper sees them on day `t`, with the error `logSd` of that sight. */
export function seenStock(sw: StrainWorld, t: number, logSd: number): number {
  return sw.world === meanWorld
    ? sw.onHand
    : sw.onHand * Math.exp(logSd * sightNormal(sw.key, sw.prepared.dayZero + t, 0));
}

/** Log sd of the keeper's sight of the whole stock: cups err apart, so their sum errs less. */
export function stockLogSd(sw: StrainWorld): number {
  const { table, prepared } = sw;
  const { order, held, cups } = table;
  let holding = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if ((held[b] as number) >= 1) holding += cups[b] as number;
  }
  return prepared.cupStockLogSd / Math.sqrt(Math.max(1, holding));
}
