import { describe, expect, it } from 'vitest';
import { risingAt, risingReaches } from './rising-table.ts';

const table = [0, 0, 0.25, 1];

describe('a rising table', () => {
  it('is straight between its entries and level outside', () => {
    expect([-1, 0, 1, 1.5, 2, 2.5, 3, 9].map((x) => risingAt(table, x))).toEqual([0, 0, 0, 0.125, 0.25, 0.625, 1, 1]);
  });
  it('is read backwards as it is read forwards', () => {
    for (const x of [1.1, 1.7, 2.2, 2.9]) expect(risingReaches(table, risingAt(table, x))).toBeCloseTo(x, 12);
    expect(risingReaches(table, 0)).toBe(0);
    expect(risingReaches(table, 2)).toBe(3);
  });
  it('refuses to read nothing', () => expect(() => risingAt([], 1)).toThrow(/risingAt/));
});
