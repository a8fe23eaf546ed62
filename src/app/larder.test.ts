import { describe, expect, it } from 'vitest';
import { factsWritten } from '../../tests/fixtures/facts-written.ts';
import { value } from '../../tests/fixtures/results-read.ts';
import { addDays, day } from '../foundation/index.ts';
import { larderAnswer, recipeBookAnswer } from './kitchen/larder-answer.ts';
import { larder } from './larder.ts';
import { mix } from './mix.ts';
import { recipeBook, weighed } from './recipe-book.ts';

const on = day('2026-11-25');
const facts = (drafts: object[]) => factsWritten(drafts, addDays(on, -30));
const mine = {
  kind: 'recipe',
  recipe: 'mine',
  name: 'Mine',
  waterMl: 700,
  ingredients: [
    { ingredient: 'oat-flour', massG: 250 },
    { ingredient: 'sugar', massG: 50 },
  ],
};
const cup = { kind: 'container', container: 'cup', mediumMassG: 95, surfaceCm2: 80, founders: 50 };
const count = (item: string, amount: number, unit: string, daysAgo = 10) => ({
  kind: 'stock',
  item,
  amount,
  unit,
  on: addDays(on, -daysAgo),
});
const started = (culture: string, daysAgo: number) => ({
  kind: 'started',
  culture,
  strain: 'melanogaster',
  container: 'cup',
  batch: 'b1',
  founders: 50,
  on: addDays(on, -daysAgo),
});
const ended = (culture: string, reason: string, daysAgo: number) => ({
  kind: 'ended',
  culture,
  reason,
  on: addDays(on, -daysAgo),
});
const wrong = (result: { ok: boolean; problems?: { where: string; found: string }[] }) =>
  (result.problems ?? []).map((p) => `${p.where}: ${p.found}`).join('; ');

describe('the larder', () => {
  // A cup of 95 g with 5 % lost takes 100 g: 25 g of oat flour, 5 g of sugar.
  const shelf = [mine, cup, count('oat-flour', 1, 'kg'), count('sugar', 60, 'g'), count('lid', 30, 'piece')];
  it('says for how many cups each thing lasts, and what runs out first', () => {
    const answer = value(larder(facts(shelf), { on, recipe: 'mine' }));
    expect(larderAnswer.parse(answer)).toEqual(answer);
    expect(answer.items.map(({ item, cups }) => [item, cups === null ? null : Math.round(cups * 1e9) / 1e9])).toEqual([
      ['lid', 30],
      ['oat-flour', 40],
      ['sugar', 12],
    ]);
    expect([answer.lastsCups, answer.limitedBy]).toEqual([12, 'sugar']);
    expect(answer.uncounted).toEqual(['cup', 'climbing-material']);
  });
  it('knows where cups are: in use, clean, and dirty when they may be washed', () => {
    const log = facts([
      ...shelf,
      count('cup', 5, 'piece'),
      count('cup-dirty', 1, 'piece'),
      started('a', 20),
      started('b', 19),
      started('c', 4),
      ended('a', 'spent', 3),
      ended('b', 'mites', 2),
    ]);
    const cups = value(larder(log, { on, recipe: 'mine' })).things[0];
    // Of five clean ones one was filled since; the spent cup is washed, the one with mites goes whole.
    expect(cups).toEqual({ thing: 'cup', inUse: 1, clean: 4, dirty: 2 });
  });
  it('shows what is left of a batch, and that it is past its day', () => {
    const batch = {
      kind: 'batch',
      batch: 'b1',
      recipe: 'mine',
      massG: 400,
      on: addDays(on, -5),
      goodUntil: addDays(on, -1),
    };
    const answer = value(larder(facts([...shelf, batch, started('a', 4)]), { on }));
    expect(answer.batches).toMatchObject([{ batch: 'b1', leftG: 400 - 95, isPast: true }]);
    // The batch took 100 g of flour and 20 g of sugar.
    expect(answer.items.find(({ item }) => item === 'sugar')?.amount).toBeCloseTo(40, 9);
  });
  it('says nothing where nothing was counted', () =>
    expect(value(larder(facts([cup]), { on }))).toMatchObject({ items: [], lastsCups: null, limitedBy: null }));
});

describe('medium for a whole batch', () => {
  it('of 1 kg fills ten cups of 95 g and takes a quarter of flour', () => {
    const answer = value(mix(facts([mine, cup]), { on, recipe: 'mine', batchMassG: 1000 }));
    expect(answer.cups).toBe(10);
    expect(answer.ingredients[0]?.massG).toBeCloseTo(250, 9);
  });
  it('is refused beside a number of cups, and below nothing', () => {
    expect(wrong(mix(facts([mine, cup]), { on, recipe: 'mine', batchMassG: 1000, cups: 2 }))).toMatch(/^cups/);
    expect(wrong(mix(facts([mine, cup]), { on, recipe: 'mine', batchMassG: -5 }))).toMatch(/massG: -5/);
  });
});

describe('recipes', () => {
  it('are one’s own first, then those to start with', () => {
    const book = recipeBook(facts([mine]));
    expect(recipeBookAnswer.parse(book)).toEqual(book);
    expect(book.map(({ recipe, isOwn }) => [recipe, isOwn])[0]).toEqual(['mine', true]);
    expect(book.filter(({ isOwn }) => !isOwn).length).toBeGreaterThan(2);
    expect(book[0]?.massG).toBe(1000);
  });
  it('take an amount by spoons where its weight is known: two US cups of sugar are 400 g', () => {
    // USDA SR28 NDB 19335: 200 g a cup.
    expect(value(weighed({ ingredient: 'sugar', amount: 2, measure: 'us-cup' })).amount).toBeCloseTo(400, 9);
    expect(wrong(weighed({ ingredient: 'sawdust', amount: 2, measure: 'us-cup' }))).toMatch(/sawdust/);
    expect(wrong(weighed({ ingredient: 'sugar', amount: -2, measure: 'us-cup' }))).toMatch(/amount: -2/);
    expect(wrong(weighed({ ingredient: 'sugar', amount: 2, measure: 'bucket' }))).toMatch(/bucket/);
  });
});
