import { beforeAll, describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../../bench/households.ts';
import { prepareHousehold } from '../forecast/prepared-household.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PlannedJob } from './plan-jobs.ts';
import { policyJobs } from './plan-supply.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import { startUpOf } from './start-up.ts';
import { tunePolicy } from './tune-policy.ts';
import { verifyPolicy } from './verify-policy.ts';

/** Two strains, no cup, parcels on four days of the week. */
const shape = { seed: 5, needs: [180, 12], workWeekdays: [0, 3], days: 56, living: 0 };
const nothing = syntheticProblem(shape);
nothing.purchase.deliveryDays = nothing.purchase.deliveryDays.map((_, t) => (t % 7 > 0 && t % 7 < 5 ? 1 : 0));
const { quarantineDays } = nothing.purchase;

/** The same, with one cup that is past giving founders. */
function withOldCup(bought: boolean): PlanningProblem {
  const { existing } = syntheticProblem({ ...shape, living: 1 }).strains[0] as PlanningProblem['strains'][number];
  const old = existing.slice(0, 1).map((cup) => ({ ...cup, bought, foundersFromDay: 1000 }));
  return { ...nothing, strains: nothing.strains.map((strain, k) => (k === 0 ? { ...strain, existing: old } : strain)) };
}

const startUp = (problem: PlanningProblem) => {
  const household = prepareHousehold(problem);
  return startUpOf(household, household.strains[0] as (typeof household.strains)[number]);
};

describe('a household with no cup of its own', () => {
  let jobs: PlannedJob[] = [];
  beforeAll(() => {
    const { parameters } = tunePolicy(nothing, { worlds: 40, finalWorlds: 120 });
    jobs = policyJobs(nothing, parameters);
  });

  it('orders one parcel for all strains, and none in the week after it', () => {
    const orders = jobs.filter(({ kind, day }) => kind === 'order' && day <= 7);
    expect(new Set(orders.map(({ strain }) => strain)).size).toBe(2);
    expect(new Set(orders.map(({ reason }) => reason.values.arrivalDay)).size).toBe(1);
  });

  it('starts cups from the first parcel at once, and says that there is nothing to protect', () => {
    const arrival = jobs.find(({ kind }) => kind === 'order')?.reason.values.arrivalDay as number;
    const first = jobs.find(({ kind }) => kind === 'start')?.day ?? Number.POSITIVE_INFINITY;
    expect(first).toBeGreaterThanOrEqual(arrival);
    expect(first).toBeLessThan(arrival + quarantineDays);
    expect(jobs.find(({ kind }) => kind === 'order')?.reason.code).toBe('first-founders');
  });

  it('keeps bought cups in quarantine where a home-grown one stands, and only there', () => {
    const arrival = prepareHousehold(nothing).deliveryByOrderDay[0] as number;
    expect(startUp(withOldCup(false)).firstSessionDay).toBeGreaterThanOrEqual(arrival + quarantineDays);
    expect(startUp(withOldCup(true)).firstSessionDay).toBeLessThan(arrival + quarantineDays);
    expect(startUp(nothing).firstSessionDay).toBe(startUp(withOldCup(true)).firstSessionDay);
  });

  it('buys no multitude of cups to make the first days after the parcel as safe as the later ones', () => {
    const ordered = (parameters: PolicyParameters) =>
      policyJobs(nothing, parameters).reduce(
        (sum, job) => sum + (job.kind === 'order' && job.day === 0 ? (job.cups ?? 0) : 0),
        0,
      );
    const { parameters } = tunePolicy(nothing, { worlds: 40, finalWorlds: 120 });
    expect(ordered(parameters)).toBeLessThanOrEqual(0.8 * ordered({ ...parameters, firstParcelSafety: [5.5, 5.5] }));
    const judge = (more: Partial<PolicyParameters>) =>
      verifyPolicy(
        nothing,
        { kind: 'feedback', parameters: { ...parameters, ...more } },
        { seed: 9, scenarios: 800, purchases: 'any' },
      );
    const [found, sure] = [judge({}), judge({ firstParcelSafety: [5.5, 5.5] })];
    expect(found.cupsBought).toBeLessThan(sure.cupsBought);
    // From the first home-grown flies on nothing is given up: two standard errors of 800 worlds about .99.
    for (const service of found.serviceByDay) {
      expect(Math.min(...service.slice(startUp(nothing).homeGrownFromDay ?? 0))).toBeGreaterThan(0.983);
    }
  });
});
