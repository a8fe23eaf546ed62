/**
 * The kitchen's own jobs behind a plan of starts: when to mix medium, when to wash cups, when to shop,
 * and what to buy so that it lasts until a day. Walks the days once; nothing here is random.
 */
import { addDays, type Day, type Problem, failed, ok, type Result } from '../foundation/index.ts';
import { type Batch, batchesLeft } from './batch.ts';
import { type CupSize, scaleToCups } from './scale.ts';
import type { Recipe } from './recipe.ts';

export interface KitchenProblem {
  on: Day;
  /** Last day looked at, `on` included. */
  until: Day;
  /** Planned starts and cups that will be thrown out, in any order. */
  starts: readonly { on: Day; cups: number }[];
  ends: readonly { on: Day; cups: number }[];
  recipe: Recipe;
  size: CupSize;
  /** Batches with what is left of them. */
  batches: readonly Batch[];
  /** Days that a new batch keeps, and the most that is mixed at once. */
  batchKeepsDays: number;
  maxBatchMassG: number;
  /** On hand: ingredients in g, things in pieces. */
  stock: readonly { item: string; amount: number }[];
  /** Used up by each cup besides medium, in pieces: lids, climbing material. */
  perCup: readonly { item: string; amount: number }[];
  cups: { clean: number; dirty: number; areWashed: boolean };
  shopping: { leadDays: number };
}

export interface KitchenPlan {
  mix: { on: Day; massG: number; forCups: number; goodUntil: Day }[];
  wash: { on: Day; cups: number }[];
  /** By when to have shopped: the first days on which something would be missing, less the lead time. */
  shop: { on: Day; items: { item: string; missing: number; neededOn: Day }[] }[];
  /** Everything missing until `until`, in g or pieces. */
  shoppingList: { item: string; amount: number; neededOn: Day }[];
}

interface Kitchen {
  problem: KitchenProblem;
  batches: { massG: number; goodUntil: Day }[];
  stock: Map<string, number>;
  clean: number;
  dirty: number;
  plan: KitchenPlan;
}

/** A spent cup is frozen for two days before it is emptied and washed. */
const daysFrozen = 2;

/** The kitchen's jobs from `on` to `until`; refused when sizes or counts are impossible. */
export function kitchenPlan(problem: KitchenProblem): Result<KitchenPlan> {
  const size = scaleToCups(problem.recipe, 1, problem.size);
  const problems: Problem[] = size.ok ? [] : [...size.problems];
  for (const s of [...problem.starts, ...problem.ends]) {
    if (!(s.cups >= 0)) problems.push({ where: `cups on ${s.on}`, found: String(s.cups), expected: '0 or more' });
  }
  if (problem.until < problem.on) {
    problems.push({ where: 'until', found: problem.until, expected: `a day not before ${problem.on}` });
  }
  if (!(problem.maxBatchMassG >= problem.size.mediumMassG)) {
    const expected = 'at least the medium of one cup';
    problems.push({ where: 'maxBatchMassG', found: String(problem.maxBatchMassG), expected });
  }
  if (problems.length > 0) return failed(...problems);
  const kitchen = setUp(problem);
  for (let day = problem.on; day <= problem.until; day = addDays(day, 1)) oneDay(kitchen, day);
  return ok({ ...kitchen.plan, shop: shoppingTrips(kitchen.plan.shoppingList, problem) });
}

function setUp(problem: KitchenProblem): Kitchen {
  const left = batchesLeft(problem.batches, [], problem.on).filter((b) => !b.isPast);
  const stock = new Map<string, number>();
  for (const { item, amount } of problem.stock) stock.set(item, (stock.get(item) ?? 0) + amount);
  return {
    problem,
    batches: left.map((b) => ({ massG: b.leftG, goodUntil: b.goodUntil ?? problem.until })),
    stock,
    clean: problem.cups.clean,
    dirty: problem.cups.dirty,
    plan: { mix: [], wash: [], shop: [], shoppingList: [] },
  };
}

function oneDay(kitchen: Kitchen, day: Day): void {
  const { problem } = kitchen;
  if (problem.cups.areWashed) kitchen.dirty += cupsOn(problem.ends, addDays(day, -daysFrozen));
  const cups = cupsOn(problem.starts, day);
  if (cups === 0) return;
  takeMedium(kitchen, day, cups);
  takeCups(kitchen, day, cups);
  for (const { item, amount } of problem.perCup) takeItem(kitchen, item, amount * cups, day);
}

function takeMedium(kitchen: Kitchen, day: Day, cups: number): void {
  const needG = cups * kitchen.problem.size.mediumMassG;
  kitchen.batches = kitchen.batches.filter((b) => b.goodUntil >= day);
  const haveG = kitchen.batches.reduce((sum, b) => sum + b.massG, 0);
  if (haveG < needG - 1e-6) mixBatch(kitchen, day, needG - haveG);
  let restG = needG;
  for (const batch of kitchen.batches) {
    const usedG = Math.min(batch.massG, restG);
    batch.massG -= usedG;
    restG -= usedG;
  }
}

/** Enough for the sessions that the new batch will outlast, within the size of the pot, at least what is missing. */
function mixBatch(kitchen: Kitchen, day: Day, missingG: number): void {
  const { size, starts, until, recipe, maxBatchMassG, batchKeepsDays } = kitchen.problem;
  const goodUntil = addDays(day, batchKeepsDays);
  const lastDay = goodUntil < until ? goodUntil : until;
  const laterCups = starts.filter((s) => s.on > day && s.on <= lastDay).reduce((sum, s) => sum + s.cups, 0);
  const wantedG = Math.max(
    missingG,
    Math.min(missingG + laterCups * size.mediumMassG, maxBatchMassG * (1 - size.lossShare)),
  );
  const mixed = scaleToCups(recipe, wantedG / size.mediumMassG, size);
  if (!mixed.ok) throw new RangeError(`kitchenPlan: ${mixed.problems[0]?.where} ${mixed.problems[0]?.found}`);
  kitchen.plan.mix.push({ on: day, massG: mixed.value.mixedMassG, forCups: wantedG / size.mediumMassG, goodUntil });
  kitchen.batches.push({ massG: wantedG, goodUntil });
  for (const { ingredient, massG } of mixed.value.recipe.ingredients) takeItem(kitchen, ingredient, massG, day);
}

function takeCups(kitchen: Kitchen, day: Day, cups: number): void {
  const missing = cups - kitchen.clean;
  const washed = Math.min(kitchen.dirty, Math.max(0, missing));
  if (washed > 0) {
    const eve = addDays(day, -1);
    // Washing takes all that is dirty: half a sink saves no work. Cups need a night to dry.
    kitchen.plan.wash.push({ on: eve < kitchen.problem.on ? kitchen.problem.on : eve, cups: kitchen.dirty });
    kitchen.clean += kitchen.dirty;
    kitchen.dirty = 0;
  }
  const short = Math.max(0, cups - kitchen.clean);
  if (short > 0) listMissing(kitchen, 'cup', short, day);
  kitchen.clean = Math.max(0, kitchen.clean - cups);
}

function takeItem(kitchen: Kitchen, item: string, amount: number, day: Day): void {
  const have = kitchen.stock.get(item) ?? 0;
  kitchen.stock.set(item, Math.max(0, have - amount));
  if (amount > have + 1e-9) listMissing(kitchen, item, amount - have, day);
}

function listMissing(kitchen: Kitchen, item: string, amount: number, day: Day): void {
  const line = kitchen.plan.shoppingList.find((l) => l.item === item);
  if (line) line.amount += amount;
  else kitchen.plan.shoppingList.push({ item, amount, neededOn: day });
}

/** One trip for everything first needed within the same lead time. */
function shoppingTrips(list: KitchenPlan['shoppingList'], problem: KitchenProblem): KitchenPlan['shop'] {
  const sorted = [...list].sort((a, b) => a.neededOn.localeCompare(b.neededOn) || a.item.localeCompare(b.item));
  const trips: KitchenPlan['shop'] = [];
  for (const { item, amount, neededOn } of sorted) {
    const latest = addDays(neededOn, -problem.shopping.leadDays);
    const on = latest < problem.on ? problem.on : latest;
    const open = trips.at(-1);
    const joins = open !== undefined && on <= addDays(open.on, Math.max(7, problem.shopping.leadDays));
    const line = { item, missing: amount, neededOn };
    if (joins) open.items.push(line);
    else trips.push({ on, items: [line] });
  }
  return trips;
}

function cupsOn(list: readonly { on: Day; cups: number }[], day: Day): number {
  return list.filter((s) => s.on === day).reduce((sum, s) => sum + s.cups, 0);
}
