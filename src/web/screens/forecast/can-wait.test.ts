import { describe, expect, it } from 'vitest';
import { canWait } from './can-wait.ts';

describe('a day of the forecast', () => {
  const day = (p50: number, serviceLevel: number) => ({
    wantedFlies: 12,
    onHandFlies: { p05: 0, p50, p95: 40 },
    serviceLevel,
  });
  it('can wait when its flies lack and no ration is missed for it', () => {
    expect(canWait(day(0, 0.999), 0.99)).toBe(true);
  });
  it('cannot when rations are missed, and need not when there are flies', () => {
    expect(canWait(day(0, 0.6), 0.99)).toBe(false);
    expect(canWait(day(30, 0.999), 0.99)).toBe(false);
  });
});
