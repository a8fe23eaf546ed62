import { describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../../bench/households.ts';
import type { PlanningProblem } from '../problem.ts';
import type { PolicyParameters } from './feedback-policy.ts';
import { withFirstParcel } from './first-parcel.ts';
import { planSupply } from './plan-supply.ts';
import { verifyPolicy } from './verify-policy.ts';

const worlds = 2000;
/** What a day in fresh worlds may seem to be with .99. */
const seenAtLeast = 0.99 - 2 * Math.sqrt((0.99 * 0.01) / worlds);
const rule: PolicyParameters = { safety: [[2.5]], coverDays: 0, founderCups: 2, rescueSafety: 2 };

/** A household of 120 flies a day that can order today for the day after tomorrow, with some of its cups lost, and some of their flies. */
function household(keeps: (cup: number) => boolean, flies = 1): PlanningProblem {
  const problem = syntheticProblem({ seed: 5, needs: [120], workWeekdays: [0, 3], days: 70 });
  const strains = problem.strains.map((strain) => ({
    ...strain,
    existing: strain.existing
      .filter((_, cup) => keeps(cup))
      .map((cup) => ({ ...cup, draws: { ...cup.draws, fliesNow: cup.draws.fliesNow.map((now) => now * flies) } })),
  }));
  return { ...problem, strains, purchase: { ...problem.purchase, leadDays: 2 } };
}

function orderedToday(problem: PlanningProblem, parameters: PolicyParameters): number {
  const { jobs } = planSupply(problem, { scenarios: 1, parameters });
  return jobs.reduce((sum, job) => sum + (job.kind === 'order' && job.day === 0 ? (job.cups ?? 0) : 0), 0);
}

function judged(problem: PlanningProblem, parameters: PolicyParameters) {
  const seen = verifyPolicy(
    problem,
    { kind: 'feedback', parameters },
    { seed: 31, scenarios: worlds, purchases: 'any' },
  );
  const { perCup, perBoughtCup, perSession } = problem.weights;
  return {
    worstSoon: Math.min(...(seen.serviceByDay[0] as Float64Array).subarray(2, 14)),
    cost: perCup * seen.cupsStarted + perBoughtCup * seen.cupsBought + perSession * seen.sessions,
  };
}

describe('the first parcel', () => {
  const lost = household((cup) => cup % 3 !== 1);
  const found = withFirstParcel(lost, rule, 'any');

  it('is smaller than an over-cautious cover wants, for less money, and safe in fresh worlds', () => {
    const cautious = { ...rule, firstParcelSafety: [6] };
    expect(orderedToday(lost, found.parameters)).toBeLessThan(orderedToday(lost, cautious));
    expect(judged(lost, found.parameters).cost).toBeLessThan(judged(lost, cautious).cost);
    expect(judged(lost, found.parameters).worstSoon).toBeGreaterThanOrEqual(seenAtLeast);
    // What is told comes before the parcel.
    expect(found.shortSpells.every(({ untilDay }) => untilDay < 2)).toBe(true);
  });

  it('is larger than a careless cover wants where that leaves a day short', () => {
    const half = household((cup) => cup % 2 === 0, 0.5);
    const { parameters } = withFirstParcel(half, rule, 'any');
    const careless = { ...rule, firstParcelSafety: [0] };
    expect(judged(half, careless).worstSoon).toBeLessThan(seenAtLeast);
    expect(judged(half, parameters).worstSoon).toBeGreaterThanOrEqual(seenAtLeast);
  });

  it('is the same whenever it is asked for', () => {
    expect(withFirstParcel(lost, rule, 'any')).toEqual(found);
  });

  it('comes too late for a shelf without flies: those days are told, with what is missing', () => {
    const bare = household(() => false);
    const { parameters, shortSpells } = withFirstParcel(bare, rule, 'any');
    expect(orderedToday(bare, parameters)).toBeGreaterThan(0);
    // Nothing before the parcel of the day after tomorrow: both mornings all 120 flies are missing.
    expect(shortSpells[0]).toMatchObject({ fromDay: 0, chance: 1, missingFlies: expect.closeTo(120, -1) });
    expect(shortSpells[0]?.untilDay).toBeGreaterThanOrEqual(1);
  });

  it('is not searched where nothing may be bought, and the days without are told', () => {
    const bare = household(() => false);
    const { shortSpells } = withFirstParcel(bare, rule, 'none');
    expect(shortSpells).toMatchObject([{ fromDay: 0, untilDay: 13, chance: 1 }]);
  });

  it('of rations twice a week that can wait a day, no more is told as missing than is wanted', () => {
    const bare = household(() => false);
    const strains = bare.strains.map((strain) => {
      const flies = strain.wantedFlies.map((_, day) => (day % 3 === 0 ? 360 : 0));
      return { ...strain, wantedFlies: flies, groups: [{ group: 'newts', waitDays: 1, flies }], needDraws: [] };
    });
    const { shortSpells } = withFirstParcel({ ...bare, strains }, rule, 'none');
    expect(shortSpells[0]).toMatchObject({
      fromDay: 1,
      missingFlies: expect.closeTo(360, -1),
      wantedFlies: expect.closeTo(360, 5),
    });
  });
});
