/**
 * From a keeper's view, the stock ahead: its mean day by day (never below nothing, what is eaten and
 * what dies taken away) and its variance on the days that a decision is about.
 */
import type { PreparedStrain } from '../forecast/prepared-household.ts';
import { expectedLosses } from './expiry.ts';
import type { KeeperView } from './keeper-view.ts';
import { householdFactor } from './keeper-view.ts';
import { gatherSources, judgedSource, newSource, sources } from './sources.ts';

/** The days a decision is about, as a keeper projects them before deciding. */
export interface Projection {
  first: number;
  last: number;
  /** Mean stock on the morning of `first`, before that day's own emergence of further cups. */
  stockAtFirst: number;
  /** Independent variance, and the sum that shares the household's yield, by day from `first`. */
  variance: Float64Array;
  sharedFlies: Float64Array;
  /** Flies of the one cup whose failure would cost most, where its failure is likelier than a short day may be. */
  worstLoss: Float64Array;
  /** Flies that the variance is about: those on hand now and those to come, as far as alive by then. */
  grossFlies: Float64Array;
  /** Flies that go with spent cups, by day from `from`; null when none worth counting. */
  losses: Float64Array | null;
  from: number;
  /** Flies seen on `from`, and their standard deviation. */
  stock: number;
  stockSd: number;
  /** 1 for the days from `first` whose spread has been reckoned: the others are when they are asked for. */
  reckoned: Uint8Array;
  householdVariance: number;
  householdMean: number;
}

export function makeProjection(): Projection {
  return {
    first: 0,
    last: 0,
    stockAtFirst: 0,
    variance: new Float64Array(128),
    sharedFlies: new Float64Array(128),
    grossFlies: new Float64Array(128),
    worstLoss: new Float64Array(128),
    losses: null,
    from: 0,
    stock: 0,
    stockSd: 0,
    reckoned: new Uint8Array(128),
    householdVariance: 0,
    householdMean: 1,
  };
}

/** Projects from the morning of day `t` with `stock` flies seen, for days `first` to `last` - 1. */
export function project(
  view: KeeperView,
  t: number,
  stock: number,
  first: number,
  last: number,
  into: Projection,
): void {
  if (last - first > into.variance.length) {
    into.variance = new Float64Array(last - first);
    into.sharedFlies = new Float64Array(last - first);
    into.grossFlies = new Float64Array(last - first);
    into.worstLoss = new Float64Array(last - first);
    into.reckoned = new Uint8Array(last - first);
  }
  into.first = first;
  into.last = last;
  into.householdMean = householdFactor(view);
  into.householdVariance = Math.exp(1 / view.precision) - 1;
  into.from = t;
  into.losses = expectedLosses(view, t, stock, into.householdMean, last);
  into.stockAtFirst = stockOn(view, t, stock, first, into);
  into.stock = stock;
  into.stockSd = stock * view.stockLogSd;
  into.reckoned.fill(0, 0, last - first);
  gatherSources(view, t, stock, first, into.householdMean);
}

/** The spread changes little from day to day: every other day is reckoned, the days between are their mean. */
function reckonSpread(view: KeeperView, p: Projection, k: number): void {
  if (p.reckoned[k]) return;
  p.reckoned[k] = 1;
  if (k % 2 === 0 || k === p.last - p.first - 1) return varianceOn(view, k, p);
  reckonSpread(view, p, k - 1);
  reckonSpread(view, p, k + 1);
  p.variance[k] = betweenDays(p.variance, k);
  p.sharedFlies[k] = betweenDays(p.sharedFlies, k);
  p.grossFlies[k] = betweenDays(p.grossFlies, k);
  p.worstLoss[k] = betweenDays(p.worstLoss, k);
}

function betweenDays(values: Float64Array, k: number): number {
  return 0.5 * ((values[k - 1] as number) + (values[k + 1] as number));
}

/** Mean stock on the morning of `day`, its emergence included. */
function stockOn(view: KeeperView, t: number, stock: number, day: number, into: Projection): number {
  const { need, founderShare, strain } = view.sw.prepared;
  const survival = strain.adultDailySurvival;
  const mean = into.householdMean;
  let m = stock;
  const { losses } = into;
  for (let d = t; d < day; d++) {
    m -= (need[d] as number) * (1 + founderShare) + (losses ? (losses[d - t] as number) : 0);
    m = (m > 0 ? m * survival : 0) + mean * (view.aheadNew[d + 1] as number) + (view.aheadKnown[d + 1] as number);
  }
  return m;
}

/** What the sources add up to on one day: scratch, begun anew for every day. */
const sums = { variance: 0, gross: 0, worst: 0, shared: 0, session: 0, sessionCurve: -1, living: 0, livingSd: 0 };

/** Variance of the stock `k` days after the first: cups apart, sessions together, the household in all. */
function varianceOn(view: KeeperView, k: number, into: Projection): void {
  const { prepared } = view.sw;
  const day = into.first + k;
  const decay = prepared.survivalPower[day - into.from] as number;
  sums.variance = (into.stockSd * decay) ** 2;
  sums.gross = into.stock * decay;
  sums.worst = sums.shared = sums.session = sums.living = sums.livingSd = 0;
  sums.sessionCurve = -1;
  const { spentDay } = sources;
  for (let i = 0; i < sources.count; i++) if (day <= (spentDay[i] as number)) addSource(view, i, day, decay);
  const together = prepared.existingCorrelation;
  const existing = (1 - together) * sums.living + together * sums.livingSd * sums.livingSd;
  into.variance[k] = sums.variance + existing + sums.session * sums.session * prepared.sessionSpread;
  into.sharedFlies[k] = sums.shared;
  into.grossFlies[k] = sums.gross;
  into.worstLoss[k] = sums.worst;
}

/** Adds a source's flies on `day`: those it holds now and those to come, as far as alive by then. */
function addSource(view: KeeperView, i: number, day: number, decay: number): void {
  const { prepared } = view.sw;
  const at = (sources.base[i] as number) + day;
  const full = prepared.curves.decayed[at] as number;
  if (full <= 0) return;
  const kind = sources.kind[i] as number;
  const ahead = full - decay * (sources.decayedNow[i] as number);
  const flies = ahead * (sources.believed[i] as number) * (sources.householdMean[i] as number);
  const failing = failingShare(prepared, sources.failedNow[i] as number, day - (sources.born[i] as number));
  const ofOne = ((sources.stock[i] as number) * decay + flies) / (sources.cups[i] as number);
  if (ofOne > sums.worst && failing > prepared.allowedRisk) sums.worst = ofOne;
  sums.gross += flies;
  if (kind === judgedSource) sums.variance += flies * flies * (view.judgedVariance + failing);
  else if (kind === newSource) addNew(view, i, at, (ahead / full) * (sources.householdMean[i] as number), flies);
  else addExisting(prepared, at, ahead / full);
}

/** A living cup of today that has not been judged: its spread is that of its draws. */
function addExisting({ curves }: PreparedStrain, at: number, share: number): void {
  const part = share * share * (curves.cupVariance[at] as number);
  sums.living += part;
  sums.livingSd += Math.sqrt(part);
}

/** A cup whose yield has not been seen: its own spread, its session's and the household's. */
function addNew(view: KeeperView, i: number, at: number, share: number, flies: number): void {
  const { prepared } = view.sw;
  const own = share * share * (prepared.curves.cupVariance[at] as number);
  sums.variance += own * (sources.believed[i] as number);
  sums.shared += flies;
  const c = sources.curve[i] as number;
  if (c !== sums.sessionCurve) {
    sums.variance += sums.session * sums.session * prepared.sessionSpread;
    sums.session = 0;
    sums.sessionCurve = c;
  }
  sums.session += flies;
}

/** Chance that a cup, failed by now with the share `before`, fails before age `until`. */
function failingShare(prepared: PreparedStrain, before: number, until: number): number {
  const { perCup, perSession, failedBefore } = prepared.strain.uncertainty.failure;
  const by = failedBefore[Math.min(until, failedBefore.length - 1)] as number;
  return (perCup + perSession) * (by - before);
}

/** Standard deviations of cover that must be left when the cup that matters most has failed. */
const withoutWorst = 0.5;

/** A source of flies under consideration: `cups` of them on `curve`, born on `born`. */
export interface Candidate {
  curve: number;
  born: number;
}

/**
 * First day from `p.first` to `until` - 1 on which mean stock less that day's standard deviations of cover is below
 * the need when `cups` cups of the candidate are added; -1 when there is none.
 */
export function firstShortDay(
  view: KeeperView,
  p: Projection,
  candidate: Candidate,
  cups: number,
  safetyByDay: Float64Array,
  until: number,
): number {
  const { need, founderShare, strain, curves, sessionSpread } = view.sw.prepared;
  const survival = strain.adultDailySurvival;
  const needSpread = strain.needLogSd ** 2;
  const base = candidate.curve * curves.stride - candidate.born;
  const { householdMean } = p;
  const factor = cups * householdMean;
  const ownVariance = cups * householdMean ** 2;
  // Flies of the candidate that are out before the first day judged, less those that died.
  let m = p.stockAtFirst + factor * (curves.decayed[base + p.first] as number);
  for (let d = p.first; d < until; d++) {
    if (d > p.first) {
      m +=
        householdMean * (view.aheadNew[d] as number) +
        (view.aheadKnown[d] as number) +
        factor * (curves.expected[base + d] as number);
    }
    const wanted = need[d] as number;
    if (wanted > 0) {
      const k = d - p.first;
      reckonSpread(view, p, k);
      const own = factor * (curves.decayed[base + d] as number);
      const shared = (p.sharedFlies[k] as number) + own;
      const variance =
        (p.variance[k] as number) +
        ownVariance * (curves.cupVariance[base + d] as number) +
        own * own * sessionSpread +
        shared * shared * p.householdVariance +
        needSpread * (wanted * 5) ** 2;
      const gross = (p.grossFlies[k] as number) + own;
      if (fallsShort(m - wanted, gross, variance, safetyByDay[d] as number)) return d;
      const loss = Math.max(p.worstLoss[k] as number, cups > 0 ? own / cups : 0);
      if (loss > 0 && fallsShort(m - loss - wanted, gross - loss, variance, withoutWorst)) return d;
    }
    m -= wanted * (1 + founderShare) + (p.losses ? (p.losses[d - p.from] as number) : 0);
    m = m > 0 ? m * survival : 0;
  }
  return -1;
}

/** Whether the possible lack is more than is to spare; on most days a bound without logarithm says so. */
function fallsShort(spare: number, mean: number, variance: number, safety: number): boolean {
  if (spare < 0) return true;
  if (mean <= 0) return false;
  const relative = variance / (mean * mean);
  // log(1 + x) is at most x, and 1 - exp(-q) at most q - q^2 / 2 + q^3 / 6.
  const q = safety * Math.sqrt(relative) + 0.5 * relative;
  if (spare > mean * q * (1 - q * (0.5 - q / 6))) return false;
  return spare < possibleLack(mean, variance, safety);
}

/** Flies by which a lognormal supply of that mean and variance lies below its mean, `safety` deviations down. */
export function possibleLack(mean: number, variance: number, safety: number): number {
  if (mean <= 0) return 0;
  const logVariance = Math.log(1 + variance / (mean * mean));
  return mean * (1 - Math.exp(-safety * Math.sqrt(logVariance) - 0.5 * logVariance));
}

/** The fewest cups, 0 to `most`, with no short day from `p.first` to `until` - 1; `most` when none do. */
export function fewestCups(
  view: KeeperView,
  p: Projection,
  candidate: Candidate,
  most: number,
  safetyByDay: Float64Array,
  until: number,
): number {
  let low = 0;
  let high = 1;
  while (high < most && firstShortDay(view, p, candidate, high, safetyByDay, until) >= 0) {
    low = high;
    high = high < 6 ? high + 1 : Math.ceil(high * 1.5);
  }
  if (high >= most) high = most;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (firstShortDay(view, p, candidate, middle, safetyByDay, until) >= 0) low = middle;
    else high = middle;
  }
  return Math.min(high, most);
}
