import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import highsLoader from 'highs';
import { describe, expect, it } from 'vitest';
import { leastLotCost, lotSizingModel } from './lot-sizing.ts';

/** Twelve periods of Wagner and Whitin 1958; demands, set-up costs and the optimum 864 are values from memory. */
const twelvePeriods = {
  demand: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
  setUpCost: [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114],
  holdingCost: 1,
};

describe('the twelve-period example of Wagner and Whitin', () => {
  it('costs 864 by dynamic programming', () => expect(leastLotCost(twelvePeriods)).toBe(864));
  it('costs 864 by HiGHS, and so does its relaxation in facility-location form', async () => {
    const highs = await highsLoader();
    for (const relaxed of [false, true]) {
      expect(highs.solve(lotSizingModel(twelvePeriods, relaxed)).ObjectiveValue).toBeCloseTo(864, 6);
    }
  });
  it('has the same objective by GLPK on the same model file', () => {
    const folder = mkdtempSync(join(tmpdir(), 'lot-sizing-'));
    try {
      writeFileSync(join(folder, 'model.lp'), lotSizingModel(twelvePeriods, false));
      execFileSync('glpsol', ['--lp', join(folder, 'model.lp'), '-o', join(folder, 'answer.txt')], { stdio: 'pipe' });
      const found = /Objective:\s+obj = ([\d.]+)/.exec(readFileSync(join(folder, 'answer.txt'), 'utf8'));
      expect(Number(found?.[1])).toBeCloseTo(864, 6);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
