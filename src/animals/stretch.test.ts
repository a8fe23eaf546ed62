import { describe, expect, it } from 'vitest';
import { stretch } from './stretch.ts';

describe('too few flies', () => {
  const groups = [
    { group: 'frogs', flies: 60, canWaitDays: 3, overdueDays: 1 },
    { group: 'hatchlings', flies: 40, canWaitDays: 0, overdueDays: 1 },
    { group: 'spiders', flies: 20, canWaitDays: 5, overdueDays: 1 },
  ];
  const verdicts = (available: number) =>
    stretch(groups, available).shares.map(({ group, flies, verdict }) => [group, flies, verdict]);
  it('those who cannot wait come first, then the least slack', () =>
    expect(verdicts(70)).toEqual([
      ['hatchlings', 40, 'fed'],
      ['frogs', 30, 'part of a feeding'],
      ['spiders', 0, 'can wait'],
    ]));
  it('says what is missing when even they go short', () => {
    expect(verdicts(30)[0]).toEqual(['hatchlings', 30, 'goes short']);
    expect(stretch(groups, 30).missingFlies).toBe(10);
    expect(stretch(groups, 500).missingFlies).toBe(0);
    expect(stretch(groups, 500).shares.every(({ share }) => share === 1)).toBe(true);
  });
  it('a group whose last day of waiting is over is one that cannot wait', () => {
    const due = [{ group: 'newts', flies: 10, canWaitDays: 2, overdueDays: 2 }];
    expect(stretch(due, 4)).toMatchObject({ missingFlies: 6, shares: [{ verdict: 'goes short', slackDays: 0 }] });
  });
  it('never gives more than there is', () => {
    for (const available of [0, 7, 39, 41, 99, 101, 119, 121]) {
      const given = stretch(groups, available).shares.reduce((sum, { flies }) => sum + flies, 0);
      expect(given).toBeCloseTo(Math.min(120, available), 9);
    }
    expect(() => stretch(groups, -1)).toThrow(/available -1/);
  });
});
