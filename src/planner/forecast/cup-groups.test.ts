import { expect, test } from 'vitest';
import { syntheticProblem } from '../../../bench/households.ts';
import { verifyPolicy, verifyPrepared } from '../plan/verify-policy.ts';
import { prepareHousehold } from './prepared-household.ts';
import { cupsOf, grouped, mostCupsApart } from './cup-groups.ts';
import { emerge, makeStrainWorld, resetWorld } from './strain-world.ts';
import type { PlanningProblem, StrainProblem } from '../problem.ts';

const small = syntheticProblem({ seed: 8, needs: [600], workWeekdays: [0, 1, 2, 3, 4, 5, 6], days: 56 });
const large = unfailing(syntheticProblem({ seed: 8, needs: [6000], workWeekdays: [0, 1, 2, 3, 4, 5, 6], days: 56 }));
const strainOf = (problem: PlanningProblem) => problem.strains[0] as StrainProblem;

test('a household of ordinary size is left as it is', () => {
  expect(strainOf(small).existing.length).toBeGreaterThan(30);
  expect(strainOf(small).existing.length).toBeLessThanOrEqual(mostCupsApart);
  expect(grouped(small)).toBe(small);
});

test('no cup and no fly is lost in blocks, and the blocks are few', () => {
  const [apart, together] = [strainOf(large).existing, strainOf(grouped(large)).existing];
  expect(apart.length).toBeGreaterThan(300);
  expect(together.length).toBeLessThan(mostCupsApart);
  expect(together.reduce((sum, cup) => sum + cupsOf(cup), 0)).toBe(apart.length);
  const flies = (cups: typeof apart, s: number) =>
    cups.reduce((sum, { draws }) => sum + (draws.fliesNow[s] as number), 0);
  const yields = (cups: typeof apart, s: number) =>
    cups.reduce((sum, { draws }) => sum + Math.exp(draws.logYield[s] as number), 0);
  for (const s of [0, 100, 511]) {
    expect(flies(together, s)).toBeCloseTo(flies(apart, s), 6);
    expect(yields(together, s)).toBeCloseTo(yields(apart, s), 6);
  }
});

test('in blocks, the living cups give on each day what they give apart', () => {
  const worlds = 60;
  const [apart, together] = [large, grouped(large)].map((problem) => meanOnHand(problem, worlds)) as [
    Float64Array,
    Float64Array,
  ];
  const most = Math.max(...apart);
  apart.forEach((flies, t) => expect(Math.abs((together[t] as number) - flies)).toBeLessThan(0.02 * most));
  expect(most).toBeGreaterThan(10_000);
});

test('what is left ahead of each block is what its cups leave together', () => {
  const of = (problem: PlanningProblem) => {
    const { curves } = prepareHousehold(problem).strains[0] as ReturnType<typeof prepareHousehold>['strains'][0];
    let flies = 0;
    for (let c = curves.firstExisting; c < curves.curves; c++) flies += curves.totalExpected[c] as number;
    return flies;
  };
  expect(of(grouped(large)) / of(large)).toBeCloseTo(1, 2);
});

test('in blocks a policy starts about as many cups, and is no less safe: a shelf judged together teaches less than each cup apart', () => {
  const twos = [Array.from({ length: 7 }, () => 2)];
  const parameters = { safety: twos, coverDays: 0, founderCups: 2, rescueSafety: 2 };
  const problem = { ...large, maxCupsPerSession: 400, shelfCups: 4000 };
  const choice = { kind: 'feedback' as const, parameters };
  const options = { seed: 5, scenarios: 60 };
  const blocks = verifyPolicy(problem, choice, options);
  const apart = verifyPrepared(prepareHousehold(problem), choice, options);
  expect(Math.abs(blocks.cupsStarted / apart.cupsStarted - 1)).toBeLessThan(0.03);
  expect(blocks.shortDays).toBeLessThan(apart.shortDays + 0.1);
  expect(apart.shortDays - blocks.shortDays).toBeLessThan(1);
});

/** Cups that run their course never fail, as the planner's problem has it. */
function unfailing(problem: PlanningProblem): PlanningProblem {
  const strains = problem.strains.map((strain) => ({
    ...strain,
    existing: strain.existing.map((cup) => {
      const endAge = cup.draws.endAge.map((age) => (age >= cup.curve.spentAge ? Number.POSITIVE_INFINITY : age));
      return { ...cup, draws: { ...cup.draws, endAge } };
    }),
  }));
  return { ...problem, strains };
}

/** Flies on hand by day when none are taken, mean over worlds. */
function meanOnHand(problem: PlanningProblem, worlds: number): Float64Array {
  const sw = makeStrainWorld(prepareHousehold(problem).strains[0] as ReturnType<typeof prepareHousehold>['strains'][0]);
  const flies = new Float64Array(40);
  for (let world = 0; world < worlds; world++) {
    resetWorld(sw, problem.seed, world);
    for (let t = 0; t < flies.length; t++) {
      emerge(sw, t);
      flies[t] = (flies[t] as number) + sw.onHand / worlds;
    }
  }
  return flies;
}
