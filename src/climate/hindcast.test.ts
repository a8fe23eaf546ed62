import { expect, test } from 'vitest';
import { outlookErrors } from './index.ts';

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
