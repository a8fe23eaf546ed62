import { describe, expect, it } from 'vitest';
import { problemText } from '../foundation/index.ts';
import { type ContaminationInput, contamination } from './contamination.ts';
import { unknownRecessive } from './locus.ts';

const loci = [unknownRecessive('vg'), { ...unknownRecessive('fli'), chromosome: 'X' as const }];
const input = (more: Partial<ContaminationInput> = {}): ContaminationInput => ({
  line: { female: 'vg/vg', male: 'vg/vg' },
  founders: { females: 25, males: 25 },
  stranger: { kind: 'male', female: '+/+', male: '+/+' },
  generations: 6,
  loci,
  ...more,
});
const winged = (more: Partial<ContaminationInput> = {}) => {
  const result = contamination(input(more));
  if (!result.ok) throw new Error(result.problems.map(problemText).join('; '));
  return result.value.generations.map((row) => row.wingedShare);
};

describe('one stranger among the founders, by hand', () => {
  it('one wild male of 25: 4 % carriers; then each allele with 1 in 50, so 1 - 0.98^2 and staying', () => {
    const seen = winged();
    expect(seen[0]).toBeCloseTo(1 / 25, 12);
    for (const share of seen.slice(1)) expect(share).toBeCloseTo(1 - 0.98 ** 2, 12);
  });
  it('one wild virgin female does the same', () => {
    const seen = winged({ stranger: { kind: 'virgin female', female: '+/+', male: '+/+' } });
    expect(seen[1]).toBeCloseTo(1 - 0.98 ** 2, 12);
  });
  it('one mated wild female brings twice as much: 4 %, then 1 - 0.96^2', () => {
    const seen = winged({ stranger: { kind: 'mated female', female: '+/+', male: '+/+' } });
    expect(seen[0]).toBeCloseTo(0.04, 12);
    expect(seen[1]).toBeCloseTo(1 - 0.96 ** 2, 12);
  });
  it('with a mating advantage of 1.5 it grows: p -> q-weighted, by the textbook recursion', () => {
    // w(AA) = w(Aa) = 1.5, w(aa) = 1: p' = 1.5 p / (1.5 (1 - q^2) + q^2) with Hardy-Weinberg each time.
    const seen = winged({ wingedFitness: 1.5 });
    let p = (0.04 * 1.5) / (0.04 * 1.5 + 0.96) / 2;
    for (let n = 1; n < 6; n++) {
      expect(seen[n]).toBeCloseTo(1 - (1 - p) ** 2, 12);
      const q = 1 - p;
      p = (1.5 * p) / (1.5 * (1 - q * q) + q * q);
    }
    expect(seen[5]).toBeCloseTo(0.227, 3);
  });
  it('a line with its own mutation stranger: the two complement', () => {
    const seen = winged({ stranger: { kind: 'male', female: 'fli/fli', male: 'fli/Y' } });
    expect(seen[0]).toBeCloseTo(1 / 25, 12);
  });
  it('culling winged virgins ends it', () =>
    expect(winged({ selection: { keep: 'flightless', of: 'virgins' } })[1]).toBe(0));
  it('refuses a cup without founders of a sex, and bad genotypes with their place', () => {
    const result = contamination(input({ founders: { females: 0, males: 3 } }));
    expect(!result.ok && problemText(result.problems[0] as never)).toMatch(/founders.females: found 0/);
    const bad = contamination(input({ stranger: { kind: 'male', female: 'q/q', male: 'vg' } }));
    expect(!bad.ok && bad.problems.map((problem) => problem.where)).toEqual(['stranger.female', 'stranger.male']);
  });
});
