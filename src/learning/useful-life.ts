/** How long cups are of use in this household, against the nominal: learned from cups that were ended as spent. */
import { type RandomStream, risingReaches } from '../foundation/index.ts';
import type { CupEvidence } from './evidence.ts';
import { lifeBehind } from './failure.ts';

/** Log sd of the household's mean life against the nominal (value from memory). */
const householdLifeSd = 0.15;
/** A cup ended younger than this share of its nominal life was not spent, unless the log says so. */
const spentFromShare = 0.7;

/** Normal conjugate posterior of the log of life / nominal life. */
export function logLife(cups: readonly CupEvidence[], cupSd: number): { mean: number; sd: number } {
  const logs = cups.filter(ranItsCourse).map((c) => Math.log((c.ended as { ageDays: number }).ageDays / c.spentAge));
  const precision = 1 / householdLifeSd ** 2 + logs.length / cupSd ** 2;
  return { mean: logs.reduce((a, b) => a + b, 0) / cupSd ** 2 / precision, sd: 1 / Math.sqrt(precision) };
}

function ranItsCourse(cup: CupEvidence): boolean {
  if (cup.ended === null || cup.ended.failed || cup.ended.ageDays <= 0) return false;
  return cup.ended.spent ?? cup.ended.ageDays >= spentFromShare * cup.spentAge;
}

/** The end of a living cup in one scenario, days of age; always after today. */
export interface CupEndDraw {
  endAge: number;
  /** Age at which it fails and its flies are lost; Infinity when it runs its course. */
  failAge: number;
}

/** A living cup may fail at any later age of its nominal life, when such cups do, else it ends when spent. */
export function drawEndAge(
  cup: CupEvidence,
  failureChance: number,
  life: { mean: number; cupSd: number },
  random: RandomStream,
): CupEndDraw {
  const behind = lifeBehind(cup);
  const failsYet = (failureChance * (1 - behind)) / (1 - failureChance * behind);
  if (random.uniform() < failsYet) {
    const failAge = ageAtFailure(cup, behind + random.uniform() * (1 - behind));
    return { endAge: failAge, failAge };
  }
  const spent = cup.spentAge * Math.exp(life.mean + life.cupSd * random.normal());
  return { endAge: Math.max(cup.ageDays + 1, spent), failAge: Number.POSITIVE_INFINITY };
}

/** Age before which the share `failed` of such cups' failures has come. */
function ageAtFailure({ failedBefore, spentAge }: CupEvidence, failed: number): number {
  return failedBefore ? risingReaches(failedBefore, failed) : failed * spentAge;
}
