import { describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../bench/households.ts';
import { tunePolicy, verifyPolicy } from '../../src/planner/index.ts';

const problem = syntheticProblem({ seed: 4, needs: [60], workWeekdays: [0, 2, 5], days: 84 });
const quick = { worlds: 40, finalWorlds: 60, finalRounds: 1 };

describe('the rhythm of the week', () => {
  const parameters = { safety: [[2]], coverDays: 0, founderCups: 2, rescueSafety: 2 };
  const sessionsOn = (rhythm?: number[]) => {
    const choice = { kind: 'feedback' as const, parameters: rhythm ? { ...parameters, rhythm } : parameters };
    const { sessionByDay } = verifyPolicy(problem, choice, { seed: 3, scenarios: 200, purchases: 'any' });
    const byWeekday = [0, 2, 5].map((weekday) =>
      sessionByDay.filter((_, t) => t % 7 === weekday).reduce((a, b) => a + b, 0),
    );
    return byWeekday.map((sessions) => sessions / byWeekday.reduce((a, b) => a + b, 0));
  };
  it('holds most sessions on its day, and only urgent ones on others', () => {
    const [, , fifth = 0] = sessionsOn([5]);
    expect(fifth).toBeGreaterThan(0.7);
    expect(fifth).toBeLessThan(1);
    expect(Math.max(...sessionsOn())).toBeLessThan(0.6);
  });
  it('is one day a week when sessions are dear', () => {
    const withSession = (perSession: number) => ({ ...problem, weights: { ...problem.weights, perSession } });
    expect(tunePolicy(withSession(10), quick).parameters.rhythm).toHaveLength(1);
  });
});

describe('the numbers of the policy', () => {
  it('stay the same to the last digit when beliefs move a little, and change when they move much', () => {
    const shifted = (by: number) => ({
      ...problem,
      strains: problem.strains.map((strain) => ({
        ...strain,
        uncertainty: {
          ...strain.uncertainty,
          householdDraws: {
            logYield: Float64Array.from({ length: 400 }, (_, s) => by + 0.2 * Math.sin(s * 7.7)),
            logPace: Float64Array.from({ length: 400 }, (_, s) => 0.05 * Math.cos(s * 3.3)),
          },
        },
      })),
    });
    const tuned = (by: number) => tunePolicy(shifted(by), quick).parameters;
    expect(tuned(0.02)).toEqual(tuned(0));
    expect(tuned(-0.4)).not.toEqual(tuned(0));
  });
});
