import { describe, expect, it } from 'vitest';
import { randomStream } from '../foundation/index.ts';
import { type FeedingSeen, learnedAppetite, type LeftOverWord, leftOverShares, priorLogSd } from './appetite.ts';

describe('appetite from left-overs', () => {
  const word = (share: number): LeftOverWord =>
    (Object.keys(leftOverShares) as LeftOverWord[]).find((one) => share < leftOverShares[one][1]) ?? 'swarming';
  it('holds the truth in nine of ten bands, for groups that eat other than planned', () => {
    const groups = 400;
    let within = 0;
    for (let g = 0; g < groups; g++) {
      const stream = randomStream(g, 'appetite');
      const truth = 50 * Math.exp(priorLogSd * stream.normal());
      const feedings: FeedingSeen[] = Array.from({ length: 12 }, () => {
        const eaten = truth * Math.exp(0.25 * stream.normal());
        return { flies: 50, leftOver: word(Math.max(0, 1 - eaten / 50)) };
      });
      const { p05, p95 } = learnedAppetite(50, feedings);
      if (truth >= p05 && truth <= p95) within++;
    }
    // Four binomial standard errors, and a little above nine in ten because slips are allowed for.
    expect(within / groups).toBeGreaterThan(0.9 - 4 * Math.sqrt(0.09 / groups));
    expect(within / groups).toBeLessThan(0.99);
  });
  it('learns that half is left, and only a floor when nothing is', () => {
    const many = (leftOver: LeftOverWord) => learnedAppetite(40, Array(15).fill({ flies: 40, leftOver }));
    expect(many('plenty').p50).toBeGreaterThan(0.3 * 40);
    expect(many('plenty').p50).toBeLessThan(0.6 * 40);
    expect(many('none').p05).toBeGreaterThan(40);
    expect(learnedAppetite(40, []).p50).toBeCloseTo(40, 6);
  });
  it('refuses nonsense', () => {
    expect(() => learnedAppetite(0, [])).toThrow(/plannedFlies 0/);
    expect(() => learnedAppetite(5, [{ flies: 0, leftOver: 'few' }])).toThrow(/flies 0/);
  });
});
