import { describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../bench/households.ts';
import { forecastSupply, habitPlan, planSupply, verifyPolicy } from '../../src/planner/index.ts';

const running = syntheticProblem({ seed: 2, needs: [80, 40], workWeekdays: [0, 3, 5], days: 126 });
const empty = syntheticProblem({ seed: 3, needs: [60], workWeekdays: [1, 4], days: 126, living: 0 });

describe('a running household', () => {
  const plan = planSupply(running, { scenarios: 600 });
  it('gets the same plan to the last digit for the same seed', () =>
    expect(planSupply(running, { scenarios: 600 })).toEqual(plan));
  it('starts cups on work days only, from cups that exist and with the founders of each', () => {
    const starts = plan.jobs.filter((job) => job.kind === 'start');
    expect(starts.length).toBeGreaterThan(5);
    for (const job of starts) {
      expect(running.workDays[job.day]).toBe(1);
      expect(job.flies).toBe(50 * (job.cups ?? 0));
    }
    const ids = new Set(running.strains.flatMap((s) => s.existing.map((cup) => cup.id)));
    for (const job of plan.jobs)
      for (const id of [...(job.cultures ?? []), ...(job.fromCultures ?? [])]) expect(ids).toContain(id);
    expect(starts[0]?.fromCultures?.length).toBeGreaterThan(0);
  });
  it('gives every job a reason whose numbers are numbers', () => {
    const numbers = plan.jobs.flatMap((job) => Object.values(job.reason.values).filter((v) => typeof v === 'number'));
    expect(numbers.length).toBeGreaterThan(plan.jobs.length);
    expect(numbers.filter((n) => !(n >= 0 && Number.isFinite(n)))).toEqual([]);
  });
  it('holds its promise in fresh worlds, with fewer cups than the best two-weekday habit', () => {
    const choice = { kind: 'feedback', parameters: plan.parameters } as const;
    const verified = verifyPolicy(running, choice, { seed: 991, scenarios: 3000, purchases: 'any' });
    expect((verified.worstDay?.service ?? 0) + 2 * (verified.worstDay?.standardError ?? 0)).toBeGreaterThan(0.98);
    const habit = habitPlan(running, { seed: 17, scenarios: 3000 });
    expect(habit.holds).toBe(true);
    expect(verified.cups / habit.verification.cups).toBeLessThan(0.8);
  });
  it('forecasts less and less on hand when nothing is started any more', () => {
    const nothing = forecastSupply(running, { scenarios: 300, starts: 'nothing', weeks: 13 });
    const quick = nothing.strains[0];
    expect(quick?.serviceLevel[3]).toBeGreaterThan(0.95);
    expect(quick?.serviceLevel[80]).toBe(0);
    expect(nothing.firstRiskyDay).toBeGreaterThan(3);
    expect(nothing.chanceOfNoShortfall).toBe(0);
    for (let t = 0; t < nothing.days; t++) {
      expect(quick?.onHandFlies.p05[t] ?? 0).toBeLessThanOrEqual(quick?.onHandFlies.p95[t] ?? -1);
    }
  });
});

describe('a household that starts from nothing', () => {
  const plan = planSupply(empty, { scenarios: 600 });
  it('buys cups for delivery days, and founds none before they are there; nothing home-grown is to be kept from mites', () => {
    const ordered = plan.jobs.filter((job) => job.kind === 'order');
    expect(new Set(ordered.map((job) => job.boughtKind))).toEqual(new Set(['producing', 'young']));
    const firstArrival = Math.min(...plan.jobs.filter((job) => job.kind === 'buy').map((job) => job.day));
    const firstStart = Math.min(...plan.jobs.filter((job) => job.kind === 'start').map((job) => job.day));
    expect(firstStart).toBeGreaterThanOrEqual(firstArrival);
    expect(firstStart).toBeLessThan(firstArrival + empty.purchase.quarantineDays);
    for (const job of plan.jobs) if (job.kind === 'buy') expect(empty.purchase.deliveryDays[job.day]).toBe(1);
  });
  it('says when home-grown flies take over, and has nothing before the first delivery', () => {
    const firstStart = Math.min(...plan.jobs.filter((job) => job.kind === 'start').map((job) => job.day));
    // Egg to adult takes 10 days at 24 C (docs/models/development.md); first flies a day or two before the mean.
    expect(plan.homeGrownFromDay[0]?.day).toBeGreaterThanOrEqual(firstStart + 8);
    expect(plan.serviceByDay[0]?.service[0]).toBe(0);
    expect(plan.serviceByDay[0]?.service[100]).toBeGreaterThan(0.97);
  });
  it('stays without flies for ever when nothing may be bought', () => {
    const verified = verifyPolicy(
      empty,
      { kind: 'feedback', parameters: plan.parameters },
      { seed: 4, scenarios: 50, purchases: 'none' },
    );
    expect(verified.cups).toBe(0);
    expect(verified.serviceByDay[0]?.[100]).toBe(0);
  });
});
