import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import highsLoader from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../bench/households.ts';
import { solverOf } from '../../src/app/index.ts';
import { foresightBound, planSupply, type Solve, verifyPolicy } from '../../src/planner/index.ts';

const problem = syntheticProblem({ seed: 5, needs: [70], workWeekdays: [1, 4], days: 126 });
let solve: Solve;
const models: { text: string; bound: number }[] = [];

beforeAll(async () => {
  const highs = await highsLoader();
  solve = (text) => {
    const solved = solverOf(highs)(text);
    models.push({ text, bound: solved.bound });
    return solved;
  };
});

describe('the bound with perfect foresight', () => {
  it('is above need over yield without deaths, and never above a verified policy in the same worlds', () => {
    const bound = foresightBound(problem, (text) => solve(text), { worlds: 12, seed: 77, prices: [0.3] });
    const plan = planSupply(problem, { scenarios: 400 });
    const verified = verifyPolicy(
      problem,
      { kind: 'feedback', parameters: plan.parameters },
      { seed: 77, scenarios: 2000, purchases: 'any' },
    );
    const price = bound.byStrain[0]?.price ?? 0;
    // Weak duality: bound <= cups + price x (short days - short days allowed), for any policy.
    const allowed = (1 - problem.serviceLevel) * (problem.days - (verified.homeGrownFromDay[0] ?? 0));
    const mostDual = verified.cups + price * Math.max(0, verified.shortDays - allowed);
    expect(bound.cups).toBeGreaterThan(plan.lowerBound);
    expect(bound.cups - 3 * bound.standardError).toBeLessThan(mostDual);
    expect(plan.lowerBound).toBeLessThan(verified.cups);
  });
  it('is the same by GLPK on the same model file, to 1e-6', () => {
    const model = models[0];
    const folder = mkdtempSync(join(tmpdir(), 'foresight-'));
    try {
      writeFileSync(join(folder, 'model.lp'), model?.text ?? '');
      execFileSync('glpsol', ['--lp', join(folder, 'model.lp'), '-o', join(folder, 'answer.txt')], { stdio: 'pipe' });
      const found = /Objective:\s+obj = ([\d.e+-]+)/.exec(readFileSync(join(folder, 'answer.txt'), 'utf8'));
      // glpsol prints ten significant figures.
      expect(Number(found?.[1])).toBeCloseTo(model?.bound ?? Number.NaN, 5);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
