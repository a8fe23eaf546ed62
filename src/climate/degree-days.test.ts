import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import published from '../../tests/reference/degree-days-ucipm.csv?raw';
import { fillDay } from './day-curve.ts';
import { degreeDayMethods, degreeDays } from './index.ts';

/**
 * Published: the University of California's Integrated Pest Management programme, custom degree-day
 * calculation of 2 August 2022, lower and upper threshold 50 and 70 F, horizontal cutoff (kept by
 * github.com/UCANR-IGIS/degree-day-challenge). Its figures have two decimals.
 */
const rows = published
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','))
  .map(([date, ...cells]) => ({ date: date as string, cells: cells.map(Number) as [number, number, number, number] }));
const thresholds = { lower: 50, upper: 70 };

describe('degree-days against published days', () => {
  test.each(rows)('$date', ({ cells: [min, max, sine, triangle] }) => {
    expect(Math.abs(degreeDays('singleSine', min, max, thresholds) - sine)).toBeLessThan(0.00501);
    expect(Math.abs(degreeDays('singleTriangle', min, max, thresholds) - triangle)).toBeLessThan(0.00501);
  });

  test('simple average: 64 F less 53 F is 11 (the same programme’s guide for citrus)', () => {
    expect(degreeDays('simpleAverage', 58, 70, { lower: 53, upper: Number.POSITIVE_INFINITY })).toBe(11);
  });
});

describe('degree-days in themselves', () => {
  test('property: the sine’s closed form is the integral of the wave', () => {
    const n = 20_000;
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 8, max: 20, noNaN: true }),
        (min, range, lower) => {
          let sum = 0;
          for (let i = 0; i < n; i += 1) {
            const t = min + range / 2 + (range / 2) * Math.sin((2 * Math.PI * (i + 0.5)) / n);
            sum += Math.min(Math.max(t - lower, 0), 10);
          }
          // Midpoint rule on a continuous wave with corners: error at most half a step times the slope's jump.
          const exact = degreeDays('singleSine', min, min + range, { lower, upper: lower + 10 });
          expect(Math.abs(sum / n - exact)).toBeLessThan((Math.PI * range) / n + 1e-9);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('the hourly day curve gives the closed form’s degree-days', () => {
    const hourly = new Float64Array(24);
    fillDay(hourly, 0, 14, 12);
    const sum = hourly.reduce((total, c) => total + Math.max(0, c - 10), 0) / 24;
    const exact = degreeDays('singleSine', 8, 20, { lower: 10, upper: Number.POSITIVE_INFINITY });
    // 24 points: the corner falls within an hour in which the wave moves at most pi/24 x 6 C.
    expect(Math.abs(sum - exact)).toBeLessThan((Math.PI / 24) * 6 * (2 / 24));
  });

  test('property: within the thresholds all methods are the mean less the threshold', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 12, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (min, range) => {
          for (const method of degreeDayMethods) {
            const value = degreeDays(method, min, min + range, { lower: 10, upper: 30 });
            expect(value).toBeCloseTo(min + range / 2 - 10, 9);
          }
        },
      ),
    );
  });

  test('what cannot be is refused by name', () => {
    expect(() => degreeDays('singleSine', 20, 10, thresholds)).toThrow(/min is 20/);
    expect(() => degreeDays('singleSine', 10, 20, { lower: 30, upper: 10 })).toThrow(/lower is 30/);
  });
});
