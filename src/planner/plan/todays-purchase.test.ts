import { describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../../bench/households.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import { planSupply } from './plan-supply.ts';
import { withTodaysPurchase } from './todays-purchase.ts';
import { verifyPolicy } from './verify-policy.ts';

/** A rule that buys against everything. */
const cautious: PolicyParameters = { safety: [[2.5]], coverDays: 0, founderCups: 2, rescueSafety: [[6]] };

/** A household of 120 flies a day that can order today for the day after tomorrow, with some of its cups lost. */
function household(keeps: (cup: number) => boolean): PlanningProblem {
  const problem = syntheticProblem({ seed: 5, needs: [120], workWeekdays: [0, 3], days: 70 });
  const strains = problem.strains.map((strain) => ({
    ...strain,
    existing: strain.existing.filter((_, cup) => keeps(cup)),
  }));
  return { ...problem, strains, purchase: { ...problem.purchase, leadDays: 2 } };
}

function orderedToday(problem: PlanningProblem, parameters: PolicyParameters): number {
  const { jobs } = planSupply(problem, { scenarios: 1, parameters });
  return jobs.reduce((sum, job) => sum + (job.kind === 'order' && job.day === 0 ? (job.cups ?? 0) : 0), 0);
}

function judged(problem: PlanningProblem, parameters: PolicyParameters) {
  const seen = verifyPolicy(problem, { kind: 'feedback', parameters }, { seed: 31, scenarios: 600, purchases: 'any' });
  const { perCup, perBoughtCup, perSession } = problem.weights;
  return {
    ...seen,
    cost: perCup * seen.cupsStarted + perBoughtCup * seen.cupsBought + perSession * seen.sessions,
  };
}

describe("today's purchase", () => {
  const lost = household((cup) => cup % 3 !== 1);
  const searched = withTodaysPurchase(lost, cautious, 'any');

  it('is smaller than an over-cautious rule wants, for less money, with the service kept in fresh worlds', () => {
    const rule = orderedToday(lost, cautious);
    expect(orderedToday(lost, searched)).toBeLessThan(rule);
    expect(judged(lost, searched).cost).toBeLessThan(judged(lost, { ...cautious, boughtNow: [rule] }).cost);
    expect(judged(lost, searched).holds).toBe(true);
  });

  it('is the same whenever it is asked for', () => {
    expect(withTodaysPurchase(lost, cautious, 'any')).toEqual(searched);
  });

  it('is not cut to nothing where animals would go without', () => {
    const bare = household(() => false);
    expect(orderedToday(bare, withTodaysPurchase(bare, cautious, 'any'))).toBeGreaterThan(0);
  });

  it("is the rule's where the rule buys nothing, or nothing may be bought", () => {
    const whole = household(() => true);
    const calm = { ...cautious, rescueSafety: [[0]] };
    expect(withTodaysPurchase(whole, calm, 'any')).toBe(calm);
    expect(withTodaysPurchase(lost, cautious, 'none')).toBe(cautious);
  });
});
