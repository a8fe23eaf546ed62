/**
 * One strain in one simulated world, day by day. Each day runs as: flies emerge, founders are taken from
 * cups at their best, animals are fed from the cups that will be thrown out first while founders for the
 * next session are spared as long as others hold enough, cups past their time go, a night passes.
 */
import type { ExistingCup } from '../problem.ts';
import { type BlockTable, enterOrder, makeBlockTable, newBlock } from './block-table.ts';
import { cupsOf } from './cup-groups.ts';
import { cumulativeAt, transitDays } from './curve-table.ts';
import type { PreparedStrain } from './prepared-household.ts';
import {
  type BlockDraw,
  deliveryDrawDay,
  drawBlock,
  type HouseholdDraw,
  householdDraw,
  worldKey,
} from './world-draws.ts';

export interface StrainWorld {
  prepared: PreparedStrain;
  key: number;
  /** Number of the world; `meanWorld` for the one in which everything goes as expected. */
  world: number;
  household: HouseholdDraw;
  table: BlockTable;
  /** Flies in all cups this morning, emerged ones included; what is left as the day goes on. */
  onHand: number;
  emerging: number;
  /** Living cups, failed ones that nobody noticed included. */
  livingCups: number;
}

/** Told of each block that joins, so that a keeper's view can follow. */
export type BlockListener = (block: number, day: number) => void;

export const meanWorld = -1;
const scratch: BlockDraw = { yieldFactor: 1, pace: 1, failAge: Number.POSITIVE_INFINITY, failShare: 1 };

export function makeStrainWorld(prepared: PreparedStrain): StrainWorld {
  return {
    prepared,
    key: 0,
    world: 0,
    household: { logYield: 0, logPace: 0, needFactor: 1 },
    table: makeBlockTable(64),
    onHand: 0,
    emerging: 0,
    livingCups: 0,
  };
}

/** Puts world `world` of `seed` at the morning of day 0, with the existing cups in place. */
export function resetWorld(sw: StrainWorld, seed: number, world: number): void {
  const { strain, index } = sw.prepared;
  sw.world = world;
  sw.key = worldKey(seed, world, index);
  sw.household =
    world === meanWorld ? meanHousehold(sw) : householdDraw(strain.uncertainty, strain.needLogSd, sw.key, world);
  sw.table.blocks = 0;
  sw.table.head = 0;
  sw.livingCups = 0;
  const { existing } = strain;
  for (let k = 0; k < existing.length; k++) addExisting(sw, existing[k] as ExistingCup, k);
}

function meanHousehold(sw: StrainWorld): HouseholdDraw {
  const { logYield, logPace } = sw.prepared.strain.uncertainty.householdDraws;
  return { logYield: Math.log(meanOf(logYield, Math.exp, 1)), logPace: meanOf(logPace, (x) => x, 0), needFactor: 1 };
}

/** Mean of a transformed sample, or `empty` when there is none. */
export function meanOf(values: ArrayLike<number>, of: (x: number) => number, empty: number): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += of(values[i] as number);
  return values.length > 0 ? sum / values.length : empty;
}

function addExisting(sw: StrainWorld, cup: ExistingCup, k: number): void {
  const { table, world, prepared } = sw;
  const { draws } = cup;
  const block = newBlock(table);
  const draw = <T extends Float64Array>(values: T) => values[world % values.length] as number;
  const mean = world === meanWorld;
  table.pace[block] = mean ? Math.exp(meanOf(draws.logPace, (x) => x, 0)) : Math.exp(draw(draws.logPace));
  table.yieldFactor[block] = mean ? 1 : Math.exp(draw(draws.logYield));
  table.failAge[block] = mean ? Number.POSITIVE_INFINITY : draw(draws.endAge);
  table.failShare[block] = draws.failShare ? draw(draws.failShare) : 1;
  settle(sw, block, prepared.curves.firstExisting + k, -cup.ageDays, cupsOf(cup), cup.foundersFromDay);
  // Its curve is expected of all its cups together.
  table.believedFactor[block] = 1;
  table.bought[block] = cup.bought ? 1 : 0;
  table.wakeDay[block] = 0;
  table.held[block] = mean ? meanOf(draws.fliesNow, (x) => x, 0) : draw(draws.fliesNow);
  table.emergedBefore[block] = cumulativeAt(
    prepared.curves,
    prepared.curves.firstExisting + k,
    cup.ageDays * (table.pace[block] as number),
  );
}

/** Adds `cups` cups started at home on `day`; `listen` hears of each block. */
export function addStarted(sw: StrainWorld, day: number, cups: number, listen?: BlockListener): void {
  addBlocks(sw, day, cups, day, day, listen);
}

/** Adds `cups` cups delivered on `day`, producing or young, in quarantine until `foundersFromDay`. */
export function addBought(
  sw: StrainWorld,
  day: number,
  cups: number,
  kind: 'producing' | 'young',
  foundersFromDay: number,
  listen?: BlockListener,
): void {
  const { bought } = sw.prepared.strain;
  const age = kind === 'young' ? bought.youngAgeDays : bought.producingAgeDays;
  const curve = kind === 'young' ? sw.prepared.curves.young : sw.prepared.curves.producing;
  addBlocks(sw, day, cups, day - age, foundersFromDay, listen, curve);
}

function addBlocks(
  sw: StrainWorld,
  day: number,
  cups: number,
  born: number,
  foundersFromDay: number,
  listen?: BlockListener,
  boughtCurve = -1,
): void {
  const { table, prepared } = sw;
  const isBought = boughtCurve >= 0;
  const calendarDay = prepared.dayZero + day;
  const drawDay = isBought ? deliveryDrawDay(calendarDay, boughtCurve === prepared.curves.young) : calendarDay;
  let rest = cups;
  for (let n = 0; rest > 0; n++) {
    const size = Math.min(rest, prepared.blockSize);
    rest -= size;
    const block = newBlock(table);
    const mean = sw.world === meanWorld;
    if (mean) meanBlock(size, sw, scratch);
    else drawBlock(prepared.strain.uncertainty, sw.household, sw.key, drawDay, n, size, scratch);
    table.pace[block] = scratch.pace;
    table.yieldFactor[block] = scratch.yieldFactor * (isBought && !mean ? 1 - prepared.arrivalLossShare : 1);
    table.failAge[block] = scratch.failAge;
    table.failShare[block] = scratch.failShare;
    settle(sw, block, isBought ? boughtCurve : day, born, size, foundersFromDay);
    table.bought[block] = isBought ? 1 : 0;
    const age = day - born;
    const pace = table.pace[block] as number;
    // A delivered cup arrives with the flies that emerged on the way.
    const start = isBought ? Math.max(0, age - transitDays) : age;
    table.emergedBefore[block] = cumulativeAt(prepared.curves, table.curve[block] as number, start * pace);
    table.wakeDay[block] = wakeDay(sw, block);
    listen?.(block, day);
  }
}

/** Never late: the first day on which flies can emerge, or on which it fails or goes if that is sooner. */
function wakeDay({ table, prepared }: StrainWorld, block: number): number {
  const born = table.born[block] as number;
  const barren = prepared.curves.barrenAge[table.curve[block] as number] as number;
  const firstFlies = born + barren / (table.pace[block] as number) - 1;
  const failing = born + (table.failAge[block] as number);
  return Math.floor(Math.min(firstFlies, failing, table.spentDay[block] as number));
}

function meanBlock(cups: number, sw: StrainWorld, into: BlockDraw): void {
  into.yieldFactor = cups * Math.exp(sw.household.logYield);
  into.pace = Math.exp(sw.household.logPace);
  into.failAge = Number.POSITIVE_INFINITY;
  into.failShare = 1;
}

function settle(sw: StrainWorld, block: number, curve: number, born: number, cups: number, foundersFrom: number): void {
  const { table, prepared } = sw;
  const { curves, strain } = prepared;
  const pace = table.pace[block] as number;
  table.curve[block] = curve;
  table.born[block] = born;
  table.cups[block] = cups;
  table.alive[block] = 1;
  table.held[block] = 0;
  table.gone[block] = 0;
  table.judged[block] = 0;
  table.spentDay[block] = Math.max(0, born + (curves.spentAge[curve] as number));
  table.releasedDay[block] = foundersFrom;
  table.founderFromDay[block] = Math.max(foundersFrom, born + (curves.founderFromAge[curve] as number) / pace);
  table.founderUntilDay[block] = born + (curves.founderUntilAge[curve] as number) / pace;
  table.judgeDay[block] = born + (curves.revealAge[curve] as number) / pace;
  table.noticedDay[block] = born + (table.failAge[block] as number) + strain.uncertainty.failureNoticedDays;
  table.lookDay[block] = Math.min(table.judgeDay[block] as number, table.noticedDay[block] as number);
  table.believedFactor[block] = cups;
  sw.livingCups += cups;
  enterOrder(table, block);
}

/** The morning of day `t`: throws out spent cups, lets flies emerge, counts what is on hand. */
export function emerge(sw: StrainWorld, t: number): void {
  const { table, prepared } = sw;
  const survival = prepared.strain.adultDailySurvival;
  const { curves } = prepared;
  const { order, wakeDay, gone } = table;
  let emerging = 0;
  let onHand = 0;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if (t < (wakeDay[b] as number)) continue;
    if (gone[b]) {
      if (i === table.head) table.head++;
      continue;
    }
    if (t > (table.spentDay[b] as number) || (table.alive[b] === 0 && t >= (table.noticedDay[b] as number))) {
      discard(sw, b);
      continue;
    }
    const age = t - (table.born[b] as number);
    if (age >= (table.failAge[b] as number)) failNow(sw, b);
    const x = (age + 1) * (table.pace[b] as number);
    const c = table.curve[b] as number;
    let held = table.held[b] as number;
    if (t > 0) held *= survival;
    if (x > (curves.barrenAge[c] as number)) {
      const flies = sw.world === meanWorld ? expectedFlies(sw, b, age) : drawnFlies(sw, b, c, x);
      emerging += flies;
      held += flies;
    }
    table.held[b] = held;
    onHand += held;
  }
  sw.emerging = emerging;
  sw.onHand = onHand;
}

function drawnFlies(sw: StrainWorld, b: number, c: number, x: number): number {
  const { table } = sw;
  const emerged = cumulativeAt(sw.prepared.curves, c, x);
  const flies =
    (emerged - (table.emergedBefore[b] as number)) * (table.yieldFactor[b] as number) * (table.alive[b] as number);
  table.emergedBefore[b] = emerged;
  return flies;
}

function expectedFlies(sw: StrainWorld, b: number, age: number): number {
  const { curves } = sw.prepared;
  const c = sw.table.curve[b] as number;
  return age < curves.stride
    ? (sw.table.yieldFactor[b] as number) * (curves.expected[c * curves.stride + age] as number)
    : 0;
}

function failNow(sw: StrainWorld, b: number): void {
  const { table } = sw;
  const left = 1 - (table.failShare[b] as number);
  table.alive[b] = left;
  table.held[b] = (table.held[b] as number) * left;
  table.failAge[b] = Number.POSITIVE_INFINITY;
}

function discard(sw: StrainWorld, b: number): void {
  const { table } = sw;
  table.gone[b] = 1;
  table.held[b] = 0;
  sw.livingCups -= table.cups[b] as number;
  if (table.order[table.head] === b) table.head++;
}
