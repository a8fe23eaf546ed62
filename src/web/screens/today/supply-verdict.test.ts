import { expect, it } from 'vitest';
import { supplyVerdict } from './supply-verdict.ts';

const on = '2026-11-25';
const band = (flies: number) => ({ p05: flies / 2, p50: flies, p95: flies * 2 });
const verdict = (wanted: number, flies: number, firstRiskyDay: string | null) =>
  supplyVerdict({ on, firstRiskyDay, days: [{ date: on, wantedFlies: wanted, onHandFlies: band(flies) }] });

it('a shelf without a fly is not enough until tomorrow, however long the animals can wait', () => {
  expect(verdict(180, 0, '2026-11-26')).toBe('noneNow');
});

it('otherwise the first risky day decides', () => {
  expect(verdict(180, 500, '2026-11-26')).toBe('enoughUntil');
  expect(verdict(180, 100, on)).toBe('shortNow');
  expect(verdict(180, 500, null)).toBe('enough');
  expect(verdict(0, 0, null)).toBe('noNeed');
});
