import { describe, expect, it } from 'vitest';
import { addDays, day } from '../foundation/index.ts';
import { batchesLeft, costSheet, goodUntil, type KitchenProblem, kitchenPlan, ledgerOf, usableMassG } from './index.ts';

const monday = day('2026-11-23');
const recipe = {
  recipe: 'mix',
  name: 'Mix',
  ingredients: [
    { ingredient: 'oat-flour', massG: 30 },
    { ingredient: 'sugar', massG: 10 },
  ],
  waterMl: 60,
};
const size = { mediumMassG: 100, lossShare: 0 };
const problem: KitchenProblem = {
  on: monday,
  until: addDays(monday, 27),
  starts: [0, 7, 14, 21].map((n) => ({ on: addDays(monday, n), cups: 2 })),
  ends: [{ on: addDays(monday, 3), cups: 3 }],
  recipe,
  size,
  batches: [],
  batchKeepsDays: 10,
  maxBatchMassG: 1000,
  stock: [
    { item: 'oat-flour', amount: 150 },
    { item: 'sugar', amount: 500 },
    { item: 'lid', amount: 5 },
  ],
  perCup: [{ item: 'lid', amount: 1 }],
  cups: { clean: 3, dirty: 1, areWashed: true },
  shopping: { leadDays: 4 },
};
const planOf = (changes: Partial<KitchenProblem> = {}) => {
  const plan = kitchenPlan({ ...problem, ...changes });
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value;
};

describe('kitchen plan', () => {
  it('one batch serves the sessions within its life', () =>
    expect(planOf().mix).toEqual([
      { on: '2026-11-23', massG: 400, forCups: 4, goodUntil: '2026-12-03' },
      { on: '2026-12-07', massG: 400, forCups: 4, goodUntil: '2026-12-17' },
    ]));
  it('a pot too small for both mixes each time', () => expect(planOf({ maxBatchMassG: 200 }).mix).toHaveLength(4));
  it('medium on hand is used first', () => {
    const batches = [{ batch: 'b', on: monday, recipe: null, massG: 200, goodUntil: null }];
    expect(planOf({ batches }).mix.map((m) => m.on)).toEqual(['2026-11-30', '2026-12-14']);
  });
  it('medium past its day is not used', () => {
    const batches = [{ batch: 'b', on: monday, recipe: null, massG: 400, goodUntil: addDays(monday, 2) }];
    expect(planOf({ batches }).mix.map((m) => m.on)).toEqual(['2026-11-30', '2026-12-14']);
  });
  it('cups are washed the evening before they are missed, and counted: 3 clean, 1 and 3 dirty, 8 wanted', () => {
    // Day 0 takes 2 of 3; day 7 misses one and washes all 4 that are dirty by then; day 21 misses one.
    expect(planOf().wash).toEqual([{ on: '2026-11-29', cups: 4 }]);
    expect(planOf().shoppingList.find((i) => i.item === 'cup')).toEqual({
      item: 'cup',
      amount: 1,
      neededOn: '2026-12-14',
    });
  });
  it('the shopping list until a day: 8 cups need 240 g of flour, 8 lids', () => {
    const list = [...planOf().shoppingList].sort((a, b) => a.item.localeCompare(b.item));
    expect(list).toEqual([
      { item: 'cup', amount: 1, neededOn: '2026-12-14' },
      { item: 'lid', amount: 3, neededOn: '2026-12-07' },
      { item: 'oat-flour', amount: 90, neededOn: '2026-12-07' },
    ]);
  });
  it('one trip for what is missed soon after, the lead time ahead', () => {
    const { shop } = planOf();
    expect(shop.map((s) => s.on)).toEqual(['2026-12-03']);
    expect(shop[0]?.items.map((i) => i.item).sort()).toEqual(['cup', 'lid', 'oat-flour']);
  });
  it('what is missing today is shopped for today', () => expect(planOf({ stock: [] }).shop[0]?.on).toBe(monday));
  it('refuses a day before today and a pot smaller than a cup', () => {
    const refused = kitchenPlan({ ...problem, until: day('2026-11-01'), maxBatchMassG: 20 });
    expect(refused.ok ? [] : refused.problems.map((p) => p.where)).toEqual(['until', 'maxBatchMassG']);
  });
});

describe('batches', () => {
  it('keeps: closed dry mix half a year, medium in the cold two weeks', () =>
    expect([goodUntil(monday, 'dry-closed'), goodUntil(monday, 'wet-cold')]).toEqual(['2027-05-22', '2026-12-07']));
  it('the soonest to spoil comes first, past ones do not count', () => {
    const batch = (key: string, until: string | null) => ({
      batch: key,
      on: day('2026-11-01'),
      recipe: null,
      massG: 500,
      goodUntil: until === null ? null : day(until),
    });
    const left = batchesLeft(
      [batch('a', null), batch('b', '2026-11-20'), batch('c', '2026-12-01')],
      [{ batch: 'c', massG: 120 }],
      monday,
    );
    expect(left.map((b) => [b.batch, b.leftG, b.isPast])).toEqual([
      ['b', 500, true],
      ['c', 380, false],
      ['a', 500, false],
    ]);
    expect(usableMassG(left)).toBe(880);
  });
});

describe('cost, against a sheet worked by hand', () => {
  /*
   * Medium of 100 g: 30 g oat flour at 2.40 for 500 g = 0.144; 10 g sugar at 1.00 for 1000 g = 0.010.
   * Cup: 0.60 used 6 times = 0.100. Lid: 12 for 3.00, used once = 0.250. Wood wool: 200 g for 4.00, 5 g = 0.100.
   * A cup started: 0.604. One in five fails: 0.604 / 0.8 = 0.755 for a good one. 500 flies: 0.151 for 100.
   */
  const request = {
    recipe,
    size,
    prices: [
      { item: 'oat-flour', price: 2.4, packAmount: 500 },
      { item: 'sugar', price: 1, packAmount: 1000 },
      { item: 'cup', price: 0.6, packAmount: 1 },
      { item: 'lid', price: 3, packAmount: 12 },
      { item: 'wood-wool', price: 4, packAmount: 200 },
    ],
    things: [
      { item: 'cup', amount: 1, uses: 6 },
      { item: 'lid', amount: 1, uses: 1 },
      { item: 'wood-wool', amount: 5, uses: 1 },
    ],
    fliesPerCup: 500,
    failureShare: 0.2,
  };
  it('line by line', () => {
    const sheet = costSheet(request);
    expect(sheet.ok && sheet.value.lines.map((l) => Number(l.cost.toFixed(6)))).toEqual([0.144, 0.01, 0.1, 0.25, 0.1]);
    expect(sheet.ok && sheet.value.perCup).toBeCloseTo(0.604, 12);
    expect(sheet.ok && sheet.value.perGoodCup).toBeCloseTo(0.755, 12);
    expect(sheet.ok && sheet.value.per100Flies).toBeCloseTo(0.151, 12);
  });
  it('a missing price is named, never taken as nothing', () => {
    const sheet = costSheet({ ...request, prices: request.prices.slice(1) });
    expect(sheet.ok ? [] : sheet.problems.map((p) => p.where)).toEqual(['prices, oat-flour']);
  });
  it('refuses that all cups fail', () => expect(costSheet({ ...request, failureShare: 1 }).ok).toBe(false));
});

describe('ledger', () => {
  const cups = [
    {
      on: monday,
      mediumMassG: 100,
      cost: 0.6,
      harvests: [
        { on: addDays(monday, 15), flies: 150 },
        { on: addDays(monday, 16), flies: 50 },
      ],
      ended: { on: addDays(monday, 28), fliesLeft: 30 },
    },
    { on: addDays(monday, 8), mediumMassG: 100, cost: 0.6, harvests: [], ended: null },
  ];
  it('weeks without gaps, and ratios of ended cups only', () => {
    const ledger = ledgerOf(cups, addDays(monday, 30));
    expect(ledger.weeks.map((w) => [w.cups, w.fliesTaken, w.fliesWasted])).toEqual([
      [1, 0, 0],
      [1, 0, 0],
      [0, 200, 0],
      [0, 0, 0],
      [0, 0, 30],
    ]);
    expect(ledger).toMatchObject({ fliesPerEndedCup: 200, mediumGPerFly: 0.5 });
    expect(ledger.costPer100Flies).toBeCloseTo(0.3, 12);
  });
  it('no cup, no figures', () =>
    expect(ledgerOf([], monday)).toEqual({
      weeks: [],
      fliesPerEndedCup: null,
      mediumGPerFly: null,
      costPer100Flies: null,
    }));
});
