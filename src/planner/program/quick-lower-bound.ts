/**
 * A bound without a solver, by weak duality. In any world, flies fed and founders used can't exceed
 * flies emerged, whenever they are eaten, so every cup that is started or bought pays for at most what
 * it gives by the horizon's end. A policy that is short with chance at most alpha a day feeds at least
 * the rest of the need. The bound takes the expected need less what may be missing and what the living
 * cups still give, over the expected flies of the best cup net of founders. It ignores that flies die
 * while held and that cups are whole: program/foresight-bound.ts is tighter.
 */
import type { PreparedHousehold, PreparedStrain } from '../forecast/prepared-household.ts';
import { meanOf } from '../forecast/strain-world.ts';

export function quickLowerBound(household: PreparedHousehold): number {
  return household.strains.reduce((sum, strain) => sum + strainBound(household, strain), 0);
}

function strainBound(household: PreparedHousehold, prepared: PreparedStrain): number {
  const { problem } = household;
  const { strain, curves } = prepared;
  // Rations that can wait past the horizon need not be fed within it.
  let needed = 0;
  for (const { waitDays, need } of prepared.classes) {
    for (let t = 0; t < problem.days - waitDays; t++) needed += need[t] as number;
  }
  const have = strain.existing.reduce((sum, cup, k) => {
    const base = (curves.firstExisting + k) * curves.stride;
    let flies = meanOf(cup.draws.fliesNow, (x) => x, 0);
    for (let a = cup.ageDays; a < curves.stride; a++) flies += curves.expected[base + a] as number;
    return sum + flies;
  }, 0);
  const coming = (strain.awaited ?? []).reduce(
    (sum, { kind, cups }) => sum + cups * (curves.totalExpected[curves[kind]] as number),
    0,
  );
  let best = 0;
  for (let c = 0; c < curves.firstExisting; c++) best = Math.max(best, curves.totalExpected[c] as number);
  const allowed = needed * problem.serviceLevel;
  return Math.max(0, (allowed - have - coming) / Math.max(1, best));
}
