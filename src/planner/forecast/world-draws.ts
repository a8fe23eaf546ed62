/**
 * The chances of one simulated world, by counter: the same cup of the same session has the same luck
 * whatever plan is tried, so that plans are compared on common random numbers.
 */
import { mix32, risingReaches } from '../../foundation/index.ts';
import type { CupUncertainty } from '../problem.ts';
import { normalOfWord, uniformOfWord } from './normal-table.ts';

/** What a household shares in one world: factors of yield and pace, and of need. */
export interface HouseholdDraw {
  logYield: number;
  logPace: number;
  needFactor: number;
}

/** What one block of cups turns out to be. */
export interface BlockDraw {
  /** Mean yield of the cups in the block, times their number. */
  yieldFactor: number;
  pace: number;
  /** Age at which the block fails, Infinity when it does not. */
  failAge: number;
  /** Share of the block that fails then. */
  failShare: number;
}

const householdLabel = 0x1b;
const sessionLabel = 0x2c;
const cupLabel = 0x3d;
const sightLabel = 0x4e;

export function worldKey(seed: number, world: number, strain: number): number {
  return mix32(mix32(seed, world), strain + 1);
}

/** Household draws of a world: the given posterior draws in turn, or normals with the given sds. */
export function householdDraw(u: CupUncertainty, needLogSd: number, key: number, world: number): HouseholdDraw {
  const { logYield, logPace } = u.householdDraws;
  const word = mix32(key, householdLabel);
  return {
    logYield:
      logYield.length > 0
        ? (logYield[world % logYield.length] as number)
        : u.yieldLogSd.household * normalOfWord(mix32(word, 1)),
    logPace:
      logPace.length > 0
        ? (logPace[world % logPace.length] as number)
        : u.paceLogSd.household * normalOfWord(mix32(word, 2)),
    needFactor: needLogSd > 0 ? Math.exp(needLogSd * normalOfWord(mix32(word, 3))) : 1,
  };
}

/** Draws of block `block` with `cups` cups, started (or delivered) on `day`; written into `into`. */
export function drawBlock(
  u: CupUncertainty,
  household: HouseholdDraw,
  key: number,
  day: number,
  block: number,
  cups: number,
  into: BlockDraw,
): void {
  const session = mix32(mix32(key, sessionLabel), day);
  const cup = mix32(mix32(session, cupLabel), block);
  const shared = household.logYield + u.yieldLogSd.session * normalOfWord(mix32(session, 1));
  const variance = u.yieldLogSd.cup ** 2;
  // The mean of n lognormal cups, as a lognormal with the same mean and variance.
  const blockVariance = cups === 1 ? variance : Math.log(1 + (Math.exp(variance) - 1) / cups);
  const logMean = cups === 1 ? 0 : 0.5 * (variance - blockVariance);
  const own = logMean + Math.sqrt(blockVariance) * normalOfWord(mix32(cup, 1));
  into.yieldFactor = cups * Math.exp(shared + own);
  const logPace =
    household.logPace +
    u.paceLogSd.session * normalOfWord(mix32(session, 2)) +
    (u.paceLogSd.cup / Math.sqrt(cups)) * normalOfWord(mix32(cup, 2));
  into.pace = Math.exp(logPace);
  drawFailure(u, uniformOfWord(mix32(session, 3)), mix32(cup, 3), cups, into);
}

function drawFailure(u: CupUncertainty, sessionChance: number, word: number, cups: number, into: BlockDraw): void {
  const { perCup, perSession, failedBefore } = u.failure;
  const chance = uniformOfWord(word);
  into.failAge = Number.POSITIVE_INFINITY;
  into.failShare = 1;
  if (sessionChance < perSession) {
    into.failAge = risingReaches(failedBefore, sessionChance / perSession);
  } else if (cups === 1) {
    if (chance < perCup) into.failAge = risingReaches(failedBefore, chance / perCup);
  } else {
    const expected = perCup + Math.sqrt((perCup * (1 - perCup)) / cups) * normalOfWord(mix32(word, 1));
    into.failShare = Math.min(1, Math.max(0, Math.round(expected * cups) / cups));
    if (into.failShare > 0) into.failAge = risingReaches(failedBefore, chance);
  }
}

/** A normal for what the keeper sees on `day`, use `use`. */
export function sightNormal(key: number, day: number, use: number): number {
  return normalOfWord(mix32(mix32(mix32(key, sightLabel), day), use));
}

/** The label of a delivery's draws: apart from the cups started at home on the same day. */
export function deliveryDrawDay(day: number, young: boolean): number {
  return 1_000_000 + day * 2 + (young ? 1 : 0);
}
