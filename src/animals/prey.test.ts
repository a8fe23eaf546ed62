import { describe, expect, it } from 'vitest';
import { preyFor } from './prey.ts';

describe('prey by size', () => {
  const flies = [
    { fly: 'hydei', lengthMm: 3.2 },
    { fly: 'melanogaster', lengthMm: 2.3 },
  ];
  const by = (lengthMm: number, outgrowsAtMm: number | null = 15) =>
    preyFor({ by: 'body length', lengthMm, flies, outgrowsAtMm });
  it('half a body long at most, the largest that fits', () => {
    expect(by(4)).toMatchObject({ fly: null, verdict: 'too small for adult flies' });
    expect(by(5).fly).toBe('melanogaster');
    expect(by(7).fly).toBe('hydei');
    expect(by(16).verdict).toBe('larger prey beside flies');
    expect(by(16, null).verdict).toBe('flies');
  });
  it('no wider than the gap between the eyes', () =>
    expect(preyFor({ by: 'gap between the eyes', lengthMm: 3, flies, outgrowsAtMm: null }).fly).toBe('melanogaster'));
  it('refuses no length', () => expect(() => by(0)).toThrow(/lengthMm 0/));
});
