/** Small planning problems for tests: one strain, plain numbers that can be reckoned by hand. */
import { evenBetween } from '../../bench/households.ts';
import type { CupCurve, PlanningProblem, StrainProblem } from '../../src/planner/index.ts';

export const noUncertainty: StrainProblem['uncertainty'] = {
  yieldLogSd: { household: 0, session: 0, cup: 0 },
  paceLogSd: { household: 0, session: 0, cup: 0 },
  failure: { perCup: 0, perSession: 0, failedBefore: evenBetween(4, 28) },
  countLogSd: 0,
  failureNoticedDays: 0,
  householdDraws: { logYield: new Float64Array(0), logPace: new Float64Array(0) },
};

/** A cup whose flies all emerge on one day of age. */
export function burst(flies: number, age: number, spentAge: number): CupCurve {
  const emergedByAge = new Float32Array(spentAge + 1);
  emergedByAge[age] = flies;
  return { emergedByAge, founderFromAge: age, founderUntilAge: age + 3, spentAge };
}

/** One strain with a constant need; work on the days `weekdays` modulo 7. */
export function plainProblem(
  over: Partial<PlanningProblem> & {
    strain: Partial<StrainProblem>;
    curve: CupCurve;
    need: number;
    weekdays: number[];
  },
): PlanningProblem {
  const { strain, curve, need, weekdays, ...rest } = over;
  const days = rest.days ?? 182;
  const total = days + 40;
  const marks = (list: number[]) => Uint8Array.from({ length: total }, (_, t) => (list.includes(t % 7) ? 1 : 0));
  return {
    seed: 1,
    days,
    runOutDays: 40,
    workDays: marks(weekdays),
    maxCupsPerSession: 20,
    shelfCups: 500,
    serviceLevel: 0.99,
    purchase: { leadDays: 2, deliveryDays: marks([1, 4]), quarantineDays: 14, arrivalLossShare: 0 },
    weights: { perCup: 1, perSession: 0.5, perBoughtCup: 4 },
    strains: [
      {
        strain: 'test',
        wantedFlies: new Float64Array(total).fill(need),
        needLogSd: 0,
        orderedFlies: new Float64Array(total),
        curves: Array.from({ length: total }, () => curve),
        foundersPerCup: 0,
        adultDailySurvival: 1,
        existing: [],
        bought: { producing: curve, producingAgeDays: 12, young: curve, youngAgeDays: 3 },
        uncertainty: noUncertainty,
        ...strain,
      },
    ],
    ...rest,
  };
}
