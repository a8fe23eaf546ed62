import { describe, expect, it } from 'vitest';
import { chanceFromWorlds } from './chance-from-worlds.ts';

describe('a chance from simulated worlds', () => {
  it('is the share where it was seen both to happen and not to', () => {
    expect(chanceFromWorlds(0.97, 200)).toEqual({ share: 0.97, is: 'about' });
  });

  // The exact one-sided 95 % bound of Clopper and Pearson (1934) for none in n is 1 - 0.05^(1/n).
  it.each([60, 200, 2000])('is never certain: none in %i worlds leaves what the exact bound leaves', (worlds) => {
    const exact = 1 - 0.05 ** (1 / worlds);
    const { share, is } = chanceFromWorlds(1, worlds);
    expect(is).toBe('above');
    expect(1 - share).toBeGreaterThanOrEqual(exact);
    expect((1 - share) / exact).toBeLessThan(1.03);
    const never = chanceFromWorlds(0, worlds);
    expect(never.is).toBe('below');
    expect(never.share).toBeCloseTo(1 - share, 12);
  });

  it('from one or two worlds says nothing', () => {
    expect(chanceFromWorlds(1, 1)).toEqual({ share: 0, is: 'above' });
  });
});
