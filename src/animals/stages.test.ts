import { describe, expect, it } from 'vitest';
import { day, dayNumber, weekdays } from '../foundation/index.ts';
import { type Stage, stagePeriods, stagePlan, type StagesInput } from './stages.ts';
import { wantedFlies } from './wanted-flies.ts';

const monday = dayNumber(day('2026-11-23'));
const stage = (name: string, more: Partial<Stage> = {}): Stage => ({
  stage: name,
  daysLow: 8,
  daysHigh: 14,
  survival: 0.9,
  fliesPerFeeding: 3,
  strain: 'mel',
  feedingWeekdays: [...weekdays],
  ...more,
});
const nymphs = (more: Partial<StagesInput> = {}): StagesInput => ({
  stages: [
    stage('L1'),
    stage('L2'),
    stage('L3', { strain: 'hydei', fliesPerFeeding: 4 }),
    stage('larger', { fliesPerFeeding: 0, daysLow: null, daysHigh: null }),
  ],
  onDay: monday,
  daysInStage: 0,
  count: 100,
  degreesWarmer: 0,
  q10: 2,
  moultPause: null,
  ...more,
});

describe('stages', () => {
  it('dates add up with their ranges', () => {
    const plan = stagePlan(nymphs());
    expect(plan.map(({ begins }) => begins.middle - monday)).toEqual([0, 11, 22, 33]);
    expect(plan[2]?.begins).toEqual({ earliest: monday + 16, middle: monday + 22, latest: monday + 28 });
    expect(plan[3]?.count).toBeCloseTo(72.9, 9);
  });
  it('come sooner in the warm, and when part of the first is over', () => {
    const warm = stagePlan(nymphs({ degreesWarmer: 10 }))[1]?.begins;
    expect([warm?.earliest, warm?.latest]).toEqual([monday + 4, monday + 7]);
    expect(stagePlan(nymphs({ daysInStage: 10 }))[1]?.begins).toEqual({
      earliest: monday,
      middle: monday + 2,
      latest: monday + 4,
    });
  });
  it('turn into need: melanogaster, then hydei, then none', () => {
    const groups = [{ group: 'nymphs', periods: stagePeriods(nymphs()) }];
    const needs = wantedFlies({ groups, fromDay: monday, days: 40 });
    expect(needs.get('mel')?.flies[10]).toBeCloseTo(300, 9);
    expect(needs.get('mel')?.flies[11]).toBeCloseTo(270, 9);
    expect(needs.get('mel')?.flies[22]).toBe(0);
    expect(needs.get('hydei')?.flies[22]).toBeCloseTo(324, 9);
    expect(needs.get('hydei')?.flies[33]).toBe(0);
  });
  it('pause around a moult', () => {
    const input = nymphs({ moultPause: { before: 2, after: 1 } });
    const needs = wantedFlies({ groups: [{ group: 'g', periods: stagePeriods(input) }], fromDay: monday, days: 20 });
    expect([8, 9, 12, 13].map((i) => Math.round(needs.get('mel')?.flies[i] ?? -1))).toEqual([300, 0, 0, 270]);
    expect(stagePlan(input)[1]?.moult).toEqual({ from: monday + 9, until: monday + 12 });
  });
  it('need a length where a stage follows', () =>
    expect(() => stagePlan(nymphs({ stages: [stage('L1', { daysLow: null }), stage('L2')] }))).toThrow(
      /L1 has no length/,
    ));
});
