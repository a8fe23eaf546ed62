import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { day, dayNumber } from '../foundation/index.ts';
import { expectedMeanC, hourlyTemperatureC, roomPersistence, temperatureSdC } from './index.ts';

const fromDay = dayNumber(day('2026-03-01'));
const seasons = { winterC: 18, springC: 20, summerC: 25, autumnC: 21 };
const place = {
  fromDay,
  days: 60,
  expected: seasons,
  hemisphere: 'north' as const,
  readings: [],
  cupOffsetC: 0,
};
const meanOfDay = (hourly: Float64Array, i: number) => hourly.slice(24 * i, 24 * i + 24).reduce((a, b) => a + b) / 24;

describe('expected temperature', () => {
  test('has each season its own value in its middle', () => {
    const on = (text: string) => expectedMeanC(seasons, 'north', dayNumber(day(text)));
    expect(on('2026-01-15')).toBeCloseTo(18, 6);
    // Half a year is 182.625 days, so the day itself is a little off the top.
    expect(Math.abs(on('2026-07-16') - 25)).toBeLessThan(0.01);
    expect(Math.abs(on('2026-04-16') - 20)).toBeLessThan(0.1);
    expect(Math.abs(on('2026-10-15') - 21)).toBeLessThan(0.1);
  });

  test('is half a year on in the south', () => {
    const january = dayNumber(day('2026-01-15'));
    expect(expectedMeanC(seasons, 'south', january)).toBeCloseTo(25, 6);
  });
});

describe('hourly temperature', () => {
  test("a day's readings are kept: mean, lowest and highest", () => {
    const readings = [{ day: fromDay + 3, meanC: 22, minC: 19, maxC: 25 }];
    const hourly = hourlyTemperatureC({ ...place, readings });
    const ofDay = hourly.slice(72, 96);
    expect(meanOfDay(hourly, 3)).toBeCloseTo(22, 10);
    // Hour means lie a little inside the extremes: cos(pi / 24) of the half range.
    expect(Math.max(...ofDay)).toBeCloseTo(22 + 3 * Math.cos(Math.PI / 24), 10);
    expect(Math.min(...ofDay)).toBeCloseTo(22 - 3 * Math.cos(Math.PI / 24), 10);
  });

  test('the last anomaly fades by the day-to-day correlation', () => {
    const expected = { allYearC: 20 };
    const readings = [{ day: fromDay, meanC: 24, minC: null, maxC: null }];
    const hourly = hourlyTemperatureC({ ...place, expected, readings });
    expect(meanOfDay(hourly, 10)).toBeCloseTo(20 + 4 * roomPersistence ** 10, 10);
    expect(meanOfDay(hourly, 59)).toBeLessThan(20.1);
  });

  test('the uncertainty is nothing on a day that was read and grows ahead to the whole', () => {
    const readings = [{ day: fromDay + 5, meanC: 21, minC: null, maxC: null }];
    const sd = temperatureSdC({ ...place, readings });
    expect(sd[5]).toBe(0);
    expect(sd[6]).toBeCloseTo(Math.sqrt(1 - roomPersistence ** 2), 10);
    expect(sd[59]).toBeGreaterThan(0.99);
  });

  test('the bridge between two readings meets both and is surer than either side alone', () => {
    const expected = { allYearC: 20 };
    const readings = [
      { day: fromDay, meanC: 22, minC: null, maxC: null },
      { day: fromDay + 10, meanC: 18, minC: null, maxC: null },
    ];
    const hourly = hourlyTemperatureC({ ...place, expected, readings });
    const sd = temperatureSdC({ ...place, expected, readings });
    expect(meanOfDay(hourly, 5)).toBeCloseTo(20, 10);
    expect(meanOfDay(hourly, 1)).toBeGreaterThan(21);
    expect(sd[5]).toBeLessThan(sd[15] as number);
  });

  test('cups stand as much above the room as they are said to', () => {
    const warm = hourlyTemperatureC({ ...place, cupOffsetC: 1.5 });
    const plain = hourlyTemperatureC(place);
    for (let i = 0; i < plain.length; i += 1) expect((warm[i] as number) - (plain[i] as number)).toBeCloseTo(1.5, 10);
  });

  test('property: a warmer reading never makes any hour colder', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 59 }), fc.double({ min: 10, max: 30, noNaN: true }), (at, meanC) => {
        const reading = { day: fromDay + at, meanC, minC: null, maxC: null };
        const cool = hourlyTemperatureC({ ...place, readings: [reading] });
        const warm = hourlyTemperatureC({ ...place, readings: [{ ...reading, meanC: meanC + 1 }] });
        return warm.every((value, i) => value >= (cool[i] as number));
      }),
    );
  });

  test('no days is refused by name', () => {
    expect(() => hourlyTemperatureC({ ...place, days: 0 })).toThrow(/days is 0/);
  });
});
