import { describe, expect, it } from 'vitest';
import { timeAxis } from './axis.ts';
import { type WarmthDay, warmthGeometry } from './warmth-geometry.ts';

const day = (date: string, p50C: number, more: Partial<WarmthDay> = {}): WarmthDay => ({
  date,
  p05C: p50C,
  p50C,
  p95C: p50C,
  usualC: 22,
  read: true,
  minC: null,
  maxC: null,
  ...more,
});
const axis = timeAxis('2026-11-01', '2026-11-10', 200);
const limitsC = { low: 5, high: 28 };
const drawn = (days: WarmthDay[], more: object = {}) =>
  warmthGeometry({ days, limitsC, expected: [], ...more }, axis, 100);

describe('a place’s warmth as geometry', () => {
  it('has warm above cold, and a stroke from the lowest to the highest that was read', () => {
    const { y, strokes, dots } = drawn([day('2026-11-01', 22, { minC: 20, maxC: 25 }), day('2026-11-02', 21)]);
    expect(y(25)).toBeLessThan(y(20));
    expect(strokes).toEqual([{ x: axis.x('2026-11-01'), top: y(25), bottom: y(20), date: '2026-11-01' }]);
    expect(dots.map((dot) => dot.date)).toEqual(['2026-11-01', '2026-11-02']);
  });

  it('marks read days only, and holds band and limits within its height', () => {
    const ahead = day('2026-11-09', 26, { read: false, p05C: 23, p95C: 27.5 });
    const { y, dots, limits } = drawn([day('2026-11-01', 22), ahead]);
    expect(dots).toHaveLength(1);
    expect(limits.map(({ which }) => which)).toEqual(['high']);
    for (const celsius of [22, 23, 27.5, 28]) {
      expect(y(celsius)).toBeGreaterThan(0);
      expect(y(celsius)).toBeLessThan(100);
    }
  });

  it('leaves a far limit out rather than flatten the picture', () => {
    expect(drawn([day('2026-11-01', 20)]).limits).toEqual([]);
    expect(drawn([day('2026-11-01', 26)]).limits).toHaveLength(1);
  });

  it('draws what was expected where it was, and no line over a gap', () => {
    const expected = ['2026-10-20', '2026-11-02', '2026-11-03', '2026-11-07'].map((date) => ({ date, expectedC: 21 }));
    const path = drawn([day('2026-11-01', 22)], { expected }).expected;
    expect(path.match(/M/g)).toHaveLength(2);
  });
});
