import { evenBetween } from '../../bench/households.ts';
import { describe, expect, it } from 'vitest';
import { counterNormal, normalCdf } from '../../src/foundation/index.ts';
import { verifyPolicy } from '../../src/planner/index.ts';
import { burst, noUncertainty, plainProblem } from './planner-problems.ts';

const weekly = (cups: number) => ({
  kind: 'habit' as const,
  habit: { weekdays: [0], cups: [[cups]] },
  bridge: { safety: [[2]], coverDays: 0, founderCups: 1, rescueSafety: 0 },
});

/** A cup that lives for the whole horizon, gives nothing, and may found from today on. */
const fountain = (days: number) => ({
  id: 'fountain',
  ageDays: 20,
  curve: {
    emergedByAge: new Float32Array(days + 60),
    founderFromAge: 0,
    founderUntilAge: days + 60,
    spentAge: days + 60,
  },
  foundersFromDay: 0,
  draws: {
    logPace: new Float64Array(1),
    logYield: new Float64Array(1),
    endAge: Float64Array.of(10_000),
    fliesNow: new Float64Array(1),
  },
});

describe('periodic steady state, reckoned by hand', () => {
  const days = 98;
  it('flies that die at a tenth a day: 700 on one day feed 100 a day for five days of the week', () => {
    // s(0) = 700; s(d + 1) = .9 (s(d) - 100): 700, 540, 396, 266.4, 149.76, 44.784: short on the sixth day.
    const problem = plainProblem({
      days,
      curve: burst(700, 14, 30),
      need: 100,
      weekdays: [0],
      strain: { adultDailySurvival: 0.9, existing: [fountain(days)] },
    });
    const { serviceByDay } = verifyPolicy(problem, weekly(1), { seed: 3, scenarios: 5, purchases: 'none' });
    const week = Array.from(serviceByDay[0]?.slice(21, 28) ?? []);
    expect(week).toEqual([1, 1, 1, 1, 1, 0, 0]);
  });
  it('flies that do not die: n cups of 233 a week hold a need of 100 a day exactly from n = 4', () => {
    // 7 x 100 = 700 a week; 3 x 233 = 699 falls behind by one fly a week, 4 x 233 is enough.
    for (const [cups, holds] of [
      [3, false],
      [4, true],
    ] as const) {
      const problem = plainProblem({
        days,
        curve: burst(233, 14, 60),
        need: 100,
        weekdays: [0],
        strain: { existing: [fountain(days)] },
      });
      const result = verifyPolicy(problem, weekly(cups), { seed: 3, scenarios: 5, purchases: 'none' });
      expect(result.holds).toBe(holds);
    }
  });
});

describe('simulated moments against closed forms', () => {
  it('flies of one cup a week: thinned by failures, and spread as a product of lognormals', () => {
    const logSd = { household: 0.2, session: 0.15, cup: 0.3 };
    const failure = { perCup: 0.1, perSession: 0.05, failedBefore: evenBetween(2, 12) };
    const days = 35;
    const problem = plainProblem({
      days,
      curve: burst(1000, 14, 30),
      need: 1,
      weekdays: [0],
      strain: { existing: [fountain(days)], uncertainty: { ...noUncertainty, yieldLogSd: logSd, failure } },
    });
    const n = 20_000;
    const result = verifyPolicy(problem, weekly(1), { seed: 8, scenarios: n, purchases: 'none' });
    // Every failure comes before day 14: the day-14 burst is there with chance .95 x .9.
    const alive = 0.95 * 0.9;
    expect(Math.abs((result.serviceByDay[0]?.[14] ?? 0) - alive)).toBeLessThan(
      5 * Math.sqrt((alive * (1 - alive)) / n),
    );
    // Without failures a need of 1000 exp(q sd) on day 14 is met with chance Phi(-q).
    const total = Math.hypot(logSd.household, logSd.session, logSd.cup);
    for (const q of [-1.5, 0, 1]) {
      const wantedFlies = new Float64Array(days + 40);
      wantedFlies[14] = 1000 * Math.exp(q * total);
      const certain = problem.strains.map((s) => ({
        ...s,
        wantedFlies,
        uncertainty: { ...s.uncertainty, failure: noUncertainty.failure },
      }));
      const met = verifyPolicy({ ...problem, strains: certain }, weekly(1), {
        seed: 8,
        scenarios: n,
        purchases: 'none',
      });
      const chance = normalCdf(-q);
      const error = Math.sqrt((chance * (1 - chance)) / n);
      expect(Math.abs((met.serviceByDay[0]?.[14] ?? 0) - chance)).toBeLessThan(5 * error + 1e-3);
    }
  });
  it('cups fail at the ages they are given, mould early and mites late', () => {
    // Half of the failures on day 3, the other half on day 20, of 40 cups in a hundred.
    const failedBefore = Float64Array.from({ length: 31 }, (_, age) => (age > 20 ? 1 : age > 3 ? 0.5 : 0));
    const failure = { perCup: 0.4, perSession: 0, failedBefore };
    const days = 35;
    const n = 20_000;
    for (const [age, alive] of [
      [2, 1],
      [14, 0.8],
      [25, 0.6],
    ] as const) {
      const problem = plainProblem({
        days,
        curve: burst(1000, age, 30),
        need: 0,
        weekdays: [0],
        strain: {
          existing: [fountain(days)],
          wantedFlies: Float64Array.from({ length: days + 40 }, (_, t) => (t === age ? 500 : 0)),
          uncertainty: { ...noUncertainty, failure },
        },
      });
      const result = verifyPolicy(problem, weekly(1), { seed: 8, scenarios: n, purchases: 'none' });
      const error = 5 * Math.sqrt((alive * (1 - alive)) / n);
      expect(Math.abs((result.serviceByDay[0]?.[age] ?? 0) - alive)).toBeLessThanOrEqual(error);
    }
  });
  it('the tabulated normals used there have the moments of a normal', () => {
    let sum = 0;
    for (let i = 0; i < 20_000; i++) sum += counterNormal(5, i) ** 2;
    expect(Math.abs(sum / 20_000 - 1)).toBeLessThan(5 * Math.sqrt(2 / 20_000));
  });
});
