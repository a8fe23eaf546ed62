import { describe, expect, test } from 'vitest';
import { SensorIntake, ZoneClock } from './index.ts';

const clock = (zone = 'UTC') => {
  const found = ZoneClock.of(zone);
  if (!found.ok) throw new Error(zone);
  return found.value;
};
const midnight = Date.UTC(2026, 10, 25);
const hour = 3_600_000;
const take = (intake: SensorIntake, atMs: number, celsius: number, place = 'shelf') =>
  intake.take({ place, celsius, atMs }, atMs).ok;

describe('what sensors send', () => {
  test('becomes one line a quarter of a day, each given once', () => {
    const intake = new SensorIntake(clock());
    for (let s = 0; s < 21_600; s += 10) take(intake, midnight + 1000 * s, 20 + s / 21_600);
    expect(intake.due(midnight + 6 * hour)).toEqual([]);
    expect(intake.due(midnight + 6.5 * hour)).toEqual([
      { place: 'shelf', on: '2026-11-25', meanC: 20.5, minC: 20, maxC: 21, readings: 2160, leftOut: 0 },
    ]);
    expect(intake.due(midnight + 6.6 * hour)).toEqual([]);
  });

  test('a flood holds no more memory than a trickle, and no day weighs more', () => {
    const intake = new SensorIntake(clock());
    for (let i = 0; i < 200_000; i += 1) take(intake, midnight + i, 24 + (i % 7) / 10);
    for (let h = 1; h < 6; h += 1) take(intake, midnight + h * hour, 21 + h / 10);
    expect(JSON.stringify(intake.state()).length).toBeLessThan(600);
    expect(intake.due(midnight + 7 * hour)[0]?.meanC).toBeCloseTo((24.3 + 21.1 + 21.2 + 21.3 + 21.4 + 21.5) / 6, 1);
  });

  test('what no room did is left out and counted; a step that stays is believed', () => {
    const intake = new SensorIntake(clock());
    expect(take(intake, midnight, 20)).toBe(true);
    for (const odd of [1e9, Number.NaN, -127, 85]) expect(take(intake, midnight + 1000, odd)).toBe(false);
    expect(take(intake, midnight + 2000, 45)).toBe(false);
    expect(take(intake, midnight + 3000, 20.1)).toBe(true);
    expect([4, 5, 6, 7].map((s) => take(intake, midnight + 1000 * s, 8))).toEqual([false, false, true, true]);
    expect(intake.due(midnight + 7 * hour)[0]).toMatchObject({ readings: 4, leftOut: 7 });
  });

  test('other times are refused', () => {
    const intake = new SensorIntake(clock());
    const now = midnight + 13 * hour;
    const at = (atMs: number) => intake.take({ place: 'shelf', celsius: 20, atMs }, now).ok;
    expect([at(now + 10 * 60_000), at(midnight), at(Number.NaN), at(now - 30 * 60_000)]).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });

  test('a stuck sensor is left out after a day and a half', () => {
    const intake = new SensorIntake(clock());
    const kept = Array.from({ length: 60 }, (_, h) => take(intake, midnight + h * hour, 21.37));
    expect(kept.indexOf(false)).toBe(36);
    expect(take(intake, midnight + 61 * hour, 21.4)).toBe(true);
  });

  test('days are the household’s, and a restart loses nothing', () => {
    const one = new SensorIntake(clock('Pacific/Auckland'));
    take(one, midnight, 20);
    const two = new SensorIntake(clock('Pacific/Auckland'), JSON.parse(JSON.stringify(one.state())));
    take(two, midnight + hour, 21);
    // Midnight UTC is 13:00 of the 25th there; its quarter ends at 18:00.
    expect(two.due(midnight + 6 * hour)).toMatchObject([{ on: '2026-11-25', meanC: 20.5, readings: 2 }]);
    const three = new SensorIntake(clock('Pacific/Auckland'), JSON.parse(JSON.stringify(two.state())));
    take(three, midnight + 6 * hour, 19);
    expect(three.due(midnight + 12 * hour)).toMatchObject([{ meanC: 19, minC: 19, maxC: 19 }]);
  });
});
