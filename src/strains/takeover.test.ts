import { describe, expect, it } from 'vitest';
import { takeover } from './takeover.ts';

describe('two species in a cup', () => {
  const quick = {
    name: 'melanogaster',
    founders: 25,
    generationDays: 14,
    offspringPerFounder: 10,
    firstEmergenceDay: 11,
  };
  const slow = { name: 'hydei', founders: 25, generationDays: 28, offspringPerFounder: 10, firstEmergenceDay: 20 };
  it('the faster one wins: after 28 days 100 to 10, so 10/11', () => {
    const { winner, winnerShareByDay } = takeover(slow, quick, 28);
    expect(winner).toBe('melanogaster');
    expect(winnerShareByDay[0]).toBe(0.5);
    expect(winnerShareByDay[28]).toBeCloseTo(10 / 11, 12);
  });
  it('says when the other is nearly gone and how to part them', () => {
    const { loserBelowTenthDay, todo } = takeover(quick, slow, 60);
    expect(loserBelowTenthDay).toBe(27);
    expect(todo[0]?.values).toEqual([9, 'melanogaster']);
    expect(takeover(quick, { ...slow, firstEmergenceDay: 12 }, 5).todo).toHaveLength(1);
  });
  it('refuses nonsense', () => expect(() => takeover(quick, { ...slow, founders: 0 }, 5)).toThrow(/founders of hydei/));
});
