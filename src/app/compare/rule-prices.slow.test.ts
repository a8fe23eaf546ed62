import { describe, expect, it } from 'vitest';
import { rulePricesAnswer } from './compare-answers.ts';
import { facts, on } from '../../../tests/simulation/frog-household.ts';
import { rulePrices } from './rule-prices.ts';

describe('the price of rules', () => {
  const answer = rulePrices(facts, { on, seed: 1, weeks: 8, scenarios: 60 });
  it('has one for each rule, and 0 without error for one that never binds', () => {
    expect(rulePricesAnswer.parse(answer)).toEqual(answer);
    const shelf = answer.rules.find(({ rule }) => rule === 'At most 50 cups on the shelf');
    expect(shelf).toMatchObject({ clear: false, cupsPerQuarter: { mean: 0, standardError: 0 } });
    expect(answer.rules.filter(({ rule }) => rule.startsWith('No fly work on')).length).toBe(5);
  });
  it('tells as a price only what stands clear of the noise of tuning', () => {
    for (const { clear, costPerQuarter, verdict } of answer.rules) {
      const far = costPerQuarter.mean > 3.2 * costPerQuarter.standardError && costPerQuarter.mean > 0;
      expect(clear).toBe(far);
      expect(/costs nothing/.test(verdict)).toBe(!far);
    }
  });
  it('sets the best plan of another rhythm beside the best', () => {
    expect(answer.secondBest?.title).toMatch(/^Work only on/);
    expect(answer.secondBest?.against).not.toBeNull();
  });
});
