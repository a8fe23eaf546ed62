import { describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../bench/households.ts';
import { type PlanningProblem, planSupply, verifyPolicy } from '../../src/planner/index.ts';

const small = syntheticProblem({ seed: 2, needs: [20], workWeekdays: [0, 3], days: 84 });
const parameters = { safety: [[1.5]], coverDays: 0, founderCups: 1, rescueSafety: 1 };
const withStrain = (over: Partial<PlanningProblem['strains'][number]>): PlanningProblem => ({
  ...small,
  strains: small.strains.map((strain) => ({ ...strain, ...over })),
});
const judged = (problem: PlanningProblem) =>
  verifyPolicy(problem, { kind: 'feedback', parameters }, { seed: 5, scenarios: 100, purchases: 'any' });

describe('backup cups', () => {
  it('are started beyond the need, and say why', () => {
    const more = withStrain({ backupCups: 8 });
    expect(judged(more).cupsStarted).toBeGreaterThan(1.3 * judged(small).cupsStarted);
    const jobs = planSupply(more, { scenarios: 1, parameters }).jobs.filter((job) => job.kind === 'start');
    expect(jobs.some((job) => job.reason.code === 'keep-backup' && job.reason.values.backupCups === 8)).toBe(true);
  });
  it('keep a strain that nothing eats alive', () => {
    const unwanted = { wantedFlies: new Float64Array(small.days + small.runOutDays) };
    expect(judged(withStrain(unwanted)).cupsStarted).toBe(0);
    const jobs = planSupply(withStrain({ ...unwanted, backupCups: 2 }), { scenarios: 1, parameters }).jobs;
    const last = jobs.filter((job) => job.kind === 'start').at(-1);
    expect(last?.day).toBeGreaterThan(small.days - 28);
  });
});

describe('what is on hand', () => {
  it('limits the first sessions and no later one', () => {
    const wanted = withStrain({ backupCups: 30 });
    const startsOf = (problem: PlanningProblem) =>
      planSupply(problem, { scenarios: 1, parameters }).jobs.filter((job) => job.kind === 'start');
    const free = startsOf(wanted);
    const bound = startsOf({ ...wanted, cupsOnHandByDay: [1, 1] });
    expect(free[0]).toMatchObject({ day: 0 });
    expect(free[0]?.cups).toBeGreaterThan(3);
    expect(bound[0]).toMatchObject({ day: 0, cups: 1 });
    expect(bound[1]?.cups).toBeGreaterThan(3);
  });
});
