import { describe, expect, it } from 'vitest';
import { day, dayNumber } from '../foundation/index.ts';
import { countByDay, expectedHatch, type HatchInput } from './hatch.ts';

const monday = dayNumber(day('2026-11-23'));

describe('hatches', () => {
  const ootheca: HatchInput = {
    laidOn: monday,
    incubationDaysLow: 35,
    incubationDaysHigh: 50,
    youngLow: 40,
    youngHigh: 200,
    survivalLow: 1,
    survivalHigh: 1,
  };
  it('become the uncertain arrival that the forecast knows', () =>
    expect(expectedHatch(ootheca, monday)).toEqual({
      earliest: monday + 35,
      latest: monday + 50,
      countLow: 40,
      countHigh: 200,
    }));
  it('days past without a hatch are ruled out', () => {
    expect(expectedHatch(ootheca, monday + 40)?.earliest).toBe(monday + 40);
    expect(expectedHatch(ootheca, monday + 51)).toBeNull();
  });
  it('refuses ranges that run backwards', () => {
    expect(() => expectedHatch({ ...ootheca, youngHigh: 10 }, monday)).toThrow(/young 40 to 10/);
    expect(() => expectedHatch({ ...ootheca, survivalHigh: 1.2 }, monday)).toThrow(/survivalHigh 1.2/);
  });
  it('counts deaths and sales, never below none', () =>
    expect([
      ...countByDay(
        10,
        [
          { onDay: 101, change: -4 },
          { onDay: 102, change: -9 },
          { onDay: 103, change: 2 },
        ],
        100,
        4,
      ),
    ]).toEqual([10, 6, 0, 2]));
});
