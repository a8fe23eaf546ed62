import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import highsLoader from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { syntheticProblem } from '../../bench/households.ts';
import { solverOf } from '../../src/app/index.ts';
import { type GapSplit, gapSplit, type Solve } from '../../src/planner/index.ts';

const problem = syntheticProblem({ seed: 5, needs: [40], workWeekdays: [1, 4], days: 49 });
const models: { text: string; bound: number }[] = [];
let split: GapSplit;

beforeAll(async () => {
  const solver = solverOf(await highsLoader());
  const solve: Solve = (text) => {
    const solved = solver(text);
    models.push({ text, bound: solved.bound });
    return solved;
  };
  const parameters = { safety: [[2]], coverDays: 0, founderCups: 2, rescueSafety: 2 };
  split = gapSplit(problem, parameters, solve, { worlds: 200, foresightWorlds: 4, seed: 77, purchases: 'any' });
}, 180_000);

describe('the row of bounds from parts of cups to the plan', () => {
  it('grows with every rule, and the plan is not below what is proved with foresight', () => {
    const { parts, founders, keeper, whole, certain, plan, foresight } = split;
    const row = [parts, founders, keeper, whole?.atLeast ?? null, certain].map((cups) => cups ?? Number.NaN);
    expect(row).not.toContain(Number.NaN);
    for (let i = 1; i < row.length; i++) expect(row[i]).toBeGreaterThanOrEqual((row[i - 1] as number) - 1e-6);
    expect(founders).toBeGreaterThan(parts ?? Number.NaN);
    expect(foresight.cups - 3 * foresight.standardError).toBeLessThan(plan.cups);
  });
  it('is solved to the end with whole cups, to a whole number above what parts of cups need', () => {
    expect(split.whole?.found).toBe(split.whole?.atLeast);
    expect(Number.isInteger(split.whole?.atLeast)).toBe(true);
    expect(split.whole?.atLeast).toBeGreaterThan(split.keeper ?? Number.NaN);
  });
});

describe('GLPK on the same model files', () => {
  it('finds the optimum in parts of cups and in whole ones', () => {
    const cores = models.filter(({ text }) => text.includes('\n k_'));
    expect(cores.map(({ text }) => text.includes('\nGenerals\n'))).toEqual([false, false, false, true]);
    for (const { text, bound } of cores) expect(glpkOptimum(text)).toBeCloseTo(bound, 4);
  });
});

function glpkOptimum(text: string): number {
  const folder = mkdtempSync(join(tmpdir(), 'gap-'));
  try {
    writeFileSync(join(folder, 'model.lp'), text);
    const answer = join(folder, 'answer.txt');
    execFileSync('glpsol', ['--lp', join(folder, 'model.lp'), '--cuts', '-o', answer], { stdio: 'pipe' });
    return Number(/Objective:\s+obj = ([\d.e+-]+)/.exec(readFileSync(answer, 'utf8'))?.[1]);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
