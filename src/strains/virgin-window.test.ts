import { describe, expect, it } from 'vitest';
import { virginWindowHours } from './virgin-window.ts';

const points = [
  { temperatureC: 25, hoursLow: 8 },
  { temperatureC: 18, hoursLow: 16 },
];

describe('virgin window', () => {
  it('meets its points and is longer in the cool', () => {
    expect(virginWindowHours(points, 25)).toBeCloseTo(8, 12);
    expect(virginWindowHours(points, 18)).toBe(16);
    expect(virginWindowHours(points, 14)).toBe(16);
    expect(virginWindowHours(points, 28)).toBeLessThan(8);
  });
  it('falls between at 21 to 22 C: 10 to 12 h (laboratory rule, value from memory)', () => {
    expect(virginWindowHours(points, 21.5)).toBeGreaterThan(10);
    expect(virginWindowHours(points, 21.5)).toBeLessThan(12);
  });
  it('refuses temperatures at which nobody rears flies', () => {
    expect(() => virginWindowHours(points, 31)).toThrow(/temperatureC 31/);
    expect(() => virginWindowHours(points.slice(1), 20)).toThrow(/two points/);
  });
});
