import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { day, dayNumber, type RandomStream, randomStream } from '../foundation/index.ts';
import {
  expectedMeanC,
  hourlyTemperatureC,
  keeperLevelSdC,
  keeperWaveSdC,
  meanTemperatureSdC,
  roomAnomalySdC,
  roomPersistence,
  temperatureSdC,
} from './index.ts';

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

/** Daily means of a room as the model has it: level, yearly wave and anomaly drawn anew. */
function simulatedRoom(random: RandomStream, days: number): number[] {
  const level = keeperLevelSdC * random.normal();
  const [cosine, sine] = [keeperWaveSdC * random.normal(), keeperWaveSdC * random.normal()];
  let anomaly = roomAnomalySdC * random.normal();
  return Array.from({ length: days }, (_, i) => {
    if (i > 0)
      anomaly = roomPersistence * anomaly + roomAnomalySdC * Math.sqrt(1 - roomPersistence ** 2) * random.normal();
    const angle = (2 * Math.PI * (fromDay + i)) / 365.25;
    return 20 + level + cosine * Math.cos(angle) + sine * Math.sin(angle) + anomaly;
  });
}

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

  test('the last reading counts as room and as day: what is the day fades by the day-to-day correlation', () => {
    const expected = { allYearC: 20 };
    const readings = [{ day: fromDay, meanC: 24, minC: null, maxC: null }];
    const hourly = hourlyTemperatureC({ ...place, days: 40, expected, readings });
    // Level, wave and anomaly share 4 C as their variances; what is left then widens the anomaly's own.
    const own = keeperLevelSdC ** 2 + keeperWaveSdC ** 2;
    const left = (4 * roomAnomalySdC ** 2) / (own + roomAnomalySdC ** 2);
    const variance = (10 * roomAnomalySdC ** 2 + left ** 2) / 11;
    const angle = (2 * Math.PI * 10) / 365.25;
    const season = (4 * (keeperLevelSdC ** 2 + keeperWaveSdC ** 2 * Math.cos(angle))) / (own + variance);
    const fading = ((4 * variance) / (own + variance)) * roomPersistence ** 10;
    expect(meanOfDay(hourly, 10)).toBeCloseTo(20 + season + fading, 10);
  });

  test('the uncertainty is nothing on a day that was read and grows ahead', () => {
    const readings = [{ day: fromDay + 5, meanC: 21, minC: null, maxC: null }];
    const sd = temperatureSdC({ ...place, readings });
    expect(sd[5]).toBe(0);
    // The season moves hardly at all in a day, so that what it adds is (1 - rho) of its share.
    expect((sd[6] as number) / Math.sqrt(1 - roomPersistence ** 2)).toBeGreaterThan(1);
    expect((sd[6] as number) / Math.sqrt(1 - roomPersistence ** 2)).toBeLessThan(1.05);
    for (let i = 7; i < 60; i += 1) expect(sd[i]).toBeGreaterThan(sd[i - 1] as number);
  });

  test('a place that is steadily warmer than its keeper says becomes expected so, and surer', () => {
    const expected = { allYearC: 20 };
    const readings = Array.from({ length: 200 }, (_, i) => ({
      day: fromDay - 200 + i,
      meanC: 23,
      minC: null,
      maxC: null,
    }));
    const hourly = hourlyTemperatureC({ ...place, expected, readings });
    expect(meanOfDay(hourly, 59)).toBeGreaterThan(22.5);
    const sd = temperatureSdC({ ...place, expected, readings });
    expect(sd[59]).toBeLessThan(temperatureSdC({ ...place, expected })[59] as number);
  });

  test('its bands hold what they say: simulated rooms, 90 % within', () => {
    // 400 rooms of the model's own kind; sd of a share of 400: 1.5 %; four of them.
    const rooms = 400;
    let within = 0;
    let meanWithin = 0;
    for (let room = 0; room < rooms; room += 1) {
      const random = randomStream(7, 'rooms', String(room));
      const truth = simulatedRoom(random, 160);
      const readings = truth.slice(0, 100).map((meanC, i) => ({ day: fromDay + i, meanC, minC: null, maxC: null }));
      const asked = { ...place, days: 160, expected: { allYearC: 20 }, readings };
      const hourly = hourlyTemperatureC(asked);
      const sd = temperatureSdC(asked);
      if (Math.abs((truth[130] as number) - meanOfDay(hourly, 130)) < 1.645 * (sd[130] as number)) within += 1;
      const fortnight = Array.from({ length: 14 }, (_, i) => (truth[100 + i] as number) - meanOfDay(hourly, 100 + i));
      const off = fortnight.reduce((a, b) => a + b) / 14;
      if (Math.abs(off) < 1.645 * meanTemperatureSdC(asked, fromDay + 100, 14)) meanWithin += 1;
    }
    expect(Math.abs(within / rooms - 0.9)).toBeLessThan(0.06);
    // Weighting the last week costs a little where the last day says all: the band is a little too narrow.
    expect(meanWithin / rooms).toBeGreaterThan(0.8);
    expect(meanWithin / rooms).toBeLessThan(0.96);
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
