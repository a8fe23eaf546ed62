import { expect, test } from 'vitest';
import { randomStream } from '../foundation/index.ts';
import { hourlyTemperatureC, meanTemperatureSdC, outlookErrors } from './index.ts';

const place = {
  fromDay: 20_000,
  days: 1,
  expected: { allYearC: 20 },
  hemisphere: 'north' as const,
  cupOffsetC: 1,
};
const steady = (meanC: number, from: number, days: number) =>
  Array.from({ length: days }, (_, i) => ({ day: from + i, meanC, minC: null, maxC: null }));

test('only readings of then are used: what comes later changes no error', () => {
  const first = steady(22, 20_000, 40);
  const errors = outlookErrors({ ...place, readings: first }, 7);
  const more = outlookErrors({ ...place, readings: [...first, ...steady(30, 20_040, 40)] }, 7);
  expect(more.slice(0, errors.length)).toEqual(errors);
  expect(errors[0]?.day).toBe(20_013);
});

test('a room that suddenly warms is missed for a week, and then known', () => {
  const errors = outlookErrors({ ...place, readings: [...steady(20, 20_000, 60), ...steady(26, 20_060, 60)] }, 7);
  const of = (day: number) => errors.find((error) => error.day === day);
  expect((of(20_063)?.cameC ?? 0) - (of(20_063)?.expectedC ?? 0)).toBeGreaterThan(5);
  const late = (of(20_115)?.cameC ?? 0) - (of(20_115)?.expectedC ?? 0);
  expect(late).toBeGreaterThan(0);
  expect(late).toBeLessThan(2);
});

test('is what the outlook itself would have said with the readings of then', () => {
  const random = randomStream(3, 'hindcast');
  // With gaps, as a log has them.
  const readings = Array.from({ length: 160 }, (_, i) => i)
    .filter((i) => i % 11 > 2)
    .map((i) => ({ day: 20_000 + i, meanC: 21 + Math.sin(i / 30) + random.normal(), minC: null, maxC: null }));
  const errors = outlookErrors({ ...place, readings }, 7);
  expect(errors.length).toBeGreaterThan(90);
  for (const { day, expectedC, cameC, sdC } of errors) {
    const then = { ...place, fromDay: day, readings: readings.filter((r) => r.day <= day - 7), cupOffsetC: 0 };
    expect(expectedC).toBeCloseTo(hourlyTemperatureC(then).reduce((sum, c) => sum + c, 0) / 24, 9);
    expect(sdC).toBeCloseTo(meanTemperatureSdC(then, day, 1), 9);
    expect(cameC).toBeCloseTo(readings.find((r) => r.day === day)?.meanC ?? 0, 12);
  }
});
