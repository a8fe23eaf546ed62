import { describe, expect, it } from 'vitest';
import { value, where } from '../../tests/fixtures/results-read.ts';
import { facts, household, on, question, settings, started } from '../../tests/fixtures/two-cup-household.ts';
import { addDays, day } from '../foundation/index.ts';
import type { Job } from './answers.ts';
import { mixAnswer } from './kitchen/mix-answer.ts';
import { ledgerAnswer } from './kitchen/ledger-answer.ts';
import { shoppingAnswer } from './kitchen/shopping-answer.ts';
import { stockToday } from './kitchen/stock-today.ts';
import { ledger } from './ledger.ts';
import { mix } from './mix.ts';
import { plan } from './plan.ts';
import { shopping } from './shopping.ts';

describe('mix', () => {
  it('has the shape that every door gives; 10 cups of 100 g with 5 % lost are 1,052.6 g', () => {
    const answer = value(mix(household, { on, recipe: 'mine', cups: 10 }));
    expect(mixAnswer.parse(answer)).toEqual(answer);
    expect(answer.mixedMassG).toBeCloseTo(1000 / 0.95, 9);
    expect(answer.ingredients[0]).toMatchObject({ ingredient: 'oat-flour', weighedG: 316 });
    expect(answer.steps.at(-1)?.step).toBe('next-day-look');
  });
  it('warns of the recipe’s own preservative, about 1.1 %, and still answers', () => {
    const answer = value(mix(household, { on, recipe: 'mine', cups: 1 }));
    expect(answer.doses[0]?.verdict).toBe('harmful');
    expect(answer.warnings[0]).toContain('Methylparaben');
  });
  it('makes what the stock allows when no number is asked for', () => {
    const stock = [
      { kind: 'stock', item: 'oat-flour', amount: 1, unit: 'kg', on: addDays(on, -3) },
      { kind: 'stock', item: 'methylparaben', amount: 50, unit: 'g', on: addDays(on, -3) },
    ];
    const answer = value(mix(facts([...settings, ...stock]), { on, recipe: 'mine', lossShare: 0 }));
    // 30 g of flour in a cup of 100 g: 33 cups.
    expect([answer.cups, answer.onHand?.limitedBy]).toEqual([33, 'oat-flour']);
  });
  it('reckons an acid by volume: 9.93 g of propionic acid are 10 ml', () => {
    const ingredients = [
      { ingredient: 'oat-flour', massG: 300 },
      { ingredient: 'propionic-acid', massG: 9.93 },
    ];
    const log = facts([...settings, { kind: 'recipe', recipe: 'sour', name: 'Sour', waterMl: 690.07, ingredients }]);
    const [dose] = value(mix(log, { on, recipe: 'sour', cups: 10, lossShare: 0 })).doses;
    expect([dose?.unit, dose?.basis]).toEqual(['ml', 'v/v']);
    expect(dose?.amount).toBeCloseTo(10, 9);
  });
  it('gives starter recipes by key, names what is wrong', () => {
    expect(value(mix(household, { on, recipe: 'maize-and-molasses', cups: 2 })).method).toBe('cooked');
    expect(where(mix(household, { on, recipe: 'soup', cups: 2 }))).toBe('recipe');
    expect(where(mix(household, { on, recipe: 'mine', cups: -2 }))).toBe('cups');
  });
});

describe('stock of today', () => {
  it('is the last count less what was used since', () => {
    const log = facts([
      ...settings,
      { kind: 'stock', item: 'lid', amount: 10, unit: 'piece', on: addDays(on, -10) },
      { kind: 'stock', item: 'oat-flour', amount: 2, unit: 'kg', on: addDays(on, -10) },
      { kind: 'batch', batch: 'b', recipe: 'mine', massG: 500, on: addDays(on, -5) },
      started('c2', 'M2', 6),
      started('c3', 'M3', 12),
    ]);
    // One cup since the count; half a kilogram of a recipe with 30 % flour.
    expect(stockToday(log, on)).toEqual(
      expect.arrayContaining([
        { item: 'lid', amount: 9, unit: 'piece' },
        { item: 'oat-flour', amount: 1850, unit: 'g' },
      ]),
    );
  });
});

describe('cost', () => {
  /*
   * A cup of 100 g without loss: 30 g of oat flour at 2.00 a kg = 0.060, 1 g of methylparaben at 0.05 = 0.050,
   * a lid 0.10: 0.210. Two cups ended, one of them mouldy: 0.420 for a good one, which gave 300 flies: 0.14 for 100.
   */
  const priced = [
    { kind: 'stock', item: 'oat-flour', amount: 1, unit: 'kg', pricePerUnit: 2 },
    { kind: 'stock', item: 'methylparaben', amount: 50, unit: 'g', pricePerUnit: 0.05 },
    { kind: 'stock', item: 'lid', amount: 9, unit: 'piece', pricePerUnit: 0.1 },
  ];
  const lived = [
    started('d1', 'D1', 29),
    started('d2', 'D2', 29),
    { kind: 'harvested', culture: 'd1', flies: 300, on: addDays(on, -10) },
    { kind: 'ended', culture: 'd1', reason: 'spent', on: addDays(on, -2) },
    { kind: 'ended', culture: 'd2', reason: 'mould', on: addDays(on, -20) },
  ];
  const costOf = (...drafts: object[]) =>
    value(mix(facts([...settings, ...drafts]), { on, recipe: 'mine', cups: 1, lossShare: 0 })).cost;
  it('of a cup and of 100 flies, from prices in the logbook', () => {
    const cost = costOf(...priced, ...lived);
    expect(cost?.perCup).toBeCloseTo(0.21, 12);
    expect(cost?.perGoodCup).toBeCloseTo(0.42, 12);
    expect(cost?.per100Flies).toBeCloseTo(0.14, 12);
    expect(cost?.missingPrices).toEqual(['cup', 'climbing-material']);
  });
  it('says nothing of flies before a cup has ended, and nothing at all without prices', () => {
    expect(costOf(...priced)).toMatchObject({ per100Flies: null, failureShare: 0 });
    expect(costOf()).toBeNull();
  });
});

describe('ledger', () => {
  it('adds up the log by week, and what was thrown out with a cup', () => {
    const log = facts([
      ...settings,
      started('e1', 'E1', 28),
      { kind: 'harvested', culture: 'e1', flies: 120, on: addDays(on, -13) },
      { kind: 'ended', culture: 'e1', reason: 'spent', on: addDays(on, -12) },
      { kind: 'stock', item: 'oat-flour', amount: 1, unit: 'kg', pricePerUnit: 2 },
    ]);
    const answer = ledger(log, question);
    expect(ledgerAnswer.parse(answer)).toEqual(answer);
    expect(answer.weeks).toHaveLength(5);
    expect(answer.weeks.map((w) => w.fliesTaken)).toEqual([0, 0, 120, 0, 0]);
    expect(answer.weeks[2]?.fliesWasted).toBeGreaterThan(50);
    expect(answer).toMatchObject({ hasPrices: true, fliesPerEndedCup: 120, mediumGPerFly: 100 / 120 });
    // 30 g of flour in 95 % of what is mixed, at 0.002 a gram.
    expect(answer.weeks[0]?.cost).toBeCloseTo((0.3 * 100 * 0.002) / 0.95, 9);
  });
});

describe('shopping', () => {
  const start = (daysAhead: number): Job => ({
    id: String(daysAhead),
    date: addDays(on, daysAhead),
    kind: 'start',
    strain: 'mel',
    cups: 3,
    why: '',
    firmness: 'firm',
  });
  const stocked = facts([
    ...settings,
    { kind: 'stock', item: 'oat-flour', amount: 200, unit: 'g', pricePerUnit: 0.01 },
    { kind: 'stock', item: 'lid', amount: 5, unit: 'piece' },
  ]);
  const jobs = [start(2), start(20), start(60)];
  it('lists what is missing until the day: six cups are 600 g, 180 of them flour', () => {
    const answer = value(shopping(stocked, jobs, { on, recipe: 'mine', lossShare: 0 }));
    expect(shoppingAnswer.parse(answer)).toEqual(answer);
    expect(answer.mix.map((m) => [m.on, m.massG])).toEqual([
      [addDays(on, 2), 300],
      [addDays(on, 20), 300],
    ]);
    expect(answer.shoppingList.map((l) => [l.item, l.amount])).toEqual([['lid', 1]]);
    expect(answer.uncounted).toEqual(expect.arrayContaining(['methylparaben', 'climbing-material']));
  });
  it('with its price, and by when to go', () => {
    const answer = value(shopping(stocked, jobs, { on, until: addDays(on, 61), recipe: 'mine', lossShare: 0 }));
    const flour = answer.shoppingList.find((l) => l.item === 'oat-flour');
    // Nine cups are 270 g of flour: 70 g more than there is.
    expect(flour?.amount).toBeCloseTo(70, 9);
    expect(answer.price).toBeCloseTo(0.7, 9);
    expect(answer.shop[0]?.on).toBe(addDays(on, 17));
  });
});

describe('kitchen jobs of the plan', () => {
  const shelf = [started('c1', 'M1', 20), started('c2', 'M2', 12), started('c3', 'M3', 5)];
  const jobsOf = (...stock: object[]) =>
    plan(facts([...settings, ...shelf, ...stock]), { on, seed: 1, scenarios: 50, weeks: 6 }).jobs;
  it('wash the evening before cups are missed, shop before lids run out', () => {
    const jobs = jobsOf(
      { kind: 'stock', item: 'cup', amount: 4, unit: 'piece', on },
      { kind: 'stock', item: 'cup-dirty', amount: 6, unit: 'piece', on },
      { kind: 'stock', item: 'lid', amount: 1, unit: 'piece', on },
    );
    const wash = jobs.find((j) => j.kind === 'wash');
    const shop = jobs.find((j) => j.kind === 'shop');
    const starts = jobs.filter((j) => j.kind === 'start').map((j) => j.date);
    expect(wash?.cups).toBeGreaterThanOrEqual(6);
    expect(wash?.date.localeCompare(on)).toBe(1);
    expect(starts).toContain(addDays(day(wash?.date ?? ''), 1));
    expect(shop?.why).toMatch(/^Missing from .* on: lid \d+/);
  });
  it('say nothing of a kitchen that was never counted', () =>
    expect(jobsOf().filter((j) => j.kind === 'wash' || j.kind === 'shop')).toEqual([]));
});
