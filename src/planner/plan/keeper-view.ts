/**
 * What a keeper (and the tool beside them) believes in one world: flies expected ahead from the cups
 * that are there, a household yield learned from cups that have shown theirs, failures once noticed.
 * It never reads a draw that could not have been seen yet.
 */
import { aliveShare } from '../forecast/curve-table.ts';
import type { PreparedStrain } from '../forecast/prepared-household.ts';
import { seenStock, sightFactor, stockLogSd } from '../forecast/keeper-sight.ts';
import { meanOf, meanWorld, type StrainWorld } from '../forecast/strain-world.ts';

export interface KeeperView {
  sw: StrainWorld;
  /** Flies expected by day of cups whose yield has not been seen, at the household's prior mean. */
  aheadNew: Float64Array;
  /** Flies expected by day of the others. */
  aheadKnown: Float64Array;
  /** Belief of the log of the household's yield: precision, and precision times mean. */
  precision: number;
  weighted: number;
  /** The household's prior mean log yield. */
  priorMean: number;
  /** Variance left in the log yield of a cup that has been judged. */
  judgedVariance: number;
  /** The day of the last look and what was seen then: nothing is taken between the looks of one day. */
  lookedOn: number;
  stockSeen: number;
  /** Log sd of that sight. */
  stockLogSd: number;
}

export function makeKeeperView(sw: StrainWorld, totalDays: number): KeeperView {
  const length = totalDays + sw.prepared.curves.stride + 1;
  return {
    sw,
    aheadNew: new Float64Array(length),
    aheadKnown: new Float64Array(length),
    precision: 1,
    weighted: 0,
    priorMean: 0,
    judgedVariance: 0,
    lookedOn: -1,
    stockSeen: 0,
    stockLogSd: 0,
  };
}

/** The prior mean and sd of the household's log yield. */
export function householdPrior(prepared: PreparedStrain): { mean: number; sd: number } {
  const { householdDraws, yieldLogSd } = prepared.strain.uncertainty;
  const { logYield } = householdDraws;
  if (logYield.length === 0) return { mean: 0, sd: yieldLogSd.household };
  const mean = meanOf(logYield, (x) => x, 0);
  return { mean, sd: Math.sqrt(meanOf(logYield, (x) => (x - mean) ** 2, 0)) };
}

/** Begins the view on day 0 of the world, which must have been reset. */
export function resetView(view: KeeperView): void {
  const { sw } = view;
  const prior = householdPrior(sw.prepared);
  view.aheadNew.fill(0);
  view.aheadKnown.fill(0);
  view.lookedOn = -1;
  view.precision = 1 / Math.max(1e-4, prior.sd ** 2);
  view.priorMean = prior.mean;
  view.weighted = view.precision * prior.mean;
  const own = ownVariance(sw.prepared);
  const sight = sw.prepared.strain.uncertainty.countLogSd ** 2;
  view.judgedVariance = (own * sight) / Math.max(1e-9, own + sight);
  for (let b = 0; b < sw.table.blocks; b++) shift(view, view.aheadKnown, b, 0, 1);
}

function ownVariance(prepared: PreparedStrain): number {
  const { session, cup } = prepared.strain.uncertainty.yieldLogSd;
  return session ** 2 + cup ** 2;
}

/** A block that has just been started or delivered joins what is expected. */
export function expectBlock(view: KeeperView, block: number, day: number): void {
  shift(view, view.aheadNew, block, day, 1);
}

/** Mean factor of unjudged cups, as now believed of the household. */
export function householdFactor(view: KeeperView): number {
  return Math.exp(view.weighted / view.precision + 0.5 / view.precision);
}

/**
 * The keeper looks on day `t`: learns from every cup that can be judged or was found failed by then, and
 * counts. Returns the flies that the keeper thinks are on hand.
 */
export function look(view: KeeperView, t: number): number {
  if (view.lookedOn === t) return view.stockSeen;
  view.lookedOn = t;
  view.stockLogSd = stockLogSd(view.sw);
  view.stockSeen = seenStock(view.sw, t, view.stockLogSd);
  if (view.sw.world !== meanWorld) learnFromCups(view, t);
  return view.stockSeen;
}

/** What each cup that can be judged, or was found failed, tells of itself and of the household. */
function learnFromCups(view: KeeperView, t: number): void {
  const { table } = view.sw;
  const { order, lookDay } = table;
  for (let i = table.head; i < table.blocks; i++) {
    const b = order[i] as number;
    if (t < (lookDay[b] as number) || table.gone[b]) continue;
    if (t >= (table.noticedDay[b] as number)) {
      notice(view, b, t);
      lookDay[b] = Number.POSITIVE_INFINITY;
    } else {
      judge(view, b, t);
      lookDay[b] = table.noticedDay[b] as number;
    }
  }
}

function isExisting(view: KeeperView, b: number): boolean {
  return (view.sw.table.curve[b] as number) >= view.sw.prepared.curves.firstExisting;
}

/** The keeper has seen what the block gives: its own factor replaces the expectation. */
function judge(view: KeeperView, b: number, t: number): void {
  const { table, prepared } = view.sw;
  table.judged[b] = 1;
  if (isExisting(view, b)) {
    judgeExisting(view, b, t);
    return;
  }
  shift(view, view.aheadNew, b, t + 1, -1);
  const cups = table.cups[b] as number;
  const own = ownVariance(prepared);
  const sight = prepared.strain.uncertainty.countLogSd ** 2;
  const age = t - (table.born[b] as number);
  // A dead block gives nothing to count; what was counted before it died is taken for its yield.
  const seen =
    Math.log((table.yieldFactor[b] as number) / cups) + Math.log(sightFactor(view.sw, table.born[b] as number));
  const prior = view.weighted / view.precision;
  const weight = (own + 1 / view.precision) / (own + 1 / view.precision + sight);
  const believed = prior + weight * (seen - prior);
  const failure = prepared.strain.uncertainty.failure;
  const thinned = aliveShare(failure, failure.perCup + failure.perSession, age);
  // The expected curve carries the mean of a lognormal; a judged block has its own value instead.
  table.believedFactor[b] = (cups * Math.exp(believed - 0.5 * own + 0.5 * view.judgedVariance)) / thinned;
  shift(view, view.aheadKnown, b, t + 1, 1);
  view.precision += 1 / (own + sight);
  view.weighted += seen / (own + sight);
}

/** As `judge`, for a cup that was there on day 0: its own draws are the prior. */
function judgeExisting(view: KeeperView, b: number, t: number): void {
  const { table, prepared } = view.sw;
  const prior = prepared.existingLogYield[(table.curve[b] as number) - prepared.curves.firstExisting];
  if (prior === undefined) return;
  const sight = prepared.strain.uncertainty.countLogSd ** 2;
  const error = Math.log((table.yieldFactor[b] as number) * sightFactor(view.sw, table.born[b] as number)) - prior.mean;
  const weight = prior.variance / Math.max(1e-9, prior.variance + sight);
  shift(view, view.aheadKnown, b, t + 1, -1);
  table.believedFactor[b] =
    (table.believedFactor[b] as number) * Math.exp(weight * error - 0.5 * weight * prior.variance);
  shift(view, view.aheadKnown, b, t + 1, 1);
  const own = ownVariance(prepared) + sight;
  view.precision += 1 / own;
  view.weighted += (view.priorMean + error) / own;
}

/** The keeper finds (part of) the block failed: it is no longer expected to give anything. */
function notice(view: KeeperView, b: number, t: number): void {
  const { table } = view.sw;
  const array = table.judged[b] === 1 || isExisting(view, b) ? view.aheadKnown : view.aheadNew;
  const lost = 1 - (table.alive[b] as number);
  shift(view, array, b, t + 1, -lost);
  table.believedFactor[b] = (table.believedFactor[b] as number) * (1 - lost);
  table.judged[b] = 2;
}

/** Adds `times` the block's expected flies from day `from` on to `array`. */
function shift(view: KeeperView, array: Float64Array, b: number, from: number, times: number): void {
  const { table, prepared } = view.sw;
  const { curves } = prepared;
  const born = table.born[b] as number;
  const base = (table.curve[b] as number) * curves.stride - born;
  const until = Math.min((table.spentDay[b] as number) + 1, array.length, born + curves.stride);
  const factor = times * (table.believedFactor[b] as number);
  const { expected } = curves;
  const first = Math.max(0, from, born + (curves.silentUntilAge[table.curve[b] as number] as number));
  for (let t = first; t < until; t++) array[t] = (array[t] as number) + factor * (expected[base + t] as number);
}

/** Cups that have been ordered are expected from their arrival on. */
export function expectDelivery(view: KeeperView, kind: 'producing' | 'young', arrival: number, cups: number): void {
  const { curves, strain } = view.sw.prepared;
  const curve = kind === 'young' ? curves.young : curves.producing;
  const born = arrival - (kind === 'young' ? strain.bought.youngAgeDays : strain.bought.producingAgeDays);
  const until = Math.min(born + (curves.spentAge[curve] as number) + 1, view.aheadNew.length, born + curves.stride);
  const base = curve * curves.stride - born;
  for (let t = arrival; t < until; t++) {
    view.aheadNew[t] = (view.aheadNew[t] as number) + cups * (curves.expected[base + t] as number);
  }
}

/** The part of the stock seen that block `b` holds. */
export function stockShare(view: KeeperView, b: number, stock: number): number {
  const { table, onHand } = view.sw;
  return onHand > 0 ? ((table.held[b] as number) * stock) / onHand : 0;
}
