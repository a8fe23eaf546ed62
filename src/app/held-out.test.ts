import { describe, expect, it } from 'vitest';
import { frogFacts, on } from '../../tests/simulation/frog-household.ts';
import { addDays, type Day } from '../foundation/index.ts';
import { forecast } from './forecast.ts';
import { cupHistories } from './evidence.ts';
import { heldOut } from './held-out.ts';
import { householdModel } from './household-model.ts';
import { today } from './today.ts';

const question = { on, seed: 1, weeks: 6 };
const harvest = { kind: 'harvested', culture: 'c0', flies: 200, emptied: true, purpose: 'feeding', on };
const end = { kind: 'ended', culture: 'c0', reason: 'spent', on };
const fed = { kind: 'fed', group: 'frogs', flies: 60, fromCultures: ['c0'], on };

function left(later: number, ...entries: object[]): number {
  const model = householdModel(frogFacts(...entries), addDays(on, later) as Day, 1);
  const strain = model.strains.get('melanogaster');
  if (!strain) throw new Error('the household has no such strain');
  return heldOut(model, strain, cupHistories(model).get('melanogaster') ?? []).get('c0') ?? 0;
}

describe('the last flies of a cup that ended today', () => {
  it('are gone when nobody took them out, and with mould, whatever was taken out', () => {
    expect(left(0, end)).toBe(0);
    expect(left(0, harvest)).toBe(0);
    expect(left(0, harvest, { ...end, reason: 'mould' })).toBe(0);
    expect(left(0, { ...harvest, purpose: 'given' }, end)).toBe(0);
  });
  it('are on hand when they were tapped out, less what was fed of them', () => {
    expect(left(0, harvest, end)).toBe(200);
    expect(left(0, harvest, end, fed)).toBe(140);
  });
  it('are counted on for a week, less the day’s ration, those that die and those that are fed', () => {
    const survival = householdModel(frogFacts(), on, 1).strains.get('melanogaster')?.adultDailySurvival ?? 0;
    expect(left(1, harvest, end)).toBeCloseTo(140 * survival, 6);
    expect(left(1, harvest, end, { ...fed, on: addDays(on, 1) })).toBeCloseTo(140 * survival - 60, 6);
    expect(left(7, harvest, end)).toBeGreaterThan(0);
    expect(left(8, harvest, end)).toBe(0);
  });
  it('lose no ration that nobody wrote down where the keeper wants none presumed', () => {
    const survival = householdModel(frogFacts(), on, 1).strains.get('melanogaster')?.adultDailySurvival ?? 0;
    const asWritten = { kind: 'household', presumeFeeding: false, on: addDays(on, -20) };
    expect(left(1, asWritten, harvest, end)).toBeCloseTo(200 * survival, 6);
    expect(left(1, asWritten, harvest, end, fed)).toBeCloseTo(140 * survival, 6);
  });
  it('give the same day and forecast in whatever order it was written down', () => {
    const orders = [
      [harvest, end, fed],
      [end, fed, harvest],
      [fed, harvest, end],
    ];
    const answers = orders.map((entries) => [
      today(frogFacts(...entries), question),
      forecast(frogFacts(...entries), { ...question, scenarios: 200, starts: 'nothing' }),
    ]);
    expect(answers[1]).toEqual(answers[0]);
    expect(answers[2]).toEqual(answers[0]);
  });
  it('feed on: tomorrow’s forecast has more of them than had they been given away', () => {
    const onHand = (...entries: object[]) =>
      forecast(frogFacts(...entries), { ...question, scenarios: 400, starts: 'nothing' }).days[1]?.onHandFlies.p50 ?? 0;
    const more = onHand(harvest, end) - onHand({ ...harvest, purpose: 'given' }, end);
    expect(more).toBeGreaterThan(160);
    expect(more).toBeLessThanOrEqual(200);
  });
  it('are not wanted again by a group that was fed: its ration is taken once', () => {
    const wantedToday = (...entries: object[]) =>
      forecast(frogFacts(...entries), { ...question, scenarios: 20, starts: 'nothing' }).days[0]?.wantedFlies;
    expect(wantedToday()).toBe(60);
    expect(wantedToday(fed)).toBe(0);
    expect(today(frogFacts(fed), question).wantedFlies).toEqual({ melanogaster: 60 });
  });
});
