/** A cup that strays: what was seen, how unlikely it was, why it may be, and what it does to the supply. */
import { likelyCauses } from './causes.ts';
import type { CupPrior } from './cell-draw.ts';
import type { TableContext } from './cup-table.ts';
import type { CupEvidence, OffCourse } from './evidence.ts';
import type { KeeperSetting } from './keeper-settings.ts';
import { mostSurprising } from './surprise.ts';
import { emergedBetween, runningTotal } from './warped-emergence.ts';

/** Notes rarer than this are pointed at. */
const pointedAtBelow = 0.025;
const supplyDays = 14;

/** Draws of log pace and log yield. */
export interface PaceAndYield {
  logPace: Float64Array;
  logYield: Float64Array;
}

/**
 * Null while every note is as likely as 2.5 % or more (allowing for their number).
 * @param believed draws of this cup; `ordinary` draws of a cup like it of which nothing was seen.
 */
export function offCourse(
  cup: CupEvidence,
  context: TableContext,
  setting: KeeperSetting,
  expected: CupPrior,
  draws: { believed: PaceAndYield; ordinary: PaceAndYield },
): OffCourse | null {
  const surprise = mostSurprising(cup, context, setting, expected);
  if (surprise === null || surprise.chance >= pointedAtBelow) return null;
  const total = runningTotal(cup.emergedByAge);
  const change = meanSupply(total, cup.ageDays, draws.believed) - meanSupply(total, cup.ageDays, draws.ordinary);
  return {
    ...surprise,
    causes: likelyCauses(cup, surprise.direction),
    suppliedFliesIn14Days: Math.round(change),
  };
}

/** Mean number of flies that emerge in the coming days. */
function meanSupply(total: Float64Array, ageDays: number, draws: PaceAndYield): number {
  let sum = 0;
  for (let s = 0; s < draws.logPace.length; s++) {
    const flies = emergedBetween(total, ageDays, ageDays + supplyDays, draws.logPace[s] as number);
    sum += Math.exp(draws.logYield[s] as number) * flies;
  }
  return sum / draws.logPace.length;
}
