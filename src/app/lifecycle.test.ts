import { describe, expect, it } from 'vitest';
import type { Result } from '../foundation/index.ts';
import { lifecycle } from './lifecycle.ts';
import { hourlyFromFile } from './temperature-file.ts';

const answer = (temperatureC: number, more = {}) => {
  const result = lifecycle({ strain: 'melanogaster', temperatureC, ...more });
  if (!result.ok) throw new Error(result.problems[0]?.found);
  return result.value;
};
const problemOf = (result: Result<unknown>) => (result.ok ? null : result.problems[0]);

describe('lifecycle of an ordinary cup (common practice, no source, unless named)', () => {
  it('melanogaster at 22 to 25 C: several hundred flies or more, spent at four to five weeks', () => {
    for (const temperatureC of [22, 23, 24, 25]) {
      const cup = answer(temperatureC);
      expect(cup.adultsEmerged.p50).toBeGreaterThan(500);
      expect(cup.adultsEmerged.p50).toBeLessThan(1600);
      expect(cup.firstEmergenceDay).toBeGreaterThan(8);
      expect(cup.firstEmergenceDay).toBeLessThan(15);
      expect(cup.spentDay).toBeGreaterThanOrEqual(26);
      expect(cup.spentDay).toBeLessThanOrEqual(36);
    }
  });
  it('is at its best for about a week: the best seven days give a third to two thirds of all', () => {
    const { emergedByDay } = answer(23.5);
    const week = emergedByDay.map((_, d) => emergedByDay.slice(d, d + 7).reduce((a, b) => a + b, 0));
    const share = Math.max(...week) / emergedByDay.reduce((a, b) => a + b, 0);
    expect(share).toBeGreaterThan(1 / 3);
    expect(share).toBeLessThan(2 / 3);
  });
  it('females come before males by 1.9 % of the time at 25 C and 5.4 % at 30 C (Bonnier 1926)', () => {
    for (const [temperatureC, share] of [
      [25, 0.0187],
      [30, 0.0535],
    ] as const) {
      const cup = answer(temperatureC);
      const sum = (byDay: number[]) => byDay.reduce((a, b) => a + b, 0);
      expect(cup.malesLaterHours).not.toBeNull();
      expect(Math.abs((cup.malesLaterHours ?? 0) / (24 * share * cup.eggToAdultDays) - 1)).toBeLessThan(0.1);
      const both = sum(cup.femalesEmergedByDay) + sum(cup.malesEmergedByDay);
      expect(Math.abs(both / sum(cup.emergedByDay) - 1)).toBeLessThan(0.01);
    }
  });
  it('tells the hours of emergence when it is said when it gets light, three quarters within seven hours', () => {
    expect(answer(24).emergedShareByHour).toBeNull();
    const byHour = answer(24, { lightsOnHour: 7 }).emergedShareByHour ?? [];
    expect(byHour.slice(7, 14).reduce((a, b) => a + b, 0)).toBeCloseTo(0.75, 2);
    expect(byHour.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 2);
    const late = lifecycle({ strain: 'melanogaster', temperatureC: 24, lightsOnHour: 24 });
    expect(problemOf(late)?.where).toBe('lightsOnHour');
  });
  it('hydei runs about half as long again', () => {
    const slow = lifecycle({ strain: 'hydei', temperatureC: 23 });
    const ratio = slow.ok ? slow.value.spentDay / answer(23).spentDay : 0;
    expect(ratio).toBeGreaterThan(1.3);
    expect(ratio).toBeLessThan(1.8);
  });
  it('is later when cooler, at every stage', () => {
    const warm = answer(25);
    const cool = answer(19);
    expect(cool.firstEmergenceDay).toBeGreaterThan(warm.firstEmergenceDay + 5);
    for (const [i, stage] of cool.stages.entries()) expect(stage.days).toBeGreaterThan(warm.stages[i]?.days ?? 99);
  });
  it('takes 9.17 days from egg to adult at 25 C within 5 % (FlyBase developmental ontology, CC BY 4.0)', () => {
    expect(Math.abs(answer(25).eggToAdultDays / 9.17 - 1)).toBeLessThan(0.05);
  });
});

describe('bad questions', () => {
  it.each([
    ['founders', { founders: -3 }],
    ['mediumMassG', { mediumMassG: 0 }],
    ['harvestEveryDays', { harvestEveryDays: 0 }],
  ])('names %s', (field, more) => {
    expect(problemOf(lifecycle({ strain: 'melanogaster', temperatureC: 23, ...more }))?.where).toBe(field);
  });
  it('refuses 60 C and an unknown strain', () => {
    expect(problemOf(lifecycle({ strain: 'melanogaster', temperatureC: 60 }))?.where).toBe('temperatureC');
    // Nothing develops at 8 C: refused in words, not answered with an endless time.
    expect(problemOf(lifecycle({ strain: 'melanogaster', temperatureC: 8 }))?.found).toContain(
      'no Drosophila melanogaster',
    );
    expect(problemOf(lifecycle({ strain: 'housefly', temperatureC: 23 }))?.expected).toContain('melanogaster');
  });
});

describe('a temperature file', () => {
  it('gives hourly values between readings', () => {
    const hourly = hourlyFromFile('time,C\n2026-01-01T00:00,20\n2026-01-01T10:00,25\n2026-01-01T20:00,25\n', 'f.csv');
    expect(hourly.ok && hourly.value.length).toBe(24);
    expect(hourly.ok && hourly.value[5]).toBe(22.5);
  });
  it.each([
    ['an empty file', '', 'f.csv'],
    ['a file that goes backward', '2026-01-02,20\n2026-01-01,20\n', 'f.csv:2'],
    ['a word for a temperature', '2026-01-01,warm\n', 'f.csv:1'],
    ['a day that does not exist', '2026-02-30,20\n', 'f.csv:1'],
  ])('refuses %s with its place', (_, text, where) => {
    expect(problemOf(hourlyFromFile(text, 'f.csv'))?.where).toBe(where);
  });
});
