/** Cups that were ordered from others and are on their way: the planner counts on them, once. */
import { counterNormal, counterUniform, type DayNumber, dayNumber } from '../foundation/index.ts';
import type { Facts } from '../logbook/index.ts';
import type { CupCurve, CupUncertainty, ExistingCup, StrainProblem } from '../planner/index.ts';

/** A parcel that is later than this is no longer counted on. */
const patienceDays = 4;

export function awaitedCups(
  facts: Facts,
  strain: string,
  today: DayNumber,
  bought: StrainProblem['bought'],
  uncertainty: CupUncertainty,
): ExistingCup[] {
  const { quarantineDays } = facts.household.purchase;
  return facts.purchases
    .filter((p) => p.strain === strain && dayNumber(p.on) <= today && dayNumber(p.arrives) + patienceDays >= today)
    .flatMap((p) => {
      const inDays = Math.max(0, dayNumber(p.arrives) - today);
      const ageThen = p.stage === 'young' ? bought.youngAgeDays : bought.producingAgeDays;
      return Array.from({ length: p.cups }, (_, i) => ({
        id: `${p.purchase}#${i + 1}`,
        // A young cup is not older than its journey; counting it a little late is the safe side.
        ageDays: Math.max(0, ageThen - inDays),
        curve: fromAge(p.stage === 'young' ? bought.young : bought.producing, ageThen),
        foundersFromDay: inDays + quarantineDays,
        draws: freshDraws(uncertainty, bought.producing.spentAge, p.purchase.length + i),
      }));
    });
}

/** Nothing is ours before it is here; then come all at once the flies that emerged on the way. */
function fromAge(curve: CupCurve, age: number): CupCurve {
  let before = 0;
  const emergedByAge = curve.emergedByAge.map((flies, a) => {
    if (a <= age) before += flies;
    return a < age ? 0 : a === age ? before : flies;
  });
  return { ...curve, emergedByAge };
}

/** A cup of which nothing is known but the household's ways. */
function freshDraws(uncertainty: CupUncertainty, spentAge: number, salt: number): ExistingCup['draws'] {
  const { logYield, logPace } = uncertainty.householdDraws;
  const draws = Math.max(1, logYield.length);
  const { failure, yieldLogSd, paceLogSd } = uncertainty;
  const spread = (common: Float64Array, sd: number, stream: number) =>
    Float64Array.from({ length: draws }, (_, s) => (common[s] ?? 0) + sd * counterNormal(stream, s, salt));
  return {
    logYield: spread(logYield, yieldLogSd.cup, 1),
    logPace: spread(logPace, paceLogSd.cup, 2),
    endAge: Float64Array.from({ length: draws }, (_, s) =>
      counterUniform(3, s, salt) < failure.perCup
        ? failure.fromAge + (failure.untilAge - failure.fromAge) * counterUniform(4, s, salt)
        : spentAge,
    ),
    fliesNow: new Float64Array(draws),
  };
}
