import { describe, expect, it } from 'vitest';
import { problemText } from '../foundation/index.ts';
import { crossAnswer } from './answers.ts';
import { type CrossQuestion, cross } from './cross.ts';

const ask = (more: Partial<CrossQuestion> = {}) => cross({ female: 'vg/vg', male: 'ap/ap', generations: 2, ...more });
const answered = (more: Partial<CrossQuestion> = {}) => {
  const result = ask(more);
  if (!result.ok) throw new Error(result.problems.map(problemText).join('; '));
  return result.value;
};
const wrong = (more: Partial<CrossQuestion>) => {
  const result = ask(more);
  return result.ok ? 'accepted' : result.problems.map(problemText).join('\n');
};

describe('a cross at the door', () => {
  it('answers in the shape that every door gives', () => {
    const answer = answered();
    expect(crossAnswer.parse(answer)).toEqual(answer);
    expect(answer.exact).toBe(true);
    expect(answer.generations.map((row) => row.wingedShare)).toEqual([1, 0.5]);
    expect(answer.generations[0]?.genotypes).toEqual([{ genotype: 'vg/+; ap/+', share: 1 }]);
  });
  it('reads distances, and refuses those over 50', () => {
    const backCross = { female: 'vg/+; ap/+', male: 'vg/vg; ap/ap', generations: 1, distances: 'vg-ap=11.8' };
    expect(answered(backCross).generations[0]?.wingedShare).toBeCloseTo(0.441, 12);
    expect(wrong({ distances: 'vg-ap=51' })).toMatch(/distance vg-ap: found 51 map units/);
    expect(wrong({ distances: 'vg ap 5' })).toMatch(/distances: found "vg ap 5"/);
  });
  it('culls by eye', () => {
    expect(answered({ male: 'vg/+', cull: 'winged' }).generations[1]?.wingedShare).toBe(0);
    expect(answered({ male: 'vg/+', cull: 'winged', mated: true }).generations[1]?.wingedShare).toBe(0.25);
  });
  it('with few founders says that it is not exact', () => {
    const answer = answered({ founders: 10, generations: 3 });
    expect(answer.exact).toBe(false);
    expect(crossAnswer.safeParse(answer).success).toBe(true);
    expect(wrong({ founders: 1 })).toMatch(/founders: found 1/);
  });
  it('names what is wrong with a genotype', () => {
    expect(wrong({ female: 'vg' })).toMatch(/female: found "vg"/);
    expect(wrong({ male: 'zz/zz' })).toMatch(/male: found the unknown locus zz/);
  });
});
